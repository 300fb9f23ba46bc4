/** What the references of a stored formula mean in its workbook. */
import type { Address, Area } from "../../../workbook/port";
import type { BookFacts, TableFacts } from "../../../workbook/package";
import { addressText, cellsText, parseReference, type ReferenceMeaning } from "../../../workbook/reader/reference";
import { isRefusal, tokens } from "../../../workbook/reader/tokens";
import { absoluteText } from "../address";

/** Cells that a reference means, one area after the other, or why it can't be said. */
export type Meaning = { readonly areas: readonly Area[] } | { readonly why: string };

export const isUnread = (meaning: object): meaning is { readonly why: string } => "why" in meaning;

const TABLE = "references to tables that have no meaning here";
const NO_SHEET = "references to sheets that aren't there";
export const EXTERNAL = "references to other workbooks";

/** Names that every object of the engine's tables has already: a sheet so named can't be found by its name. */
const isTaken = (name: string): boolean => name in {};

export interface SheetPlaces {
  /** The sheet in the workbook's spelling; undefined where there is none with cells. */
  known(sheet: string): string | undefined;
  /** From the first tab to the last one. */
  between(first: string, last: string): readonly string[] | undefined;
}

export function sheetPlaces({ sheets }: BookFacts): SheetPlaces {
  const places = new Map(sheets.map((sheet, at) => [sheet.name.toLowerCase(), { ...sheet, at }] as const));
  const known = (name: string): string | undefined => {
    const found = places.get(name.toLowerCase());
    return found?.kind === "worksheet" && !isTaken(found.name) ? found.name : undefined;
  };
  return {
    known,
    between(first, last) {
      const [a, b] = [places.get(first.toLowerCase())?.at, places.get(last.toLowerCase())?.at];
      if (a === undefined || b === undefined) return undefined;
      const names = sheets
        .slice(Math.min(a, b), Math.max(a, b) + 1)
        .flatMap(({ name, kind }) => (kind === "worksheet" ? [name] : []));
      return names.every((name) => known(name) !== undefined) ? names : undefined;
    },
  };
}

function rowsOf(
  { area, headerRows, totalsRows }: TableFacts,
  part: string,
  from: Address,
): { readonly row: number; readonly rows: number } | undefined {
  const first = area.row + headerRows;
  const rows = area.rows - headerRows - totalsRows;
  if (part === "all") return area;
  if (part === "headers") return headerRows === 0 ? undefined : { row: area.row, rows: headerRows };
  if (part === "totals") return totalsRows === 0 ? undefined : { row: first + rows, rows: totalsRows };
  if (part === "data") return rows < 1 ? undefined : { row: first, rows };
  return from.row >= first && from.row < first + rows ? { row: from.row, rows: 1 } : undefined;
}

const within = ({ area }: TableFacts, { sheet, row, column }: Address): boolean =>
  area.sheet === sheet &&
  row >= area.row &&
  row < area.row + area.rows &&
  column >= area.column &&
  column < area.column + area.columns;

export function tableArea(
  tables: readonly TableFacts[],
  { table, part, first, last }: ReferenceMeaning & { kind: "table" },
  from: Address,
): Meaning {
  const found = tables.find((one) =>
    table === undefined ? within(one, from) : one.name.toLowerCase() === table.toLowerCase(),
  );
  const at = (column: string): number =>
    found?.columns.findIndex(({ name }) => name.toLowerCase() === column.toLowerCase()) ?? -1;
  const rows = found && rowsOf(found, part, from);
  if (found === undefined || rows === undefined) return { why: TABLE };
  if (part === "row" && found.area.sheet !== from.sheet) return { why: TABLE };
  const [a, b] = first === undefined || last === undefined ? [0, found.area.columns - 1] : [at(first), at(last)];
  if (a < 0 || b < 0) return { why: TABLE };
  const { sheet, column } = found.area;
  const area = { ...rows, column: column + Math.min(a, b), columns: Math.abs(a - b) + 1 };
  return { areas: [{ sheet, row: area.row, rows: area.rows, column: area.column, columns: area.columns }] };
}

const SPAN = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/s;

/** First:Last!A1 and what else holds several sheets; undefined where it is something else. */
function spanAreas(text: string, places: SheetPlaces): Meaning | undefined {
  const [, quoted, plain, rest = ""] = SPAN.exec(text) ?? [];
  const sheets = quoted?.replaceAll("''", "'") ?? plain ?? "";
  const colon = sheets.indexOf(":");
  if (colon < 1 || /[[\]\\/]/.test(sheets)) return undefined;
  const meaning = parseReference(rest);
  const names = places.between(sheets.slice(0, colon), sheets.slice(colon + 1));
  if (names === undefined) return { why: NO_SHEET };
  if (meaning?.kind !== "cells" || meaning.spill) return { why: "references over several sheets that aren't cells" };
  return { areas: names.map((sheet) => ({ sheet, ...meaning.area })) };
}

/** What a reference that is no name means; undefined for a name. */
export function plainMeaning(
  text: string,
  from: Address,
  places: SheetPlaces,
  tables: readonly TableFacts[],
): Meaning | undefined {
  const meaning = parseReference(text);
  if (meaning === undefined) return spanAreas(text, places) ?? { why: EXTERNAL };
  if (meaning.kind === "name") return undefined;
  if (meaning.kind === "table") return tableArea(tables, meaning, from);
  if (meaning.spill) return { why: "references to a spilled range (#)" };
  const named = meaning.sheet ?? from.sheet;
  if (isTaken(named)) return { why: "references to sheets whose name the engine keeps for itself" };
  const sheet = places.known(named);
  return sheet === undefined ? { why: NO_SHEET } : { areas: [{ sheet, ...meaning.area }] };
}

export const isOne = (areas: readonly Area[]): boolean =>
  areas.length === 1 && areas[0]?.rows === 1 && areas[0].columns === 1;

/** The cell of an area in the row or the column of a formula; undefined where they don't meet. */
export function meetingCell(area: Area, from: Address): string | undefined {
  const down = area.rows === 1 ? 0 : from.row - area.row;
  const over = area.columns === 1 ? 0 : from.column - area.column;
  const inside = down >= 0 && down < area.rows && over >= 0 && over < area.columns;
  if (!inside || (area.rows > 1 && area.columns > 1)) return undefined;
  const cell = { sheet: area.sheet, row: area.row + down, column: area.column + over };
  const place = cellsText({ ...cell, rows: 1, columns: 1 });
  // The part that is the same in every cell keeps its place when the formula is filled on.
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(place) ?? [];
  const fixed = `${area.columns === 1 ? "$" : ""}${letters}${area.rows === 1 ? "$" : ""}${digits}`;
  return area.sheet === from.sheet ? fixed : addressText(cell).slice(0, -place.length) + fixed;
}

export const textOf = (area: Area, from: Address): string =>
  area.sheet === from.sheet ? cellsText(area).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2") : absoluteText(area);

/** The cells that two areas share; undefined where they share none. */
export function sharedCells(a: Area, b: Area): Area | undefined {
  const row = Math.max(a.row, b.row);
  const column = Math.max(a.column, b.column);
  const rows = Math.min(a.row + a.rows, b.row + b.rows) - row;
  const columns = Math.min(a.column + a.columns, b.column + b.columns) - column;
  return a.sheet === b.sheet && rows > 0 && columns > 0 ? { sheet: a.sheet, row, column, rows, columns } : undefined;
}

/** Whether every cell in the formula is fixed with $, so that it means the same wherever it is used. */
export function isFixed(formula: string): boolean {
  const found = tokens(formula);
  if (isRefusal(found)) return false;
  return found.every(({ kind, text }) => {
    const meaning = kind === "reference" ? parseReference(text) : undefined;
    if (meaning?.kind === "table") return meaning.table !== undefined && meaning.part !== "row";
    if (meaning?.kind !== "cells") return true;
    const cells = text.slice(text.lastIndexOf("!") + 1).replace(/#$/, "");
    return text.includes("!") && cells.split(":").every((one) => /^(?:\$[A-Za-z]+)?(?:\$\d+)?$/.test(one));
  });
}
