import { describe, expect, test } from "vitest";
import { labelOf, type ArgData, type Shape } from "../../core/kernel/argument";
import { isFault } from "../../core/kernel/fault";
import { placedArgs } from "../../core/kernel/units";
import type { CellFunction } from "../../core/kernel/cellFunction";
import { EVERY, goodRaw, run } from "./every";

const WHOLE_COLUMN = Array.from({ length: 45_000 }, () => [1]);

/** What a user, a host or a mishap may put where an argument belongs. */
const MISHAPS: readonly (readonly [string, unknown])[] = [
  ["blank", null],
  ["empty text", ""],
  ["zero", 0],
  ["negative", -7.5],
  ["text n/a", "n/a"],
  ["text NaN", "NaN"],
  ["not a number", Number.NaN],
  ["infinite", Number.NEGATIVE_INFINITY],
  ["huge", 1e308],
  ["tiny", 5e-324],
  ["wrong unit", "3 furlong fortnight"],
  ["other dimension", "3 candela"],
  ["date text", "2026-01-31"],
  ["boolean", true],
  ["error value", "#DIV/0!"],
  [
    "small range",
    [
      [1, 2],
      ["a", null],
    ],
  ],
  ["ragged range", [[1, 2], [3]]],
  ["whole column", WHOLE_COLUMN],
  [
    "range with an error",
    [
      ["#N/A", 1],
      ["b", 2],
    ],
  ],
  ["unit word", "SI"],
  ["unknown word", "zzz unknown"],
  ["host object", { address: "Sheet1!A1" }],
];

const numbersOf = (out: unknown): readonly unknown[] => (Array.isArray(out) ? out.flat(2) : [out]);

/** Refusals that hold for every shape of argument; the others depend on it and may be answered. */
const mustRefuse = (name: string, shape: Shape, mishap: string): boolean => {
  if (name === "units" && mishap === "unit word") return false;
  if (mishap === "error value" || mishap === "whole column") return shape.type !== "repeat";
  if (shape.type === "text" || shape.type === "repeat") return false;
  return [
    "text n/a",
    "text NaN",
    "wrong unit",
    "other dimension",
    "unknown word",
    "not a number",
    "infinite",
    "unit word",
  ].includes(mishap);
};

const names = (definition: CellFunction, name: string, arg: ArgData): readonly string[] => {
  const { shape } = arg;
  const inner =
    shape.type === "block" ? Object.keys(shape.entries) : shape.type === "rows" ? Object.keys(shape.columns) : [];
  return [name, labelOf(name), definition.id, ...inner.map(labelOf)];
};

test("every function has good arguments to spoil", () =>
  expect(EVERY.filter(([, definition]) => goodRaw(definition) === undefined)).toEqual([]));

describe.each(EVERY)("%s", (_, definition) => {
  const good = goodRaw(definition);
  const args = placedArgs(definition);

  test("never throws, never shows a number that is none, and refuses in words that name the argument", () => {
    if (good === undefined) return;
    for (const [place, [name, arg]] of args.entries())
      for (const [mishap, value] of MISHAPS) {
        const raw = [...args.map((__, at) => good[at] ?? null), ...good.slice(args.length)];
        raw[place] = value as never;
        const out = run(definition, raw);
        const told = `${name} is ${mishap}: ${isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out).slice(0, 200)}`;
        if (mustRefuse(name, arg.shape, mishap)) expect(isFault(out), told).toBe(true);
        if (mishap === "error value" && arg.shape.type !== "repeat")
          expect((out as { code?: string }).code, told).toBe("#DIV/0!");
        if (isFault(out)) {
          expect(out.message, told).not.toMatch(/can't be computed|undefined|\[object|TypeError|is not a function/);
          if (mustRefuse(name, arg.shape, mishap))
            expect(
              names(definition, name, arg).some((each) => out.message.includes(each)),
              told,
            ).toBe(true);
          if (mishap !== "error value" && mishap !== "range with an error")
            expect(["#VALUE!", "#N/A"], told).toContain(out.code);
        }
        for (const each of numbersOf(out)) if (typeof each === "number") expect(Number.isFinite(each), told).toBe(true);
      }
  });

  test("refuses a surplus argument and names how many it takes", () => {
    if (good === undefined || args.at(-1)?.[1].shape.type === "repeat") return;
    const raw = [...args.map((__, at) => good[at] ?? null), 17];
    const out = run(definition, raw);
    expect(isFault(out) ? out.message : JSON.stringify(out)).toMatch(
      new RegExp(`takes at most ${args.length} argument`),
    );
  });

  test("names a required argument that is left blank", () => {
    if (good === undefined) return;
    for (const [place, [name, arg]] of args.entries()) {
      if (arg.presence !== "required" || arg.shape.type === "repeat") continue;
      const raw = args.map((__, at) => (at === place ? null : (good[at] ?? null)));
      const out = run(definition, raw);
      expect(isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out), name).toContain(
        `#VALUE! ${name}: is blank`,
      );
    }
  });
});
