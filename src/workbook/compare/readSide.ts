/** Reads one side of a comparison: cells with their values, and the cautions of our calls. */
import type { Address, Block, Workbook } from "../port";
import { addressText, cellsText } from "../reader/reference";
import { readSheet } from "../reader/sheets";
import { scanner, type CautionEngine } from "../scan/scan";
import { timeSlices } from "../timeSlices";
import type { ComparedCaution, ComparedCell, ComparedSheet } from "./keyedCells";

const placeKey = ({ sheet, row, column }: Address): string => `${String(row)},${String(column)},${sheet}`;

/** Cautions by the cell that raises them. */
async function cautionsOf(
  book: Workbook,
  engine: CautionEngine,
  sheets: readonly string[],
  signal?: AbortSignal,
): Promise<ReadonlyMap<string, readonly ComparedCaution[]>> {
  const report = await scanner(book, engine).scan(undefined, signal);
  const wanted = new Set(sheets);
  const found = new Map<string, ComparedCaution[]>();
  const notes = (report?.severities ?? []).flatMap(({ severity, codes }) =>
    codes.flatMap(({ code, notes: own }) =>
      own.map(({ text, cells }) => ({ caution: { severity, code, text }, cells })),
    ),
  );
  for (const { caution, cells } of notes)
    for (const cell of cells) {
      if (!wanted.has(cell.sheet)) continue;
      const key = placeKey(cell);
      found.set(key, [...(found.get(key) ?? []), caution]);
    }
  return found;
}

/** Formula cells with a filled cell without a formula below or to the right: they may spill. */
function maySpill({ area, formulas, values }: Block): readonly Address[] {
  const isPart = (down: number, over: number): boolean =>
    (formulas[down]?.[over] ?? "-") === "" && (values[down]?.[over] ?? null) !== null;
  return formulas.flatMap((line, down) =>
    line.flatMap((formula, over) =>
      formula !== "" && (isPart(down + 1, over) || isPart(down, over + 1))
        ? [{ sheet: area.sheet, row: area.row + down, column: area.column + over }]
        : [],
    ),
  );
}

/** The places that spills fill. */
async function spilledIn(book: Workbook, blocks: readonly Block[]): Promise<ReadonlySet<string>> {
  const cells = blocks.flatMap(maySpill);
  const areas =
    cells.length === 0
      ? []
      : await book.resolve(cells.map((from) => ({ text: `${cellsText({ ...from, rows: 1, columns: 1 })}#`, from })));
  const places = new Set<string>();
  for (const area of areas)
    for (let down = 0; down < (area?.rows ?? 0); down++)
      for (let over = 0; over < (area?.columns ?? 0); over++)
        if (area !== undefined)
          places.add(placeKey({ sheet: area.sheet, row: area.row + down, column: area.column + over }));
  return places;
}

interface Found {
  readonly cautions: ReadonlyMap<string, readonly ComparedCaution[]>;
  readonly spilled: ReadonlySet<string>;
}

/** The filled cells of one row. */
function cellsOfRow(
  { area, formulas, values }: Block,
  down: number,
  { cautions, spilled }: Found,
): readonly ComparedCell[] {
  return (values[down] ?? []).flatMap((value, over): readonly ComparedCell[] => {
    const formula = formulas[down]?.[over] ?? "";
    if (formula === "" && (value === null || value === "")) return [];
    const address = { sheet: area.sheet, row: area.row + down, column: area.column + over };
    const key = placeKey(address);
    const label = addressText(address);
    return [{ address, label, formula, value, spilled: spilled.has(key), cautions: cautions.get(key) ?? [] }];
  });
}

/** Sheets of a workbook with everything that a comparison looks at. */
export async function readSide(
  book: Workbook,
  engine: CautionEngine,
  sheets: readonly string[],
  signal?: AbortSignal,
): Promise<readonly ComparedSheet[]> {
  const pause = timeSlices({}, signal === undefined ? [] : [signal]);
  const cautions = await cautionsOf(book, engine, sheets, signal);
  const found: ComparedSheet[] = [];
  for (const name of sheets) {
    const blocks = await readSheet(book, name);
    const known: Found = { cautions, spilled: await spilledIn(book, blocks) };
    const cells: ComparedCell[] = [];
    for (const block of blocks)
      for (let down = 0; down < block.area.rows; down++) {
        await pause();
        cells.push(...cellsOfRow(block, down, known));
      }
    found.push({ name, cells });
  }
  return found;
}
