/** Finds a call's result in this session, so that a heavy call need not run again. */
import type { CellInput } from "../../../core";
import type { LoggedCall } from "../../workbook/callLog";
import { isCellFault, type CellValue } from "../../workbook/port";
import { collapse, isMatrix, isOutcomeFault, sameCell, type CellOutcome } from "../../workbook/values";
import type { Value } from "../../workbook/values";

type SameCell = (asked: CellValue, logged: CellValue) => boolean;

const identicalCell: SameCell = (a, b) => a === b || (isCellFault(a) && isCellFault(b) && a.code === b.code);

/** Hosts pass a blank as null, 0 or an empty text; nothing else is a blank. */
const similarCell: SameCell = (asked, logged) => (asked === null || logged !== null) && sameCell(asked, logged);

/** A matrix of one cell is that cell. */
function sameBy(same: SameCell, left: Value, right: Value): boolean {
  const a = collapse(left);
  const b = collapse(right);
  if (!isMatrix(a) || !isMatrix(b)) return !isMatrix(a) && !isMatrix(b) && typeof a === typeof b && same(a, b);
  return (
    a.length === b.length &&
    a.every((row, down) => {
      const other = b[down] ?? [];
      return row.length === other.length && row.every((cell, over) => same(cell, other[over] ?? null));
    })
  );
}

/**
 * The log keeps no nulls at the end: Excel passes null for what was left out, and Excel on the web for a blank cell too. An
 * argument that wasn't asked for was left out, so a logged 0 can't be it.
 */
const sameArguments = (same: SameCell, asked: readonly CellInput[], logged: readonly CellInput[]): boolean =>
  asked.every((each, at) => sameBy(same, each, logged[at] ?? null)) &&
  logged.slice(asked.length).every((each) => each === null);

const sameResult = (a: CellOutcome, b: CellOutcome): boolean =>
  isOutcomeFault(a) || isOutcomeFault(b)
    ? isOutcomeFault(a) && isOutcomeFault(b) && a.code === b.code && a.message === b.message
    : sameBy(identicalCell, a.value, b.value);

/**
 * @param logged calls of the function in question
 * @returns the result for identical arguments; else the one result of all calls that may have had them, if they agree
 */
export function resultInSession(logged: readonly LoggedCall[], args: readonly CellInput[]): CellOutcome | undefined {
  const identical = logged.find((call) => sameArguments(identicalCell, args, call.args));
  if (identical !== undefined) return identical.result;
  const [first, ...others] = logged.filter((call) => sameArguments(similarCell, args, call.args));
  return first !== undefined && others.every(({ result }) => sameResult(result, first.result))
    ? first.result
    : undefined;
}
