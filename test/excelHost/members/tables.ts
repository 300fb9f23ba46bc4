/** Excel.Table and its collections. */
import { object, objectOrNull, type Given, type SomeTypes } from "../host/objects";
import { boxOf, contains, type Box, type SheetModel, type TableModel } from "../model/workbook";
import { rangeOn } from "./rangeTarget";
import type { RangeTarget, TableTarget } from "./targets";

const bodyOf = ({ area, headers, totals }: TableModel): Box => ({
  ...area,
  row: area.row + Number(headers),
  rows: area.rows - Number(headers) - Number(totals),
});

const totalsOf = ({ area }: TableModel): Box => ({ ...area, row: area.row + area.rows - 1, rows: 1 });

const part = ({ sheet }: TableTarget, box: Box): Given => object("Range", rangeOn(sheet, box));

const all = (sheets: readonly SheetModel[]): readonly TableTarget[] =>
  sheets.flatMap((sheet) => sheet.tables.map((table) => ({ sheet, table })));

const find = (sheets: readonly SheetModel[], key: unknown): TableTarget | undefined =>
  all(sheets).find(({ table: { name } }) => name.toLowerCase() === String(key).toLowerCase());

export const TABLE_TYPES = {
  Table: {
    id: ({ table: { name } }) => name,
    properties: {
      Name: { get: ({ table: { name } }) => name },
      Id: { get: ({ table: { name } }) => name },
      ShowHeaders: { get: ({ table: { headers } }) => headers },
      ShowTotals: { get: ({ table: { totals } }) => totals },
    },
    parts: {
      Columns: (on) => object("TableColumnCollection", on),
      Worksheet: ({ sheet }) => object("Worksheet", sheet),
    },
    methods: {
      GetRange: (on) => part(on, on.table.area),
      GetDataBodyRange: (on) => part(on, bodyOf(on.table)),
      GetHeaderRowRange: (on) => part(on, { ...on.table.area, rows: 1 }),
      GetTotalRowRange: (on) => part(on, totalsOf(on.table)),
    },
  },
  TableColumn: {
    id: ({ index }) => String(index + 1),
    properties: {
      Name: { get: ({ table, index }) => table.columns[index] },
      Index: { get: ({ index }) => index },
      Id: { get: ({ index }) => index + 1 },
    },
  },
  TableColumnCollection: {
    items: (on) => on.table.columns.map((_, index) => object("TableColumn", { ...on, index })),
    item: (on, key) => {
      const index = on.table.columns.findIndex((name, at) => name === key || String(at + 1) === String(key));
      return index < 0 ? undefined : object("TableColumn", { ...on, index });
    },
  },
  TableCollection: {
    items: (sheets) => all(sheets).map((one) => object("Table", one)),
    item: (sheets, key) => objectOrNull("Table", find(sheets, key)) ?? undefined,
    methods: { GetItemOrNullObject: (sheets, [key]) => objectOrNull("Table", find(sheets, key)) },
  },
  TableScopedCollection: {
    items: (tables) => tables.map((one) => object("Table", one)),
    item: (tables, key) =>
      objectOrNull(
        "Table",
        tables.find(({ table: { name } }) => name === key),
      ) ?? undefined,
  },
} satisfies SomeTypes;

/** The tables that a range touches; with `whole` those that lie within it. */
export function tablesWithin(on: RangeTarget, whole: boolean): Given {
  const touches = ({ area }: TableModel): boolean =>
    on.row < area.row + area.rows &&
    area.row < on.row + on.rows &&
    on.column < area.column + area.columns &&
    area.column < on.column + on.columns;
  const lies = ({ area }: TableModel): boolean =>
    contains(on, area) && contains(on, { row: area.row + area.rows - 1, column: area.column + area.columns - 1 });
  const found = all([on.sheet]).filter(({ table }) => (whole ? lies(table) : touches(table)));
  return object("TableScopedCollection", found);
}

/** For tests: puts a table on a sheet. */
export function addTable(sheet: SheetModel, address: string, facts: Omit<TableModel, "area">): TableModel {
  const area = boxOf(address);
  if (area === undefined) throw new Error(`${address} is no address`);
  const made = { ...facts, area };
  sheet.tables.push(made);
  return made;
}
