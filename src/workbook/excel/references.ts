/** Finds the areas that references mean, in two or three round trips for any number of them. */
import type { Area, ReferenceText } from "../port";
import { parseReference } from "../reader/reference";
import type { ReferenceMeaning, TablePart } from "../reader/reference";
import { supports } from "./run";

/** What is asked of Excel, then how its answer is read. */
interface Asked {
  /** After the first round trip: asks for the rest. */
  next(): void;
  /** After the second one. */
  answer(): Area | undefined;
}

const NOTHING: Asked = { next: () => undefined, answer: () => undefined };
const PLACE = "rowIndex,columnIndex,rowCount,columnCount,worksheet/name";

function areaOf(range: Excel.Range | undefined): Area | undefined {
  if (range === undefined || range.isNullObject) return undefined;
  const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = range;
  return { sheet: range.worksheet.name, row, column, rows, columns };
}

function cells(
  context: Excel.RequestContext,
  { sheet, area, spill }: ReferenceMeaning & { kind: "cells" },
  { from }: ReferenceText,
): Asked {
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet ?? from.sheet);
  worksheet.load("name");
  let spilled: Excel.Range | undefined;
  return {
    next() {
      if (!spill || worksheet.isNullObject || !supports("1.12")) return;
      spilled = worksheet.getRangeByIndexes(area.row, area.column, 1, 1).getSpillingToRangeOrNullObject();
      spilled.load(PLACE);
    },
    answer() {
      if (spill) return areaOf(spilled);
      return worksheet.isNullObject ? undefined : { sheet: worksheet.name, ...area };
    },
  };
}

/** A name of the sheet goes before one of the workbook. */
function name(
  context: Excel.RequestContext,
  meaning: ReferenceMeaning & { kind: "name" },
  { from }: ReferenceText,
): Asked {
  const worksheet = context.workbook.worksheets.getItem(meaning.sheet ?? from.sheet);
  const own = worksheet.names.getItemOrNullObject(meaning.name);
  const shared = context.workbook.names.getItemOrNullObject(meaning.name);
  own.load("name");
  shared.load("name");
  let range: Excel.Range | undefined;
  return {
    next() {
      const found = own.isNullObject ? shared : own;
      if (found.isNullObject || meaning.spill) return;
      range = found.getRangeOrNullObject();
      range.load(PLACE);
    },
    answer: () => areaOf(range),
  };
}

interface TableFacts {
  readonly area: Area;
  readonly headers: boolean;
  readonly totals: boolean;
  readonly columns: readonly string[];
}

/** The part of a table that a reference means; undefined where the table has no such part or column. */
export function partOfTable(
  facts: TableFacts,
  { part, first, last }: ReferenceMeaning & { kind: "table" },
  row: number,
): Area | undefined {
  const names = facts.columns.map((column) => column.toLowerCase());
  const from = first === undefined ? 0 : names.indexOf(first.toLowerCase());
  const to = last === undefined ? names.length - 1 : names.indexOf(last.toLowerCase());
  const rows = rowsOfPart(facts, part, row);
  if (from < 0 || to < 0 || rows === undefined) return undefined;
  const column = facts.area.column + Math.min(from, to);
  return { sheet: facts.area.sheet, ...rows, column, columns: Math.abs(to - from) + 1 };
}

function rowsOfPart(facts: TableFacts, part: TablePart, row: number): { row: number; rows: number } | undefined {
  const { area, headers, totals } = facts;
  const top = area.row + Number(headers);
  const rows = area.rows - Number(headers) - Number(totals);
  if (part === "all") return { row: area.row, rows: area.rows };
  if (part === "data") return { row: top, rows };
  if (part === "headers") return headers ? { row: area.row, rows: 1 } : undefined;
  if (part === "totals") return totals ? { row: area.row + area.rows - 1, rows: 1 } : undefined;
  return row >= top && row < top + rows ? { row, rows: 1 } : undefined;
}

function table(
  context: Excel.RequestContext,
  meaning: ReferenceMeaning & { kind: "table" },
  { from }: ReferenceText,
): Asked {
  const named = meaning.table === undefined ? undefined : context.workbook.tables.getItemOrNullObject(meaning.table);
  const cell = context.workbook.worksheets.getItem(from.sheet).getRangeByIndexes(from.row, from.column, 1, 1);
  const around = named === undefined ? cell.getTables(false) : undefined;
  named?.load("name");
  around?.load("items/name");
  let found: Excel.Table | undefined;
  let range: Excel.Range | undefined;
  return {
    next() {
      found = named === undefined ? around?.items[0] : named.isNullObject ? undefined : named;
      found?.load("showHeaders,showTotals");
      found?.columns.load("items/name");
      range = found?.getRange();
      range?.load(PLACE);
    },
    answer() {
      const area = areaOf(range);
      if (found === undefined || area === undefined) return undefined;
      const columns = found.columns.items.map((column) => column.name);
      const facts = { area, headers: found.showHeaders, totals: found.showTotals, columns };
      return partOfTable(facts, meaning, from.row);
    },
  };
}

function ask(context: Excel.RequestContext, reference: ReferenceText): Asked {
  const meaning = parseReference(reference.text);
  if (meaning === undefined) return NOTHING;
  if (meaning.kind === "cells") return cells(context, meaning, reference);
  return meaning.kind === "name" ? name(context, meaning, reference) : table(context, meaning, reference);
}

/** A bare name may be a table: its data. */
function askTableToo(context: Excel.RequestContext, reference: ReferenceText): Asked {
  const meaning = parseReference(reference.text);
  if (meaning?.kind !== "name" || meaning.sheet !== undefined || meaning.spill) return ask(context, reference);
  const asName = name(context, meaning, reference);
  const asTable = table(context, { kind: "table", table: meaning.name, part: "data" }, reference);
  return {
    next() {
      asName.next();
      asTable.next();
    },
    answer: () => asName.answer() ?? asTable.answer(),
  };
}

/** The workbook's sheets, asked for only where a reference names one: one missing sheet would fail all the others. */
async function sheetNames(
  context: Excel.RequestContext,
  references: readonly ReferenceText[],
): Promise<ReadonlySet<string>> {
  if (!references.some(({ text }) => text.includes("!"))) return new Set();
  context.workbook.worksheets.load("items/name");
  await context.sync();
  return new Set(context.workbook.worksheets.items.map(({ name: title }) => title.toLowerCase()));
}

export async function resolveReferences(
  context: Excel.RequestContext,
  references: readonly ReferenceText[],
): Promise<readonly (Area | undefined)[]> {
  const there = await sheetNames(context, references);
  const asked = references.map((reference) => {
    const meaning = parseReference(reference.text);
    const sheet = meaning !== undefined && "sheet" in meaning ? meaning.sheet : undefined;
    return sheet === undefined || there.has(sheet.toLowerCase()) ? askTableToo(context, reference) : NOTHING;
  });
  await context.sync();
  for (const one of asked) one.next();
  await context.sync();
  return asked.map((one) => one.answer());
}
