/** Temperatures along the exchanger on the sheet "Exchanger inquiry": the ends of the zones and their chart. */
import { cellsBetween, chartRows, placeOver } from "../charts";
import { gap, heading, type ExtraCell, type Line } from "../layout";
import type { SheetChart } from "../sheet";
import { zone } from "./zones";

const headCell = (content: string): ExtraCell => ({ content, style: "Heading 3" });
const calculated = (content: string): ExtraCell => ({ content, style: "Calculation", format: "0.0" });

/** Rows of the zones' table, and its columns of temperatures. */
const [GAS, CONDENSING, LIQUID, TOTAL] = [2, 3, 4, 5] as const;
const [REFRIGERANT_IN, REFRIGERANT_OUT, WATER_IN, WATER_OUT] = [3, 4, 5, 6] as const;

/** The water beside the end of a zone: in counterflow it enters there, else it leaves there. */
const waterAfter = (row: number): string =>
  `IF([direction]="counterflow",${zone(row, WATER_IN)},${zone(row, WATER_OUT)})`;

/** A zone that isn't there ends where it begins. */
const unlessNone = (duty: string, key: string, column: string, formula: string): string =>
  `=IF([${duty}]=0,[${key}@${column}],${formula})`;

const end = (key: string, label: string, before: string, duty: string, row: number): Line => ({
  key,
  label,
  value: `=[${before}]+[${duty}]`,
  style: "Calculation",
  format: "#,##0",
  extra: {
    C: calculated(unlessNone(duty, before, "C", zone(row, REFRIGERANT_OUT))),
    D: calculated(unlessNone(duty, before, "D", waterAfter(row))),
  },
});

export const ALONG_LINES: readonly Line[] = [
  heading("group", "Temperatures along the exchanger", "Straight between the ends of the zones."),
  {
    label: "Place",
    labelStyle: "Heading 3",
    value: "Heat passed (BTU/h)",
    style: "Heading 3",
    extra: { C: headCell("Refrig. (°F)"), D: headCell("Water (°F)") },
  },
  {
    key: "along1",
    label: "Gas inlet",
    value: 0,
    style: "Calculation",
    format: "#,##0",
    extra: {
      C: calculated(`=${zone(TOTAL, REFRIGERANT_IN)}`),
      D: calculated(`=IF([direction]="counterflow",${zone(TOTAL, WATER_OUT)},${zone(TOTAL, WATER_IN)})`),
    },
  },
  end("along2", "Dew point", "along1", "gasDuty", GAS),
  end("along3", "Bubble point", "along2", "condensingDuty", CONDENSING),
  end("along4", "Liquid outlet", "along3", "liquidDuty", LIQUID),
  ...chartRows("alongChart"),
  gap,
];

const column = (letter: string): string => cellsBetween("along1", "along4", letter);

export const ALONG_CHART: SheetChart = {
  kind: "curves",
  title: "Temperatures along the exchanger",
  description:
    "Temperatures of refrigerant and water over the heat passed, from the gas inlet to the liquid outlet, straight between the ends of the zones.",
  x: "heat passed (BTU/h)",
  y: "temperature (°F)",
  place: placeOver("alongChart", ["B", "D"]),
  series: [
    { name: "refrigerant", x: column("B"), y: column("C") },
    { name: "water", x: column("B"), y: column("D"), stroke: "dashed" },
  ],
};
