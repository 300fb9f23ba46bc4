/** The proxy objects of the fake: sheets, names and events as Office.js hands them out. */
import { cellsText, parseCells } from "../../src/workbook/reader/reference";
import type { Area } from "../../src/workbook/port";
import { addSheet, OfficeError, sheetOf } from "./fakeModel";
import type { FakeSheet, FakeWorkbook } from "./fakeModel";
import { range, usedOf } from "./fakeRanges";
import type { Place } from "./fakeRanges";
import { proxy, sync } from "./fakeSession";
import type { Session } from "./fakeSession";

export function names(session: Session, holder: () => Map<string, string>): unknown {
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

/** Base 64 of the bytes that every PNG begins with. */
const PNG = "iVBORw0KGgo";

/** Shapes keep their proportions unless told otherwise: then width and height go together, as in Excel. */
function shapes(session: Session, must: () => FakeSheet): unknown {
  const image = (data: string): unknown => {
    const made: Record<string, unknown> = { data, name: "Picture 1", width: 100, height: 50, lockAspectRatio: true };
    session.queue.push(() => {
      if (must().protected) throw new OfficeError("AccessDenied");
      if (!data.startsWith(PNG)) throw new OfficeError("InvalidArgument");
      must().shapes.push(made);
    });
    const size = (name: "width" | "height", other: "width" | "height") => (value: unknown) => {
      if (made["lockAspectRatio"] === true) made[other] = (Number(made[other]) * Number(value)) / Number(made[name]);
      made[name] = value;
    };
    const plain = (name: string) => (value: unknown) => void (made[name] = value);
    return proxy(
      session,
      {},
      {},
      {
        ...Object.fromEntries(
          ["name", "altTextDescription", "lockAspectRatio", "left", "top"].map((name) => [name, plain(name)]),
        ),
        width: size("width", "height"),
        height: size("height", "width"),
      },
    );
  };
  return proxy(session, { "items/name": () => must().shapes.map(({ name }) => ({ name })) }, { addImage: image });
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
      shapes: shapes(session, must),
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
      copy: () => {
        let made: FakeSheet | undefined;
        session.queue.push(() => {
          const { cells, protected: shut, name } = must();
          made = addSheet(book, `${name} (2)`);
          made.protected = shut;
          for (const [at, cell] of cells) made.cells.set(at, { ...cell });
        });
        return worksheet(session, () => made);
      },
      protection: proxy(
        session,
        { protected: () => must().protected },
        { unprotect: () => session.queue.push(() => (must().protected = false)) },
      ),
    },
    { name: (value) => (must().name = String(value)) },
    () => find() === undefined,
  );
}

export function worksheets(session: Session): unknown {
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

export function handlers(session: Session, event: string): unknown {
  return {
    add(handler: (details: object) => Promise<void>) {
      const all = session.book.events.get(event) ?? new Set();
      session.queue.push(() => session.book.events.set(event, all.add(handler)));
      const remove = (): unknown => session.queue.push(() => all.delete(handler));
      return { context: { sync: () => sync(session) }, remove };
    },
  };
}
