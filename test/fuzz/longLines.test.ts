/**
 * Random formulas over whole columns: worked out from the used cells they give what the engine gives from all cells of a
 * sheet just long enough to tell. The seed is fixed; more formulas with VERIFY_FULL=1.
 */
import fc from "fast-check";
import { expect, test } from "vitest";
import { isCellFault } from "../../src/workbook/port";
import { newBook, put, SHEET, valueAt } from "../preview/support";
import { SEED } from "./formulaTexts";

const RUNS = process.env["VERIFY_FULL"] === "1" ? 100 : 6;
const ROWS = 100_100;

const line = fc.constantFrom("A:A", "B:B", "C:C", "A:B");

const calculation = fc.letrec<{ node: string }>((tie) => ({
  node: fc.oneof(
    { depthSize: "small" },
    line,
    fc.constantFrom("1", "0", '"x"', "2.5", "A3", "A1:A9"),
    fc
      .tuple(tie("node"), fc.constantFrom("+", "-", "*", "/", "&", "=", ">", "<>"), tie("node"))
      .map(([left, operator, right]) => `(${left}${operator}${right})`),
    tie("node").map((one) => `-${one}`),
    fc.tuple(fc.constantFrom("ABS", "LEN", "ISNUMBER", "NOT"), tie("node")).map(([name, one]) => `${name}(${one})`),
    fc.tuple(tie("node"), tie("node"), tie("node")).map((three) => `IF(${three.join(",")})`),
    fc.tuple(tie("node"), tie("node")).map((two) => `IFERROR(${two.join(",")})`),
  ),
})).node;

const whole = fc.oneof(
  fc
    .tuple(
      fc.constantFrom(
        ...["SUM", "COUNT", "COUNTA", "MAX", "MIN", "AND", "OR", "PRODUCT", "AVERAGE", "SUMPRODUCT", "SUMSQ", "MEDIAN"],
      ),
      calculation,
    )
    .map(([name, one]) => `${name}(${one})`),
  fc.tuple(line, fc.constantFrom('">2"', '""', '"x"', "3")).map(([one, test]) => `COUNTIF(${one},${test})`),
  fc.tuple(fc.constantFrom("3", '"x"', "A4"), calculation).map(([one, all]) => `MATCH(${one},${all},0)`),
);

const FORMULAS = fc.sample(fc.tuple(whole, fc.constantFrom("", "+1", "&A2")), { numRuns: RUNS, seed: SEED });

/** Whether two results agree to what one addition after the other loses. */
const isNear = (a: unknown, b: unknown): boolean =>
  typeof a === "number" && typeof b === "number"
    ? Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b))
    : JSON.stringify(a) === JSON.stringify(b);

test("used cells of whole columns give what all cells give, or a refusal", { timeout: RUNS * 20_000 }, async () => {
  const book = newBook();
  book.makeRoom({ sheet: SHEET, row: 0, column: 0, rows: ROWS, columns: 30 });
  const cells = { A1: 3, A2: -1, A3: "x", A4: 0.5, A6: 7, B1: 2, B2: 2, B5: true, B7: "x", C1: 1 };
  // A line that is used to its end makes the engine go through all cells.
  await put(book, { ...cells, [`Z${String(ROWS)}`]: 1 });
  let refused = 0;
  for (const [formula, rest] of FORMULAS) {
    await put(book, { H1: `=${formula}${rest}`, H2: `=IF(TRUE,${formula}${rest},SUM(Z:Z))` });
    const [used, all] = [valueAt(book, "H1"), valueAt(book, "H2")];
    if (isCellFault(used) && used.message?.startsWith("a calculation that needs each cell") === true) refused += 1;
    else expect({ formula, used, isNear: isNear(used, all) }).toEqual({ formula, used, isNear: true });
  }
  book.dispose();
  console.log(`whole columns, seed ${String(SEED)}: ${String(RUNS)} formulas, ${String(refused)} refused`);
  expect(refused).toBeLessThan(RUNS / 2);
});
