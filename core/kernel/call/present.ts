/** Converts results for the cell: base values to its units, in the declared shape, every number finite. */
import { labelOf } from "../define/argument";
import { renderMarks, isFault, notAvailable, hostError, type Fault, type FaultError } from "../values/fault";
import { gaugeZero } from "../define/pressureBasis";
import { KINDS, fromBase, type System } from "../values/quantity";
import type { ResultShape, GridCell, QuantityResult, SingleResult } from "../define/result";

/** A cell of a result. */
export type CellOut = GridCell | Fault;
export type Out = GridCell | readonly (readonly CellOut[])[];

/** What presentation needs to know of the call. */
export interface PresentContext {
  readonly system: System;
  /** The admitted argument `basis`, where there is one. */
  readonly basis: unknown;
}

export const unitText = (single: SingleResult, system: System): string =>
  single.type === "quantity" ? KINDS[single.kind][system].text : "";

const beyond = (label: string): FaultError =>
  notAvailable(`${label}: these inputs lead beyond any number; check their size and units`);

export const presentNumber = (value: number, single: QuantityResult, label: string, manner: PresentContext): number => {
  const absolute = single.reading ? value - gaugeZero(manner.basis) : value;
  const shown = fromBase(absolute, KINDS[single.kind][manner.system]);
  if (!Number.isFinite(shown)) throw beyond(label);
  return shown;
};

const inFault = (fault: Fault, system: System): Fault => {
  const message = renderMarks(fault.message, system);
  return message === fault.message ? fault : hostError(fault.code, message);
};

const entry = (value: unknown, single: SingleResult, label: string, manner: PresentContext): CellOut => {
  if (isFault(value)) return inFault(value, manner.system);
  if (value === "" || (single.type === "quantity" && single.or !== undefined && single.or === value)) return value;
  if (single.type === "word") return String(value);
  try {
    return presentNumber(value as number, single, label, manner);
  } catch (fault) {
    if (isFault(fault)) return fault;
    throw fault;
  }
};

type Values = Readonly<Record<string, unknown>>;

/** A column's head: "loss (BTU)". */
export const headOf = (key: string, single: SingleResult, system: System): string => {
  const text = unitText(single, system);
  return text === "" ? labelOf(key) : `${labelOf(key)} (${text})`;
};

const lines = (
  columns: Readonly<Record<string, SingleResult>>,
  rows: readonly Values[],
  manner: PresentContext,
): CellOut[][] => {
  const slots = Object.entries(columns).map(([key, single]) => ({ key, single, label: labelOf(key) }));
  return rows.map((values) => slots.map(({ key, single, label }) => entry(values[key], single, label, manner)));
};

/** Converts what `compute` returned into what the cell shows. */
export const present = (gives: ResultShape, result: unknown, manner: PresentContext): Out => {
  switch (gives.type) {
    case "quantity":
      return presentNumber(result as number, gives, gives.description, manner);
    case "word":
      return String(result);
    case "list":
      return Object.entries(gives.rows).flatMap(([key, single]) => {
        const label = labelOf(key);
        const value = (result as Values)[key];
        if (value === undefined && single.type === "quantity" && single.optional) return [];
        return [[label, entry(value, single, label, manner), unitText(single, manner.system)]];
      });
    case "table":
      return [
        Object.entries(gives.columns).map(([key, single]) => headOf(key, single, manner.system)),
        ...lines(gives.columns, result as readonly Values[], manner),
      ];
    case "row":
      return lines(gives.cells, [result as Values], manner);
    case "grid":
      return squared(result as readonly (readonly GridCell[])[]);
  }
};

/** Pads rows to equal length: a spill is a rectangle. */
const squared = (grid: readonly (readonly GridCell[])[]): GridCell[][] => {
  const width = Math.max(1, ...grid.map((line) => line.length));
  return grid.map((line) => [...line, ...Array<GridCell>(width - line.length).fill("")]);
};
