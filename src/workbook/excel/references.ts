/** Finds the areas that references mean, in a few round trips for any number of them. */
import type { Address, Area, ReferenceText } from "../port";
import { parseReference } from "../reader/reference";
import type { ReferenceMeaning } from "../reader/reference";
import { inPortions } from "./portions";
import { brief, reading, supports } from "./run";
import { spillSearch } from "./spillSearch";
import { partOfTable } from "../reader/tableParts";

/** What is asked of Excel, then how its answer is read. */
interface Asked {
  /** After a round trip: asks for more, and answers whether it did. */
  next(): boolean;
  /** Once nothing more is asked. */
  answer(): Area | undefined;
}

const NOTHING: Asked = { next: () => false, answer: () => undefined };
const PLACE = "rowIndex,columnIndex,rowCount,columnCount,worksheet/name";

/** The objects of one batch that many references share. */
interface Batch {
  readonly context: Excel.RequestContext;
  sheet(name: string): Excel.Worksheet;
}

function batchOf(context: Excel.RequestContext): Batch {
  const sheets = new Map<string, Excel.Worksheet>();
  return {
    context,
    sheet(name) {
      const known = sheets.get(name);
      if (known !== undefined) return known;
      const found = context.workbook.worksheets.getItemOrNullObject(name);
      found.load("name");
      sheets.set(name, found);
      return found;
    },
  };
}

function areaOf(range: Excel.Range | undefined): Area | undefined {
  if (range === undefined || range.isNullObject) return undefined;
  const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = range;
  return { sheet: range.worksheet.name, row, column, rows, columns };
}

/** Asks once for what `ask` gives. */
function once(ask: () => boolean): () => boolean {
  let asked = false;
  return () => {
    if (asked) return false;
    asked = true;
    return ask();
  };
}

function cells(
  { sheet: sheetOf }: Batch,
  { sheet, area, spill }: ReferenceMeaning & { kind: "cells" },
  { from }: ReferenceText,
): Asked {
  const worksheet = sheetOf(sheet ?? from.sheet);
  let spilled: Excel.Range | undefined;
  return {
    next: once(() => {
      if (!spill || worksheet.isNullObject || !supports("1.12")) return false;
      const first = brief(worksheet.getRangeByIndexes(area.row, area.column, 1, 1));
      spilled = brief(first.getSpillingToRangeOrNullObject());
      spilled.load(PLACE);
      return true;
    }),
    answer() {
      if (spill) return areaOf(spilled);
      return worksheet.isNullObject ? undefined : { sheet: worksheet.name, ...area };
    },
  };
}

/** A name of the sheet goes before one of the workbook. A bare name that is none may be a table: its data. */
function name(batch: Batch, meaning: ReferenceMeaning & { kind: "name" }, reference: ReferenceText): Asked {
  const { workbook } = batch.context;
  const own = workbook.worksheets
    .getItem(meaning.sheet ?? reference.from.sheet)
    .names.getItemOrNullObject(meaning.name);
  const shared = workbook.names.getItemOrNullObject(meaning.name);
  own.load("name");
  shared.load("name");
  let range: Excel.Range | undefined;
  let asTable = NOTHING;
  const first = once(() => {
    const found = own.isNullObject ? shared : own;
    if (meaning.spill || (found.isNullObject && meaning.sheet !== undefined)) return false;
    if (found.isNullObject) {
      asTable = table(batch, { kind: "table", table: meaning.name, part: "data" }, reference);
      return true;
    }
    range = brief(found.getRangeOrNullObject());
    range.load(PLACE);
    return true;
  });
  return {
    next: () => first() || asTable.next(),
    answer: () => areaOf(range) ?? asTable.answer(),
  };
}

function table({ context }: Batch, meaning: ReferenceMeaning & { kind: "table" }, { from }: ReferenceText): Asked {
  const { workbook } = context;
  const named = meaning.table === undefined ? undefined : workbook.tables.getItemOrNullObject(meaning.table);
  const cell = brief(workbook.worksheets.getItem(from.sheet).getRangeByIndexes(from.row, from.column, 1, 1));
  const around = named === undefined ? cell.getTables(false) : undefined;
  named?.load("name");
  around?.load("items/name");
  let found: Excel.Table | undefined;
  let range: Excel.Range | undefined;
  return {
    next: once(() => {
      found = named === undefined ? around?.items[0] : named.isNullObject ? undefined : named;
      if (found === undefined) return false;
      found.load("showHeaders,showTotals");
      found.columns.load("items/name");
      range = brief(found.getRange());
      range.load(PLACE);
      return true;
    }),
    answer() {
      const area = areaOf(range);
      if (found === undefined || area === undefined) return undefined;
      const columns = found.columns.items.map((column) => column.name);
      const facts = { area, headers: found.showHeaders, totals: found.showTotals, columns };
      return partOfTable(facts, meaning, from.row);
    },
  };
}

function ask(batch: Batch, reference: ReferenceText): Asked {
  const meaning = parseReference(reference.text);
  if (meaning === undefined) return NOTHING;
  if (meaning.kind === "cells") return cells(batch, meaning, reference);
  return meaning.kind === "name" ? name(batch, meaning, reference) : table(batch, meaning, reference);
}

/** The workbook's sheets, asked for only where a reference names one: one missing sheet would fail all the others. */
async function sheetNames(references: readonly ReferenceText[]): Promise<ReadonlySet<string>> {
  if (!references.some(({ text }) => text.includes("!"))) return new Set();
  return reading(async ({ workbook: { worksheets, context } }) => {
    worksheets.load("items/name");
    await context.sync();
    return new Set(worksheets.items.map(({ name: title }) => title.toLowerCase()));
  });
}

/** The cell that a reference such as `A1#` names. */
function spillAnchor({ text, from }: ReferenceText): Address | undefined {
  const meaning = parseReference(text);
  if (meaning?.kind !== "cells" || !meaning.spill) return undefined;
  return { sheet: meaning.sheet ?? from.sheet, row: meaning.area.row, column: meaning.area.column };
}

const askMore = (asked: readonly Asked[]): boolean => asked.map((one) => one.next()).includes(true);

/** Bytes of a reference's look-ups: a name asks for most. */
const REFERENCE_COST = 1_500;

export async function resolveReferences(references: readonly ReferenceText[]): Promise<readonly (Area | undefined)[]> {
  const there = await sheetNames(references);
  const known = (reference: ReferenceText): boolean => {
    const meaning = parseReference(reference.text);
    const sheet = meaning !== undefined && "sheet" in meaning ? meaning.sheet : undefined;
    return sheet === undefined || there.has(sheet.toLowerCase());
  };
  const anchors = new Map(
    references.flatMap((reference) => {
      const anchor = known(reference) ? spillAnchor(reference) : undefined;
      return anchor === undefined ? [] : [[reference, anchor] as const];
    }),
  );
  const maySpill = await spillSearch([...anchors.values()]);
  const wanted = (reference: ReferenceText): boolean => {
    const anchor = anchors.get(reference);
    return anchor === undefined ? known(reference) : maySpill(anchor);
  };
  return inPortions(references, {
    cost: (reference) => (wanted(reference) ? REFERENCE_COST : 0),
    run: (some) =>
      reading(async (context) => {
        const batch = batchOf(context);
        const asked = some.map((reference) => (wanted(reference) ? ask(batch, reference) : NOTHING));
        if (asked.every((one) => one === NOTHING)) return some.map(() => undefined);
        await context.sync();
        // Names, then what they mean or the table of that name, then the table's parts.
        if (askMore(asked)) await context.sync();
        if (askMore(asked)) await context.sync();
        return asked.map((one) => one.answer());
      }),
  });
}
