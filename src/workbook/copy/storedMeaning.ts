/** What references mean in a stored workbook. */
import type { Area, ReferenceText } from "../port";
import { callsUs, type BookFacts, type NameEntry, type TableFacts } from "../package";
import { parseReference, type ReferenceMeaning } from "../reader/reference";
import { partOfTable } from "../reader/tableParts";
import { plainArea, referencesOf } from "./reach";
import { typedFormula } from "./typedFormula";

export interface Meanings {
  /** The one area that a reference means, as a reader of values needs it. */
  areaOf(reference: ReferenceText): Area | undefined;
  /** All areas that a reference leads to, through the formulas of names; undefined if one isn't known. */
  reachOf(reference: ReferenceText): readonly Area[] | undefined;
}

/** Names that lead to names: deeper than anybody writes, so that a circle ends. */
const DEEPEST = 20;

type SpillAt = (sheet: string, row: number, column: number) => Area | undefined;

const holds = (area: Area, { sheet, row, column }: ReferenceText["from"]): boolean =>
  area.sheet === sheet &&
  row >= area.row &&
  row < area.row + area.rows &&
  column >= area.column &&
  column < area.column + area.columns;

function tableArea(
  tables: readonly TableFacts[],
  meaning: ReferenceMeaning & { kind: "table" },
  from: ReferenceText["from"],
): Area | undefined {
  const wanted = meaning.table?.toLowerCase();
  const table = tables.find(({ name, area }) =>
    wanted === undefined ? holds(area, from) : name.toLowerCase() === wanted,
  );
  if (table === undefined) return undefined;
  const { area, headerRows, totalsRows, columns } = table;
  const shape = { area, headers: headerRows > 0, totals: totalsRows > 0, columns: columns.map(({ name }) => name) };
  return partOfTable(shape, meaning, from.row);
}

/** @param spillAt what the array formula of a cell fills */
export function meaningsIn({ sheets, names, tables }: BookFacts, spillAt: SpillAt): Meanings {
  const spelled = new Map(sheets.map(({ name }) => [name.toLowerCase(), name] as const));
  const byName = new Map<string, NameEntry>();
  for (const entry of names) byName.set(`${entry.sheet?.toLowerCase() ?? ""}!${entry.name.toLowerCase()}`, entry);
  const tableNames = new Set(tables.map(({ name }) => name.toLowerCase()));
  const onSheet = (area: Area | undefined): Area | undefined => {
    const sheet = area && spelled.get(area.sheet.toLowerCase());
    return area === undefined || sheet === undefined ? undefined : { ...area, sheet };
  };
  const nameOf = (meaning: ReferenceMeaning & { kind: "name" }, sheet: string): NameEntry | undefined => {
    const key = meaning.name.toLowerCase();
    return byName.get(`${(meaning.sheet ?? sheet).toLowerCase()}!${key}`) ?? byName.get(`!${key}`);
  };
  const single = (reference: ReferenceText, depth: number): Area | undefined => {
    const plain = onSheet(plainArea(reference));
    if (plain !== undefined || depth > DEEPEST) return plain;
    const { text, from } = reference;
    const meaning = parseReference(text);
    if (meaning?.kind === "table") return tableArea(tables, meaning, from);
    if (meaning?.kind === "cells") {
      const area = onSheet({ sheet: meaning.sheet ?? from.sheet, ...meaning.area });
      return area && spillAt(area.sheet, area.row, area.column);
    }
    if (meaning === undefined) return undefined;
    const entry = nameOf(meaning, from.sheet);
    if (entry !== undefined) return single({ text: entry.formula, from }, depth + 1);
    if (!tableNames.has(meaning.name.toLowerCase())) return undefined;
    return tableArea(tables, { kind: "table", table: meaning.name, part: "data" }, from);
  };
  const all = (reference: ReferenceText, depth: number): readonly Area[] | undefined => {
    const area = single(reference, depth);
    if (area !== undefined) return [area];
    const meaning = parseReference(reference.text);
    const entry = meaning?.kind === "name" && !meaning.spill ? nameOf(meaning, reference.from.sheet) : undefined;
    if (entry === undefined || depth > DEEPEST || callsUs(entry.formula)) return undefined;
    const found: Area[] = [];
    for (const one of referencesOf(typedFormula(entry.formula), reference.from) ?? [undefined]) {
      const areas = one && all(one, depth + 1);
      if (areas === undefined) return undefined;
      found.push(...areas);
    }
    return found;
  };
  return { areaOf: (reference) => single(reference, 0), reachOf: (reference) => all(reference, 0) };
}
