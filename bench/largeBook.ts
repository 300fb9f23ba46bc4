/** The large workbook of the benchmarks (invented): 20 sheets of 5,000 formulas, one in ten with a call of ours. */
import type { Engine } from "../src/workbook/reader/prepare";
import type { NewSheet, NewSheetCell, PlacedCell } from "../src/workbook/package";

export const SHEETS = 20;
export const ROWS = 500;
/** Formulas of a row; the first one calls us. */
const FORMULAS = 10;
export const FORMULA_COUNT = SHEETS * ROWS * FORMULAS;

export const sheetName = (at: number): string => `Loop ${at + 1}`;

interface Line {
  readonly flow: number;
  readonly formulas: readonly { readonly formula: string; readonly value: number }[];
}

/** Half of the other formulas depend on the call, half on the flow alone; values are those that the formulas give. */
function lineOf(sheet: number, row: number, speedOf: (flow: number) => number): Line {
  const flow = 20 + (row % 97) + sheet / 10;
  const speed = speedOf(flow);
  const at = row + 1;
  const others = Array.from({ length: FORMULAS - 1 }, (_, one) =>
    one % 2 === 0
      ? { formula: `A${at}*${one + 2}+1`, value: flow * (one + 2) + 1 }
      : { formula: `IF($B${at}>0,B${at}/${one + 1},0)`, value: speed > 0 ? speed / (one + 1) : 0 },
  );
  return { flow, formulas: [{ formula: `_xldudf_WARMBACK_PIPE_VELOCITY(A${at},"2 in")`, value: speed }, ...others] };
}

const cell = (content: NewSheetCell, row: number, column: number): PlacedCell => ({ ...content, row, column });

export function largeSheets({ call }: Engine): readonly NewSheet[] {
  const speedOf = (flow: number): number => {
    const outcome = call("PIPE.VELOCITY", [flow, "2 in"]);
    if (!("value" in outcome) || typeof outcome.value !== "number") throw new Error("PIPE.VELOCITY gives no number");
    return outcome.value;
  };
  return Array.from({ length: SHEETS }, (_, sheet): NewSheet => ({
    name: sheetName(sheet),
    cells: Array.from({ length: ROWS }, (__, row) => lineOf(sheet, row, speedOf)).flatMap(({ flow, formulas }, row) => [
      cell({ value: flow }, row, 0),
      ...formulas.map((one, over) => cell(one, row, over + 1)),
    ]),
  }));
}
