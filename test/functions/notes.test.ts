/** The notes script beside the functions script: what waits for it, what doesn't, and what it completes. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext, type Context } from "node:vm";
import { describe, expect, inject, test } from "vitest";
import { CATALOGUE, COMPILED, evaluate, rawByPlace } from "../../core";
import { REFERENCES } from "../../core/kernel/reference";
import { createShim } from "../../src/preview/host/customFunctionsShim";
import type { WarmbackGlobal } from "../../src/functions/globals";

const built = (name: string): string => readFileSync(join(inject("build"), name), "utf8");

const MISSING = /^notes\.js didn't load, and there are no cautions, checks and sources without it\./;

/** The functions script alone, as a host without a page loads it. */
function functionsAlone() {
  const shim = createShim();
  const context: Context = createContext({ CustomFunctions: shim.CustomFunctions });
  runInContext(built("functions.js"), context);
  return {
    cell: (id: string, ...args: readonly (string | number)[]): unknown => shim.associated.get(id)?.(...args),
    addNotes: (text = built("notes.js")): void => void runInContext(text, context),
    warmback: (): WarmbackGlobal => context["warmback"] as WarmbackGlobal,
  };
}

describe("the functions script without its notes", () => {
  test("answers every cell that is not about functions, at once", () => {
    const { cell } = functionsAlone();
    expect(cell("PIPE.BORE", "2 in")).toBe(2.049);
    expect(cell("EXCHANGER.LMTD", 105, 95, 80, 84)).toBeCloseTo(17.832080471930766, 12);
    expect(() => cell("PIPE.BORE", "9 in")).toThrow(/9 in/);
  });

  test("gives of every check, example and raised caution what the sources give", () => {
    const { core: there } = functionsAlone().warmback();
    let calls = 0;
    for (const [id, here] of COMPILED) {
      const { definition } = here;
      const compiled = there.COMPILED.get(id);
      if (definition.topic === "note" || definition.slow === true || compiled === undefined) continue;
      const { checks, cautions, example } = definition;
      const inputs = [...checks.map((check) => check.inputs), ...cautions.map(({ raisedBy }) => raisedBy), example];
      for (const one of inputs) {
        const raw = rawByPlace(definition, one ?? {});
        const [found, expected] = [there.evaluate(compiled, raw, there.CATALOGUE), evaluate(here, raw, CATALOGUE)];
        expect(JSON.stringify(found), `${id} ${JSON.stringify(one)}`).toBe(JSON.stringify(expected));
        calls += 1;
      }
    }
    expect(calls).toBeGreaterThan(800);
  });

  test("lets a call about functions wait, and says what is missing where nothing comes", async () => {
    const { cell, warmback } = functionsAlone();
    await expect(cell("NOTE.SOURCES", "PIPE.BORE")).rejects.toThrow(MISSING);
    expect(() => warmback().explain("PIPE.BORE", ["2 in"])).toThrow(MISSING);
    expect(warmback().notes).toBe(false);
  });

  test("answers at once when the notes have come, also after a call that failed", async () => {
    const { cell, addNotes, warmback } = functionsAlone();
    await expect(cell("NOTE.SOURCES", "PIPE.BORE")).rejects.toThrow(MISSING);
    addNotes();
    expect((cell("NOTE.SOURCES", "PIPE.BORE") as readonly (readonly string[])[])[1]?.[0]).toBe("ASTM D1785");
    expect(warmback().notes).toBe(true);
    expect(warmback().explain("PIPE.BORE", ["2 in"]).value).toBe(2.049);
  });

  test("refuses the notes of another build", () => {
    const { addNotes, warmback } = functionsAlone();
    const { build } = warmback();
    expect(() => addNotes(built("notes.js").replaceAll(build, "0123456789ab"))).toThrow(
      /^notes\.js \(build 0123456789ab\)/,
    );
    expect(warmback().notes).toBe(false);
  });
});

test("cautions, checks, examples and citations are in the notes script alone", () => {
  const [functions, notes] = [functionsAlone(), built("notes.js")];
  const before = functions.warmback().core.CATALOGUE;
  for (const definition of before)
    for (const key of ["cautions", "checks", "example", "bibliography"])
      expect(Object.hasOwn(definition, key), `${definition.id}: ${key}`).toBe(false);
  functions.addNotes();
  const shape = (all: typeof CATALOGUE) =>
    all.map(({ id, checks, cautions, example }) => [id, checks.length, cautions.map(({ rule }) => rule.code), example]);
  expect(JSON.stringify(shape(functions.warmback().core.CATALOGUE))).toBe(JSON.stringify(shape(CATALOGUE)));
  const citations = Object.values(REFERENCES).filter(({ full }) => /^[\w .,:()/-]{20,}$/.test(full));
  expect(citations.length).toBeGreaterThan(40);
  for (const { full } of citations) {
    expect(notes.includes(full), full).toBe(true);
    expect(built("functions.js").includes(full), full).toBe(false);
  }
});
