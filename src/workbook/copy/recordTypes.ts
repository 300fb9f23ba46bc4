/** What a record is made of. */
import type { CellInput } from "../../../core";
import type { Address } from "../port";
import type { Engine } from "../reader/prepare";
import type { DependentCell } from "./dependents";

/** A function's description of one of its calls. */
export interface CallDescription {
  /** The function's sentence: the method. */
  readonly method: string;
  readonly inputs: readonly DescribedInput[];
  readonly unit: string;
  readonly sources: readonly string[];
  readonly cautions: readonly { readonly severity: string; readonly text: string }[];
}

export interface DescribedInput {
  readonly label: string;
  readonly value: string | number | boolean;
  readonly unit: string;
  /** False if it is the default. */
  readonly given: boolean;
}

/** Throws `Pending` if the description isn't available yet. */
export type Describe = (id: string, args: readonly CellInput[]) => CallDescription | undefined;

/** The calculation, and its description of a call. */
export interface RecordingEngine extends Engine {
  describe: Describe;
  /** The edition that computed the record. */
  readonly edition: string;
}

export type RecordContent = string | number | boolean;

/** Cell, label, formula, inputs, value, unit, method, source, cautions; those at the end may be missing. */
export type RecordLine = readonly RecordContent[];

/** Most lines are made as they are written: a large record has tens of thousands. */
export interface RecordLines {
  readonly count: number;
  line(at: number): RecordLine;
}

/** What a record says of cells beside what their formulas give. */
export interface RecordWords {
  /** The text that names a cell; "" where there is none. */
  labelOf(address: Address): string;
  /** The formula as the record shows it. */
  formulaOf(cell: DependentCell): string;
}
