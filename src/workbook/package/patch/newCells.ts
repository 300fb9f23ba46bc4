/** Where cells go that the file doesn't hold yet, and the hints of extent that they widen. */
import { cellsText, parseCells } from "../../reader/reference";
import type { Collected, NewPlace } from "../sheet/collect";
import { withAttributes } from "../xml/node";
import type { Splice } from "../xml/text";

export interface NewCellContext {
  readonly source: string;
  readonly prefix: string;
}

export interface NewCell {
  readonly place: NewPlace;
  readonly text: string;
}

/** Texts that go to one place of the sheet, in order: cells of a row that is there, or whole rows. */
function placedCells(cells: readonly NewCell[], { data }: Collected, context: NewCellContext): Splice[] {
  const { prefix, source } = context;
  const byTarget = new Map<string, NewCell[]>();
  for (const cell of cells) {
    const { at, into, row } = cell.place;
    const key = into === undefined ? `row ${row} ${at}` : `cell ${at}`;
    const group = byTarget.get(key);
    if (group === undefined) byTarget.set(key, [cell]);
    else group.push(cell);
  }
  return [...byTarget.values()].map((group): Splice => {
    const { at, into, row } = group[0]?.place ?? { at: 0, into: undefined, row: 0 };
    const text = group.map((cell) => cell.text).join("");
    if (into === undefined) {
      const whole = `<${prefix}row r="${row + 1}">${text}</${prefix}row>`;
      return { from: at, to: at, text: data?.empty === true ? "" : whole };
    }
    if (!into.empty) return { from: at, to: at, text };
    const open = source.slice(into.open.start, into.open.end).replace(/\s*\/>$/, ">");
    return { from: into.open.start, to: into.open.end, text: `${open}${text}</${prefix}row>` };
  });
}

/** A sheet without any row: `<sheetData/>`. */
function firstRows(cells: readonly NewCell[], { data }: Collected, { prefix }: NewCellContext): Splice[] {
  if (data?.empty !== true || cells.length === 0) return [];
  const rows = new Map<number, string>();
  for (const { place, text } of cells) rows.set(place.row, (rows.get(place.row) ?? "") + text);
  const texts = [...rows].map(([row, text]) => `<${prefix}row r="${row + 1}">${text}</${prefix}row>`);
  const { start, end } = data.open;
  return [{ from: start, to: end, text: `<${prefix}sheetData>${texts.join("")}</${prefix}sheetData>` }];
}

/** The hint of the sheet's extent, widened where a new cell lies outside. */
function extent(cells: readonly NewCell[], { elements }: Collected, { source }: NewCellContext): Splice[] {
  const node = elements.find(({ name }) => name === "dimension");
  const area = parseCells(node?.attributes["ref"] ?? "");
  if (node === undefined || area === undefined || cells.length === 0) return [];
  const rows = cells.map(({ place }) => place.row);
  const columns = cells.map(({ place }) => place.column);
  const top = rows.reduce((a, b) => Math.min(a, b), area.row);
  const left = columns.reduce((a, b) => Math.min(a, b), area.column);
  const bottom = rows.reduce((a, b) => Math.max(a, b), area.row + area.rows - 1);
  const right = columns.reduce((a, b) => Math.max(a, b), area.column + area.columns - 1);
  const ref = cellsText({ row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 });
  return ref === node.attributes["ref"] ? [] : [withAttributes(source, node, { ref })];
}

/** The hint of a row's extent, widened likewise. */
function spans(cells: readonly NewCell[], { source }: NewCellContext): Splice[] {
  const rows = new Map<number, { into: NonNullable<NewPlace["into"]>; columns: number[] }>();
  for (const { place } of cells) {
    if (place.into === undefined || place.into.empty) continue;
    const row = rows.get(place.row) ?? { into: place.into, columns: [] };
    row.columns.push(place.column + 1);
    rows.set(place.row, row);
  }
  return [...rows.values()].flatMap(({ into, columns }) => {
    const [first, last] = (into.attributes["spans"] ?? "").split(":").map(Number);
    if (first === undefined || last === undefined || /\s/.test(into.attributes["spans"] ?? "")) return [];
    const wider = `${Math.min(first, ...columns)}:${Math.max(last, ...columns)}`;
    if (wider === into.attributes["spans"]) return [];
    const { start, end } = into.open;
    return [withAttributes(source, { start, openEnd: end }, { spans: wider })];
  });
}

export function newCellSplices(
  cells: readonly NewCell[],
  collected: Collected,
  context: NewCellContext,
): readonly Splice[] {
  return [
    ...placedCells(cells, collected, context),
    ...firstRows(cells, collected, context),
    ...extent(cells, collected, context),
    ...spans(cells, context),
  ];
}
