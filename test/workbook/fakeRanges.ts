/** The proxy objects of the fake: ranges and tables as Office.js hands them out. */
import { cellsText, parseCells } from "../../src/workbook/reader/reference";
import type { Area } from "../../src/workbook/port";
import { OfficeError, sheetOf } from "./fakeModel";
import type { FakeCell, FakeSheet, FakeTable } from "./fakeModel";
import { fire, proxy } from "./fakeSession";
import type { Session } from "./fakeSession";

const key = (row: number, column: number): string => cellsText({ row, column, rows: 1, columns: 1 });

export type Place = { sheet: FakeSheet; area: Omit<Area, "sheet"> };

export function usedOf({ cells }: FakeSheet): Omit<Area, "sheet"> | undefined {
  const places = [...cells]
    .filter(([, cell]) => cell.value !== "" || cell.formula !== "")
    .map(([at]) => parseCells(at));
  const rows = places.map((place) => place?.row ?? 0);
  const columns = places.map((place) => place?.column ?? 0);
  if (places.length === 0) return undefined;
  const row = Math.min(...rows);
  const column = Math.min(...columns);
  return { row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
}

const table = <T>({ row, column, rows, columns }: Omit<Area, "sheet">, cell: (at: string) => T): T[][] =>
  Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (_, over) => cell(key(row + down, column + over))),
  );

/** What Excel makes of typed content: a mark for text goes, what looks like a date becomes its number. */
function taken(content: unknown): string | number | boolean {
  if (typeof content !== "string") return content as number | boolean;
  if (content.startsWith("'")) return content.slice(1);
  return /^\d+-\d+$/.test(content) ? 46_024 : /^\d+$/.test(content) ? Number(content) : content;
}

function put({ sheet, area }: Place, grid: unknown): void {
  if (sheet.protected) throw new OfficeError("AccessDenied");
  const rows = grid as unknown[][];
  const fits = rows.length === area.rows && rows.every((row) => row.length === area.columns);
  if (!fits) throw new OfficeError("InvalidArgument");
  table(area, (at) => at).forEach((line, down) => {
    line.forEach((at, over) => {
      const content = rows[down]?.[over];
      if (content === "=BAD(") throw new OfficeError("InvalidArgument");
      if (typeof content === "string" && content.startsWith("=")) sheet.cells.set(at, { formula: content, value: 0 });
      else if (content === "") sheet.cells.delete(at);
      else sheet.cells.set(at, { formula: "", value: taken(content) });
    });
  });
}

function written(session: Session, place: Place, grid: unknown): void {
  put(place, grid);
  session.after.push(() => fire(session.book, "onChanged", { worksheetId: place.sheet.id }));
}

export function range(session: Session, place: () => Place | undefined): unknown {
  const { book } = session;
  const must = (): Place => {
    const found = place();
    if (found === undefined) throw new OfficeError("ItemNotFound");
    return found;
  };
  const here = (at: string): FakeCell | undefined => must().sheet.cells.get(at);
  const note = (name: string) => (value: unknown) => {
    const { sheet, area } = must();
    sheet.set.set(`${cellsText(area)}.${name}`, value);
  };
  const part = (area: (from: Place) => Omit<Area, "sheet"> | undefined): unknown =>
    range(session, () => {
      const from = place();
      const found = from === undefined ? undefined : area(from);
      return from === undefined || found === undefined ? undefined : { sheet: from.sheet, area: found };
    });
  const one = (at: string | undefined) => (at === undefined ? undefined : parseCells(at));
  const setters = {
    formulas: (grid: unknown) => written(session, must(), grid),
    values: (grid: unknown) => written(session, must(), grid),
    style: note("style"),
    numberFormat: note("numberFormat"),
  };
  const inner = {
    format: proxy(
      session,
      {},
      { borders: { getItem: (edge: string) => proxy(session, {}, {}, { color: note(`${edge}.color`) }) } },
      {
        wrapText: note("wrapText"),
        columnWidth: note("columnWidth"),
        indentLevel: note("indentLevel"),
        verticalAlignment: note("verticalAlignment"),
      },
    ),
    dataValidation: proxy(
      session,
      {},
      {},
      { rule: note("rule"), prompt: note("prompt"), errorAlert: note("errorAlert") },
    ),
  };
  return proxy(
    session,
    {
      values: () => table(must().area, (at) => here(at)?.value ?? ""),
      formulas: () => table(must().area, (at) => (here(at)?.formula || here(at)?.value) ?? ""),
      valueTypes: () => table(must().area, (at) => (here(at)?.error === true ? "Error" : "String")),
      // Columns of 48 and rows of 15 points, as a new sheet of Excel has.
      left: () => 48 * must().area.column,
      top: () => 15 * must().area.row,
      rowIndex: () => must().area.row,
      columnIndex: () => must().area.column,
      rowCount: () => must().area.rows,
      columnCount: () => must().area.columns,
      "worksheet/name": () => must().sheet.name,
    },
    {
      ...inner,
      getCell: (row: number, column: number) =>
        part(({ area }) => ({ row: area.row + row, column: area.column + column, rows: 1, columns: 1 })),
      getSpillParentOrNullObject: () => part(({ sheet, area }) => one(sheet.cells.get(cellsText(area))?.parent)),
      getSpillingToRangeOrNullObject: () => part(spilled),
      getTables: () => tablesAround(session, place),
      select: () =>
        session.queue.push(() => {
          const { sheet, area } = must();
          book.active = { sheet: sheet.name, row: area.row, column: area.column };
          session.after.push(() => fire(book, "onSelectionChanged", {}));
        }),
      setDirty: () => session.queue.push(() => book.dirty.push(`${must().sheet.name}!${cellsText(must().area)}`)),
    },
    setters,
    () => place() === undefined,
  );
}

function spilled({ sheet, area }: Place): Omit<Area, "sheet"> | undefined {
  const anchor = cellsText(area);
  const children = [...sheet.cells].filter(([, cell]) => cell.parent === anchor).map(([at]) => parseCells(at));
  if (children.length === 0) return undefined;
  const rows = Math.max(...children.map((child) => child?.row ?? 0)) - area.row + 1;
  return { ...area, rows, columns: Math.max(...children.map((child) => child?.column ?? 0)) - area.column + 1 };
}

export function tableProxy(session: Session, find: () => FakeTable | undefined): unknown {
  const facts = (): FakeTable => {
    const found = find();
    if (found === undefined) throw new OfficeError("ItemNotFound");
    return found;
  };
  const columns = proxy(session, { "items/name": () => facts().columns.map((name) => ({ name })) }, {});
  const place = (): Place | undefined => {
    const found = find();
    return found && { sheet: sheetOf(session.book, found.sheet), area: found.area };
  };
  return proxy(
    session,
    { name: () => facts().name, showHeaders: () => facts().headers, showTotals: () => facts().totals },
    { columns, getRange: () => range(session, place) },
    {},
    () => find() === undefined,
  );
}

function tablesAround(session: Session, place: () => Place | undefined): unknown {
  const inside = (one: FakeTable): boolean => {
    const at = place();
    if (at?.sheet.name !== one.sheet) return false;
    const down = at.area.row - one.area.row;
    const over = at.area.column - one.area.column;
    return down >= 0 && down < one.area.rows && over >= 0 && over < one.area.columns;
  };
  const items = (): unknown[] => session.book.tables.filter(inside).map((one) => tableProxy(session, () => one));
  return proxy(session, { "items/name": items }, {});
}
