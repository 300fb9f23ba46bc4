/** The year by months on the sheet "Recovery sizing": heat and temperatures, with their charts. */
import { MONTHS } from "../../../core";
import { cellsBetween, chartRows, placeOver } from "../charts";
import { gap, heading, type ExtraCell, type Line } from "../layout";
import type { SheetChart } from "../sheet";
import { YEAR, columnPlace } from "./year";

const headCell = (content: string): ExtraCell => ({ content, style: "Heading 3" });

/** Twelve rows follow a heading in the table of the year. */
const cell = (column: string, at: number, by = ""): string =>
  `=INDEX(${YEAR},${at + 2},${columnPlace("POOL.YEAR", column)})${by}`;

const calculated = (content: string, format: string): ExtraCell => ({ content, style: "Calculation", format });

const heats: readonly Line[] = MONTHS.map((month, at) => ({
  key: `heat${month}`,
  label: month,
  value: cell("backUpWithout", at, "/1000000"),
  style: "Calculation",
  format: "0.0",
  extra: {
    C: calculated(cell("heatTakenHeld", at, "/1000000"), "0.0"),
    D: calculated(cell("backUpWith", at, "/1000000"), "0.0"),
  },
}));

const temperatures: readonly Line[] = MONTHS.map((month, at) => ({
  key: `pool${month}`,
  label: month,
  value: cell("poolWithout", at),
  style: "Calculation",
  format: "0.0",
  extra: {
    C: calculated(cell("poolWith", at), "0.0"),
    D: calculated("=[yearSet]", "0.0"),
    E: calculated("=[yearLimit]", "0.0"),
  },
}));

export const MONTH_LINES: readonly Line[] = [
  heading("group", "The year by month: heat", "Pool held at the set point through the season."),
  {
    label: "MMBtu",
    labelStyle: "Heading 3",
    value: "Asked for",
    style: "Heading 3",
    extra: { C: headCell("Taken"), D: headCell("Bought") },
  },
  ...heats,
  heading("group", "The year by month: pool temperature", "Pool left to itself; means of the months."),
  {
    label: "°F",
    labelStyle: "Heading 3",
    value: "Without recovery",
    style: "Heading 3",
    extra: { C: headCell("With recovery"), D: headCell("Set point"), E: headCell("High limit") },
  },
  ...temperatures,
  ...chartRows("yearCharts"),
  gap,
];

const of = (key: string, column: string): string => cellsBetween(`${key}Jan`, `${key}Dec`, column);
const heat = (name: string, column: string) => ({ name, x: of("heat", "A"), y: of("heat", column) });
const pool = (name: string, column: string) => ({ name, x: of("pool", "A"), y: of("pool", column) });

export const MONTH_CHARTS: readonly SheetChart[] = [
  {
    kind: "columns",
    title: "Heat by month: asked for, taken, bought",
    description:
      "Heat that the pool asks for in each month, heat that it takes from the air conditioner, and heat bought, with the pool held at its set point through the season.",
    x: "month",
    y: "heat (MMBtu)",
    place: placeOver("yearCharts", ["B", "D"]),
    series: [heat("asked for", "B"), heat("taken", "C"), heat("bought", "D")],
  },
  {
    kind: "lines",
    title: "Pool temperature by month",
    description:
      "Mean temperature of the pool in each month, left to itself, without and with recovery, between set point and high limit.",
    x: "month",
    y: "temperature (°F)",
    place: placeOver("yearCharts", ["E", "G"]),
    series: [
      pool("with recovery", "C"),
      { ...pool("without recovery", "B"), stroke: "dashed" },
      { ...pool("set point", "D"), stroke: "dotted" },
      { ...pool("high limit", "E"), stroke: "dash-dotted" },
    ],
  },
];
