import { VOLATILE } from "./functions";

const CALLS = new RegExp(`(?:^|[^A-Za-z0-9_.])(?:${[...VOLATILE].join("|")})\\s*\\(`, "i");

/** Whether a formula is another value whenever it is calculated; texts in quotes don't count. */
export function isVolatile(formula: string | undefined): boolean {
  return formula !== undefined && CALLS.test(formula.replace(/"(?:[^"]|"")*"/g, '""'));
}
