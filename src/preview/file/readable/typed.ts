/** Formulas that are typed into a file's workbook with what only the file knows: its tables and the names of single sheets. */
import type { Address } from "../../../workbook/port";
import { parseReference } from "../../../workbook/reader/reference";
import { isRefusal, tokens } from "../../../workbook/reader/tokens";
import { readFormula } from "./formula";
import type { ReadableBook } from "./pass";

/** Whether a reference is one that the sheet engine can't know. */
function isOfFile(text: string, at: Address, known: ReadableBook): boolean {
  const found = parseReference(text);
  if (found?.kind === "table") return true;
  if (found?.kind !== "name") return false;
  const meaning = known.names.meaning(found.name, found.sheet ?? at.sheet);
  return meaning !== undefined && meaning.kind !== "unread" && meaning.local;
}

/** @returns the formula as the engine takes it; undefined where it stays as typed */
export function typedReader(known: ReadableBook): (formula: string, at: Address) => string | undefined {
  return (formula, at) => {
    const found = tokens(formula);
    if (isRefusal(found)) return undefined;
    const needs = found.some(({ kind, text }) => kind === "reference" && isOfFile(text, at, known));
    // A formula that is typed may fill several cells.
    const read = needs ? readFormula(formula, at, true, known) : undefined;
    return read === undefined || "why" in read ? undefined : read.formula;
  };
}
