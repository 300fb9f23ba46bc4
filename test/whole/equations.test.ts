import * as mathjs from "mathjs";
import { describe, expect, test } from "vitest";
import type { Equation, Relation } from "../../core/kernel/define/equation";
import { REFERENCES } from "../../core/kernel/reference";
import { coreFiles, exportsOf } from "./coreFiles";

const TRIES = 60;

type Printed = Equation | Relation;

const isPrinted = (value: unknown): value is Printed =>
  typeof value === "object" && value !== null && "form" in value && "symbols" in value && "source" in value;

/** A repeatable stream of numbers between 0 and 1 (Lehmer's generator). */
const stream = (seed: number): (() => number) => {
  let state = seed;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
};

/** Mutation testing names files, with spaces between. */
const only = process.env["EQUATIONS_OF"]?.split(" ");
const files = coreFiles(/^core\/(?!kernel\/(reference|equation))[^.]*\.ts$/).filter(
  (path) => (only === undefined || only.includes(path)) && !/\/(data|functions|fit)\//.test(path),
);
const found = new Map<string, readonly [string, Printed]>();
for (const path of files)
  for (const [name, value] of Object.entries(await exportsOf(path)))
    if (isPrinted(value)) found.set(`${path} ${name}`, [path, value]);

describe("printed equations", () => {
  test.skipIf(only !== undefined)("the topics hold 382 printed equations", () => expect(found.size).toBe(382));

  test.each([...found])("%s computes what it shows", (_, [, printed]) => {
    const [left = "", right = ""] = printed.form.split(/(?<![<>=!])=(?!=)/);
    const forms = [mathjs.compile(left), mathjs.compile(right)] as const;
    const next = stream(7);
    const names = Object.keys(printed.symbols);
    for (let each = 0; each < TRIES; each++) {
      const x = Object.fromEntries(
        names.map((name) => {
          const [from, to] = printed.symbols[name]?.span ?? [0, 1];
          return [name, from + (to - from) * next()];
        }),
      );
      const scope = { ...printed.constants, ...x };
      const shown = Number(forms[1].evaluate({ ...scope }));
      const sides =
        "code" in printed
          ? [[printed.code(x), shown] as const]
          : [[printed.left(x), Number(forms[0].evaluate({ ...scope }))] as const, [printed.right(x), shown] as const];
      for (const [code, form] of sides) {
        expect(Number.isFinite(form), `${printed.form} at ${JSON.stringify(x)}`).toBe(true);
        expect(
          Math.abs(code - form),
          `${printed.form} at ${JSON.stringify(x)}: ${code} against ${form}`,
        ).toBeLessThanOrEqual(1e-9 * Math.abs(form) + 1e-300);
      }
    }
  });

  test.each([...found])("%s names known sources and uses every symbol", (_, [, printed]) => {
    expect(REFERENCES).toHaveProperty(typeof printed.source === "string" ? printed.source : printed.source.key);
    for (const name of [...Object.keys(printed.symbols), ...Object.keys(printed.constants ?? {})])
      expect(printed.form, name).toMatch(new RegExp(`\\b${name}\\b`));
  });
});
