import { isRefusal } from "../../workbook/reader/tokens";
import { parse } from "../../workbook/reader/tree";
import type { CallTree, Tree } from "../../workbook/reader/tree";
import { plainMessage } from "../host/faultMessages";
import { cellName } from "../host/functionsMetadata";
import type { HostFunctionEntry } from "../host/functionsMetadata";
import { fromHostResult, fromThrown, toHostArguments } from "../host/hostCall";
import type { FoundArgument, FoundCell } from "../host/hostCall";
import { isFaultValue, isMatrixResult } from "../host/hostValues";
import type { CallResult, CustomFunction, HostArgument, ResultCell } from "../host/hostValues";
import type { LoadedFunctions } from "../host/loadFunctions";
import { cautionsOfCalls, RESULT_ROOM } from "./evaluate";
import type { Evaluated, EvaluatedError } from "./evaluate";

/**
 * Formulas that are one call of our functions over constants, worked without the sheet engine by the same rules of the host.
 * Any other formula is left to the engine.
 */
export type LiteralCalls = (line: string) => Evaluated | undefined;

/** Excel's limit for a text in a formula; the engine decides about longer ones. */
const LONGEST_TEXT = 255;
/** The engine reads such a text as a number. */
const SCIENTIFIC = /^\d+(?:\.\d+)?E[+-]?\d+$/i;
/** The engine reads such a text in a result as an error value. */
const ERROR_TEXT = /^#[A-Z/0]+[!?A]$/;

/** A constant's value; undefined for anything else. */
function constant(tree: Tree): FoundCell {
  if (tree.kind === "number" || tree.kind === "boolean") return tree.value;
  if (tree.kind === "text")
    return tree.value.length > LONGEST_TEXT || SCIENTIFIC.test(tree.value) ? undefined : tree.value;
  if (tree.kind !== "sign" && tree.kind !== "percent") return undefined;
  const inner = constant(tree.of);
  if (typeof inner !== "number") return undefined;
  // The engine refuses a second percent sign.
  if (tree.kind === "percent") return tree.of.kind === "number" ? inner / 100 : undefined;
  return tree.sign === "-" ? -inner : tree.sign === "+" ? inner : undefined;
}

function argumentOf(tree: Tree): FoundArgument | undefined {
  if (tree.kind === "omitted") return { kind: "omitted" };
  if (tree.kind !== "array") {
    const value = constant(tree);
    return value === undefined ? undefined : { kind: "value", value };
  }
  const cells = tree.rows.map((row) => row.map(constant));
  return cells.flat().includes(undefined) ? undefined : { kind: "range", cells };
}

function argumentsOf({ args }: CallTree): readonly FoundArgument[] | undefined {
  const found = args.map(argumentOf);
  return found.includes(undefined) ? undefined : (found as readonly FoundArgument[]);
}

function resultOf(call: CustomFunction, args: readonly HostArgument[]): CallResult {
  try {
    return fromHostResult(call(...args));
  } catch (thrown) {
    return fromThrown(thrown);
  }
}

const errorOf = ({ code, message }: EvaluatedError): EvaluatedError => ({
  code,
  message: message === "" ? plainMessage(code) : message,
});

const cellOf = (cell: ResultCell) => (isFaultValue(cell) ? errorOf(cell) : cell);

const isErrorText = (cell: ResultCell): boolean => typeof cell === "string" && ERROR_TEXT.test(cell);

/** The value or error as the evaluator prints it; undefined where a sheet has no room for it or reads it otherwise. */
function shown(result: CallResult): Pick<Evaluated, "value" | "error"> | undefined {
  if (isMatrixResult(result) ? result.some((row) => row.some(isErrorText)) : isErrorText(result)) return undefined;
  if (!isMatrixResult(result)) return isFaultValue(result) ? { error: errorOf(result) } : { value: result };
  const [rows, columns] = [result.length, result[0]?.length ?? 0];
  if (rows > RESULT_ROOM.rows || columns > RESULT_ROOM.columns) return undefined;
  const first = result[0]?.[0];
  if (rows * columns > 1 || first === undefined) return { value: result.map((row) => row.map(cellOf)) };
  return shown(first);
}

export function literalCalls({ namespace, metadata, associated, warmback }: LoadedFunctions): LiteralCalls {
  const entries = new Map<string, readonly [HostFunctionEntry, CustomFunction]>();
  for (const entry of metadata.functions) {
    const call = associated.get(entry.id.toUpperCase());
    if (call !== undefined) entries.set(cellName(namespace, entry.id), [entry, call]);
  }
  return (line) => {
    const tree = parse(line);
    if (isRefusal(tree) || tree.kind !== "call") return undefined;
    const known = entries.get(tree.name.toUpperCase());
    const found = known === undefined ? undefined : argumentsOf(tree);
    if (known === undefined || found === undefined) return undefined;
    const [entry, call] = known;
    const given = toHostArguments(entry, found);
    const result = "fault" in given ? given.fault : resultOf(call, given.args);
    const value = shown(result);
    if (value === undefined) return undefined;
    // The engine's record of a call that was refused has no arguments.
    const args = "fault" in given ? [] : given.args;
    return { formula: line, ...value, cautions: cautionsOfCalls([{ id: entry.id, args }], warmback) };
  };
}
