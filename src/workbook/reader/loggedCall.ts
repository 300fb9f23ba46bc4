/** Finds the one call of this session that a cell's call must be. */
import type { CellInput } from "../../../core";
import type { SessionLog, LoggedCall } from "../callLog";
import { sameCell, sameValue, topLeft, valueOf } from "../values";
import type { CellValue } from "../port";
import { isUnsupported } from "./operators";
import type { Operand } from "./operators";

const agrees = (call: LoggedCall, args: readonly Operand[]): boolean =>
  args.every((argument, at) => isUnsupported(argument) || sameValue(argument, call.args[at] ?? null)) &&
  call.args.slice(args.length).every((argument) => argument === null || argument === undefined);

const sameArguments = (a: readonly CellInput[], b: readonly CellInput[]): boolean => {
  const most = Math.max(a.length, b.length);
  for (let at = 0; at < most; at++) if (!sameValue(a[at] ?? null, b[at] ?? null)) return false;
  return true;
};

/**
 * The one logged call that agrees with every known argument and, if the call is the whole formula, with the cell's value.
 * Repeated equal calls count once; two different ones mean no answer.
 */
export function loggedCall(
  log: SessionLog,
  id: string,
  args: readonly Operand[],
  cell: CellValue | undefined,
): LoggedCall | undefined {
  let only: LoggedCall | undefined;
  for (const call of log.of(id)) {
    if (!agrees(call, args) || (cell !== undefined && !sameCell(topLeft(valueOf(call.result)), cell))) continue;
    if (only === undefined) only = call;
    else if (!sameArguments(only.args, call.args)) return undefined;
  }
  return only;
}
