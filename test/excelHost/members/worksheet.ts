/** Excel.Worksheet, its collection, and its protection. */
import { HostError } from "../client/protocol";
import type { Host } from "../host/objects";
import { NOTHING, object, objectOrNull, type Given, type ObjectType, type SomeTypes } from "../host/objects";
import { checkSheetName, refuse } from "../model/limits";
import { findSheet, MOST_COLUMNS, MOST_ROWS, newSheet, type SheetModel } from "../model/workbook";
import { rangeAt, rangeOn, usedWithin } from "./rangeTarget";

const whole = (sheet: SheetModel) => rangeOn(sheet, { row: 0, column: 0, rows: MOST_ROWS, columns: MOST_COLUMNS });

/** @throws HostError AccessDenied where the workbook's structure is protected */
function openStructure({ book }: Host): void {
  if (book.structureProtected) refuse("AccessDenied");
}

function activate(sheet: SheetModel, host: Host): Given {
  if (sheet.visibility !== "Visible") refuse("InvalidOperation");
  const { active } = host.book;
  if (active.sheet === sheet) return NOTHING;
  host.events.sheet("deactivated", active.sheet);
  host.book.active = { sheet, row: 0, column: 0 };
  host.events.sheet("activated", sheet);
  return NOTHING;
}

/** A very hidden sheet can't be deleted, by design (OfficeDev/office-js #365), and one visible sheet stays. */
function remove(sheet: SheetModel, host: Host): Given {
  openStructure(host);
  const { sheets } = host.book;
  if (sheet.visibility === "VeryHidden") refuse("GeneralException");
  const others = sheets.filter((one) => one !== sheet && one.visibility === "Visible");
  const [next] = others;
  if (next === undefined) return refuse("InvalidOperation");
  sheets.splice(sheets.indexOf(sheet), 1);
  if (host.book.active.sheet === sheet) host.book.active = { sheet: next, row: 0, column: 0 };
  host.events.sheet("deleted", sheet);
  return NOTHING;
}

/** "Data" → "Data (2)", the first number that is free. */
function copiedName({ book }: Host, name: string): string {
  for (let number = 2; ; number++) {
    const tail = ` (${String(number)})`;
    const found = name.slice(0, 31 - tail.length) + tail;
    if (findSheet(book, found) === undefined) return found;
  }
}

/** A copy has everything of the original, its protection and password too; its names are its own. */
function copy(sheet: SheetModel, position: unknown, host: Host): Given {
  openStructure(host);
  const made = newSheet(host.book, copiedName(host, sheet.name));
  made.visibility = sheet.visibility;
  made.protection = sheet.protection;
  for (const [key, cell] of sheet.cells) made.cells.set(key, { ...cell });
  for (const [key, name] of sheet.names) made.names.set(key, { ...name, sheet: made });
  made.formats.push(...sheet.formats);
  made.conditional.push(...sheet.conditional);
  made.merged.push(...sheet.merged);
  made.unlocked.push(...sheet.unlocked);
  for (const [name, value] of sheet.settings) made.settings.set(name, value);
  if (position === "End") host.book.sheets.push(made);
  else host.book.sheets.splice(host.book.sheets.indexOf(sheet) + Number(position === "After"), 0, made);
  host.events.sheet("added", made);
  return object("Worksheet", made);
}

function rename(sheet: SheetModel, name: unknown, host: Host): void {
  openStructure(host);
  const before = sheet.name;
  sheet.name = checkSheetName(host.book, name, sheet);
  host.events.sheet("nameChanged", sheet, { nameBefore: before, nameAfter: sheet.name });
}

const worksheet: ObjectType<SheetModel> = {
  id: ({ id }) => id,
  properties: {
    Name: { get: ({ name }) => name, set: rename },
    Id: { get: ({ id }) => id },
    Position: { get: (sheet, { book }) => book.sheets.indexOf(sheet) },
    Visibility: {
      get: ({ visibility }) => visibility,
      set(sheet, value, host) {
        openStructure(host);
        sheet.visibility = value as SheetModel["visibility"];
      },
    },
    Gridlines: {
      get: ({ settings }) => settings.get("gridlines") ?? true,
      set: (sheet, value) => void sheet.settings.set("gridlines", value),
    },
    TabColor: {
      get: ({ settings }) => settings.get("tabColor") ?? "",
      set: (sheet, value) => void sheet.settings.set("tabColor", value),
    },
  },
  parts: {
    Names(sheet, host) {
      if (!host.inFront && host.profile.namesNeedFront) refuse("InvalidSelection");
      return object("NamedItemCollection", { names: sheet.names });
    },
    Tables: (sheet) => object("TableCollection", [sheet]),
    Charts: (sheet) => object("ChartCollection", sheet),
    Shapes: (sheet) => object("ShapeCollection", sheet),
    FreezePanes: (sheet) => object("WorksheetFreezePanes", sheet),
    PageLayout: (sheet) => object("PageLayout", sheet),
    HorizontalPageBreaks: (sheet) => object("PageBreakCollection", sheet),
    Protection: (sheet) => object("WorksheetProtection", sheet),
  },
  methods: {
    GetRange: (sheet, [address]) => object("Range", rangeAt(sheet, address)),
    GetRangeByIndexes: (sheet, args) => {
      const [row = 0, column = 0, rows = 1, columns = 1] = args.map(Number);
      return object("Range", rangeOn(sheet, { row, column, rows, columns }));
    },
    GetCell: (sheet, args) =>
      object("Range", rangeOn(sheet, { row: Number(args[0]), column: Number(args[1]), rows: 1, columns: 1 })),
    GetUsedRangeOrNullObject: (sheet) => objectOrNull("Range", usedWithin(whole(sheet))),
    Activate: (sheet, _, host) => activate(sheet, host),
    _GetSheetById: (_, [id], { book }) => objectOrNull("Worksheet", findSheet(book, String(id))),
    _GetAnotherWorksheetById: (_, [id], { book }) => objectOrNull("Worksheet", findSheet(book, String(id))),
  },
  changes: {
    Delete: (sheet, _, host) => remove(sheet, host),
    Copy: (sheet, [position], host) => copy(sheet, position, host),
  },
};

function add(host: Host, name: unknown): Given {
  openStructure(host);
  const title =
    name === undefined || name === null ? `Sheet${String(host.book.made + 1)}` : checkSheetName(host.book, name);
  const made = newSheet(host.book, title);
  host.book.sheets.push(made);
  host.events.sheet("added", made);
  return object("Worksheet", made);
}

export const SHEET_TYPES = {
  Worksheet: worksheet,
  WorksheetCollection: {
    items: (_, { book }) => book.sheets.map((sheet) => object("Worksheet", sheet)),
    item: (_, key, { book }) => objectOrNull("Worksheet", findSheet(book, String(key))) ?? undefined,
    methods: {
      GetItemOrNullObject: (_, [key], { book }) => objectOrNull("Worksheet", findSheet(book, String(key))),
      GetActiveWorksheet: (_, __, { book }) => object("Worksheet", book.active.sheet),
      GetCount: (_, __, { book }) => ({ value: book.sheets.length }),
      GetFirst: (_, __, { book }) => objectOrNull("Worksheet", book.sheets[0]),
    },
    changes: { Add: (_, [name], host) => add(host, name) },
  },
  WorksheetProtection: {
    properties: { Protected: { get: ({ protection }) => protection !== undefined } },
    changes: {
      Protect(sheet, [, password]) {
        if (sheet.protection !== undefined) refuse("InvalidOperation");
        sheet.protection = typeof password === "string" ? { password } : {};
        return NOTHING;
      },
      Unprotect(sheet, [password]) {
        const own = sheet.protection?.password;
        if (own !== undefined && own !== password) throw new HostError("BadPassword");
        sheet.protection = undefined;
        return NOTHING;
      },
    },
  },
} satisfies SomeTypes;
