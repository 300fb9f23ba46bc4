/** Excel.Range, Excel.RangeAreas. */
import type { Host } from "../host/objects";
import { NOTHING, object, objectOrNull, type Given, type ObjectType, type SomeTypes } from "../host/objects";
import { isEditable } from "../model/cells";
import { refuse } from "../model/limits";
import { addressOf, contains, formatOf, keyOf, type CellModel, type Place } from "../model/workbook";
import { boxesWhere, grid, partOf, rangeOn, usedWithin, write } from "./rangeTarget";
import { tablesWithin } from "./tables";
import type { RangeTarget } from "./targets";

const given = (target: RangeTarget | undefined): Given => objectOrNull("Range", target);

const typeOf = (cell: CellModel | undefined): string => {
  if (cell === undefined || cell.value === "") return "Empty";
  if (cell.error === true) return "Error";
  return typeof cell.value === "number" ? "Double" : typeof cell.value === "boolean" ? "Boolean" : "String";
};

const parentOf = ({ sheet, row, column, rows, columns }: RangeTarget): RangeTarget | undefined => {
  if (rows * columns !== 1) return refuse("InvalidArgument");
  const cell = sheet.cells.get(keyOf(row, column));
  const parent = cell?.parent ?? (cell?.spill?.room === true ? { row, column } : undefined);
  return parent && rangeOn(sheet, { ...parent, rows: 1, columns: 1 });
};

const spillOf = ({ sheet, row, column, rows, columns }: RangeTarget): RangeTarget | undefined => {
  if (rows * columns !== 1) return refuse("InvalidArgument");
  const spill = sheet.cells.get(keyOf(row, column))?.spill;
  if (spill?.room !== true) return undefined;
  return rangeOn(sheet, { row, column, rows: spill.values.length, columns: spill.values[0]?.length ?? 1 });
};

/** True or false where all cells agree, null where they don't. */
function allOrNone(target: RangeTarget, holds: (cell: CellModel | undefined) => boolean): boolean | null {
  const found = new Set(grid(target, holds).flat());
  return found.size === 1 ? found.has(true) : null;
}

const isSpilled = (cell: CellModel | undefined): boolean => cell?.parent !== undefined || cell?.spill?.room === true;

function bounding(a: RangeTarget, b: RangeTarget): RangeTarget {
  const [row, column] = [Math.min(a.row, b.row), Math.min(a.column, b.column)];
  const bottom = Math.max(a.row + a.rows, b.row + b.rows);
  const right = Math.max(a.column + a.columns, b.column + b.columns);
  return rangeOn(a.sheet, { row, column, rows: bottom - row, columns: right - column });
}

function setFormat(target: RangeTarget, name: string, value: unknown): void {
  const { sheet, row, column, rows, columns } = target;
  if (sheet.protection !== undefined && !isEditable(sheet, target)) refuse("AccessDenied");
  sheet.formats.push({ area: { row, column, rows, columns }, name, value });
}

function select(target: RangeTarget, host: Host): Given {
  if (target.sheet.visibility !== "Visible") return refuse("InvalidOperation");
  host.book.active = { sheet: target.sheet, row: target.row, column: target.column };
  host.book.chartSelected = false;
  host.events.selected();
  return NOTHING;
}

const CELL_KINDS: Readonly<Record<string, (cell: CellModel) => boolean>> = {
  Formulas: ({ formula }) => formula !== "",
  Constants: ({ formula }) => formula === "",
};

function special(target: RangeTarget, kind: unknown): Given {
  const holds = CELL_KINDS[String(kind)] ?? refuse("InvalidArgument");
  const areas = boxesWhere(target, holds);
  return areas.length === 0 ? null : object("RangeAreas", { areas });
}

const numbers = (args: readonly unknown[]): number[] => args.map(Number);
const at = ({ sheet }: RangeTarget, place: Place, name: string): unknown => formatOf(sheet, place, name);

/** Standard sizes of a new sheet: 64 by 20 pixels, in points. */
const POINTS = { width: 48, height: 15 };

const range: ObjectType<RangeTarget> = {
  properties: {
    Values: { get: (on) => grid(on, (cell) => cell?.value ?? ""), set: write },
    Formulas: { get: (on) => grid(on, (cell) => (cell?.formula || cell?.value) ?? ""), set: write },
    Text: { get: (on) => grid(on, (cell) => String(cell?.foreign ?? cell?.value ?? "")) },
    ValueTypes: { get: (on) => grid(on, typeOf) },
    NumberFormat: {
      get: (on) =>
        grid(on, (cell, row, column) => at(on, { row, column }, "numberFormat") ?? cell?.format ?? "General"),
      set: (on, value) => setFormat(on, "numberFormat", value),
    },
    Style: { get: (on) => at(on, on, "style") ?? "Normal", set: (on, value) => setFormat(on, "style", value) },
    HasSpill: { get: (on) => allOrNone(on, isSpilled) },
    RowIndex: { get: ({ row }) => row },
    ColumnIndex: { get: ({ column }) => column },
    RowCount: { get: ({ rows }) => rows },
    ColumnCount: { get: ({ columns }) => columns },
    CellCount: { get: ({ rows, columns }) => rows * columns },
    Address: { get: (on) => `${on.sheet.name}!${addressOf(on)}` },
    Left: { get: ({ column }) => POINTS.width * column },
    Top: { get: ({ row }) => POINTS.height * row },
    Width: { get: ({ columns }) => POINTS.width * columns },
    Height: { get: ({ rows }) => POINTS.height * rows },
    RowHidden: {
      get: ({ sheet, row, rows }) => {
        const hidden = Array.from({ length: rows }, (_, down) => sheet.filteredRows.has(row + down));
        return hidden.every(Boolean) ? true : hidden.some(Boolean) ? null : false;
      },
    },
  },
  parts: {
    Worksheet: ({ sheet }) => object("Worksheet", sheet),
    Format: (on) => object("RangeFormat", on),
    DataValidation: (on) => object("DataValidation", on),
    ConditionalFormats: (on) => object("ConditionalFormatCollection", on),
  },
  methods: {
    GetCell: (on, args) => given(partOf(on, ...(numbers(args) as [number, number]))),
    GetRow: (on, args) => given(partOf(on, Number(args[0]), 0, 1, on.columns)),
    GetColumn: (on, args) => given(partOf(on, 0, Number(args[0]), on.rows, 1)),
    GetBoundingRect: (on, args) => given(bounding(on, (args[0] as { target: RangeTarget }).target)),
    GetOffsetRange: (on, [down, over]) => given(partOf(on, Number(down), Number(over), on.rows, on.columns)),
    GetAbsoluteResizedRange: (on, [rows, columns]) => given(partOf(on, 0, 0, Number(rows), Number(columns))),
    GetUsedRangeOrNullObject: (on) => given(usedWithin(on)),
    GetSpillParentOrNullObject: (on) => given(parentOf(on)),
    GetSpillingToRangeOrNullObject: (on) => given(spillOf(on)),
    GetSpecialCellsOrNullObject: (on, [kind]) => special(on, kind),
    GetTables: (on, [whole]) => tablesWithin(on, whole === true),
    Select: (on, _, host) => select(on, host),
    SetDirty(on, _, host) {
      host.dirty.push(`${on.sheet.name}!${addressOf(on)}`);
      host.events.calculated(on.sheet, on);
      return NOTHING;
    },
    _ValidateArraySize: (on, [rows, columns]) =>
      rows === on.rows && columns === on.columns ? NOTHING : refuse("InvalidArgument"),
  },
  changes: {
    Clear(on, _, host) {
      write(on, "", host);
      return NOTHING;
    },
    /** Rows one after the other; groups may lie in each other. */
    Group({ sheet, row, rows }, [option]) {
      if (option !== "ByRows") refuse("InvalidArgument");
      if (sheet.protection !== undefined) refuse("AccessDenied");
      const groups = (sheet.settings.get("rowGroups") as readonly string[] | undefined) ?? [];
      sheet.settings.set("rowGroups", [...groups, `${String(row + 1)}:${String(row + rows)}`]);
      return NOTHING;
    },
    Merge({ sheet, row, column, rows, columns }) {
      const box = { row, column, rows, columns };
      for (const key of boxesWhere({ sheet, ...box }, () => true))
        if (!contains({ row, column, rows: 1, columns: 1 }, key)) sheet.cells.delete(keyOf(key.row, key.column));
      sheet.merged.push(box);
      return NOTHING;
    },
  },
};

const areasTypes = {
  RangeCollection: { items: ({ areas }) => areas.map((one) => object("Range", one)) },
  RangeAreas: {
    properties: {
      Address: { get: ({ areas }) => areas.map((one) => `${one.sheet.name}!${addressOf(one)}`).join(",") },
      AreaCount: { get: ({ areas }) => areas.length },
      CellCount: { get: ({ areas }) => areas.reduce((sum, { rows, columns }) => sum + rows * columns, 0) },
    },
    parts: { Areas: (on) => object("RangeCollection", on) },
  },
} satisfies SomeTypes;

export const RANGE_TYPES = { Range: range, ...areasTypes } satisfies SomeTypes;
