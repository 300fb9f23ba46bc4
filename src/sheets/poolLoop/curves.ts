/** The pump's curve and the loop's, before and after, on the sheet "Pool loop": rows and their chart. */
import { cellsBetween, chartRows, placeOver } from "../charts";
import { heading, type ExtraCell, type Line } from "../layout";
import type { SheetChart } from "../sheet";
import { CURVE_POINTS } from "./parts";

const PLACES = Array.from({ length: CURVE_POINTS }, (_, at) => at + 1);

const headCell = (content: string): ExtraCell => ({ content, style: "Heading 3" });

/** The head that the loop asks for at this row's flow: static head and friction, which goes with the flow squared. */
const loopHead = (column: string): ExtraCell => ({
  content: `=[static]+[systemHead@${column}]*($B[@]/[knownFlow])^2`,
  style: "Calculation",
  format: "0.0",
});

export const CURVES_OF_LOOP: readonly Line[] = [
  heading("group", "Pump and loop by flow", "Where the curves cross is the flow above."),
  {
    label: "Flow by flow",
    labelStyle: "Heading 3",
    value: "Flow (gpm)",
    style: "Heading 3",
    extra: { C: headCell("Pump (ft)"), D: headCell("Before (ft)"), E: headCell("After (ft)") },
  },
  ...PLACES.map((at): Line => ({
    key: `meets${at}`,
    label: `Point ${at} of the curves`,
    value: `=[curve${at}]`,
    style: "Calculation",
    extra: {
      C: { content: `=[curve${at}@C]`, style: "Calculation", format: "0.0" },
      D: loopHead("B"),
      E: loopHead("C"),
    },
  })),
  ...chartRows("loopChart"),
];

const column = (letter: string): string => cellsBetween("meets1", `meets${CURVE_POINTS}`, letter);

export const LOOP_CHART: SheetChart = {
  kind: "curves",
  smooth: true,
  title: "Pump against loop, before and after",
  description:
    "Head of the pump over flow, falling, and head that the loop asks for, rising, before and after the new exchanger; they cross at the flows of this sheet.",
  x: "flow (gpm)",
  y: "head (ft)",
  place: placeOver("loopChart", ["B", "E"]),
  series: [
    { name: "pump", x: column("B"), y: column("C") },
    { name: "loop before", x: column("B"), y: column("D"), stroke: "dashed" },
    { name: "loop after", x: column("B"), y: column("E") },
  ],
};
