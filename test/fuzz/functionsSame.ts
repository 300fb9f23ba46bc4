/** Whether two ways to a result agree: by value in base units, word by word, fault by code. */
import {
  isFault,
  KINDS,
  type CellFunction,
  type Compiled,
  type Fault,
  type Out,
  type SingleResult,
  type System,
} from "../../core";
import { singlesOf } from "../../core/kernel/define/unitsArgument";
import { toBase } from "../../core/kernel/values/quantity";

type Result = Out | Fault;

/** The declared value in each cell of a result, undefined for labels, heads and units. */
const singleAt = ({ returns }: CellFunction, row: number, column: number): SingleResult | undefined => {
  const singles = singlesOf(returns).map(([, single]) => single);
  switch (returns.type) {
    case "quantity":
    case "word":
      return singles[0];
    case "list":
      return column === 1 ? singles[row] : undefined;
    case "table":
      return row === 0 ? undefined : singles[column];
    case "row":
      return singles[column];
    default:
      return undefined;
  }
};

/** Share by which rounding of units, carried through the solvers, may part two results. */
const ROUNDING = 1e-6;

const ATMOSPHERE = 101_325;

/** The tables of the two systems count enthalpy and entropy from other zeros. */
const hasOwnZero = ({ kind }: { readonly kind: string }): boolean => kind === "enthalpy" || kind === "entropy";

const agree = (a: number, b: number, single: SingleResult | undefined, systems: readonly [System, System]): boolean => {
  if (single?.type !== "quantity") return Object.is(a, b) || a === b;
  if (systems[0] !== systems[1] && hasOwnZero(single)) return true;
  const units = KINDS[single.kind];
  const [here, there] = [toBase(a, units[systems[0]]), toBase(b, units[systems[1]])];
  const zero = single.reading ? ATMOSPHERE : 0;
  return Math.abs(here - there) <= ROUNDING * (Math.max(Math.abs(here), Math.abs(there)) + zero) + 1e-9;
};

/** Place of a table's column that names the unit of its row; -1 where the columns have units of their own. */
const unitColumn = ({ returns }: CellFunction): number =>
  returns.type === "table" ? Object.keys(returns.columns).indexOf("unit") : -1;

/** What a number in a row with its own unit may be: a temperature's row holds differences too. */
function kindsOfRow(here: unknown, there: unknown, systems: readonly [System, System]): readonly SingleResult[] {
  const named = (Object.keys(KINDS) as (keyof typeof KINDS)[]).filter(
    (kind) => KINDS[kind][systems[0]].text === here && KINDS[kind][systems[1]].text === there,
  );
  const kinds = named.includes("temperature") ? [...named, "temperature difference" as const] : named;
  return kinds.map((kind) => ({ type: "quantity", kind, description: "" }));
}

const rowsOf = (out: Out): readonly (readonly unknown[])[] =>
  Array.isArray(out) ? (out as readonly (readonly unknown[])[]) : [[out]];

/** What differs between two results of one function, "" where they agree. */
export function difference(
  { definition }: Compiled,
  here: Result,
  there: Result,
  systems: readonly [System, System] = ["US", "US"],
): string {
  if (isFault(here) || isFault(there)) {
    const [a, b] = [here, there].map((one) => (isFault(one) ? one.code : "a value"));
    return a === b
      ? ""
      : `${a} against ${b}: ${[here, there].map((one) => (isFault(one) ? one.message : "")).join("")}`;
  }
  const [rows, others] = [rowsOf(here), rowsOf(there)];
  if (rows.length !== others.length) return `${rows.length} rows against ${others.length}`;
  const unitAt = unitColumn(definition);
  for (const [at, row] of rows.entries()) {
    const ofRow = unitAt < 0 || at === 0 ? [] : kindsOfRow(row[unitAt], others[at]?.[unitAt], systems);
    for (const [place, cell] of row.entries()) {
      const other = others[at]?.[place];
      const single = singleAt(definition, at, place);
      if (isFault(cell) && isFault(other) && cell.code === other.code) continue;
      if (typeof cell === "number" && typeof other === "number" && agree(cell, other, single, systems)) continue;
      if (
        typeof cell === "number" &&
        typeof other === "number" &&
        ofRow.some((each) => agree(cell, other, each, systems))
      )
        continue;
      // Texts may name a unit of the call's system.
      if (typeof cell === "string" && typeof other === "string" && (cell === other || systems[0] !== systems[1]))
        continue;
      if (cell === other) continue;
      return `row ${at + 1}, column ${place + 1}: ${String(cell)} against ${String(other)}`;
    }
  }
  return "";
}
