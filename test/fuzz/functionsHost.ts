/** The cell functions as a host calls them: under a stand-in of Excel's error class, by the wrapper that is associated. */
import { vi } from "vitest";
import { COMPILED } from "../../core";
import { cellCall } from "../../src/functions/call";

/** Excel's error class, as its documentation describes it. */
class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message);
  }
}

const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
};

/** Puts the stand-in in its place; `vi.unstubAllGlobals` takes it away. */
export function startHost(): void {
  vi.stubGlobal("CustomFunctions", { Error: HostError, ErrorCode });
}

/** What a cell shows: a value, or an error with its message. */
export type Shown = { readonly value: unknown } | { readonly code: string; readonly message: string };

const CALLS = new Map([...COMPILED].map(([id, compiled]) => [id, cellCall(compiled)] as const));

/** Calls a function as its cell does. Whatever it throws besides the host's error goes on. */
export function callCell(id: string, args: readonly unknown[]): Shown {
  try {
    return { value: CALLS.get(id)?.(...args) };
  } catch (thrown) {
    if (thrown instanceof HostError) return { code: thrown.code, message: thrown.message };
    throw thrown;
  }
}

/** A cell of a result as it compares: a fault inside a matrix by code and message. */
const plainCell = (cell: unknown): unknown =>
  cell instanceof Error ? { code: (cell as HostError).code, message: cell.message } : cell;

/** What a cell shows, with the faults inside a matrix as data. */
export function plain(shown: Shown): Shown {
  if (!("value" in shown) || !Array.isArray(shown.value)) return shown;
  return { value: (shown.value as readonly (readonly unknown[])[]).map((row) => row.map(plainCell)) };
}
