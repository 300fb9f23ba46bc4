/**
 * A workbook in memory that calculates our calls when told to, counts what is asked of it and tells of changes. Formulas of
 * others hold the value that they were given.
 */
import type { PanelEngine } from "../../../src/taskpane/engine";
import type {
  Address,
  Area,
  Block,
  CellValue,
  CellWrite,
  PlacedPicture,
  SheetCopies,
  Workbook,
} from "../../../src/workbook/port";
import { newWorkbook, packageBytes } from "../../../src/workbook/package";
import { readCells } from "../../../src/workbook/reader/read";
import { parseCells } from "../../../src/workbook/reader/reference";
import { isMatrix, isOutcomeFault, type CellOutcome } from "../../../src/workbook/values";

interface Cell {
  formula: string;
  value: CellValue;
}

export interface Book {
  readonly workbook: Workbook;
  readonly inserted: string[];
  /** Finished copies that were delivered. */
  readonly delivered: { readonly bytes: Uint8Array; readonly name: string }[];
  /** Copies of sheets, where the host makes them. */
  readonly copied: SheetCopies[];
  /** Why the host doesn't give the workbook's bytes; undefined where it does. */
  refusal: string | undefined;
  readonly placed: { readonly picture: PlacedPicture; readonly beside?: Area }[];
  readonly written: CellWrite[];
  readonly asked: { used: string[]; recalculated: string[] };
  selected: Address | undefined;
  /** Types into a cell: text that begins with "=" is a formula. */
  type(sheet: string, at: string, content: string | number | null): void;
  /** A value that stands in the cell without having been calculated. */
  hold(sheet: string, at: string, value: CellValue): void;
  value(sheet: string, at: string): CellValue;
  formula(sheet: string, at: string): string;
  calculate(): Promise<void>;
  /** Selects as a user does. */
  click(sheet: string, at: string): void;
  /** Tells of changes as a host does. */
  changed(...sheets: readonly string[]): void;
}

/** The workbook as a file. */
async function storedBytes(sheets: ReadonlyMap<string, ReadonlyMap<string, Cell>>): Promise<Uint8Array> {
  const pack = await newWorkbook(
    [...sheets].map(([name, cells]) => ({
      name,
      cells: [...cells].map(([place, { formula, value }]) => {
        const [row = 0, column = 0] = place.split(",").map(Number);
        return { row, column, value, ...(formula !== "" && { formula: formula.slice(1) }) };
      }),
    })),
  );
  return packageBytes(pack);
}

const placeOf = (at: string): { row: number; column: number } => {
  const area = parseCells(at);
  if (area === undefined) throw new Error(`no cell ${at}`);
  return { row: area.row, column: area.column };
};

/** What the host can do with pictures. */
interface Abilities {
  readonly places: boolean;
  readonly saves: boolean;
}

export function makeBook(
  names: readonly string[],
  engine: PanelEngine,
  { places, saves }: Abilities = { places: false, saves: false },
): Book {
  const sheets = new Map(names.map((name) => [name, new Map<string, Cell>()]));
  const selections: ((address: Address) => void)[] = [];
  const changes: ((sheets: readonly string[]) => void)[] = [];
  const key = (row: number, column: number): string => `${String(row)},${String(column)}`;
  const grid = (sheet: string): Map<string, Cell> => {
    const found = sheets.get(sheet);
    if (found === undefined) throw new Error(`there is no sheet named "${sheet}"`);
    return found;
  };
  const put = (sheet: string, row: number, column: number, content: string | number | boolean | null): void => {
    const formula = typeof content === "string" && content.startsWith("=") ? content : "";
    if (content === null) grid(sheet).delete(key(row, column));
    else grid(sheet).set(key(row, column), { formula, value: formula === "" ? content : 0 });
  };
  const at = (sheet: string, text: string): Cell | undefined => {
    const { row, column } = placeOf(text);
    return grid(sheet).get(key(row, column));
  };
  const readBlock = (area: Area): Block => {
    const cells = grid(area.sheet);
    const rows = Array.from({ length: area.rows }, (_, down) =>
      Array.from({ length: area.columns }, (_, over) => cells.get(key(area.row + down, area.column + over))),
    );
    return {
      area,
      formulas: rows.map((row) => row.map((cell) => cell?.formula ?? "")),
      values: rows.map((row) => row.map((cell) => cell?.value ?? null)),
    };
  };
  const spill = (sheet: string, row: number, column: number, outcome: CellOutcome, cell: Cell): void => {
    if (isOutcomeFault(outcome) || !isMatrix(outcome.value)) {
      cell.value = isOutcomeFault(outcome) ? outcome : (outcome.value as CellValue);
      return;
    }
    for (const [down, line] of outcome.value.entries())
      for (const [over, value] of line.entries())
        if (down + over > 0) grid(sheet).set(key(row + down, column + over), { formula: "", value });
    cell.value = outcome.value[0]?.[0] ?? null;
  };
  const book: Book = {
    inserted: [],
    delivered: [],
    copied: [],
    refusal: undefined,
    placed: [],
    written: [],
    asked: { used: [], recalculated: [] },
    selected: undefined,
    type(sheet, text, content) {
      const { row, column } = placeOf(text);
      put(sheet, row, column, content);
    },
    hold(sheet, text, value) {
      const { row, column } = placeOf(text);
      grid(sheet).set(key(row, column), { formula: at(sheet, text)?.formula ?? "", value });
    },
    value: (sheet, text) => at(sheet, text)?.value ?? null,
    formula: (sheet, text) => at(sheet, text)?.formula ?? "",
    async calculate() {
      for (const [sheet, cells] of sheets)
        for (const [place, cell] of [...cells]) {
          if (cell.formula === "") continue;
          const [row = 0, column = 0] = place.split(",").map(Number);
          const address = { sheet, row, column };
          const [reading] = await readCells(
            book.workbook,
            [{ address, formula: cell.formula, value: cell.value }],
            engine,
          );
          const call = reading?.calls.find(({ whole }) => whole);
          if (call?.outcome !== undefined) spill(sheet, row, column, call.outcome, cell);
        }
    },
    click(sheet, text) {
      book.selected = { sheet, ...placeOf(text) };
      for (const call of selections) call(book.selected);
    },
    changed(...those) {
      for (const call of changes) call(those);
    },
    workbook: {
      host: "preview",
      sheets: async () => [...sheets.keys()].map((name) => ({ name, visible: true, protected: false })),
      async used(sheet) {
        book.asked.used.push(sheet);
        const places = [...(sheets.get(sheet)?.keys() ?? [])].map((place) => place.split(",").map(Number));
        if (places.length === 0) return undefined;
        const rows = 1 + Math.max(...places.map(([row = 0]) => row));
        const columns = 1 + Math.max(...places.map(([, column = 0]) => column));
        return { sheet, row: 0, column: 0, rows, columns };
      },
      read: async (areas) => areas.map(readBlock),
      resolve: async (references) => references.map(() => undefined),
      selection: async () => book.selected,
      async select(address) {
        if (!sheets.has(address.sheet)) throw new Error(`there is no sheet named "${address.sheet}"`);
        book.selected = address;
        for (const call of selections) call(address);
      },
      async write(cells) {
        book.written.push(...cells);
        for (const { sheet, row, column, content } of cells) put(sheet, row, column, content);
        await book.calculate();
        book.changed(...new Set(cells.map(({ sheet }) => sheet)));
      },
      async insert(sheet) {
        book.inserted.push(sheet.id);
        return sheet.name;
      },
      documentName: async () => "Pool loop.xlsx",
      async documentBytes() {
        if (book.refusal !== undefined) throw new Error(book.refusal);
        return storedBytes(sheets);
      },
      async deliverCopy(bytes, name) {
        book.delivered.push({ bytes, name });
        return `The copy is the file ${name}.`;
      },
      async copySheets(copies) {
        book.copied.push(copies);
        return "the new sheets “Pool loop values”, “Record”";
      },
      placePicture: places
        ? async (picture, beside) => {
            book.placed.push({ picture, beside });
            return "beside the table";
          }
        : undefined,
      savePicture: saves
        ? async (picture) => {
            book.placed.push({ picture });
            return "the file Picture.png";
          }
        : undefined,
      async recalculate(areas) {
        book.asked.recalculated.push(...areas.map(({ sheet }) => sheet));
        await book.calculate();
        book.changed(...new Set(areas.map(({ sheet }) => sheet)));
      },
      onSelection(call) {
        selections.push(call);
        return () => undefined;
      },
      onChange(call) {
        changes.push(call);
        return () => undefined;
      },
    },
  };
  return book;
}
