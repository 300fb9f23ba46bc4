/** Headings and totals of tables: the table part repeats what the cells hold, and Excel repairs a file where they differ. */
import type { BookFacts, TableFacts } from "../book/facts";
import type { PartsEditor } from "../parts/edits";
import { refusal } from "../refusal";
import { contains } from "../sheet/formulas";
import { childOf, childrenOf, withAttributes, without, type XmlNode } from "../xml/node";
import { scanXml, rootPrefix } from "../xml/scan";
import { escapedXml, escapedCellText, type Splice } from "../xml/text";
import type { CellChange } from "./changes";

interface Touched {
  readonly change: CellChange;
  readonly column: number;
}

/** A table's name for an inner column with the characters escaped that structured references escape. */
const escapedColumn = (name: string): string => name.replace(/[[\]#'@]/g, "'$&");

function headingOf({ content, sheet, row, column }: CellChange, { name }: TableFacts): string {
  const value = content?.kind === "value" || content?.kind === "frozen" ? content.value : undefined;
  if ((typeof value !== "string" && typeof value !== "number") || String(value).trim() === "")
    throw refusal(
      "change",
      `A heading of the table ${name} (${sheet}, row ${row + 1}, column ${column + 1}) has to be a text.`,
    );
  return String(value);
}

/** Refuses a new heading where a formula calls the column by its old one: only Excel renames those. */
async function checkUnused(book: BookFacts, table: TableFacts, old: string, editor: PartsEditor): Promise<void> {
  const wanted = [`[${escapedXml(escapedColumn(old))}]`, `[@${escapedXml(escapedColumn(old))}]`].map((text) =>
    text.toLowerCase(),
  );
  const paths = [book.path, ...book.sheets.map(({ path }) => path), ...book.tables.map(({ path }) => path)];
  for (const path of paths) {
    const text = (await editor.text(path)).toLowerCase();
    if (wanted.some((piece) => text.includes(piece)))
      throw refusal(
        "change",
        `The heading ${JSON.stringify(old)} of the table ${table.name} is used in formulas: change it in Excel, which changes those too.`,
      );
  }
}

/** The changes with headings as texts; the table's columns are renamed with them. */
async function rename(
  book: BookFacts,
  table: TableFacts,
  touched: readonly Touched[],
  editor: PartsEditor,
): Promise<void> {
  const names = table.columns.map(({ name }) => name);
  for (const { change, column } of touched) {
    const old = names[column] ?? "";
    const next = headingOf(change, table);
    if (next === old) continue;
    await checkUnused(book, table, old, editor);
    names[column] = next;
  }
  if (new Set(names.map((name) => name.toLowerCase())).size < names.length)
    throw refusal("change", `Two headings of the table ${table.name} would be the same.`);
  const source = await editor.text(table.path);
  const nodes = childrenOf(childOf(scanXml(table.path, source), "tableColumns"), "tableColumn");
  const splices = nodes.flatMap((node, at): Splice[] => {
    const name = names[at] ?? "";
    return name === table.columns[at]?.name ? [] : [nameSplice(source, node, name)];
  });
  await editor.splice(table.path, splices);
}

/** Line ends in a heading are written as _x000a_ in the table part, and as such in the cell. */
function nameSplice(source: string, node: XmlNode, name: string): Splice {
  const unescaped = escapedCellText(name).replaceAll("\n", "_x000a_");
  const plain = unescaped
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&");
  return withAttributes(source, node, { name: plain });
}

/** A totals cell that no longer shows what the table computes. */
function totalsSplices(source: string, node: XmlNode, { content }: CellChange): Splice[] {
  const formula = childOf(node, "totalsRowFormula");
  const value = content !== undefined && "value" in content ? content.value : undefined;
  const label = typeof value === "string" && content?.kind !== "formula" ? value : undefined;
  const custom = content?.kind === "formula" ? "custom" : undefined;
  const attributes = withAttributes(source, node, { totalsRowLabel: label, totalsRowFunction: custom });
  const gone = formula === undefined ? [] : [without(formula)];
  if (content?.kind !== "formula") return [attributes, ...gone];
  const prefix = rootPrefix(source);
  const written = `<${prefix}totalsRowFormula>${escapedXml(content.formula)}</${prefix}totalsRowFormula>`;
  if (node.empty) {
    const open = attributes.text.replace(/\s*\/>$/, ">");
    const name = /^<([^\s/>]+)/.exec(open)?.[1] ?? "";
    return [{ from: node.start, to: node.end, text: `${open}${written}</${name}>` }];
  }
  return [attributes, ...gone, { from: node.closeStart, to: node.closeStart, text: written }];
}

async function totals(table: TableFacts, touched: readonly Touched[], editor: PartsEditor): Promise<void> {
  const source = await editor.text(table.path);
  const nodes = childrenOf(childOf(scanXml(table.path, source), "tableColumns"), "tableColumn");
  const splices = touched.flatMap(({ change, column }) => {
    const node = nodes[column];
    return node === undefined ? [] : totalsSplices(source, node, change);
  });
  await editor.splice(table.path, splices);
}

/** Headings have no formula: freezing one changes nothing. */
const isNewHeading = ({ content }: CellChange): boolean => content?.kind !== "frozen" || content.value !== undefined;

const isContent = ({ content }: CellChange): boolean => content !== undefined && content.kind !== "result";

/** Brings the table parts in line with the cells that change. */
export async function patchTables(book: BookFacts, changes: readonly CellChange[], editor: PartsEditor): Promise<void> {
  for (const table of book.tables) {
    const { area, headerRows, totalsRows } = table;
    const inside = changes.filter(
      (change) => change.sheet === table.sheet && isContent(change) && contains(area, change),
    );
    const touched = inside.map((change) => ({ change, column: change.column - area.column }));
    const headings = touched.filter(({ change }) => change.row < area.row + headerRows && isNewHeading(change));
    const last = area.row + area.rows - totalsRows;
    const sums = touched.filter(({ change }) => change.row >= last && totalsRows > 0);
    if (headings.length > 0) await rename(book, table, headings, editor);
    if (sums.length > 0) await totals(table, sums, editor);
  }
}

/** A heading is a text, whatever was typed. */
export function asHeading(book: BookFacts, change: CellChange): CellChange {
  const { content } = change;
  if (content?.kind !== "value" || typeof content.value !== "number") return change;
  const isHeading = book.tables.some(
    ({ sheet, area, headerRows }) =>
      sheet === change.sheet && contains(area, change) && change.row < area.row + headerRows,
  );
  return isHeading ? { ...change, content: { kind: "value", value: String(content.value) } } : change;
}
