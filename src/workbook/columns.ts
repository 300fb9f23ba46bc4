/** Texts and values of many cells as columns: threads hand these over many times as fast as an object a cell. */
import { isCellFault, type CellValue } from "./port";
import { MOST_COLUMNS } from "./reader/reference";

/** A cell's row and column in one number. */
export const placeNumber = (row: number, column: number): number => row * MOST_COLUMNS + column;

/** One after the other in one text, each with where it ends. */
export interface TextColumn {
  readonly all: string;
  readonly ends: Uint32Array;
}

export interface ValueColumn {
  /** By the place in KINDS. */
  readonly kinds: Uint8Array;
  readonly numbers: Float64Array;
  /** Texts, and the codes of errors. */
  readonly texts: TextColumn;
}

const KINDS = ["nothing", "number", "text", "no", "yes", "error"] as const;

export function textColumn(texts: readonly string[]): TextColumn {
  const ends = new Uint32Array(texts.length);
  let end = 0;
  for (let at = 0; at < texts.length; at++) ends[at] = end += texts[at]?.length ?? 0;
  return { all: texts.join(""), ends };
}

export function textAt({ all, ends }: TextColumn, at: number): string {
  const from = at === 0 ? 0 : (ends[at - 1] ?? 0);
  const to = ends[at] ?? from;
  return from === to ? "" : all.slice(from, to);
}

function kindOf(value: CellValue): (typeof KINDS)[number] {
  if (value === null) return "nothing";
  if (typeof value === "number") return "number";
  if (typeof value === "string") return "text";
  if (typeof value === "boolean") return value ? "yes" : "no";
  return "error";
}

const textOf = (value: CellValue): string => (typeof value === "string" ? value : isCellFault(value) ? value.code : "");

/** @param values errors with their codes alone, as files hold them */
export function valueColumn(values: readonly CellValue[]): ValueColumn {
  return {
    kinds: Uint8Array.from(values, (value) => KINDS.indexOf(kindOf(value))),
    numbers: Float64Array.from(values, (value) => (typeof value === "number" ? value : 0)),
    texts: textColumn(values.map(textOf)),
  };
}

export function valueAt({ kinds, numbers, texts }: ValueColumn, at: number): CellValue {
  const kind = KINDS[kinds[at] ?? 0] ?? "nothing";
  if (kind === "nothing") return null;
  if (kind === "number") return numbers[at] ?? 0;
  if (kind === "text") return textAt(texts, at);
  return kind === "error" ? { code: textAt(texts, at) } : kind === "yes";
}
