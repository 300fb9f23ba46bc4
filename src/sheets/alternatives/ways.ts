/** Ways to heat the pool: what each costs, and the equipment of two of them, invented. */
import { heading, input, type ExtraCell, type Line } from "../layout";
import { INVENTED, above, betweenLimits } from "../technicianParts";

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

const typed = (content: number, validation: NonNullable<ExtraCell["validation"]>): ExtraCell => ({
  content,
  style: "Input",
  format: "#,##0",
  validation,
});

export const COST_LINES: readonly Line[] = [
  heading("group", "What each way costs", INVENTED),
  headsOf("Way", "First cost", { C: "Upkeep a year", D: "Life, years" }),
  ...WAYS.map(([key, name, first, upkeep, life]): Line => ({
    key: `cost${key}`,
    label: name,
    value: first,
    style: "Input",
    format: "#,##0",
    validation: betweenLimits(0, 1e7, "0 or more"),
    extra: {
      C: typed(upkeep, betweenLimits(0, 1e6, "0 or more")),
      D: typed(life, betweenLimits(1, 60, "1 to 60 years")),
    },
  })),
];

export const EQUIPMENT_LINES: readonly Line[] = [
  heading(
    "group",
    "Pool heat pump: its tested points",
    "Water entering at 80 °F; a COP without its point means nothing.",
  ),
  headsOf("Air", "Heat, BTU/h", { C: "COP" }),
  ...(
    [
      ["pumpHumid", "80 °F, 80 % humidity", 108000, 5.9],
      ["pumpWarm", "80 °F, 63 %", 102000, 5.5],
      ["pumpCool", "50 °F, 63 %", 68000, 3.9],
    ] as const
  ).map(([key, label, heat, cop]): Line => ({
    key,
    label,
    value: heat,
    style: "Input",
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    extra: { C: { content: cop, style: "Input", format: "0.0", validation: betweenLimits(1, 15, "1 to 15") } },
  })),
  input("pumpDay", "Hours a day that it may run", 14, "h", {
    validation: betweenLimits(1, 24, "1 to 24 h"),
    source: "with the pool's pump",
  }),
  heading("group", "Unglazed solar collectors"),
  input("collector", "Collector area", 800, "ft²", {
    format: "#,##0",
    validation: above("above 0 ft²"),
    source: "50 to 100 % of the pool's surface",
  }),
  input("collectorWind", "Wind at the collectors, share of the station's", 0.4, "", {
    format: "0%",
    validation: betweenLimits(0.01, 1, "1 to 100 %"),
    source: "common practice",
  }),
  input("sky", "Net sky radiation", -60, "W/m²", {
    validation: betweenLimits(-120, 0, "-120 to 0 W/m²"),
    source: "common practice",
    note: "-40 to -100 under a clear sky.",
  }),
  input("solarPump", "Power of their pump", 0.4, "kW", {
    validation: betweenLimits(0, 20, "0 to 20 kW"),
    source: "data sheet",
  }),
];
