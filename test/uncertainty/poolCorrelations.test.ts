/** Correlated inputs of POOL.UNCERTAINTY, and the panel's study of them. */
import { describe, expect, test } from "vitest";
import { longStudy } from "../../core/picture/longStudy";
import { compiledOf, raw, refusalOf, tableOf, type Row } from "./poolCalls";

/** The number in a row and column of a table. */
const at = (table: readonly (readonly unknown[])[], row: string, column: string): unknown => {
  const place = (table[0] ?? []).findIndex((head) => String(head).split(" (")[0] === column);
  return table.find(([first]) => first === row)?.[place];
};

describe("Correlations of POOL.UNCERTAINTY", () => {
  const LOAD: Row = ["design load", "normal", 20, null, 24];
  const PRICE: Row = ["back up price", "normal", 0.04, null, 0.06];
  const withPairs = (pairs: unknown) => [...raw([LOAD, PRICE]), pairs];
  const spread = (table: readonly (readonly unknown[])[]): number =>
    Number(at(table, "P90", "money saved")) - Number(at(table, "P10", "money saved"));

  test("leave the table as it is where they are 0 or blank", () => {
    const plain = tableOf(raw([LOAD, PRICE]));
    expect(tableOf(withPairs([["design load", "back up price", 0]]))).toEqual(plain);
    expect(tableOf(withPairs(null))).toEqual(plain);
  });

  test("widen the saving where load and price rise together, and narrow it where one falls", () => {
    const [minus, none, plus] = [-0.9, 0, 0.9].map((r) =>
      spread(tableOf(withPairs([["back up price", "design load", r]]))),
    ) as [number, number, number];
    expect(minus).toBeLessThan(none);
    expect(none).toBeLessThan(plus);
  });

  test("are refused by the name of the pair", () => {
    expect(refusalOf(withPairs([["design load", "wind", 0.2]]))).toMatch(/no range of "wind"/);
    expect(refusalOf(withPairs([["design load", "back up price", -2]]))).toMatch(/r: must be at least -1, got -2/);
  });

  test("make the study of the panel go without shares", () => {
    const studied = [null, [["design load", "back up price", 0.5]]].map((pairs) =>
      longStudy(compiledOf("POOL.UNCERTAINTY"), withPairs(pairs)),
    );
    expect(studied.map(({ total, correlated }) => [total, correlated])).toEqual([
      [2048 + 256 * 3, false],
      [2048, true],
    ]);
    const note = longStudy(compiledOf("NOTE.UNCERTAINTY"), [
      "POOL.AREA",
      [["length", "normal", 9, null, 11], ["width", "normal", 4, null, 5]], // prettier-ignore
      "rectangle",
      "",
      "",
      "SI",
      "correlations",
      "length",
      "width",
      0.5, // prettier-ignore
    ]);
    for (let run = 0; run < note.total; run++) note.next();
    expect(note.total).toBe(2048);
    expect(
      note
        .pictures()
        .flatMap(({ label, options }) => [label, ...options.map(({ name }) => name)])
        .join(),
    ).not.toContain("share");
  });
});
