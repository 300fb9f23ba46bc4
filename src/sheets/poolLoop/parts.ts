/** The list of parts and the pump curve on the sheet "Pool loop". */
import type { ExtraCell, Line } from "../layout";
import { above, betweenLimits, oneOf } from "../technicianParts";

/** Columns of the sheet: A to G a part as PIPE.LOOP takes it (A to C elsewhere before and after), H the head of a part. */
export const LOOP_COLUMNS = { unit: "D", source: "E", note: "F", last: "H" } as const;
export const LOOP_WIDTHS: readonly number[] = [34, 14, 13, 13, 24, 34, 15, 10];

const headCell = (content: string): ExtraCell => ({ content, style: "Heading 3" });

export const PART_HEADS: Line = {
  label: "Part: pipe, a fitting, or any other",
  labelStyle: "Heading 3",
  value: "Size",
  style: "Heading 3",
  unit: "Loss (ft)",
  unitStyle: "Heading 3",
  source: "Known at flow (gpm)",
  sourceStyle: "Heading 3",
  note: "Side of the pump",
  noteStyle: "Heading 3",
  extra: { C: headCell("Feet or count"), G: headCell("Cv (gpm, 1 psi)"), H: headCell("Head (ft)") },
};

type Part = readonly [
  what: string,
  size: string,
  lengthOrCount: number | "",
  side: string,
  loss?: number | "",
  knownFlow?: number | "",
  flowCoefficient?: number,
];

const HEAD_OF_ROW = '=IF($A[@]="","",INDEX(WARMBACK.PIPE.LOOP($A[@]:$G[@],[flow@C],[water],[schedule]),2,4))';

const typed = (content: string | number, validation?: ExtraCell["validation"]): ExtraCell => ({
  content,
  style: "Input",
  ...(validation ? { validation } : {}),
});

const notNegative = betweenLimits(0, 10_000, "0 to 10,000, or blank");

const partLine = (key: string, part: Part): Line => {
  const [what, size, lengthOrCount, side, loss = "", knownFlow = "", flowCoefficient = ""] = part;
  const extra = {
    A: typed(what),
    B: typed(size, oneOf("nominal size", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "4 in")),
    C: typed(lengthOrCount, notNegative),
    D: typed(loss, notNegative),
    E: typed(knownFlow, above("above 0 gpm, or blank")),
    F: { ...typed(side, oneOf("suction or return", "suction", "return")), indent: true },
    G: typed(flowCoefficient, above("above 0, or blank")),
    H: { content: HEAD_OF_ROW, style: "Calculation", format: "0.00" },
  } satisfies Line["extra"];
  return { key, label: "", extra };
};

const SIZE = "2-1/2 in";

const EXISTING: readonly Part[] = [
  ["entrance", SIZE, 1, "suction"],
  ["pipe", SIZE, 35, "suction"],
  ["elbow 90", SIZE, 4, "suction"],
  ["ball valve", SIZE, 1, "suction"],
  ["filter, dirty", "", 1, "return", 23, 75],
  ["gas heater", "", 1, "return", 5, 75],
  ["pipe", SIZE, 110, "return"],
  ["elbow 90", SIZE, 10, "return"],
  ["tee branch", SIZE, 2, "return"],
  ["exit", SIZE, 1, "return"],
];

const ADDED: readonly Part[] = [
  ["pool exchanger", "", 1, "return", 6, 75],
  ["pipe", SIZE, 60, "return"],
  ["elbow 90", SIZE, 6, "return"],
  ["ball valve", SIZE, 3, "return"],
  ["union", SIZE, 2, "return"],
  ["swing check", SIZE, 1, "return"],
  ["balancing valve", SIZE, 1, "return", "", "", 120],
  ["", "", "", ""],
];

export const EXISTING_LINES: readonly Line[] = EXISTING.map((part, i) => partLine(`existing${i + 1}`, part));
export const ADDED_LINES: readonly Line[] = ADDED.map((part, i) => partLine(`added${i + 1}`, part));

/** Ranges of parts: the loop as it is, and what the exchanger adds. */
export const EXISTING_PARTS = `[existing1@A]:[existing${EXISTING.length}@G]`;
export const ADDED_PARTS = `[added1@A]:[added${ADDED.length}@G]`;
export const EXISTING_NAMES = `[existing1@A]:[existing${EXISTING.length}@A]`;
export const ADDED_NAMES = `[added1@A]:[added${ADDED.length}@A]`;

const CURVE = [
  [0, 66],
  [20, 65],
  [40, 61.5],
  [60, 55.5],
  [75, 48.5],
  [90, 39],
  [105, 27],
  [115, 17],
] as const;

export const CURVE_LINES: readonly Line[] = [
  {
    label: "Pump curve",
    labelStyle: "Heading 3",
    value: "Flow (gpm)",
    style: "Heading 3",
    extra: { C: headCell("Head (ft)") },
  },
  ...CURVE.map(([flow, head], i): Line => ({
    key: `curve${i + 1}`,
    label: `Point ${i + 1}`,
    value: flow,
    style: "Input",
    extra: { C: typed(head, above("0 ft or more", -1e-9)) },
    source: i === 0 ? "maker's curve, in rising flow" : "",
  })),
];

export const CURVE_POINTS = CURVE.length;
export const PUMP_CURVE = `[curve1]:[curve${CURVE.length}@C]`;
