/** Formulas as a record may show them: nothing of what the copy leaves out. */
import { usesOf, type BookFacts } from "../package";
import type { DependentCell } from "./dependents";

const HIDDEN = "not shown: it refers to something that isn't in this copy";

const nameKey = (name: string, sheet = ""): string => `${sheet.toLowerCase()}!${name.toLowerCase()}`;

/** @returns the formula's text; a sentence where it names a sheet, name or workbook that the copy hasn't */
export function leftOut(before: BookFacts, copy: BookFacts): (cell: DependentCell) => string {
  const titles = new Set(copy.sheets.map(({ name }) => name.toLowerCase()));
  const gone = before.sheets.map(({ name }) => name.toLowerCase()).filter((name) => !titles.has(name));
  const kept = new Set(copy.names.map(({ name, sheet }) => nameKey(name, sheet)));
  const lost = new Set(before.names.map(({ name, sheet }) => nameKey(name, sheet)).filter((key) => !kept.has(key)));
  const tables = new Set(copy.tables.map(({ name }) => name.toLowerCase()));
  const lostTables = new Set(before.tables.map(({ name }) => name.toLowerCase()).filter((name) => !tables.has(name)));
  const all = gone.length + lost.size + lostTables.size === 0;
  return ({ formula, address }) => {
    // Only a sheet, another workbook or a table's column could be missing: none is named.
    if (all && !/[![]/.test(formula)) return formula;
    const uses = usesOf(formula.slice(1));
    const shows =
      !uses.external &&
      uses.sheets.every((sheet) => titles.has(sheet.toLowerCase())) &&
      !uses.names.some(
        ({ name, sheet = address.sheet }) => lost.has(nameKey(name, sheet)) || lost.has(nameKey(name)),
      ) &&
      ![...uses.tables, ...uses.names.map(({ name }) => name)].some((name) => lostTables.has(name.toLowerCase())) &&
      // Also in a text, as INDIRECT and HYPERLINK have it.
      !gone.some((title) => formula.toLowerCase().includes(title) && formula.includes("!")) &&
      (!uses.unreadable || gone.length + lost.size === 0);
    return shows ? formula : HIDDEN;
  };
}
