import type { Fault } from "../../../core";
import { isFaultValue, isMatrixResult } from "./hostValues";
import type { CallResult, HostArgument } from "./hostValues";

/** One call of one of our functions, as it happened. */
export interface CallRecord {
  readonly id: string;
  readonly args: readonly HostArgument[];
  readonly outcome: { readonly value: CallResult } | { readonly fault: Fault };
}

/** The place of a call: the engine's own key of a sheet, and the cell. */
export interface CallSite {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** The calls of the latest calculation of each cell. */
export interface CallSites {
  /** Begins a calculation: a cell that calculates again forgets its earlier calls. */
  begin(): void;
  add(site: CallSite, call: CallRecord): void;
  at(site: CallSite): readonly CallRecord[];
  /** Keeps why one of the sheet's own functions refused its arguments. */
  refuse(site: CallSite, fault: Fault): void;
  refusals(site: CallSite): readonly Fault[];
  /** Forgets a cell's calls: its formula begins again. */
  forget(site: CallSite): void;
  /** Forgets everything: cells have moved. */
  clear(): void;
}

const keyOf = ({ sheetId, row, column }: CallSite): string => `${sheetId}!${row}:${column}`;

export const createCallSites = (): CallSites => {
  const entries = new Map<string, { pass: number; calls: CallRecord[]; refusals: Fault[] }>();
  let pass = 0;
  const current = (site: CallSite) => {
    const key = keyOf(site);
    const entry = entries.get(key);
    if (entry !== undefined && entry.pass === pass) return entry;
    const fresh = { pass, calls: [], refusals: [] };
    entries.set(key, fresh);
    return fresh;
  };
  return {
    begin: () => {
      pass += 1;
    },
    add: (site, call) => void current(site).calls.push(call),
    at: (site) => entries.get(keyOf(site))?.calls ?? [],
    refuse: (site, fault) => void current(site).refusals.push(fault),
    refusals: (site) => entries.get(keyOf(site))?.refusals ?? [],
    forget: (site) => void entries.delete(keyOf(site)),
    clear: () => entries.clear(),
  };
};

/** The fault that explains an error value in a cell: that of the last call there that ended in this error. */
export const faultOf = (calls: readonly CallRecord[], code: string): Fault | undefined => {
  for (const call of [...calls].reverse()) {
    const { outcome } = call;
    if ("fault" in outcome && outcome.fault.code === code) return outcome.fault;
  }
  return undefined;
};

/** The fault in one cell of a call's spill; rows and columns count from the formula's own cell. */
export const spilledFaultOf = (
  calls: readonly CallRecord[],
  code: string,
  down: number,
  right: number,
): Fault | undefined => {
  for (const { outcome } of [...calls].reverse()) {
    const cell = "value" in outcome && isMatrixResult(outcome.value) ? outcome.value[down]?.[right] : undefined;
    if (isFaultValue(cell) && cell.code === code) return cell;
  }
  return undefined;
};
