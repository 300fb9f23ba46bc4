/** The sheet Read me: what the copy is, in plain words. */
import type { SheetCell, StarterSheet } from "../../sheets/sheet";
import type { Address } from "../port";
import { addressText } from "../reader/reference";
import { factRows, type CopyFacts } from "./copyFacts";

/** What a copy holds and what it lacks. */
export interface CopySummary {
  readonly facts: CopyFacts;
  /** The sheets of the workbook that are in the copy. */
  readonly sheets: readonly string[];
  /** Names of our own sheets. */
  readonly record: string;
  readonly supplierPage: string;
  /** Cells with calls of ours that hold values. */
  readonly ours: number;
  /** Cells that hold values since they depend on those. */
  readonly dependent: number;
  /** Other formulas that hold values: somebody chose so. */
  readonly othersFrozen: number;
  /** Formulas that hold values since they referred to something left out. */
  readonly cutOff: number;
  /** Formulas that still calculate. */
  readonly live: number;
  readonly droppedSheets: number;
  /** Cells that show an error: in the copy, and how many the same sheets of the original have. */
  readonly failing: readonly Address[];
  readonly failingBefore: number;
  readonly differing: readonly Address[];
  readonly unreadable: readonly Address[];
  /** What else was changed or left out, each a whole sentence. */
  readonly sentences: readonly string[];
}

const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count.toLocaleString("en")} ${count === 1 ? one : many}`;

const MOST_NAMED = 24;

/** "Loop!A1, Loop!A2 and 3 more" */
export function someCells(cells: readonly Address[], most = MOST_NAMED): string {
  const named = cells.slice(0, most).map((cell) => addressText(cell));
  const more = cells.length > most ? ` and ${(cells.length - most).toLocaleString("en")} more` : "";
  return named.join(", ") + more;
}

/** "3 cells show an error in this copy, 3 on the same sheets of the original." */
export function errorSentence({ failing, failingBefore }: Pick<CopySummary, "failing" | "failingBefore">): string {
  const show = failing.length === 1 ? "shows" : "show";
  return `${counted(failing.length, "cell")} ${show} an error in this copy, ${failingBefore.toLocaleString("en")} on the same sheets of the original.`;
}

function valueLines({ ours, dependent, othersFrozen, cutOff, live }: CopySummary): readonly string[] {
  return [
    `${counted(ours, "cell")} with a function of the add-in ${ours === 1 ? "holds its value" : "hold their values"}, and so ${dependent === 1 ? "does" : "do"} ${counted(dependent, "cell")} whose result depends on them, or may do so. They are as they were when the copy was made and change with no input.`,
    ...(othersFrozen === 0 ? [] : [`${counted(othersFrozen, "other formula")} became values too, as was chosen.`]),
    ...(cutOff === 0
      ? []
      : [`${counted(cutOff, "formula")} became values since they referred to something that isn't in the copy.`]),
    live === 0
      ? "No formula is left."
      : `${counted(live, "formula")} without the add-in still ${live === 1 ? "calculates" : "calculate"}.`,
  ];
}

function doubtLines(summary: CopySummary): readonly string[] {
  const { failing, differing, unreadable } = summary;
  return [
    errorSentence(summary) + (failing.length === 0 ? "" : ` In the copy: ${someCells(failing)}.`),
    ...(differing.length === 0
      ? []
      : [
          `${counted(differing.length, "cell")} held another value than the formula gave when the copy was made: ${someCells(differing)}.`,
        ]),
    ...(unreadable.length === 0
      ? []
      : [`Formulas that could not be read in full, so that their inputs are not recorded: ${someCells(unreadable)}.`]),
  ];
}

function leftOutLines({ droppedSheets, sentences }: CopySummary): readonly string[] {
  return [
    ...(droppedSheets === 0
      ? []
      : [
          `${counted(droppedSheets, "sheet")} of the original ${droppedSheets === 1 ? "isn't" : "aren't"} in the copy.`,
        ]),
    ...sentences,
  ];
}

const chapters = (summary: CopySummary): readonly (readonly [string, readonly string[]])[] => [
  [
    "What this is",
    [
      "A copy of a calculation for people without the add-in that made it. It opens in any spreadsheet program and needs no add-in.",
      `Sheets of the original: ${summary.sheets.join(", ")}.`,
    ],
  ],
  ["Values and formulas", valueLines(summary)],
  ["Errors and doubts", doubtLines(summary)],
  ["Left out", leftOutLines(summary)],
  [
    "Where to look",
    [
      `The sheet ${summary.record} names for each such cell its formula, inputs with units, method, source and cautions.`,
      `The sheet ${summary.supplierPage} is one printed page with inputs and results.`,
      "Read the cautions in the record. The calculation doesn't replace local codes, the equipment's manual or the judgement of a licensed professional.",
    ],
  ],
];

const WIDTHS = [20, 84];

/** @param summary `sheets`, `sentences` and addresses name only what is in the copy */
export function readMePage(summary: CopySummary): StarterSheet {
  const cells: Record<string, SheetCell> = { A1: { content: "Read me", style: "Title" } };
  let row = 1;
  for (const [label, text] of factRows(summary.facts)) {
    row++;
    cells[`A${row}`] = { content: label, style: "Heading 3" };
    cells[`B${row}`] = { content: text, text: true, wrap: true };
  }
  for (const [title, lines] of chapters(summary)) {
    if (lines.length === 0) continue;
    row += 2;
    cells[`A${row}`] = { content: title, style: "Heading 2" };
    for (const text of lines) cells[`B${++row}`] = { content: text, text: true, wrap: true };
  }
  return {
    id: "read-me",
    name: "Read me",
    summary: "What the copy is.",
    widths: WIDTHS,
    cells,
    names: {},
    frozenRows: 0,
    print: {
      area: `A1:B${row}`,
      landscape: false,
      fitToWidth: true,
      titleRows: "1:1",
      footer: `Read me, ${summary.facts.edition}: sheet &P of &N`,
    },
  };
}
