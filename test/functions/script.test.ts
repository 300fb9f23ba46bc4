import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, Script } from "node:vm";
import { describe, expect, inject, test } from "vitest";
import * as core from "../../core";
import { finderTextsOf } from "../../core/help";
import { keepNoteParts, stripHelpTexts } from "../../scripts/stripHelpTexts";
import type { WarmbackGlobal } from "../../src/functions/globals";
import { createShim } from "../../src/preview/host/customFunctionsShim";
import { coreSources, helpTexts } from "./helpTexts";

const { CATALOGUE, COMPILED, explain, rawByPlace, workingLines } = core;

const SOURCE = `const Q = symbol("water flow", "flow", 1, 2);
const hot = (about: string) => symbol("temperature", about, 3, 4);
const T = hot("wall");
const money = (about: string) => quantityResult("money", about);
export const g = rowResult("one row", { a: quantityResult("length", "how long") });
export const e = equation({ name: "E", form: "y = Q", symbols: { Q, D: symbol("diameter", "bore", 1, 2) }, validity: "always", code: (x) => x.Q });
export const f = cellFunction({
  id: "A.B",
  keywords: ["a", "b"],
  details: ["One, two.", \`three\`],
  args: { details: text("an argument of that name"), symbols: 1 },
  cautions: [{ rule: raisedBy, raisedBy: { symbols: 3 } }],
  checks: [{ inputs: { remark: 3 }, expected: 1, remark: "as printed" }, ...MORE],
  returns: listResult("all", { a: quantityResult("length", "how long"), b: money("price"), c: wordResult("state") }),
  compute: () => ({ remark: 1, validity: 2 }),
});
export const s = sourceEntries({ known: { short: "K 1", full: "All of K", seen: "opened" } });`;

test("A source is stripped of what only help pages, tests, the finder and notes read, and of nothing else", () => {
  const stripped = stripHelpTexts(SOURCE);
  expect(stripped.replace(/\s+/g, " ")).toBe(
    `const Q = /* @__PURE__ */ symbol("water flow", "flow", 1, 2); ` +
      `const hot = (about: string) => symbol("temperature", about, 3, 4); const T = /* @__PURE__ */ hot("wall"); ` +
      `const money = (about: string) => quantityResult("money", about); ` +
      `export const g = rowResult("one row", { a: quantityResult("length", "how long") }); ` +
      `export const e = equation({ name: "E", form: "y = Q", code: (x) => x.Q }); ` +
      `export const f = cellFunction({ id: "A.B", args: { details: text("an argument of that name"), symbols: 1 }, ` +
      `returns: listResult("all", { a: quantityResult("length", ""), b: money(""), c: wordResult("") }), ` +
      `compute: () => ({ remark: 1, validity: 2 }), }); ` +
      `export const s = sourceEntries({ known: { short: "K 1", } });`,
  );
});

test("A source for notes keeps of a function what notes read, and the citations whole", () => {
  expect(keepNoteParts(SOURCE).replace(/\s+/g, " ")).toContain(
    `export const f = cellFunction({ id: "A.B", cautions: [{ rule: raisedBy, }], checks: [{ inputs: { remark: 3 }, expected: 1, }, ...MORE], }); ` +
      `export const s = sourceEntries({ known: { short: "K 1", full: "All of K", seen: "opened" } });`,
  );
});

test("no function's example rests on what raises its cautions, which the script lacks", () => {
  for (const definition of CATALOGUE) {
    const cautions = definition.cautions.map((use) => ({ ...use, raisedBy: {} }));
    expect(core.exampleArgs({ ...definition, cautions }), definition.id).toEqual(core.exampleArgs(definition));
  }
});

describe("the built functions script", () => {
  const text = (name: string): string => readFileSync(join(inject("build"), name), "utf8");
  const loaded = (): WarmbackGlobal => {
    const context = createContext({ CustomFunctions: createShim().CustomFunctions });
    for (const filename of ["functions.js", "notes.js"]) new Script(text(filename), { filename }).runInContext(context);
    return context["warmback"] as WarmbackGlobal;
  };

  test("gives results, workings and cautions of every function as the sources do", () => {
    const there = loaded().core;
    expect(Object.keys(there).sort()).toEqual(Object.keys(core).sort());
    expect(there.CATALOGUE.map(({ id }) => id)).toEqual(CATALOGUE.map(({ id }) => id));
    const compared: string[] = [];
    for (const [id, compiled] of COMPILED) {
      const { definition } = compiled;
      const compiledThere = there.COMPILED.get(id);
      const check = definition.checks[0];
      if (!compiledThere || !check || definition.slow === true) continue;
      const raw = rawByPlace(definition, check.inputs);
      const here = explain(compiled, raw, CATALOGUE);
      const found = there.explain(compiledThere, raw, there.CATALOGUE);
      expect(JSON.stringify(found.out), id).toBe(JSON.stringify(here.out));
      expect(JSON.stringify(found.cautions), id).toBe(JSON.stringify(here.cautions));
      expect(JSON.stringify(there.workingLines(found.steps, found.system)), id).toBe(
        JSON.stringify(workingLines(here.steps, here.system)),
      );
      compared.push(id);
    }
    expect(CATALOGUE.map(({ id }) => id).filter((id) => !compared.includes(id))).toEqual([
      "POOL.YEAR",
      "POOL.SPREAD",
      "POOL.HOURS",
      "POOL.CALIBRATE",
      "POOL.UNCERTAINTY",
      "CLIMATE.CHECK",
    ]);
  });

  test("holds no help text, but where the same words stand elsewhere in the core too", async () => {
    const [script, sources] = [text("functions.js"), coreSources()];
    const texts = [...(await helpTexts())];
    expect(texts.length).toBeGreaterThan(500);
    const places = (each: string): number => sources.split(each).length - 1;
    const held = texts.filter(([each, declared]) => script.includes(each) && places(each) <= declared);
    expect(held.map(([each]) => each)).toEqual([]);
  });

  test("holds no picture", () => {
    for (const title of ["Pressure against enthalpy", "Temperature against heat passed", "Heat by month"])
      expect(text("functions.js"), title).not.toContain(title);
  });

  test("leaves the finder's texts to the panel's script, which has them all", () => {
    const panel = text("taskpane.js");
    const texts = Object.values(finderTextsOf(CATALOGUE)).flatMap(({ keywords = [], details = [] }) => [
      ...keywords,
      ...details,
    ]);
    // What a bundler writes in another way (accents, quotes) is not looked for.
    const plain = texts.filter((each) => /^[\w .,:()/;-]+$/.test(each));
    expect(plain.length).toBeGreaterThan(CATALOGUE.length);
    for (const each of plain) expect(panel.includes(each), each).toBe(true);
  });
});
