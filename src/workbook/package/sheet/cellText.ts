/** A cell as the file writes it. */
import type { CellValue } from "../../port";
import { isCellFault } from "../../port";
import { columnLetters } from "../../reader/reference";
import { refusal } from "../refusal";
import { escapedXml, escapedAttribute, escapedCellText } from "../xml/text";

/** Excel's limits: a cell's text and a formula. */
const LONGEST_TEXT = 32_767;
const LONGEST_FORMULA = 8_192;

/** Errors that the format knows: ECMA-376 part 1, 18.18.11. Excel stores the newer ones as #VALUE! with a note elsewhere. */
const ERRORS: ReadonlySet<string> = new Set("#NULL! #DIV/0! #VALUE! #REF! #NAME? #NUM! #N/A #GETTING_DATA".split(" "));

export interface CellParts {
  readonly row: number;
  readonly column: number;
  /** Attributes as they are written, without r, s, t, cm and vm: " ph=\"1\"". */
  readonly attributes?: string;
  readonly style: number;
  readonly cm?: number | undefined;
  readonly vm?: number | undefined;
  /** The whole `<f>` element. */
  readonly formula?: string | undefined;
  readonly value: CellValue;
  /** Other children as they are written. */
  readonly others?: string;
}

/** Texts that a person would have to type behind an apostrophe. */
export const needsQuote = (value: CellValue): boolean => typeof value === "string" && /^[=+\-@]/.test(value);

interface Typed {
  readonly type: string;
  readonly content: string;
}

const NOTHING: Typed = { type: "", content: "" };

const attribute = (name: string, value: string | number | undefined): string =>
  value === undefined || value === "" ? "" : ` ${name}="${value}"`;

function typed(value: CellValue, hasFormula: boolean, prefix: string): Typed {
  if (value === null) return NOTHING;
  const v = (text: string): string => `<${prefix}v>${text}</${prefix}v>`;
  if (isCellFault(value)) return { type: "e", content: v(ERRORS.has(value.code) ? value.code : "#VALUE!") };
  if (typeof value === "boolean") return { type: "b", content: v(value ? "1" : "0") };
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw refusal("change", `A cell can't hold ${value}.`);
    return { type: "", content: v(String(value)) };
  }
  if (value.length > LONGEST_TEXT)
    throw refusal(
      "change",
      `A text of ${value.length} characters is longer than the ${LONGEST_TEXT} that a cell holds.`,
    );
  const text = escapedCellText(value);
  if (hasFormula) return { type: "str", content: v(text) };
  const p = prefix;
  return { type: "inlineStr", content: `<${p}is><${p}t xml:space="preserve">${text}</${p}t></${p}is>` };
}

/** @param prefix of the sheet's own vocabulary, mostly empty */
export function cellText(cell: CellParts, prefix: string): string {
  const { type, content } = typed(cell.value, cell.formula !== undefined, prefix);
  const address = columnLetters(cell.column) + String(cell.row + 1);
  const attributes =
    attribute("r", address) +
    attribute("s", cell.style === 0 ? undefined : cell.style) +
    attribute("t", type) +
    attribute("cm", cell.cm) +
    attribute("vm", cell.vm) +
    (cell.attributes ?? "");
  const inner = (cell.formula ?? "") + content + (cell.others ?? "");
  return inner === "" ? `<${prefix}c${attributes}/>` : `<${prefix}c${attributes}>${inner}</${prefix}c>`;
}

/** A cell of an unprefixed sheet that holds nothing but a value. */
export function valueCellText(address: string, style: number, value: CellValue): string {
  const { type, content } = typed(value, false, "");
  const open = `<c r="${address}"` + (style === 0 ? "" : ` s="${style}"`) + (type === "" ? "" : ` t="${type}"`);
  return content === "" ? `${open}/>` : `${open}>${content}</c>`;
}

/** @param area of an array formula, as text */
export function formulaText(formula: string, prefix: string, area?: string): string {
  if (formula.length > LONGEST_FORMULA)
    throw refusal(
      "change",
      `A formula of ${formula.length} characters is longer than the ${LONGEST_FORMULA} that a cell holds.`,
    );
  const array = area === undefined ? "" : ` t="array" ref="${area}"`;
  return `<${prefix}f${array}>${escapedXml(formula.replace(/^=/, ""))}</${prefix}f>`;
}

const OWN = new Set(["r", "s", "t", "cm", "vm"]);

/** The attributes that `cellText` doesn't write itself. */
export function otherAttributes(attributes: Readonly<Record<string, string>>): string {
  let text = "";
  for (const name in attributes) if (!OWN.has(name)) text += ` ${name}="${escapedAttribute(attributes[name] ?? "")}"`;
  return text;
}
