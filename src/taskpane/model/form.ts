/** The arguments of a function as fields to fill in: what a field's text means, and the call that the fields make. */
import {
  type ArgData,
  type CellFunction,
  type CellInput,
  defaultText,
  formulaOf,
  KINDS,
  labelOf,
  placedArgs,
  type System,
} from "../../../core";
import { resumeWhenReady } from "../../workbook/pending";
import { isCellFault, type Address, type Area, type CellValue, type Workbook } from "../../workbook/port";
import { addressText, cellsText, parseReference } from "../../workbook/reader/reference";
import type { PanelEngine } from "../engine";
import type { Chosen } from "./insertChosen";
import type { CallExample } from "./insertion";

export interface FormField {
  readonly name: string;
  readonly label: string;
  readonly arg: ArgData;
  /** It takes a range of cells; left blank, the example's values are written as inputs. */
  readonly range: boolean;
  /** The words that may be chosen; missing where anything may be typed. */
  readonly words?: readonly string[];
  /** Words that may be typed in a number's place. */
  readonly hints?: readonly string[];
  /** What the example gives. */
  readonly text: string;
}

const RANGES = new Set(["block", "rows", "sheet"]);

const textOf = (value: CellInput): string =>
  value === null || Array.isArray(value)
    ? ""
    : typeof value === "boolean"
      ? String(value).toUpperCase()
      : String(value);

/** Undefined for a function that takes any number of arguments: it has no form. */
export function fieldsOf(definition: CellFunction, { raw }: CallExample): readonly FormField[] | undefined {
  const placed = placedArgs(definition);
  if (placed.some(([, { shape }]) => shape.type === "repeat")) return undefined;
  return placed.map(([name, arg], place) => {
    const { shape } = arg;
    const words = shape.type === "choice" ? shape.words : shape.type === "yes/no" ? ["TRUE", "FALSE"] : undefined;
    const hints = shape.type === "either" ? shape.choice.words : undefined;
    return {
      name,
      label: labelOf(name),
      arg,
      range: RANGES.has(shape.type),
      text: textOf(raw[place] ?? null),
      ...(words !== undefined && { words }),
      ...(hints !== undefined && { hints }),
    };
  });
}

/** The system that the fields choose. */
export const chosenSystem = (fields: readonly FormField[], texts: readonly string[]): System =>
  texts[fields.findIndex(({ name }) => name === "units")]?.trim().toUpperCase() === "SI" ? "SI" : "US";

/** The unit of a plain number; where another argument decides on the kind, by that argument's text. */
export function fieldUnit({ arg: { shape } }: FormField, system: System, textAt: (name: string) => string): string {
  const inner = shape.type === "either" ? shape.quantity : shape;
  if (inner.type === "several") return KINDS[inner.kind][system].text;
  if (inner.type !== "quantity") return "";
  const kind = typeof inner.kind === "string" ? inner.kind : inner.kind.kinds[textAt(inner.kind.choice)];
  return kind === undefined ? "" : KINDS[kind][system].text;
}

/** The default or what a blank means, for the field's greyed text. */
export function blankText({ arg, range }: FormField, system: System): string {
  if (range) return "blank: the example’s values";
  const preset = defaultText(arg, system);
  return preset !== "" ? preset : arg.presence === "required" ? "needed" : "may be left out";
}

/** A number where the text is one and the argument takes one. */
const plainValue = ({ arg: { shape } }: FormField, text: string): CellInput => {
  if (text === "") return null;
  if (shape.type === "yes/no") return text === "TRUE";
  const number = Number(text.replace(/(\d),(?=\d{3})/g, "$1"));
  return shape.type !== "choice" && shape.type !== "text" && Number.isFinite(number) ? number : text;
};

/** Where a field's text refers to; undefined for a plain value. */
async function areaOf(book: Workbook, text: string, from: Address): Promise<Area | undefined> {
  if (!text.startsWith("=")) return undefined;
  const reference = text.slice(1).trim();
  const meaning = parseReference(reference);
  if (meaning?.kind === "cells" && !meaning.spill) {
    const { sheet = from.sheet, area } = meaning;
    return { sheet, ...area };
  }
  const [area] = meaning === undefined ? [] : await book.resolve([{ text: reference, from }]);
  if (area === undefined) throw new Error(`${text} is no cell or range: write one such as =B4, or a plain value.`);
  return area;
}

const referenceText = (area: Area, sheet: string): string => {
  const cells = cellsText(area);
  if (area.sheet.toLowerCase() === sheet.toLowerCase()) return cells;
  const first = addressText(area);
  return `${first.slice(0, first.lastIndexOf("!"))}!${cells}`;
};

const sound = (value: CellValue, label: string): string | number | boolean | null => {
  if (isCellFault(value)) throw new Error(`${label}: the cell holds ${value.code}.`);
  return value;
};

async function cellsAt(book: Workbook, area: Area, { label, range }: FormField): Promise<CellInput> {
  const [block] = await book.read([area]);
  const values = (block?.values ?? []).map((row) => row.map((value) => sound(value, label)));
  if (range) return values;
  if (area.rows * area.columns !== 1) throw new Error(`${label}: takes one cell, got ${cellsText(area)}.`);
  return values[0]?.[0] ?? null;
}

/** What a form is filled into. */
export interface Filling {
  readonly book: Workbook;
  readonly engine: PanelEngine;
  readonly definition: CellFunction;
  readonly example: CallExample;
  readonly fields: readonly FormField[];
}

/**
 * The call that the fields make, with its result.
 * @param from the cell that the formula goes to, or any on its sheet
 * @throws Error with a sentence where a field refers to nothing
 */
export async function filledCall(filling: Filling, texts: readonly string[], from: Address): Promise<Chosen> {
  const { book, engine, definition, example, fields } = filling;
  const references = new Map<number, string>();
  const raw: CellInput[] = [];
  for (const [place, field] of fields.entries()) {
    const text = (texts[place] ?? "").trim();
    const area = await areaOf(book, text, from);
    if (area !== undefined) references.set(place, referenceText(area, from.sheet));
    if (area !== undefined) raw.push(await cellsAt(book, area, field));
    else raw.push(field.range ? (example.raw[place] ?? null) : plainValue(field, text));
  }
  while (raw.length > 0 && raw.at(-1) === null && !references.has(raw.length - 1)) raw.pop();
  const outcome = await resumeWhenReady(() => engine.call(definition.id, raw));
  const call = { raw, formula: formulaOf(definition, raw), system: chosenSystem(fields, texts), outcome };
  return { definition, example: call, references };
}

/** How far a range reaches from its first cell. */
const REACH = { rows: 200, columns: 60 };

const isBlank = (value: CellValue | undefined): boolean => value === undefined || value === null || value === "";

/** The text that refers to the selected cell; of a range, to the filled cells from there right and down. */
export async function takenText(book: Workbook, { range, arg }: FormField): Promise<string> {
  const at = await book.selection();
  if (at === undefined) throw new Error("Select a cell first.");
  if (!range) return `=${addressText(at)}`;
  const [block] = await book.read([{ ...at, ...REACH }]);
  const values = block?.values ?? [];
  const deep = values.findIndex((row) => isBlank(row[0]));
  const rows = deep < 0 ? values.length : deep;
  const wide = (values[0] ?? []).findIndex((_, over) => values.slice(0, rows).every((row) => isBlank(row[over])));
  // A block's unit may be blank in its first line.
  const columns = arg.shape.type === "block" ? 3 : wide < 0 ? REACH.columns : wide;
  if (rows === 0 || columns === 0) throw new Error(`${addressText(at)} is empty: select the first cell of the range.`);
  return `=${referenceText({ ...at, rows, columns }, "")}`;
}
