/** A calculation as a note prints it: inputs, equations with their symbols, results, cautions, in the call's own units. */
import {
  basisOf,
  CATALOGUE,
  fromBase,
  KINDS,
  NAMESPACE,
  readableCells,
  readableNumber,
  resultUnit,
  type CellFunction,
  type KindName,
  type System,
} from "../../../core";
import { addressText } from "../../workbook/reader/reference";
import type { MarkedCell } from "../../workbook/check/markedCells";
import { isMatrix, isOutcomeFault, type CellOutcome } from "../../workbook/values";
import { isCellFault, type CellValue } from "../../workbook/port";
import type { ExplainedCall } from "../jobs/job";
import { symbolOf, titleOf, type WorkingNode } from "../model/workingTree";
import { quantitiesIn } from "./quantities";
import type { SymbolTable } from "./symbols";

/** A name with its value; `inSI` is empty where the value is in SI already, or has no unit. */
export interface NoteValue {
  readonly name: string;
  readonly description: string;
  readonly value: string;
  readonly inSI: string;
}

export interface NoteInput extends NoteValue {
  readonly given: boolean;
}

export interface NoteStep {
  readonly number: string;
  readonly title: string;
  /** The equation as text; "" for a step without. */
  readonly form: string;
  readonly symbols: readonly NoteValue[];
  /** The right side with its numbers and their units, or what else the step says; "" for an equation in SI alone. */
  readonly numbers: string;
  /** The right side with its numbers in SI base units; "" for a step without equation. */
  readonly baseNumbers: string;
  /** "v = 3.89 ft/s", "" where the step has no value. */
  readonly value: string;
  readonly inSI: string;
  readonly source: string;
}

export interface NoteCalculation {
  readonly title: string;
  readonly cell: string;
  readonly formula: string;
  readonly call: string;
  readonly method: string;
  readonly inputs: readonly NoteInput[];
  readonly steps: readonly NoteStep[];
  /** Steps that the note leaves out. */
  readonly left: number;
  /** Rows of the result: one cell for a single value. */
  readonly result: readonly (readonly string[])[];
  readonly resultInSI: string;
  readonly cautions: readonly { readonly severity: string; readonly code: string; readonly text: string }[];
}

const withUnit = (value: string | number | boolean, unit: string): string => {
  const text = typeof value === "number" ? readableNumber(value) : String(value);
  return unit === "" || text === "" ? text : `${text} ${unit}`;
};

/** A value in base units, as a system shows it. */
const inUnits = (value: number, kind: KindName, system: System): string =>
  withUnit(fromBase(value, KINDS[kind][system]), KINDS[kind][system].text);

function symbolsOf({ line, numbers }: WorkingNode, system: System, table: SymbolTable): readonly NoteValue[] {
  const known = line.form === undefined ? undefined : table[line.form];
  return Object.entries(numbers ?? {}).flatMap(([name, value]): readonly NoteValue[] => {
    const [kind, description] = known?.[name] ?? [];
    if (kind === undefined || description === undefined) return [];
    const [own, si] = [inUnits(value, kind, system), inUnits(value, kind, "SI")];
    return [{ name, description, value: own, inSI: si === own ? "" : si }];
  });
}

/** A value in the call's units as SI shows it; "" where that is the same. */
function besideInSI(value: number, kind: KindName, system: System): string {
  const { [system]: own, SI } = KINDS[kind];
  const shown = withUnit(fromBase((value + own.shift) * own.factor, SI), SI.text);
  return own === SI || shown === withUnit(value, own.text) ? "" : shown;
}

/** Steps in their order, groups by their headings; numbers as the panel shows them. */
function stepsOf(nodes: readonly WorkingNode[], system: System, table: SymbolTable): readonly NoteStep[] {
  return nodes.flatMap((node) => {
    const { line, base = "", below } = node;
    const symbol = symbolOf(line);
    const value = withUnit(line.value, line.unit);
    const step: NoteStep = {
      number: line.number,
      title: titleOf(line),
      form: line.form ?? "",
      symbols: symbolsOf(node, system, table),
      numbers: line.form === undefined ? line.numbers : quantitiesIn(node, system, table),
      baseNumbers:
        line.form === undefined || line.numbers === "" ? "" : symbol === undefined ? line.numbers : `= ${line.numbers}`,
      value:
        value === ""
          ? ""
          : symbol !== undefined
            ? `${symbol} = ${value}`
            : line.form === undefined
              ? value
              : `left − right = ${value}`,
      inSI: system === "SI" ? "" : base,
      source: line.source,
    };
    return [step, ...stepsOf(below, system, table)];
  });
}

/** More rows of a table are left out of a note. */
const MOST_ROWS = 60;

const cellText = (value: CellValue): string =>
  value === null
    ? ""
    : isCellFault(value)
      ? value.code
      : typeof value === "number"
        ? readableNumber(value)
        : String(value);

function resultOf(
  { returns }: CellFunction,
  outcome: CellOutcome,
  { system, args }: ExplainedCall,
): Pick<NoteCalculation, "result" | "resultInSI"> {
  if (isOutcomeFault(outcome)) return { result: [[`${outcome.code} ${outcome.message ?? ""}`.trim()]], resultInSI: "" };
  const { value } = outcome;
  if (isMatrix(value)) {
    const cells: readonly (readonly CellValue[])[] = readableCells(returns, value, system, basisOf(args));
    const rows = cells.slice(0, MOST_ROWS).map((row) => row.map(cellText));
    const left = value.length - rows.length;
    return { result: left > 0 ? [...rows, [`${String(left)} further rows are in the sheet`]] : rows, resultInSI: "" };
  }
  if (returns.type !== "quantity" || typeof value !== "number") return { result: [[cellText(value)]], resultInSI: "" };
  const own = withUnit(value, resultUnit(returns, value, system, basisOf(args)));
  return { result: [[own]], resultInSI: besideInSI(value, returns.kind, system) };
}

/** One call of a marked cell. */
export function noteCalculation(
  { address, label, formula }: MarkedCell,
  id: string,
  explained: ExplainedCall,
  table: SymbolTable,
): NoteCalculation | undefined {
  const definition = CATALOGUE.find((one) => one.id === id);
  if (definition === undefined) return undefined;
  const { system, args, working, outcome, cautions } = explained;
  return {
    title: label,
    cell: addressText(address),
    formula,
    call: `${NAMESPACE}.${id}`,
    method: definition.summary,
    inputs: args
      .filter(({ value, given }) => given || value !== "")
      .map(({ label: name, description, value, unit, given, kind }) => ({
        name,
        description,
        value: withUnit(value, unit),
        inSI: kind === undefined || typeof value !== "number" ? "" : besideInSI(value, kind, system),
        given,
      })),
    steps: stepsOf(working.nodes, system, table),
    left: working.left,
    ...resultOf(definition, outcome, explained),
    cautions: cautions.map(({ severity, code, text }) => ({ severity, code, text })),
  };
}

/** What the head of each sheet says; blanks are filled in by hand. */
export interface NoteHead {
  readonly project: string;
  readonly by: string;
  readonly checked: string;
  readonly approved: string;
  readonly revision: string;
  readonly date: string;
  readonly edition: string;
}

export const NOT_SIGNED = "Named initials are no digital signature.";
