/** Sizes that nobody means raise a notice, whatever the argument; what is published raises none. */
import { describe, expect, test } from "vitest";
import { CATALOGUE, COMPILED, explain, isFault, rawByPlace, type ArgData, type CellFunction } from "../../core";
import { labelOf, type Args } from "../../core/kernel/define/argument";
import { KINDS, fromBase, type KindName } from "../../core/kernel/values/quantity";
import { usualSize } from "../../core/kernel/values/usual";

const noticesOf = (id: string, ...raw: readonly unknown[]): readonly string[] => {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`no function ${id}`);
  const { cautions, out } = explain(compiled, raw, CATALOGUE);
  if (isFault(out)) throw new Error(out.message);
  return cautions.filter(({ code }) => code === "UNUSUAL-INPUT").map(({ text }) => text);
};

describe("A size that nobody means", () => {
  test("of a quantity is noticed in the call's units", () => {
    expect(noticesOf("LINE.CHARGE", "R-410A", "3/8 in", 100)).toEqual([]);
    expect(noticesOf("COST.OFHEAT", 1e12, "propane", 2, 0.7)).toEqual([
      "heat: 1000000000000 BTU is outside the usual 0 BTU to 94780000000 BTU; check value and unit.",
    ]);
    expect(noticesOf("CONTROL.DIVERT", 78, 82, 2, true, true, 88, null, 1e12)).toEqual([
      "minutes in mode: 1000000000000 min is outside the usual 0 min to 166700000 min; check value and unit.",
    ]);
  });

  test("is noticed once where the function has a rule of its own about it", () =>
    expect(noticesOf("COST.OFHEAT", 1e6, "propane", 1e12, 0.7)).toHaveLength(1));

  test("of a count of fittings is noticed with its column, once for all rows", () => {
    const items = [
      ["what", "size", "length or count"],
      ["elbow 90", "2 in", 1e15],
      ["elbow 45", "2 in", 1e15],
    ];
    expect(noticesOf("PIPE.LOOP", items, 40)).toEqual([
      expect.stringMatching(
        /^items, length or count: 1e\+15 is outside the usual 0 to 1000000; check value and unit\.$/,
      ),
    ]);
  });
});

/** Arguments, labels and columns with a usual range of their own, as notices name them. */
const withOwnRange = (args: Args): readonly string[] =>
  Object.entries(args).flatMap(([name, arg]: readonly [string, ArgData]) => {
    const { shape } = arg;
    if (shape.type === "block") return withOwnRange(shape.entries);
    if (shape.type === "rows") return withOwnRange(shape.columns).map((column) => `${labelOf(name)}, ${column}`);
    const limits = shape.type === "either" ? shape.quantity : shape;
    return "usual" in limits && limits.usual !== undefined ? [labelOf(name)] : [];
  });

const listsOf = (definition: CellFunction) =>
  [
    definition.example,
    ...definition.checks.map(({ inputs }) => inputs),
    ...definition.cautions.map((use) => use.raisedBy),
  ].flatMap((inputs) => (inputs === undefined ? [] : [rawByPlace(definition, inputs)]));

test.each(CATALOGUE.map((definition) => [definition.id, definition] as const))(
  "what is usual by kind holds for every published check and example of %s",
  (id, definition) => {
    const compiled = COMPILED.get(id);
    const own = withOwnRange(definition.args);
    const notices = listsOf(definition)
      .flatMap((raw) => (compiled === undefined ? [] : explain(compiled, raw, CATALOGUE, { steps: false }).cautions))
      .filter(({ code, text }) => code === "UNUSUAL-INPUT" && text.endsWith("; check value and unit."))
      .filter(({ text }) => !own.some((label) => text.startsWith(`${label}:`)));
    expect(notices).toEqual([]);
  },
);

test.each(Object.keys(KINDS) as KindName[])("1e15 of %s is unusual in either system", (kind) => {
  const size = usualSize(kind);
  for (const system of ["US", "SI"] as const) expect(fromBase(size, KINDS[kind][system])).toBeLessThan(1e15);
});
