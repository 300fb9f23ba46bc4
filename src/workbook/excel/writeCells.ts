/** Writes cells through Office.js as one undo step; where Excel breaks off, they hold again what they held. */
import type { Area, CellWrite } from "../port";
import { RANGE_COST, rangeOf, rangesOf } from "./ranges";
import { inPortions } from "./portions";
import { brief, changing, supports, writing } from "./run";
import { asText, asTyped } from "./typed";

/** Cells side by side in one row. */
interface Run {
  readonly area: Area;
  readonly cells: readonly CellWrite[];
}

/** What a run held before, as it must be typed to be held again; undefined for a cell that another one spills into. */
interface Held {
  readonly area: Area;
  readonly contents: readonly unknown[];
  /** Number formats, where the run changes them. */
  readonly formats?: readonly string[];
}

const TEXT_FORMAT = "@";

const changesFormat = ({ cells }: Run): boolean => cells[0]?.fromText === true;

function runsOf(cells: readonly CellWrite[]): readonly Run[] {
  const sorted = [...cells].sort((a, b) => a.sheet.localeCompare(b.sheet) || a.row - b.row || a.column - b.column);
  const found: CellWrite[][] = [];
  for (const cell of sorted) {
    const last = found.at(-1)?.at(-1);
    const joins = last?.sheet === cell.sheet && last.row === cell.row && last.column === cell.column - 1;
    if (joins && last.fromText === cell.fromText) found.at(-1)?.push(cell);
    else found.push([cell]);
  }
  return found.map((run) => {
    const { sheet, row, column } = run[0] as CellWrite;
    return { area: { sheet, row, column, rows: 1, columns: run.length }, cells: run };
  });
}

const areasOf = (runs: readonly { readonly area: Area }[]): readonly Area[] => runs.map(({ area }) => area);

const lengthOf = (content: unknown): number => (typeof content === "string" ? 2 * content.length : 20);

const cost = ({ cells }: Run): number => cells.reduce((sum, { content }) => sum + lengthOf(content), RANGE_COST);

const again = (formula: unknown, value: unknown): unknown => {
  if (typeof formula !== "string" || formula === "") return formula;
  return formula.startsWith("=") && value !== formula ? formula : asText(formula);
};

/** What runs hold now. A cell that is spilled into shows a formula that isn't its own. */
async function heldBy(context: Excel.RequestContext, runs: readonly Run[]): Promise<readonly Held[]> {
  const knowsSpills = supports("1.12");
  const ranges = rangesOf(context, areasOf(runs));
  for (const range of ranges) range.load(knowsSpills ? "formulas,values,hasSpill" : "formulas,values");
  for (const [at, run] of runs.entries()) if (changesFormat(run)) ranges[at]?.load("numberFormat");
  await context.sync();
  const parents = runs.map(({ area }, at) => {
    if (!knowsSpills || (ranges[at]?.hasSpill as boolean | null | undefined) === false) return [];
    return Array.from({ length: area.columns }, (_, over) => {
      const cell = rangeOf(context, { ...area, column: area.column + over, columns: 1 });
      const parent = brief(cell.getSpillParentOrNullObject());
      parent.load("rowIndex,columnIndex");
      return parent;
    });
  });
  if (parents.some((some) => some.length > 0)) await context.sync();
  return runs.map((run, at) => {
    const { area } = run;
    const [formulas, values] = [ranges[at]?.formulas, ranges[at]?.values] as unknown[][][];
    const isSpilled = (over: number): boolean => {
      const parent = parents[at]?.[over];
      if (parent === undefined || parent.isNullObject) return false;
      return parent.rowIndex !== area.row || parent.columnIndex !== area.column + over;
    };
    const contents = (formulas?.[0] ?? []).map((text, over) =>
      isSpilled(over) ? "" : again(text, values?.[0]?.[over]),
    );
    const formats = changesFormat(run) ? (ranges[at]?.numberFormat as string[][] | undefined)?.[0] : undefined;
    return formats === undefined ? { area, contents } : { area, contents, formats };
  });
}

/** Puts back what was held, run by run in small requests: what one of them breaks off must not keep back the others. */
async function putBack(held: readonly Held[]): Promise<void> {
  await inPortions(held, {
    cost: ({ contents }) => contents.reduce<number>((sum, one) => sum + lengthOf(one), RANGE_COST),
    run: (some) =>
      changing(async (context) => {
        for (const { area, contents, formats } of some) {
          const range = rangeOf(context, area);
          // Under a text format the mark before a text would stay in it.
          if (formats !== undefined) range.numberFormat = [formats.map(() => "General")];
          range.formulas = [[...contents]];
          if (formats !== undefined) range.numberFormat = [[...formats]];
        }
        await context.sync();
        return [];
      }),
  });
}

export async function writeCells(cells: readonly CellWrite[]): Promise<void> {
  const runs = runsOf(cells);
  let held: readonly Held[] = [];
  await writing(
    async (context) => {
      held = await inPortions(runs, { cost, run: (some) => heldBy(context, some) });
      const formatsOf = new Map(runs.map((run, at) => [run, held[at]?.formats]));
      await inPortions(runs, {
        cost,
        async run(some) {
          const ranges = rangesOf(context, areasOf(some));
          for (const [at, range] of ranges.entries()) {
            const formats = formatsOf.get(some[at] as Run);
            if (formats?.includes(TEXT_FORMAT) === true)
              range.numberFormat = [formats.map((format) => (format === TEXT_FORMAT ? "General" : format))];
            range.formulas = [(some[at]?.cells ?? []).map((cell) => asTyped(cell.content))];
          }
          await context.sync();
          return [];
        },
      });
    },
    () => putBack(held),
  );
}
