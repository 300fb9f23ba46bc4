/**
 * Units as Explain, notes and help pages show them beside a value: a pressure says what it counts from, a COP its EER, a
 * cooling its tons, much heat its MMBtu.
 */
import { isFault } from "../values/fault";
import type { CellOut } from "../call/present";
import { labelOf } from "../define/argument";
import type { ResultShape, SingleResult } from "../define/result";
import { KINDS, readableNumber, type KindName, type System } from "../values/quantity";

/** What a pressure counts from. */
export type ShownBasis = "gauge" | "absolute";

const PRESSURES: Readonly<Record<ShownBasis, Readonly<Record<System, string>>>> = {
  gauge: { US: "psig", SI: "kPa gauge" },
  absolute: { US: "psia", SI: "kPa absolute" },
};

/** BTU/h of 1 W by the International Table BTU, rounded. */
const EER_OF_COP = 3.412142;
const TON = 12_000;
/** From here on heat is said in millions too. */
const MUCH_HEAT = 1e7;

/** What a US reader knows the value by besides. */
function besides(value: number, kind: KindName, description: string): string {
  if (kind === "COP") return `(EER ${readableNumber(value * EER_OF_COP)})`;
  const { text } = KINDS[kind].US;
  if (text === "BTU/h" && /\bcooling\b/i.test(description) && value >= TON / 2) {
    const tons = readableNumber(value / TON);
    return `(${tons} ${tons === "1" ? "ton" : "tons"})`;
  }
  return text === "BTU" && Math.abs(value) >= MUCH_HEAT ? `(${readableNumber(value / 1e6)} MMBtu)` : "";
}

/** The unit of a shown value; a pressure is absolute unless its basis says otherwise. */
export function readableUnit(
  value: unknown,
  kind: KindName,
  system: System,
  { basis = "absolute", description = "" }: { readonly basis?: ShownBasis; readonly description?: string } = {},
): string {
  const unit = kind === "pressure" ? PRESSURES[basis][system] : KINDS[kind][system].text;
  const more = system === "US" && typeof value === "number" ? besides(value, kind, description) : "";
  return [unit, more].filter((text) => text !== "").join(" ");
}

/** The unit of a result: one on the argument `basis` counts from what that says, another from what its description says. */
export function resultUnit(single: SingleResult, value: unknown, system: System, basis: ShownBasis): string {
  if (single.type === "word") return "";
  const { kind, reading, description } = single;
  const own = reading === true ? basis : /\bgauge\b/.test(description) ? "gauge" : "absolute";
  return readableUnit(value, kind, system, { basis: own, description });
}

/** What a call's argument `basis` says, by its shown arguments. */
export const basisOf = (args: readonly { readonly label: string; readonly value: unknown }[]): ShownBasis =>
  args.some(({ label, value }) => label === "basis" && value === "absolute") ? "absolute" : "gauge";

type Cells<C> = readonly (readonly C[])[];

/** A result's cells with the units of a list and the heads of a table as people read them. */
export function readableCells<C>(returns: ResultShape, cells: Cells<C>, system: System, basis: ShownBasis): Cells<C> {
  if (returns.type === "list") {
    const rows = Object.values(returns.rows);
    return cells.map((line, at) => {
      const [label, value] = line;
      const single = rows[at];
      const known = single !== undefined && !isFault(value) && typeof value === "number" && line.length === 3;
      return known ? [label, value, resultUnit(single, value, system, basis)] : line;
    }) as Cells<C>;
  }
  if (returns.type !== "table") return cells;
  const [heads = [], ...body] = cells;
  const columns = Object.entries(returns.columns);
  const shown = heads.map((head, at) => {
    const [key, single] = columns[at] ?? [];
    if (key === undefined || single?.type !== "quantity" || single.kind !== "pressure") return head;
    return `${labelOf(key)} (${resultUnit(single, undefined, system, basis)})`;
  });
  return [shown, ...body] as unknown as Cells<C>;
}

/** A cell's text. */
export const readableCell = (cell: CellOut | null): string => {
  if (cell === null) return "";
  if (isFault(cell)) return `${cell.code} ${cell.message}`;
  return typeof cell === "number" ? readableNumber(cell) : String(cell);
};
