import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { createContext, Script } from "node:vm";
import { describe, expect, inject, test } from "vitest";
import { MOST_ZIPPED_BYTES } from "../../bench/budget";
import type { WarmbackGlobal } from "../../src/functions/globals";
import { createShim } from "../../src/preview/host/customFunctionsShim";
import type { metadataOf } from "../../scripts/metadata";
import { CATALOGUE } from "../../core/catalogue";

const built = (path: string): string => readFileSync(join(inject("build"), path), "utf8");

describe("the built functions script", () => {
  test("the functions script is small enough to load at once, gzipped", () =>
    expect(gzipSync(built("functions.js"), { level: 9 }).length).toBeLessThan(MOST_ZIPPED_BYTES));

  test("the functions script is a classic script that associates everything at once, with nothing but the host's global", () => {
    const shim = createShim();
    const context = createContext({ CustomFunctions: shim.CustomFunctions });
    new Script(built("functions.js"), { filename: "functions.js" }).runInContext(context);
    expect(shim.associated.size).toBe(CATALOGUE.length);
    expect(shim.associated.get("PIPE.BORE")?.("2 in")).toBe(2.049);
  });

  test("holds no parser of forms, no TeX and no eval", () => {
    for (const path of ["functions.js", "taskpane.js"])
      expect(built(path), path).not.toMatch(/\\\\frac|temml|new Function\(|\beval\(/);
  });

  test("has the metadata of the same catalogue and the forms' MathML beside it", () => {
    const { functions } = JSON.parse(built("functions.json")) as ReturnType<typeof metadataOf>;
    expect(functions.map(({ id }) => id)).toEqual(CATALOGUE.map(({ id }) => id));
    const forms = JSON.parse(built("mathml.json")) as Readonly<Record<string, string>>;
    expect(forms["h = f * L / D * v^2 / (2 * g)"]).toMatch(/^<math/);
  });

  test("the panel's page loads the functions script and its notes of one build, after Microsoft's runtime, neither deferred nor as a module", () => {
    const context = createContext({});
    new Script(built("functions.js"), { filename: "functions.js" }).runInContext(context);
    const { build } = context["warmback"] as WarmbackGlobal;
    expect(build).toMatch(/^[0-9a-f]{12}$/);
    const scripts = [...built("taskpane.html").matchAll(/<script ([^>]*)>/g)].map(([, attributes]) => attributes);
    expect(scripts).toEqual([
      'src="https://appsforoffice.microsoft.com/lib/1/hosted/office.js"',
      `src="functions.js?v=${build}"`,
      `src="notes.js?v=${build}"`,
      `src="taskpane.js?v=${build}"`,
    ]);
  });
});
