/**
 * A workbook in memory behind office-addin-mock's load and sync discipline: a property read before it was loaded and
 * synced is the mock's error text, a property that doesn't exist can't be loaded. The mock itself holds fixed data; what
 * it lacks (proxies made by methods, writes that take effect at sync, null objects, events) is added here. It doesn't
 * calculate, has no undo, no real protection of single cells and no rendering: nothing here shows that Excel does.
 */
import { OfficeMockObject } from "office-addin-mock";
import { cellsText, parseCells } from "../../src/workbook/reader/reference";
import type { Area } from "../../src/workbook/port";

export interface FakeCell {
  formula: string;
  value: string | number | boolean;
  error?: boolean;
  /** The cell whose result spills here, "A1". */
  parent?: string;
}

export interface FakeTable {
  readonly name: string;
  readonly sheet: string;
  readonly area: Omit<Area, "sheet">;
  readonly columns: readonly string[];
  readonly headers: boolean;
  readonly totals: boolean;
}

export interface FakeSheet {
  readonly id: string;
  name: string;
  visibility: string;
  protected: boolean;
  readonly cells: Map<string, FakeCell>;
  readonly names: Map<string, string>;
  /** Everything else that was set, "B4.style" → value. */
  readonly set: Map<string, unknown>;
}

export interface FakeWorkbook {
  readonly sheets: FakeSheet[];
  readonly names: Map<string, string>;
  readonly tables: FakeTable[];
  readonly dirty: string[];
  readonly runs: object[];
  supported: string;
  active: { sheet: string; row: number; column: number };
  syncs: number;
  readonly events: Map<string, Set<(event: object) => Promise<void>>>;
}

class OfficeError extends Error {
  constructor(readonly code: string) {
    super(code);
  }
}

export function addSheet(book: FakeWorkbook, name: string): FakeSheet {
  const id = `{${String(book.sheets.length + 1)}-${name}}`;
  const sheet: FakeSheet = {
    id,
    name,
    visibility: "Visible",
    protected: false,
    cells: new Map(),
    names: new Map(),
    set: new Map(),
  };
  book.sheets.push(sheet);
  return sheet;
}

export function fakeWorkbook(...names: string[]): FakeWorkbook {
  const book: FakeWorkbook = {
    sheets: [],
    names: new Map(),
    tables: [],
    dirty: [],
    runs: [],
    supported: "1.20",
    active: { sheet: names[0] ?? "", row: 0, column: 0 },
    syncs: 0,
    events: new Map(),
  };
  for (const name of names) addSheet(book, name);
  return book;
}

export const sheetOf = (book: FakeWorkbook, name: string): FakeSheet => {
  const found = book.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase() || one.id === name);
  if (found === undefined) throw new OfficeError("ItemNotFound");
  return found;
};

export async function fire(book: FakeWorkbook, event: string, details: object): Promise<void> {
  for (const handler of book.events.get(event) ?? []) await handler(details);
}

const key = (row: number, column: number): string => cellsText({ row, column, rows: 1, columns: 1 });

type Place = { sheet: FakeSheet; area: Omit<Area, "sheet"> };
type Bag = Record<string, unknown>;
/** The mock's own way to give a property its value, private to its types only. */
type Settable = { setValue(name: string, value: unknown): void };

interface Session {
  readonly book: FakeWorkbook;
  queue: (() => void)[];
  loads: { mock: OfficeMockObject; load: (names: string) => void; names: string; fresh: (name: string) => unknown }[];
  nulls: { target: Bag; absent: () => boolean }[];
  /** Events that this batch sets off. */
  after: (() => Promise<void>)[];
}

/** A proxy object: `values` are loaded by name, `setters` take effect at the next sync. */
function proxy(
  session: Session,
  values: Record<string, () => unknown>,
  methods: Bag,
  setters: Record<string, (value: unknown) => void> = {},
  absent: () => boolean = () => false,
): unknown {
  const shape: Bag = {};
  for (const name of Object.keys(values)) {
    const [outer = name, inner] = name.split("/");
    if (outer !== "items" && inner !== undefined) shape[outer] = { ...(shape[outer] as Bag | undefined), [inner]: 0 };
    else shape[outer] = 0;
  }
  const mock = new OfficeMockObject(shape, "excel" as never);
  const target = mock as unknown as Bag;
  const load = mock.load.bind(mock);
  target["load"] = (names: string) => {
    const flat = names.replace(/items\/[\w/]+/g, "items");
    for (const name of names.split(",")) if (!(name.trim() in values)) throw new Error(`no property ${name} to load`);
    load(flat);
    session.loads.push({ mock, load, names, fresh: (name) => (absent() ? undefined : values[name]?.()) });
    return target;
  };
  target["isNullObject"] = "Error, isNullObject was read before a sync";
  session.nulls.push({ target, absent });
  Object.assign(target, methods);
  return new Proxy(target, {
    set(_, name, value: unknown) {
      const setter = setters[String(name)];
      if (setter === undefined) throw new Error(`nothing to set called ${String(name)}`);
      session.queue.push(() => setter(value));
      return true;
    },
  });
}

async function sync(session: Session): Promise<void> {
  session.book.syncs++;
  const { queue, loads } = session;
  session.queue = [];
  session.loads = [];
  for (const step of queue) step();
  for (const { target, absent } of session.nulls) target["isNullObject"] = absent();
  for (const { mock, load, names, fresh } of loads) {
    for (const name of names.split(",").map((one) => one.trim())) {
      const [outer = name, inner] = name.split("/");
      const value = fresh(name);
      if (outer === "items" || inner === undefined) (mock as unknown as Settable).setValue(outer, value);
      else (mock as unknown as Record<string, Settable>)[outer]?.setValue(inner, value);
    }
    load(names.replace(/items\/[\w/]+/g, "items"));
    await mock.sync();
  }
  await new Promise((resolve) => setImmediate(resolve));
  for (const tell of session.after.splice(0)) void tell();
}

function usedOf({ cells }: FakeSheet): Omit<Area, "sheet"> | undefined {
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

function range(session: Session, place: () => Place | undefined): unknown {
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
    style: note("style"),
    numberFormat: note("numberFormat"),
  };
  const inner = {
    format: proxy(session, {}, {}, { wrapText: note("wrapText"), columnWidth: note("columnWidth") }),
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

function tableProxy(session: Session, find: () => FakeTable | undefined): unknown {
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

function names(session: Session, holder: () => Map<string, string>): unknown {
  const find = (name: string): string | undefined =>
    [...holder()].find(([known]) => known.toLowerCase() === name.toLowerCase())?.[1];
  return proxy(
    session,
    {},
    {
      add: (name: string, area: { readonly address?: never } & object) =>
        session.queue.push(() => {
          if (find(name) !== undefined) throw new OfficeError("ItemAlreadyExists");
          holder().set(name, places.get(area)?.() ?? "");
        }),
      getItemOrNullObject: (name: string) =>
        proxy(
          session,
          { name: () => name },
          { getRangeOrNullObject: () => range(session, () => placeOf(session.book, find(name))) },
          {},
          () => find(name) === undefined,
        ),
    },
  );
}

/** Where ranges made by address stand: a name keeps it as "Sheet!A1:B2". */
const places = new WeakMap<object, () => string>();

function placeOf(book: FakeWorkbook, text: string | undefined): Place | undefined {
  const cut = text?.lastIndexOf("!") ?? -1;
  const area = text === undefined ? undefined : parseCells(text.slice(cut + 1));
  return text === undefined || area === undefined ? undefined : { sheet: sheetOf(book, text.slice(0, cut)), area };
}

function worksheet(session: Session, find: () => FakeSheet | undefined): unknown {
  const { book } = session;
  const must = (): FakeSheet => {
    const found = find();
    if (found === undefined) throw new OfficeError("ItemNotFound");
    return found;
  };
  const note = (name: string) => (value: unknown) => must().set.set(name, value);
  const later = (name: string) => (value: unknown) => session.queue.push(() => must().set.set(name, value));
  const at = (area: Omit<Area, "sheet">): unknown => {
    const made = range(session, () => ({ sheet: must(), area })) as object;
    places.set(made, () => `${must().name}!${cellsText(area)}`);
    return made;
  };
  return proxy(
    session,
    { name: () => must().name },
    {
      names: names(session, () => must().names),
      freezePanes: { freezeRows: later("frozenRows") },
      pageLayout: proxy(
        session,
        {},
        {
          setPrintArea: later("printArea"),
          setPrintTitleRows: later("titleRows"),
          headersFooters: { defaultForAllPages: proxy(session, {}, {}, { centerFooter: note("footer") }) },
        },
        { orientation: note("orientation"), zoom: note("zoom") },
      ),
      getRange: (address: string) => at(parseCells(address) ?? { row: 0, column: 0, rows: 1, columns: 1 }),
      getRangeByIndexes: (row: number, column: number, rows: number, columns: number) =>
        at({ row, column, rows, columns }),
      getUsedRangeOrNullObject: () =>
        range(session, () => {
          const area = usedOf(must());
          return area && { sheet: must(), area };
        }),
      activate: () => session.queue.push(() => (book.active = { ...book.active, sheet: must().name })),
      delete: () => session.queue.push(() => book.sheets.splice(book.sheets.indexOf(must()), 1)),
    },
    {},
    () => find() === undefined,
  );
}

function worksheets(session: Session): unknown {
  const { book } = session;
  const quiet = (name: string): FakeSheet | undefined =>
    book.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase() || one.id === name);
  const items = (): unknown[] =>
    book.sheets.map(({ name, visibility, protected: shut }) => ({ name, visibility, protection: { protected: shut } }));
  return proxy(
    session,
    { "items/name": items, "items/visibility": items, "items/protection/protected": items },
    {
      getItem: (name: string) => {
        session.queue.push(() => sheetOf(book, name));
        return worksheet(session, () => sheetOf(book, name));
      },
      getItemOrNullObject: (name: string) => worksheet(session, () => quiet(name)),
      add: (name: string) => {
        session.queue.push(() => addSheet(book, name));
        return worksheet(session, () => sheetOf(book, name));
      },
      onChanged: handlers(session, "onChanged"),
      onCalculated: handlers(session, "onCalculated"),
    },
  );
}

function handlers(session: Session, event: string): unknown {
  return {
    add(handler: (details: object) => Promise<void>) {
      const all = session.book.events.get(event) ?? new Set();
      session.queue.push(() => session.book.events.set(event, all.add(handler)));
      const remove = (): unknown => session.queue.push(() => all.delete(handler));
      return { context: { sync: () => sync(session) }, remove };
    },
  };
}

/** Puts Excel and Office where the adapter looks for them. */
export function install(book: FakeWorkbook): () => void {
  type Batch = (context: unknown) => Promise<unknown>;
  const run = async (first: object | Batch, second?: Batch): Promise<unknown> => {
    const [options, batch] = typeof first === "function" ? [{}, first as Batch] : [first, second as Batch];
    const session: Session = { book, queue: [], loads: [], nulls: [], after: [] };
    book.runs.push(options);
    const workbook = {
      worksheets: worksheets(session),
      names: names(session, () => book.names),
      tables: {
        getItemOrNullObject: (name: string) =>
          tableProxy(session, () => book.tables.find((one) => one.name.toLowerCase() === name.toLowerCase())),
      },
      getActiveCell: () =>
        range(session, () => ({
          sheet: sheetOf(book, book.active.sheet),
          area: { ...book.active, rows: 1, columns: 1 },
        })),
      onSelectionChanged: handlers(session, "onSelectionChanged"),
    };
    return batch({ workbook, sync: () => sync(session) });
  };
  const isSetSupported = (set: string, version: string): boolean =>
    set === "ExcelApi" && Number(version.split(".")[1]) <= Number(book.supported.split(".")[1]);
  const here = globalThis as unknown as Bag;
  const before = { Excel: here["Excel"], Office: here["Office"] };
  Object.assign(here, { Excel: { run }, Office: { context: { requirements: { isSetSupported } } } });
  return () => {
    Object.assign(here, before);
  };
}
