import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";

describe("PIPE.CEMENT", () => {
  // Joints per quart: 60 of 2 in for cement; a quart of primer serves twice as many (common practice).
  test("takes half as much primer as cement: 0.40 and 0.20 quart for 24 joints of 2 in", () => {
    const definition = lookUp(CATALOGUE, "PIPE.CEMENT");
    if (!definition) throw new Error("no PIPE.CEMENT");
    const out = evaluate(compile(definition), [[["2 in", 24]]], CATALOGUE);
    if (isFault(out) || !Array.isArray(out)) throw new Error("no table");
    const [, , cement, primer] = (out as (string | number)[][])[1] ?? [];
    expect(4 * Number(cement)).toBeCloseTo(0.4, 9);
    expect(4 * Number(primer)).toBeCloseTo(0.2, 9);
  });
});
