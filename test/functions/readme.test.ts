import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/catalogue";
import { withFunctionTable } from "../../scripts/readmeTable";
import { readCalls } from "../../src/workbook/reader/calls";
import { compile, evaluate } from "../../core/kernel/evaluate";
import { isFault } from "../../core/kernel/fault";

const README = readFileSync("README.md", "utf8");

test("the README's function table is up to date: npm run readme", async () =>
  expect(await withFunctionTable(README)).toBe(README));

test("every formula in README and DEVELOPERS calls a known function and is answered", () => {
  const text = README + readFileSync("DEVELOPERS.md", "utf8");
  const formulas = [...text.matchAll(/=WARMBACK\.[A-Z]+\.[A-Z]+\([^\n]*?\)(?=\s|'|$)/gm)].map(([formula]) => formula);
  expect(formulas).toHaveLength(6);
  const known = new Set(CATALOGUE.map(({ id }) => id));
  for (const formula of formulas) {
    const literals = /\(([^]*)\)$/.exec(formula)?.[1]?.match(/"(?:[^"]|"")*"|[^,]+/g) ?? [];
    const raw = literals.map((each) => (each.startsWith('"') ? each.slice(1, -1) : Number(each)));
    const id = /WARMBACK\.([A-Z.]+)\(/.exec(formula)?.[1] ?? "";
    const definition = lookUp(CATALOGUE, id);
    expect(readCalls(formula, known), formula).not.toHaveLength(0);
    if (!definition) throw new Error(`${formula} calls no known function`);
    const out = evaluate(compile(definition), raw, CATALOGUE);
    expect(isFault(out) ? out.message : "", formula).toBe("");
  }
});
