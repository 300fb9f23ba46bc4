import { describe, expect, test } from "vitest";
import type { ArgData } from "../../core/kernel/define/argument";
import { admit, compile } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { kindOf } from "../../core/kernel/call/admit";
import { gaugeZero } from "../../core/kernel/define/pressureBasis";
import { KINDS, fromBase, toBase, type KindName } from "../../core/kernel/values/quantity";
import type { CellFunction } from "../../core/kernel/define/cellFunction";
import { placedArgs, singlesOf } from "../../core/kernel/define/unitsArgument";
import type { CellOut, Out } from "../../core/kernel/call/present";
import { EVERY, goodRaw, run } from "./every";

const kindIn = (arg: ArgData, values: Readonly<Record<string, unknown>>): KindName | undefined => {
  const shape = arg.shape.type === "either" ? arg.shape.quantity : arg.shape;
  if (shape.type === "several") return shape.kind;
  return shape.type === "quantity" ? kindOf(shape.kind, values) : undefined;
};

const cells = (out: Out): readonly CellOut[] => (Array.isArray(out) ? (out as CellOut[][]).flat() : [out as CellOut]);

/** Whether a function's first good arguments are scalars, which this test can turn into the other system's units. */
const isComparable = (definition: CellFunction): boolean =>
  // The coefficients of a compressor's map are in the units of the call.
  definition.id !== "CYCLE.MAP" &&
  goodRaw(definition) !== undefined &&
  compile(definition).unitsAt >= 0 &&
  placedArgs(definition).every(
    ([, { shape, presence }]) => presence === "optional" || (shape.type !== "block" && shape.type !== "rows"),
  );

test("88 functions of scalars are compared in both systems", () =>
  expect(EVERY.filter(([, definition]) => isComparable(definition))).toHaveLength(88));

describe.each(EVERY)("%s", (_, definition) => {
  test("gives the same answer for the same inputs in SI units", () => {
    if (!isComparable(definition)) return;
    const good = goodRaw(definition) ?? [];
    const compiled = compile(definition);
    const args = placedArgs(definition);
    const { values, system } = admit(compiled, good);
    const turned = args.map(([name, arg], place) => {
      if (name === "units") return system === "US" ? "SI" : "US";
      const kind = kindIn(arg, values);
      const raw = good[place] ?? null;
      if (typeof raw !== "number" || kind === undefined) return raw;
      return fromBase(toBase(raw, KINDS[kind][system]), KINDS[kind][system === "US" ? "SI" : "US"]);
    });
    const [here, there] = [run(definition, good), run(definition, turned)];
    if (isFault(here) || isFault(there)) throw new Error(isFault(there) ? there.message : "no good example");
    const kinds = new Map(
      singlesOf(definition.returns).flatMap(([key, single]) =>
        single.type === "quantity" ? [[key, single] as const] : [],
      ),
    );
    const single = kinds.get("answer");
    if (single) {
      const base = (out: Out, units: "US" | "SI"): number => toBase(out as number, KINDS[single.kind][units]);
      const [a, b] = [base(here, system), base(there, system === "US" ? "SI" : "US")];
      const zero = single.reading ? gaugeZero(values["basis"]) : 0;
      expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * (Math.abs(a) + zero) + 1e-12);
    } else {
      const words = (out: Out): readonly CellOut[] => cells(out).filter((each) => typeof each !== "number");
      expect(cells(there)).toHaveLength(cells(here).length);
      if (definition.returns.type === "word") expect(words(there)).toEqual(words(here));
    }
  });
});
