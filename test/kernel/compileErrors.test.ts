import { resolve } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";

const HEAD = `
import { cellFunction } from "../../core/kernel/cellFunction";
import { equation, symbol } from "../../core/kernel/equation";
import { quantity } from "../../core/kernel/argument";
import { caution } from "../../core/kernel/caution";
import { of } from "../../core/kernel/result";
const speed = equation({ name: "Speed", form: "v = s / t", gives: "velocity", source: "identity",
  takes: { s: symbol("length", "way", 1, 2), t: symbol("time", "time", 1, 2) }, code: (x) => x.s / x.t });
const fast = caution({ code: "A-B", severity: "Notice", source: "identity", about: "fast", needs: { v: "velocity" },
  when: ({ v }) => v > 1, say: ({ v }, show) => show(v, "velocity") });
const args = { way: quantity("length", "way"), time: quantity("time", "time").optionally() };
`;

const definition = (body: string): string => `${HEAD}
export const each = cellFunction({ id: "A.B", topic: "t", summary: "s", args, gives: of("velocity", "v"), ${body} });`;

const GOOD = `facts: { v: "velocity" }, cautions: [{ rule: fast, fires: { way: 9 } }],
  checks: [{ at: { way: 1 }, gives: 1, from: "identity" }],
  work: ({ way, time }, { step, note }) => { const v = step(speed, { s: way, t: time ?? 1 }); note({ v }); return v; }`;

/** Each broken copy, and the words of the compiler's complaint. */
const BROKEN: Readonly<Record<string, readonly [string, RegExp]>> = {
  "an argument that is not declared": [GOOD.replace("({ way, time }", "({ way, tine: time }"), /'tine' does not exist/],
  "an optional argument taken for given": [GOOD.replace("time ?? 1", "time"), /not assignable to type 'number'/],
  "a missing equation input": [GOOD.replace(", t: time ?? 1", ""), /'\{ s: number; \}' is not assignable/],
  "an unknown fact": [GOOD.replace("note({ v })", "note({ w: v })"), /'w' does not exist/],
  "a caution whose need nobody gives": [
    GOOD.replace('facts: { v: "velocity" }', "facts: {}").replace("note({ v });", ""),
    /is not assignable/,
  ],
  "an unknown source": [GOOD.replace('from: "identity"', 'from: "nobody1999"'), /"nobody1999"/],
  "an unknown argument in a check": [GOOD.replace("at: { way: 1 }", "at: { wy: 1 }"), /'wy' does not exist/],
  "an unknown argument that should fire": [
    GOOD.replace("fires: { way: 9 }", "fires: { wey: 9 }"),
    /'wey' does not exist/,
  ],
  "a word returned for a number": [GOOD.replace("return v;", 'return "v";'), /not assignable/],
};

const OPTIONS: ts.CompilerOptions = {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  strict: true,
  noUncheckedIndexedAccess: true,
  exactOptionalPropertyTypes: true,
  skipLibCheck: true,
  noEmit: true,
  types: [],
};

/** The compiler's complaints about each of several virtual files beside this one, in one program. */
const complaints = (files: Readonly<Record<string, string>>): ReadonlyMap<string, string> => {
  const paths = new Map(
    Object.entries(files).map(([name, text]) => [resolve("test/kernel", `virtual${name}.ts`), text]),
  );
  const host = ts.createCompilerHost(OPTIONS);
  const { readFile, fileExists, getSourceFile } = host;
  host.fileExists = (path) => paths.has(resolve(path)) || fileExists(path);
  host.readFile = (path) => paths.get(resolve(path)) ?? readFile(path);
  host.getSourceFile = (path, ...rest) => {
    const text = paths.get(resolve(path));
    return text === undefined ? getSourceFile(path, ...rest) : ts.createSourceFile(path, text, rest[0]);
  };
  const program = ts.createProgram([...paths.keys()], OPTIONS, host);
  return new Map(
    [...paths.keys()].map((path, place) => {
      const found = ts.getPreEmitDiagnostics(program, program.getSourceFile(path));
      return [
        Object.keys(files)[place] ?? "",
        found.map((each) => ts.flattenDiagnosticMessageText(each.messageText, "\n")).join("\n"),
      ];
    }),
  );
};

describe("what must not compile", () => {
  const names = Object.keys(BROKEN);
  const told = complaints({
    Good: definition(GOOD),
    Kind: `${HEAD}\nexport const each = of("lenght", "x");`,
    ...Object.fromEntries(names.map((name, place) => [String(place), definition(BROKEN[name]?.[0] ?? "")])),
  });

  test("the sound definition compiles", () => expect(told.get("Good")).toBe(""));

  test("an unknown kind does not compile", () => expect(told.get("Kind")).toMatch(/"lenght"/));

  test.each(names.map((name, place) => [name, String(place)] as const))("%s does not compile", (name, file) =>
    expect(told.get(file)).toMatch(BROKEN[name]?.[1] ?? /never/),
  );
});
