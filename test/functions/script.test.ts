import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, Script } from "node:vm";
import { beforeAll, describe, expect, test } from "vitest";
import type * as Explaining from "../../core/kernel/explain";
import { explain } from "../../core/kernel/explain";
import { exampleArgs, rawByPlace } from "../../core/kernel/describe";
import type * as Working from "../../core/kernel/working";
import { workingLines } from "../../core/kernel/working";
import { DIST, ensureBuilt } from "../../src/functions/build.mjs";
import type * as CompiledHere from "../../src/functions/compiled";
import { CATALOGUE, COMPILED } from "../../src/functions/compiled";
import { finderTextsOf, leanSource } from "../../src/functions/leanSource";
import { sharedModule, sharedModules } from "../../src/functions/shared";
import type { WarmbackSurface } from "../../src/functions/surface";
import { createShim } from "../../src/preview/shim";

describe("a lean source", () => {
  test("lacks what only help pages, tests and the finder read, and nothing else", () => {
    const lean = leanSource(`const Q = symbol("water flow", "flow", 1, 2);
export const e = equation({ name: "E", form: "y = Q", takes: { Q, D: symbol("diameter", "bore", 1, 2) }, valid: "always", code: (x) => x.Q });
export const f = cellFunction({
  id: "A.B",
  finds: ["a", "b"],
  remarks: ["One, two.", \`three\`],
  args: { remarks: text("an argument of that name"), takes: 1 },
  cautions: [{ rule: fires, fires: { takes: 3 } }],
  checks: [{ at: { remark: 3 }, gives: 1, remark: "as printed" }, ...MORE],
  work: () => ({ remark: 1, valid: 2 }),
});`);
    expect(lean.replace(/\s+/g, " ")).toBe(
      `const Q = /* @__PURE__ */ symbol("water flow", "flow", 1, 2); ` +
        `export const e = equation({ name: "E", form: "y = Q", code: (x) => x.Q }); ` +
        `export const f = cellFunction({ id: "A.B", args: { remarks: text("an argument of that name"), takes: 1 }, ` +
        `cautions: [{ rule: fires, }], checks: [{ at: { remark: 3 }, gives: 1, }, ...MORE], work: () => ({ remark: 1, valid: 2 }), });`,
    );
  });
});

test("no function's example rests on what raises its cautions, which the script lacks", () => {
  for (const definition of CATALOGUE) {
    const cautions = definition.cautions.map((use) => ({ ...use, fires: {} }));
    expect(exampleArgs({ ...definition, cautions }), definition.id).toEqual(exampleArgs(definition));
  }
});

describe("what the panel shares", () => {
  test("is the core and the catalogue, not its own parts, packages or pictures", () => {
    const from = (request: string): string | undefined => sharedModule(join(process.cwd(), "src/taskpane"), request);
    expect(from("../../core/kernel/quantity")).toBe("core/kernel/quantity");
    expect(from("../functions/compiled")).toBe("src/functions/compiled");
    for (const request of [
      "../../core/pictures",
      "../../core/picture/cycle",
      "./model/tree",
      "../workbook/port",
      "temml",
    ])
      expect(from(request), request).toBeUndefined();
  });

  test("holds the one catalogue and its makings", () =>
    expect(sharedModules()).toEqual(
      expect.arrayContaining(["core/kernel/evaluate", "core/kernel/explain", "src/functions/compiled"]),
    ));
});

describe("the built script", () => {
  const built = (): WarmbackSurface & { readonly modules: Readonly<Record<string, unknown>> } => {
    const context = createContext({ CustomFunctions: createShim().CustomFunctions });
    new Script(readFileSync(join(DIST, "functions.js"), "utf8"), { filename: "functions.js" }).runInContext(context);
    return context["warmback"] as ReturnType<typeof built>;
  };
  beforeAll(ensureBuilt);

  test("gives results, workings and cautions of every function as the sources do", () => {
    const { modules } = built();
    const there = modules["src/functions/compiled"] as typeof CompiledHere;
    const told = (modules["core/kernel/explain"] as typeof Explaining).explain;
    const lines = (modules["core/kernel/working"] as typeof Working).workingLines;
    expect(there.CATALOGUE.map(({ id }) => id)).toEqual(CATALOGUE.map(({ id }) => id));
    for (const [id, compiled] of COMPILED) {
      const { definition } = compiled;
      const compiledThere = there.COMPILED.get(id);
      const check = definition.checks[0];
      if (!compiledThere || !check || definition.heavy === "slow") continue;
      const raw = rawByPlace(definition, check.at);
      const here = explain(compiled, raw, CATALOGUE);
      const found = told(compiledThere, raw, there.CATALOGUE);
      expect(JSON.stringify(found.out), id).toBe(JSON.stringify(here.out));
      expect(JSON.stringify(found.cautions), id).toBe(JSON.stringify(here.cautions));
      expect(JSON.stringify(lines(found.steps, found.system)), id).toBe(
        JSON.stringify(workingLines(here.steps, here.system)),
      );
    }
  });

  test("leaves the finder's texts to the panel's script, which has them all", () => {
    const there = built().modules["src/functions/compiled"] as typeof CompiledHere;
    for (const definition of there.CATALOGUE) {
      expect(definition.remarks, definition.id).toBeUndefined();
      expect(definition.finds, definition.id).toBeUndefined();
    }
    const panel = readFileSync(join(DIST, "taskpane.js"), "utf8");
    const texts = Object.values(finderTextsOf(CATALOGUE)).flatMap(({ finds = [], remarks = [] }) => [
      ...finds,
      ...remarks,
    ]);
    // What a bundler writes in another way (accents, quotes) is not looked for.
    const plain = texts.filter((text) => /^[\w .,:()/;-]+$/.test(text));
    expect(plain.length).toBeGreaterThan(CATALOGUE.length);
    for (const text of plain) expect(panel.includes(text), text).toBe(true);
  });
});
