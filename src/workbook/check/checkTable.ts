/** A sheet of hand values beside computed ones, with a verdict for each and one for all. */
import { NAMESPACE } from "../../../core";
import type { SheetCell, StarterSheet, Validation } from "../../sheets/sheet";
import { addressText } from "../reader/reference";
import type { MarkedCell } from "./markedCells";

const HEADS = ["Value", "Cell", "Computed", "Unit", "By hand", "Tolerance", "Difference", "Verdict"];
const WIDTHS = [34, 20, 14, 14, 14, 11, 14, 14];

/** The first row of values, counted from 1. */
const FIRST = 11;

const TOLERANCE: Validation = {
  from: 0,
  to: 1,
  prompt: "Difference allowed, as a share of the computed value: 2% or 0.02",
};

const NO_SIGNATURE =
  "Signed means named initials. There is no digital signature: this sheet proves nobody's identity, and anybody can change it. " +
  "The verdict is NOT CHECKED until both are filled in, differ, and every value has a hand value.";

/** Initials without case, spaces and points. */
const folded = (cell: string): string =>
  `LOWER(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(${cell}," ",""),".",""),CHAR(160),""))`;

const verdictOfAll = (made: string, checked: string, verdicts: string, count: number): string =>
  `=IF(OR(${folded(made)}="",${folded(checked)}="",${folded(made)}=${folded(checked)}),"NOT CHECKED",` +
  `IF(COUNTIF(${verdicts},"differs")>0,"DIFFERS",IF(COUNTIF(${verdicts},"agrees")=${String(count)},"AGREES","NOT CHECKED")))`;

type Entries = readonly (readonly [string, SheetCell])[];

const label = (content: string): SheetCell => ({ content, style: "Heading 3" });
const blank: SheetCell = { content: "", style: "Input" };

const head = (edition: string, count: number): Entries => [
  ["A1", { content: "Check table", style: "Title" }],
  [
    "A2",
    {
      content: "Computed values follow the workbook; hand values are typed in the column By hand.",
      style: "Explanatory Text",
    },
  ],
  ["A3", label("Project")],
  ["B3", blank],
  ["A4", label("Made by (initials)")],
  ["B4", blank],
  ["D4", label("Date")],
  ["E4", blank],
  ["A5", label("Checked by (initials)")],
  ["B5", blank],
  ["D5", label("Date")],
  ["E5", blank],
  ["A6", label("Verdict of all")],
  [
    "B6",
    {
      content: verdictOfAll("$B$4", "$B$5", `$H$${String(FIRST)}:$H$${String(FIRST + count - 1)}`, count),
      style: "Check Cell",
    },
  ],
  ["A7", { content: NO_SIGNATURE, style: "Explanatory Text" }],
  ["A8", label("Computed with")],
  ["B8", { content: edition, text: true }],
  ...HEADS.map((content, at): readonly [string, SheetCell] => [
    `${"ABCDEFGH"[at] ?? "A"}${String(FIRST - 1)}`,
    label(content),
  ]),
];

function valueRow({ address, label: name, unit }: MarkedCell, row: number): Entries {
  const at = (column: string): string => `${column}${String(row)}`;
  return [
    [at("A"), { content: name, text: true, wrap: true }],
    [at("B"), { content: addressText(address), text: true }],
    [at("C"), { content: `=${addressText(address)}`, style: "Calculation" }],
    [at("D"), { content: unit, text: true, indent: true }],
    [at("E"), blank],
    [at("F"), { content: 0.02, style: "Input", format: "0.0%", validation: TOLERANCE }],
    [at("G"), { content: `=IF(LEN(${at("E")})=0,"",${at("E")}-${at("C")})`, style: "Calculation" }],
    [
      at("H"),
      {
        content: `=${NAMESPACE}.NOTE.VERDICT(IF(LEN(${at("E")})=0,"",${at("E")}),${at("C")},${at("F")})`,
        style: "Output",
      },
    ],
  ];
}

/** @param edition a value that stays, whatever edition opens the workbook later */
export function checkTableSheet(cells: readonly MarkedCell[], edition: string): StarterSheet {
  const rows = cells.flatMap((cell, at) => valueRow(cell, FIRST + at));
  return {
    id: "check-table",
    name: "Check table",
    summary: "Hand values beside computed ones.",
    widths: WIDTHS,
    cells: Object.fromEntries([...head(edition, cells.length), ...rows]),
    names: {},
    frozenRows: FIRST - 1,
    print: {
      area: `A1:H${String(FIRST + cells.length - 1)}`,
      landscape: true,
      fitToWidth: true,
      titleRows: `1:${String(FIRST - 1)}`,
      footer: `Check table, ${edition}: sheet &P of &N`,
    },
  };
}
