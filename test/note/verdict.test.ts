import fc from "fast-check";
import { expect, test } from "vitest";
import { CATALOGUE, COMPILED, evaluate, isFault, type CellInput } from "../../core";

function call(id: string, ...args: readonly CellInput[]): unknown {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`there is no ${id}`);
  return evaluate(compiled, args, CATALOGUE);
}

const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });

test("The verdict is the one that NOTE.AGREES gives in its table", () => {
  fc.assert(
    fc.property(value, value, fc.double({ min: 0, max: 1, noNaN: true }), (byHand, computed, tolerance) => {
      const table = call("NOTE.AGREES", byHand, computed, tolerance) as readonly (readonly unknown[])[];
      expect(call("NOTE.VERDICT", byHand, computed, tolerance)).toBe(table[0]?.[1]);
    }),
  );
});

test("A blank hand value is not checked, whatever was computed", () => {
  fc.assert(
    fc.property(value, (computed) => {
      expect(call("NOTE.VERDICT", null, computed)).toBe("not checked");
      expect(call("NOTE.VERDICT", "", computed)).toBe("not checked");
    }),
  );
});

test("A blank computed value is refused by name", () => {
  const out = call("NOTE.VERDICT", 3, null) as never;
  expect(isFault(out) && out).toMatchObject({ code: "#VALUE!", message: "computed: is blank, but it is needed" });
});
