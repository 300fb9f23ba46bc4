/** Arguments and results on a help page. */
import {
  type ArgData,
  type CellFunction,
  defaultText,
  type ResultShape,
  type KindName,
  labelOf,
  limitsText,
  type PlacedArg,
  placedArgs,
  readableUnit,
  resultUnit,
  type Shape,
  type SingleResult,
  type System,
} from "../../core";
import { code, escaped, html, table, type Cell, type Html } from "./html";

/** Whether an argument is what a gauge shows, unless the call says otherwise. */
const isGauge = ({ shape, description }: ArgData): boolean =>
  (shape.type === "quantity" && shape.reading === true) || /\bgauge\b/.test(description);

const kindsOf = (shape: Shape): readonly KindName[] => {
  if (shape.type === "either") return kindsOf(shape.quantity);
  if (shape.type === "several") return [shape.kind];
  if (shape.type !== "quantity") return [];
  return typeof shape.kind === "string" ? [shape.kind] : [...new Set(Object.values(shape.kind.kinds))];
};

const unitIn = (arg: ArgData, system: System): string =>
  kindsOf(arg.shape)
    .map((kind) => readableUnit(undefined, kind, system, { basis: isGauge(arg) ? "gauge" : "absolute" }))
    .filter((text) => text !== "")
    .join(" or ");

/** US and SI beside each other, once where they are equal. */
const both = (us: string, si: string): string => (us === si || si === "" ? us : `${us} (SI: ${si})`);

const ifOmitted = (arg: ArgData): string => {
  if (arg.shape.type === "repeat") return "none";
  if (arg.presence === "required") return "must be given";
  if (arg.presence === "optional") return "optional";
  return both(defaultText(arg, "US"), defaultText(arg, "SI"));
};

const limits = (shape: Shape): string => {
  if (shape.type === "block" || shape.type === "rows" || shape.type === "sheet") return "";
  return both(limitsText(shape, "US"), limitsText(shape, "SI"));
};

const HEADS = ["Argument", "What it is", "Unit", "Limits", "If omitted"];

const argRow = (name: Html, arg: ArgData): readonly Cell[] => [
  name,
  arg.description,
  both(unitIn(arg, "US"), unitIn(arg, "SI")),
  limits(arg.shape),
  ifOmitted(arg),
];

const insideTable = ([name, { shape }]: PlacedArg): string => {
  if (shape.type === "block") {
    const rows = Object.entries(shape.entries).map(([key, arg]) => argRow(html(escaped(labelOf(key))), arg));
    return table(`Labels in the range “${name}”`, ["Label", ...HEADS.slice(1)], rows);
  }
  if (shape.type === "rows") {
    const rows = Object.entries(shape.columns).map(([key, arg]) => argRow(html(escaped(labelOf(key))), arg));
    const size = `${String(shape.least)} to ${String(shape.most)} rows`;
    return table(`Columns of the range “${name}”, ${size}`, ["Column", ...HEADS.slice(1)], rows);
  }
  return "";
};

const BLANKS =
  "<p>Leave out an optional argument that you don't need; don't point at a blank cell, which Excel on Windows and on a Mac passes as 0.</p>";

const isOptional = ([, { presence, shape }]: PlacedArg): boolean => presence !== "required" && shape.type !== "repeat";

/** Every argument with unit, limits and default; then the labels or columns of ranges. */
export const argumentTables = (definition: CellFunction): string => {
  const args = placedArgs(definition);
  if (args.length === 0) return "<p>It takes no arguments.</p>";
  const first = table(
    "Arguments in their order",
    HEADS,
    args.map(([name, arg]) => argRow(code(name), arg)),
  );
  const advice = args.some(isOptional) ? BLANKS : "";
  return [first, advice, ...args.map(insideTable)].filter((text) => text !== "").join("\n");
};

const singleUnit = (single: SingleResult): string => {
  if (single.type === "word") return "text";
  const unit = (system: System): string => resultUnit(single, undefined, system, "gauge");
  return both(unit("US"), unit("SI"));
};

const singles = (caption: string, head: string, entries: Readonly<Record<string, SingleResult>>): string =>
  table(
    caption,
    [head, "What it is", "Unit"],
    Object.entries(entries).map(([key, single]) => [labelOf(key), single.description, singleUnit(single)]),
  );

const SPILLS = "It spills: leave the cells that it needs empty.";

/** What the cell shows. */
export const resultText = (gives: ResultShape): string => {
  const about = `<p>${escaped(gives.description.charAt(0).toUpperCase() + gives.description.slice(1))}`;
  switch (gives.type) {
    case "quantity": {
      const unit = singleUnit(gives);
      return `${about}${unit === "" ? "" : `, in ${escaped(unit)}`}.</p>`;
    }
    case "word":
      return `${about}, as text.</p>`;
    case "list":
      return `${about}: label, value and unit under each other. ${SPILLS}</p>\n${singles("Rows", "Row", gives.rows)}`;
    case "table":
      return `${about}: rows below a header.${gives.total ? " The last row is the total." : ""} ${SPILLS}</p>\n${singles("Columns", "Column", gives.columns)}`;
    case "row":
      return `${about}: values beside each other. ${SPILLS}</p>\n${singles("Cells", "Cell", gives.cells)}`;
    case "grid":
      return `${about}: a table. ${SPILLS}</p>`;
  }
};
