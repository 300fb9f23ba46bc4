/** Heads of a maker's table by the words that people use. */
import { normalizeKey } from "../../kernel/define/argument";
import type { KindName } from "../../kernel/values/quantity";

export type MakerColumn = "outdoor" | "wetBulb" | "stage" | "airflow" | "capacity" | "power";

export const COLUMN_KINDS: Readonly<Record<Exclude<MakerColumn, "stage">, KindName>> = {
  outdoor: "temperature",
  wetBulb: "temperature",
  airflow: "air flow",
  capacity: "heat rate",
  power: "electric power",
};

export interface Head {
  readonly column: MakerColumn;
  /** Empty: the unit of the call. */
  readonly unit: string;
}

/** Columns that are passed over. */
const PASSED_OVER =
  /sens|shc|shr|s\/t|latent|^eer|^cop|psi|pressure|amp|current|subcool|superheat|ratio|edb|idb|entering(air)?drybulb|indoor(air)?drybulb|return/;

/** In this order: the first that fits decides. Tested on the name without its unit, then on the whole head. */
const NAMES: readonly (readonly [MakerColumn, RegExp])[] = [
  ["wetBulb", /wetbulb|^e?wb|id?wb|^wbt/],
  ["airflow", /airflow|airvolume|cfm|airquantity|l\/s/],
  ["stage", /stage|speed|^step|^mode|^hz|frequency|rpm/],
  ["outdoor", /outdoor|outside|ambient|^od|^oat|^oa|condenser|^t?out|^to$|drybulb/],
  ["capacity", /capacity|cooling|cap$|^tc$|^qc?$/],
];
const BY_UNIT: readonly (readonly [MakerColumn, RegExp])[] = [
  ["power", /power|kw|watt|input|^w$|^pi?$/],
  ["capacity", /mbt?u?h|btu|total|gross|net|^tons?$/],
];

const UNIT_BEHIND = /^(.*?)[\s,]*[([]\s*([^()[\]]+?)\s*[)\]]\s*$/;
const UNIT_LAST = /^(.*\S)[\s,/]+(°\s?[FC]|deg\.?\s?[FC]|MBT?U?H|k?BTU\/?h|btuh|tons?|k?W|[s]?cfm|m[³3]\/h|l\/s)\.?$/i;
const UNIT_ALONE = /^(MBT?U?H|k?BTU\/?h|k?W|watts?|cfm)$/i;

/** "Capacity, MBh", "kW", "Outdoor (°F)": name and unit. */
function splitHead(text: string): readonly [string, string] {
  const [, name, unit] = UNIT_BEHIND.exec(text) ?? UNIT_LAST.exec(text) ?? [];
  if (name !== undefined && unit !== undefined && name !== "") return [name, unit];
  return UNIT_ALONE.test(text) ? [text, text] : [text, ""];
}

/** What a head means; undefined for a column that doesn't count. */
export function tableHeadOf(text: string): Head | undefined {
  const [name, unit] = splitHead(text.trim());
  const [own, whole] = [normalizeKey(name), normalizeKey(text)];
  const named = NAMES.find(([, words]) => words.test(own))?.[0];
  if (named === "wetBulb" && /outdoor|^od/.test(own)) return undefined;
  if (PASSED_OVER.test(own)) return undefined;
  const column = named ?? BY_UNIT.find(([, words]) => words.test(whole))?.[0];
  return column && { column, unit };
}

/** A unit as the unit reader knows it. */
export const tableUnit = (unit: string): string => {
  const key = normalizeKey(unit);
  if (/^(deg)?f$/.test(key)) return "°F";
  if (/^(deg)?c$/.test(key)) return "°C";
  if (/^mbt?u?h$/.test(key)) return "MBH";
  if (/^btu\/?h$/.test(key)) return "BTU/h";
  if (/^watts?$/.test(key)) return "W";
  if (/^tons?$/.test(key)) return "ton";
  return key === "scfm" ? "cfm" : unit;
};
