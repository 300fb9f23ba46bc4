/** The ways to heat the pool, and heads of the tables that list them. */
import type { ExtraCell, Line } from "../layout";

/** Key, name and, invented, first cost, upkeep a year and life of each way to heat the pool; the first is the base. */
export const WAYS = [
  ["gas", "Gas heater", 5200, 250, 12],
  ["electric", "Electric heater", 3800, 60, 12],
  ["pump", "Pool heat pump", 8200, 220, 12],
  ["solar", "Unglazed solar, gas", 11200, 280, 15],
  ["cover", "Cover, gas", 7200, 450, 12],
  ["recovered", "Recovered heat, gas", 14800, 350, 15],
] as const;

const columns = (heads: Readonly<Record<string, string>>): Readonly<Record<string, ExtraCell>> =>
  Object.fromEntries(Object.entries(heads).map(([column, content]) => [column, { content, style: "Heading 3" }]));

/** A row of heads above a table. */
export const headsOf = (label: string, value: string, heads: Readonly<Record<string, string>>): Line => ({
  label,
  labelStyle: "Heading 3",
  value,
  style: "Heading 3",
  extra: columns(heads),
});
