/** The sheets that the contract puts into a workbook. */
import type { SheetCell, StarterSheet } from "../../src/sheets/sheet";

const PRINT = {
  area: "A1:F20",
  landscape: false,
  fitToWidth: true,
  titleRows: "1:2",
  footer: "Page &P of &N",
} as const;

export const SMALL: StarterSheet = {
  id: "small",
  name: "Small sheet",
  summary: "A few cells of every kind",
  widths: [20, 10, 8],
  cells: {
    A1: { content: "Fernhill Hall (invented)", style: "Title" },
    A2: { content: "Water flow", wrap: true },
    B2: {
      content: 40,
      style: "Input",
      format: "0.0",
      validation: { above: 0, to: 200, prompt: "Water flow in gpm, above 0 to 200" },
    },
    C2: { content: "gpm", style: "Note" },
    A3: { content: "Pipe size" },
    B3: { content: "2 in", style: "Input", validation: { list: ["1 1/2 in", "2 in"], prompt: "Nominal size" } },
    A4: { content: "Pump runs" },
    B4: { content: true, style: "Input" },
    A5: { content: "Twice the flow" },
    B5: { content: "=small_flow*2", style: "Calculation" },
    A6: { content: "1-2" },
    B7: { content: "=B2+1", style: "Output" },
  },
  names: { small_flow: "B2", small_block: "A2:C4" },
  frozenRows: 1,
  print: PRINT,
  charts: [
    {
      kind: "curves",
      title: "Flow twice",
      description: "Two cells against two others, in two lines.",
      x: "flow (gpm)",
      y: "twice the flow (gpm)",
      place: "E2:F9",
      series: [
        { name: "twice", x: "B2:B3", y: "B4:B5" },
        { name: "again", x: "B2:B3", y: "B5:B6", stroke: "dashed" },
      ],
    },
  ],
};

interface Input {
  readonly value: number | string;
  readonly row: number;
}

/** Function → example inputs, of the invented Fernhill Hall or round figures. */
const EXAMPLES: readonly (readonly [string, readonly (number | string)[]])[] = [
  ["EXCHANGER.LMTD", [105, 95, 80, 84]],
  ["EXCHANGER.AREA", [90000, 150, 20]],
  ["EXCHANGER.WATERRISE", [90000, 40]],
  ["PIPE.HEADLOSS", [40, "2 in", 100]],
  ["PIPE.VELOCITY", [40, "2 in"]],
  ["POOL.VOLUME", ["rectangle", 40, 20, 4]],
  ["POOL.HEAT", [24000, 10]],
  ["POOL.TURNOVER", [24000, 40]],
  ["AIR.DEWPOINT", [80, 0.5]],
  ["REFRIG.PRESSURE", ["R-410A", 105]],
];

const literal = ({ value }: Input): string => (typeof value === "string" ? `"${value}"` : String(value));
const cell = ({ row }: Input): string => `B${String(row)}`;
const forNumbers =
  (write: (input: Input) => string) =>
  (input: Input): string =>
    typeof input.value === "number" ? write(input) : `${cell(input)}&""`;

export const READER_SHEET = "Reader check";

/** The ways in which an argument is written. */
const WAYS: readonly ((input: Input) => string)[] = [
  literal,
  cell,
  ({ row }) => `$B$${String(row)}`,
  (input) => `'${READER_SHEET}'!${cell(input)}`,
  ({ row }) => `reader_input_${String(row)}`,
  (input) => `(${cell(input)})`,
  forNumbers((input) => `${cell(input)}*2/2`),
  forNumbers((input) => `-(-${cell(input)})+0%`),
  (input) => `IF(${cell(input)}=${literal(input)},${cell(input)},1)`,
  (input) => `IFERROR(${cell(input)},1)`,
  forNumbers((input) => `SUM(${cell(input)},0)`),
  forNumbers((input) => `MAX(MIN(${cell(input)},1E9),0)`),
  forNumbers((input) => `ROUND(${cell(input)},6)`),
  ({ row }) => `INDEX($B$2:$B$60,${String(row - 1)})`,
  (input) => `LET(x,${cell(input)},x)`,
];

export interface ReaderCase {
  readonly row: number;
  readonly formula: string;
  readonly id: string;
  readonly args: readonly (number | string)[];
}

const inputs: Input[] = EXAMPLES.flatMap(([, values]) => values).map((value, at) => ({ value, row: at + 2 }));

function inputsOf(example: number): readonly Input[] {
  const before = EXAMPLES.slice(0, example).reduce((count, [, values]) => count + values.length, 0);
  return inputs.slice(before, before + (EXAMPLES[example]?.[1].length ?? 0));
}

/** 150 formulas in column E, one a row from row 2 on. */
export const READER_CASES: readonly ReaderCase[] = EXAMPLES.flatMap(([id, args], example) =>
  WAYS.map((way, at) => {
    const formula = `=WARMBACK.${id}(${inputsOf(example).map(way).join(",")})`;
    return { row: 1 + example * WAYS.length + at, formula, id, args };
  }),
);

export const READER_IDS: ReadonlySet<string> = new Set(EXAMPLES.map(([id]) => id));

const cells: [string, SheetCell][] = [
  ...inputs.map(({ value, row }): [string, SheetCell] => [`B${String(row)}`, { content: value }]),
  ...READER_CASES.map(({ row, formula }): [string, SheetCell] => [`E${String(row + 1)}`, { content: formula }]),
];

export const READER: StarterSheet = {
  id: "reader-check",
  name: READER_SHEET,
  summary: "Formulas of ours with arguments written in every way",
  widths: [10],
  cells: Object.fromEntries(cells),
  names: Object.fromEntries(inputs.map(({ row }) => [`reader_input_${String(row)}`, `B${String(row)}`])),
  frozenRows: 1,
  print: PRINT,
};
