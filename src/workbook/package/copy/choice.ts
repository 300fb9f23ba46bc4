/** What a copy to hand over keeps, what it drops, and what the report says of it. */
import type { Address } from "../../port";

export type HiddenKind =
  | "sheet"
  | "rows"
  | "columns"
  | "comments"
  | "name"
  | "property"
  | "pivot table"
  | "macros"
  | "links to other workbooks"
  | "connections"
  | "scenarios"
  | "custom XML"
  | "web extensions"
  | "printer settings"
  | "other";

/** Something that is hidden. */
export interface HiddenItem {
  /** For the choice; equal as long as the workbook is. */
  readonly id: string;
  readonly kind: HiddenKind;
  readonly sheet?: string;
  /** For the user: "rows 24 to 26", "Author: …". */
  readonly text: string;
  readonly byDefault: "keep" | "drop";
  /** Never kept in a copy, whatever is chosen. */
  readonly alwaysDropped?: true;
}

export interface CopyChoice {
  /** The sheets to keep, by name. Others join them where something kept needs them. */
  readonly sheets: readonly string[];
  /** Ids of hidden items to keep or drop, against their default. */
  readonly keep?: ReadonlySet<string>;
  readonly drop?: ReadonlySet<string>;
}

/** A formula that became its value. */
export interface FrozenFormula extends Address {
  readonly formula: string;
  /** The end of "frozen, since it uses …". */
  readonly reason: string;
}

export interface KeptSheet {
  readonly name: string;
  /** Why it is kept though nobody chose it; empty where it was chosen. */
  readonly reasons: readonly string[];
}

export interface CopyReport {
  readonly sheets: readonly KeptSheet[];
  readonly droppedSheets: readonly string[];
  readonly frozen: readonly FrozenFormula[];
  /** What else was taken away, each a whole sentence. */
  readonly sentences: readonly string[];
}

export const isKept = ({ id, byDefault, alwaysDropped }: HiddenItem, { keep, drop }: CopyChoice): boolean =>
  alwaysDropped !== true && (keep?.has(id) === true || (byDefault === "keep" && drop?.has(id) !== true));
