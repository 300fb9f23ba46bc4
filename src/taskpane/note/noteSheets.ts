/** A calculation note as sheets of the workbook: one for each calculation, each set up for print. */
import type { SheetCell, StarterSheet } from "../../sheets/sheet";
import { columnLetters } from "../../workbook/reader/reference";
import { NOT_SIGNED, type NoteCalculation, type NoteHead } from "./calculation";

const WIDTHS = [9, 58, 24, 24, 40];
const HEAD_ROWS = 7;

type Row = Readonly<Record<string, SheetCell>>;

const text = (content: string, more: Partial<SheetCell> = {}): SheetCell => ({
  content,
  text: true,
  wrap: true,
  ...more,
});
const title = (content: string): SheetCell => ({ content, text: true, style: "Heading 3" });

const input = (content: string): SheetCell => ({
  content,
  style: "Input",
  ...(content !== "" && { text: true as const }),
});

/** The same cell of the first sheet, so that names are filled in once. */
const asOn = (first: string, cell: string): SheetCell => {
  const other = `'${first.replaceAll("'", "''")}'!${cell}`;
  return { content: `=IF(LEN(${other})=0,"",${other})`, style: "Calculation" };
};

function headRows(head: NoteHead, place: string, first: string | undefined): readonly Row[] {
  const field = (content: string, cell: string): SheetCell =>
    first === undefined ? input(content) : asOn(first, cell);
  return [
    { A: { content: "Calculation note", style: "Title" } },
    { A: title("Project"), B: field(head.project, "$B$2"), D: title("Sheet"), E: text(place) },
    { A: title("By"), B: field(head.by, "$B$3"), D: title("Revision"), E: field(head.revision, "$E$3") },
    { A: title("Checked"), B: field(head.checked, "$B$4"), D: title("Date"), E: field(head.date, "$E$4") },
    { A: title("Approved"), B: field(head.approved, "$B$5"), D: title("Edition"), E: text(head.edition) },
    { A: { content: NOT_SIGNED, style: "Explanatory Text" } },
    Object.fromEntries(
      ["Step", "Equation, symbols", "Value", "In SI", "Source"].map((one, at) => [columnLetters(at), title(one)]),
    ),
  ];
}

const inputRows = ({ inputs }: NoteCalculation): readonly Row[] => [
  { A: title("Inputs") },
  ...inputs.map(({ name, description, value, inSI, given }): Row => ({
    A: text(""),
    B: text(`${name}: ${description}`, { entry: true }),
    C: text(value, { entry: true }),
    D: text(inSI, { entry: true }),
    E: text(given ? "" : "default", { entry: true }),
  })),
];

const stepRows = ({ steps, left }: NoteCalculation): readonly Row[] => [
  { A: title("Working") },
  ...(steps.length === 0 ? [{ B: text("This function looks its answer up and has no steps to show.") }] : []),
  ...steps.flatMap((step): readonly Row[] => [
    {
      A: text(step.number, { entry: true }),
      B: text(step.title, { entry: true }),
      E: text(step.source, { entry: true }),
    },
    ...(step.form === "" ? [] : [{ B: text(step.form) }]),
    ...step.symbols.map(({ name, description, value, inSI }): Row => ({
      B: text(`${name}: ${description}`, { indent: true }),
      C: text(value),
      D: text(inSI),
    })),
    ...(step.numbers === "" ? [] : [{ B: text(step.numbers) }]),
    ...(step.baseNumbers === "" ? [] : [{ B: text(`in SI base units ${step.baseNumbers}`) }]),
    ...(step.value === "" ? [] : [{ C: text(step.value), D: text(step.inSI) }]),
  ]),
  ...(left === 0 ? [] : [{ B: text(`${String(left)} further steps are left out: the panel shows more.`) }]),
];

const resultRows = ({ result, resultInSI }: NoteCalculation): readonly Row[] => [
  { A: title("Result") },
  ...result.map((row): Row =>
    row.length === 1
      ? { C: text(row[0] ?? "", { style: "Output" }), D: text(resultInSI) }
      : Object.fromEntries(
          row
            .slice(0, 4)
            .map((cell, at) => [
              columnLetters(at + 1),
              text(row.length > 4 && at === 3 ? row.slice(3).join("; ") : cell),
            ]),
        ),
  ),
];

const cautionRows = ({ cautions }: NoteCalculation): readonly Row[] => [
  { A: title("Cautions") },
  ...(cautions.length === 0 ? [{ B: text("None is raised.") }] : []),
  ...cautions.map(({ severity, code, text: says }): Row => ({ A: text(severity), B: text(says), E: text(code) })),
];

const bodyRows = (calculation: NoteCalculation): readonly Row[] => [
  { A: { content: calculation.title, text: true, style: "Heading 2" } },
  { A: text("Cell"), B: text(`${calculation.cell}: ${calculation.formula}`) },
  { A: text("Method"), B: text(`${calculation.call}: ${calculation.method}`) },
  ...inputRows(calculation),
  ...stepRows(calculation),
  ...resultRows(calculation),
  ...cautionRows(calculation),
];

/**
 * One sheet of the note.
 * @param first the name of the note's first sheet, whose head the others repeat; undefined for that sheet
 */
export function noteSheet(
  calculation: NoteCalculation,
  head: NoteHead,
  { at, of, first }: { readonly at: number; readonly of: number; readonly first: string | undefined },
): StarterSheet {
  const place = `${String(at)} of ${String(of)}`;
  const rows = [...headRows(head, place, first), ...bodyRows(calculation)];
  const cells = rows.flatMap((row, down) =>
    Object.entries(row)
      .filter(([, { content, style }]) => content !== "" || style !== undefined)
      .map(([column, cell]): readonly [string, SheetCell] => [`${column}${String(down + 1)}`, cell]),
  );
  return {
    id: "calculation-note",
    name: `Note ${String(at)}`,
    summary: "How a value comes about.",
    widths: WIDTHS,
    cells: Object.fromEntries(cells),
    names: {},
    frozenRows: HEAD_ROWS,
    print: {
      area: `A1:E${String(rows.length)}`,
      landscape: true,
      fitToWidth: true,
      titleRows: `1:${String(HEAD_ROWS)}`,
      footer: `Calculation note, ${head.edition}: sheet ${place}, page &P of &N`,
    },
  };
}
