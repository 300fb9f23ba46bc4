/** The loop of the sheet "Pool loop" as branches, clean and with the bypass open: the highest flow, for the drain covers. */
import { computed, gap, heading, input, type ExtraCell, type Line } from "../layout";
import { above, betweenLimits } from "../technicianParts";
import { CURVE_POINTS, EXISTING_PARTS } from "./parts";

const head = (content: string): ExtraCell => ({ content, style: "Heading 3" });
const fixed = (content: string | number): ExtraCell => ({ content });
const worked = (content: string): ExtraCell => ({ content, style: "Calculation", format: "0.00" });

export const COVER_INPUTS: readonly Line[] = [
  heading("group", "Highest flow", "Filter clean, bypass open, full speed."),
  input("cleanLess", "What the filter loses less when clean", 18, "ft", {
    validation: betweenLimits(0, 500, "0 to 500 ft"),
    source: "at the known flow",
    note: "Dirty 23 ft, clean 5 ft: invented.",
  }),
  input("bypassCv", "Cv of the bypass round the exchanger", 120, "", {
    validation: above("above 0"),
    source: "maker; gpm at 1 psi",
  }),
  input("bypassOpening", "Opening of the bypass", 1, "", {
    format: "0%",
    validation: betweenLimits(0.02, 1, "2 to 100 %"),
    source: "site",
    note: "Open, the pump moves most water.",
  }),
  input("covers", "Drain covers in parallel", 2, "", {
    validation: betweenLimits(2, 20, "2 to 20"),
    source: "survey",
    note: "A single drain needs a second means of protection.",
  }),
];

const sideAtKnownFlow = (below: number): string =>
  `INDEX(WARMBACK.PIPE.LOOP(${EXISTING_PARTS},[knownFlow],[water],[schedule]),[parts]+${below},4)`;

const row = (key: string, from: string, to: string, extra: Readonly<Record<string, ExtraCell>>): Line => ({
  key,
  label: from,
  value: to,
  extra,
});

const known = (element: string, loss: string): Readonly<Record<string, ExtraCell>> => ({
  C: fixed(element),
  D: worked(loss),
  E: worked("=[knownFlow]"),
});

const headRow = (label: string, value: string, more: Readonly<Record<string, string>>, key: string): Line => ({
  key,
  label,
  labelStyle: "Heading 3",
  value,
  style: "Heading 3",
  extra: Object.fromEntries(Object.entries(more).map(([column, text]) => [column, head(text)])),
});

const POINTS = Array.from({ length: CURVE_POINTS }, (_, i) => i + 1);

const TABLES: readonly Line[] = [
  headRow(
    "From",
    "To",
    { C: "Element", D: "Loss (ft)", E: "Known flow (gpm)", F: "Flow coefficient", G: "Opening" },
    "branchHead",
  ),
  row("branch1", "pool", "pump in", known("suction lines", `=${sideAtKnownFlow(2)}`)),
  row("branch2", "pump in", "pump out", { C: fixed("pump") }),
  row("branch3", "pump out", "branch", known("filter, lines", `=MAX(0.001,${sideAtKnownFlow(3)}-[cleanLess])`)),
  row("branch4", "branch", "return", known("exchanger", "=MAX(0.001,[headAdded])")),
  row("branch5", "branch", "return", {
    C: fixed("bypass valve"),
    F: worked("=[bypassCv]"),
    G: worked("=[bypassOpening]"),
  }),
  headRow("Name", "Speed", { C: "Flow (gpm)", D: "Head (ft)" }, "pumpHead"),
  ...POINTS.map((at) => ({
    ...row(`pump${at}`, "pump", "", { C: worked(`=[curve${at}]`), D: worked(`=[curve${at}@C]`) }),
    value: 1,
  })),
  headRow("Node", "Height (ft)", { C: "Water level (ft)" }, "nodeHead"),
  { ...row("node1", "return", "", { C: worked("=[static]") }), value: 0 },
];

const NETWORK = `WARMBACK.PIPE.NETWORK([branchHead@A]:[branch5@G],[pumpHead@A]:[pump${CURVE_POINTS}@D],[nodeHead@A]:[node1@C])`;
const COVER = "WARMBACK.PIPE.DRAINCOVER([coverFlow@A]:[coverMarked@B])";

/** The pump is the second branch, the exchanger the fourth, below the table's header. */
export const BRANCH_LINES: readonly Line[] = [
  heading("group", "Highest flow through the drain covers", "The loop as branches, for PIPE.NETWORK."),
  ...TABLES,
  computed("highestFlow", "Highest flow of the pump", `=INDEX(${NETWORK},3,4)`, "gpm", {
    format: "0.0",
    source: "PIPE.NETWORK",
    style: "Output",
  }),
  computed("exchangerThen", "Of that through the exchanger", `=INDEX(${NETWORK},5,4)`, "gpm", {
    format: "0.0",
    source: "PIPE.NETWORK",
  }),
  computed("coverFlow", "Flow", "=[highestFlow]", "gpm", { format: "0.0", source: "highest flow" }),
  computed("coverCount", "Covers", "=[covers]", "", { source: "survey" }),
  computed("coverMarked", "Cover rating", "=[coverRating]/([covers]-1)", "gpm", {
    format: "0.0",
    source: "of one cover",
  }),
  computed("oneBlocked", "Through each other cover, one blocked", `=INDEX(${COVER},2,2)`, "gpm", {
    format: "0.0",
    source: "PIPE.DRAINCOVER",
    style: "Output",
  }),
  computed("coverFinding", "Flow against the rating", `=INDEX(${COVER},7,2)`, "", { source: "PIPE.DRAINCOVER" }),
  gap,
];
