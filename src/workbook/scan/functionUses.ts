/** All cells that use our functions, by function and sheet, failures first. */
import type { Address } from "../port";
import { addressText } from "../reader/reference";
import type { CautionReport } from "./report";

export interface FunctionUse {
  readonly id: string;
  readonly address: Address;
  readonly formula: string;
  /** The cell's error with its message; undefined where it works. */
  readonly error?: string;
}

const order = (a: FunctionUse, b: FunctionUse): number =>
  Number(a.error === undefined) - Number(b.error === undefined) ||
  a.id.localeCompare(b.id) ||
  a.address.sheet.localeCompare(b.address.sheet) ||
  a.address.row - b.address.row ||
  a.address.column - b.address.column;

/** One entry for each function of each cell; a cell with two functions comes twice. */
export function functionUses({ cells, failing }: CautionReport): readonly FunctionUse[] {
  const errors = new Map(
    failing.map(({ address, error, message }) => [addressText(address), [error, message ?? ""].join(" ").trim()]),
  );
  return cells
    .flatMap(({ address, formula, ids }) => {
      const error = errors.get(addressText(address));
      return [...new Set(ids)].map((id): FunctionUse => ({
        id,
        address,
        formula,
        ...(error !== undefined && { error }),
      }));
    })
    .sort(order);
}

/** Those whose function, cell, formula or error holds all words of a text. */
export function filteredUses(uses: readonly FunctionUse[], text: string): readonly FunctionUse[] {
  const words = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== "");
  if (words.length === 0) return uses;
  return uses.filter(({ id, address, formula, error = "" }) => {
    const all = [id, addressText(address), formula, error].join(" ").toLowerCase();
    return words.every((word) => all.includes(word));
  });
}
