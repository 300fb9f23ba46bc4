/** The validation report: measured afresh, complete, and failing where a value passes its tolerance. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { CATALOGUE } from "../../core";
import { otherFiles } from "../../scripts/validation/facts";
import { VALIDATION_PAGE, validationMarkdown } from "../../scripts/validation/markdown";
import { failuresIn, measureAll, type Measured } from "../../scripts/validation/measure";

const measured = measureAll();

test("No value passes its tolerance, and the report in docs is up to date: npm run validation", async () => {
  expect(failuresIn(measured)).toEqual([]);
  expect(await validationMarkdown(measured)).toBe(readFileSync(VALIDATION_PAGE, "utf8"));
});

test("A value beyond its tolerance is named with function, file and row, and so is a failed check", () => {
  const one = measured.find(({ grids }) => grids.length > 0)!;
  const [grid] = one.grids;
  const worse: Measured = {
    ...one,
    checks: [{ ...one.checks[0]!, agrees: false, where: "density", source: "the table" }],
    grids: [{ ...grid!, worst: { share: 1.2, relative: 0.1, where: "row 7" } }],
  };
  expect(failuresIn([worse])).toEqual([
    `${one.definition.id}, density: differs from the table`,
    `${one.definition.id}, ${grid!.grid.file}, row 7: 1.20 times the tolerance`,
  ]);
});

test("Every row of a grid is measured that its test measures", () => {
  const rows = measured.flatMap(({ grids }) => grids.map(({ grid, rows: count }) => [grid.id, grid.quantity, count]));
  // 68 of 72 have a counterflow mean, 120 of 180 a correction factor: as the tests of these files count them.
  expect(rows).toContainEqual(["EXCHANGER.LMTD", "log mean difference in counterflow", 68]);
  expect(rows).toContainEqual(["EXCHANGER.CORRECTION", "correction factor F", 120]);
  expect(rows).toContainEqual(["EXCHANGER.EFFECTIVENESS", "effectiveness, six arrangements", 224]);
  expect(rows).toContainEqual(["PRESSURE.TUBE", "rated pressure, mill tolerances", 171]);
});

test("Every other file of reference values names a test that reads it", () => {
  for (const { file, tests, rows } of otherFiles()) {
    expect(tests, file).not.toEqual([]);
    expect(rows, file).toBeGreaterThan(0);
  }
});

test("The help page has every function with its plot, says what was never run, and NOTE.SELFTEST leads to it", () => {
  const read = (name: string): string => readFileSync(join(inject("build"), "help", name), "utf8");
  const page = read("validation.html");
  for (const { id } of CATALOGUE) expect(page, id).toContain(`<section id="${id}">`);
  expect(page.match(/<svg class="deviations"/g)?.length).toBeGreaterThan(90);
  expect(page).toContain("Excel itself, on any platform");
  expect(read("NOTE.SELFTEST.html")).toContain('<a href="validation.html">');
});
