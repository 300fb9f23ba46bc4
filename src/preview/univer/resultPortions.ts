/**
 * Writes the results of a calculation portion by portion. The engine writes all of them in one task (0.25.1): a third of
 * a second for 100,000. Whoever changes a cell while its result is worked out or waits to be written has the last word;
 * where cells move, the results are dropped, since everything calculates again then.
 */
import { ICommandService, IUniverInstanceService } from "@univerjs/core";
import type { ICommandInfo, Injector } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { LONG_SLICE, timeSlices } from "../../workbook/timeSlices";
import { MOVES } from "./moves";

/** So many cells are written at a time. */
export const PORTION_CELLS = 2_000;

type Row = Record<number, object | null | undefined>;
type SheetResults = Record<number, Row | undefined>;

interface Portion {
  readonly unit: string;
  readonly sheet: string;
  readonly rows: SheetResults;
}

/** What the engine found: by workbook, sheet, row and column. */
export interface Results {
  readonly unitData: Readonly<Record<string, Readonly<Record<string, SheetResults | null>> | null>>;
  readonly unitOtherData?: object;
}

function portionsOf({ unitData }: Results): readonly Portion[] {
  const portions: Portion[] = [];
  for (const [unit, sheets] of Object.entries(unitData))
    for (const [sheet, all] of Object.entries(sheets ?? {})) {
      let rows: SheetResults = {};
      let count = PORTION_CELLS;
      for (const [row, line] of Object.entries(all ?? {})) {
        if (count >= PORTION_CELLS) {
          rows = {};
          count = 0;
          portions.push({ unit, sheet, rows });
        }
        rows[Number(row)] = line;
        count += Object.keys(line ?? {}).length;
      }
    }
  return portions;
}

const isContent = (cell: object | null | undefined): boolean =>
  cell === null || cell === undefined || ["v", "f", "si", "p", "t"].some((part) => part in cell);

interface Written {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly cellValue?: SheetResults;
}

/** Takes the results out of portions, and with them out of what these were made of, whose cells someone else has written since. */
function dropWritten({ unitId, subUnitId, cellValue = {} }: Written, portions: readonly Portion[]): void {
  const own = portions.filter(({ unit, sheet }) => unit === unitId && sheet === subUnitId);
  for (const [row, line] of Object.entries(cellValue))
    for (const [column, cell] of Object.entries(line ?? {}))
      if (isContent(cell)) for (const { rows } of own) delete rows[Number(row)]?.[Number(column)];
}

export interface ResultPortions {
  /** From now on others may change cells whose results are being worked out. */
  begin(): void;
  /** Takes the results for later where they are many, and leaves out those that don't count any more. */
  takes(results: Results): boolean;
  /** Writes what was taken. */
  write(): Promise<void>;
}

/** @param apply has the engine write results in one task */
export function resultPortions(injector: Injector, apply: (results: Results) => Promise<unknown>): ResultPortions {
  const instances = injector.get(IUniverInstanceService);
  let portions: Portion[] = [];
  /** What the engine found outside of cells; undefined where nothing was taken. */
  let others: Pick<Results, "unitOtherData"> | undefined;
  let isRunning = false;
  let isMoved = false;
  let written: Written[] = [];
  const note = ({ id, params }: Readonly<ICommandInfo>, isResult: boolean): void => {
    if (!isRunning) return;
    if (MOVES.test(id)) {
      isMoved = true;
      portions = [];
    } else if (id === SetRangeValuesMutation.id && !isResult) {
      written.push(params as Written);
      dropWritten(params as Written, portions);
    }
  };
  injector
    .get(ICommandService)
    .onCommandExecuted((command, options) => note(command, options?.["applyFormulaCalculationResult"] === true));
  return {
    begin() {
      [isRunning, isMoved, written] = [true, false, []];
    },
    takes(results) {
      const found = portionsOf(results);
      for (const one of written) dropWritten(one, found);
      if (found.length < 2 && !isMoved) return false;
      portions = isMoved ? [] : [...found];
      const { unitOtherData = {} } = results;
      others = { unitOtherData };
      return true;
    },
    async write() {
      const pause = timeSlices({ slice: LONG_SLICE }, []);
      for (let next = portions.shift(); next !== undefined; next = portions.shift()) {
        const { unit, sheet, rows } = next;
        // Another workbook may have taken its place.
        if (instances.getUnit(unit)) await apply({ unitData: { [unit]: { [sheet]: rows } } });
        await pause();
      }
      if (others !== undefined) await apply({ unitData: {}, ...others });
      others = undefined;
      isRunning = false;
    },
  };
}
