import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/catalogue";
import { compile, evaluate } from "../../core/kernel/evaluate";
import { isFault } from "../../core/kernel/fault";

const refusal = (id: string, ...raw: readonly unknown[]): string => {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`${id} is not listed`);
  const out = evaluate(compile(definition), raw, CATALOGUE);
  return isFault(out) ? `${out.code} ${out.message}` : `no refusal: ${String(out)}`;
};

describe("numbers beyond anything meant", () => {
  test.each<[string, readonly unknown[], string]>([
    ["AIRCON.REJECTED", [1e12, 3], "#VALUE! cooling: must be at most 1000000000 BTU/h, got 1000000000000 BTU/h"],
    ["AIRCON.REJECTED", [36000, 1e308], "#VALUE! power: must be at most 1e15 kW in size, got 1e+308"],
    ["AIRCON.REJECTEDBYRATING", [1e10, 12], "#VALUE! cooling: must be at most 1000000000 BTU/h, got 10000000000 BTU/h"],
    ["EXCHANGER.WATERFLOW", [1e308, 10], "#VALUE! duty: must be at most 3.4121e18 BTU/h in size, got 1e+308"],
    ["PIPE.NPSH", [0, 80, 0, 1e200], "#VALUE! suctionLoss: must be at most 3.2808e18 ft in size, got 1e+200"],
  ])("%s of %j is refused with its limit before a result overflows", (id, raw, message) => {
    expect(refusal(id, ...raw).replace(/(\d)e\+(\d)/g, "$1e$2")).toBe(message.replace(/(\d)e\+(\d)/g, "$1e$2"));
  });

  test("a value that is no number is refused as such", () =>
    expect(refusal("PIPE.VELOCITY", Number.POSITIVE_INFINITY, "2 in")).toMatch(/expected a finite number/));
});

describe("words that belong to another function", () => {
  test("a word that belongs to another function is refused with what to do instead", () => {
    expect(refusal("EXCHANGER.LMTD", 105, 105, 80, 88, "condensing")).toMatch(
      /expected "counterflow" or "parallel", got "condensing": give the condensing temperature as hotIn and hotOut/,
    );
    expect(refusal("EXCHANGER.UA", 90000, 150, 95, 80, 88, "shell and tube")).toMatch(/EXCHANGER\.CORRECTION/);
  });
});
