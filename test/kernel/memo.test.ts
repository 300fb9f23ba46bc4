import { describe, expect, test } from "vitest";
import { boundedMemo } from "../../core/kernel/call/memo";

const BOUNDS = { entries: 100, cells: 1000 };

describe("The memo of results", () => {
  test("computes equal calls once, and calls that print alike apart", () => {
    const memo = boundedMemo<number>(BOUNDS);
    const calls = [["1"], [1], [true], ["true"], [null], [""], [[[1, 2]]], [[[1], [2]]], ['a|1"b'], ["a", "b"]];
    let made = 0;
    for (let round = 0; round < 2; round++)
      for (const [place, args] of calls.entries())
        expect(memo.getOrCompute("F", args, () => (made++, place))).toBe(place);
    expect(made).toBe(calls.length);
    expect(memo.get("G", ["1"])).toBeUndefined();
    memo.set("F", [0], 0);
    expect(memo.get("F", [-0])).toBeUndefined();
  });

  test("drops the oldest unused results beyond its entries", () => {
    const memo = boundedMemo<number>({ entries: 2, cells: 1000 });
    for (const each of [1, 2]) memo.set("F", [each], each);
    expect(memo.get("F", [1])).toBe(1);
    memo.set("F", [3], 3);
    expect([1, 2, 3].map((each) => memo.get("F", [each]))).toEqual([1, undefined, 3]);
  });

  test("drops the oldest results beyond the cells that all arguments hold, but keeps the least asked for", () => {
    const range = (seed: number) => Array.from({ length: 10 }, () => Array.from({ length: 10 }, () => seed));
    const memo = boundedMemo<number>({ entries: 100, cells: 250 });
    for (const each of [1, 2, 3]) memo.set("F", [range(each)], each);
    expect([1, 2, 3].map((each) => memo.get("F", [range(each)]))).toEqual([undefined, 2, 3]);
    const kept = boundedMemo<number>({ entries: 100, cells: 250, least: 3 });
    for (const each of [1, 2, 3]) kept.set("F", [range(each)], each);
    expect([1, 2, 3].map((each) => kept.get("F", [range(each)]))).toEqual([1, 2, 3]);
  });

  test("weighs texts by their length", () => {
    const memo = boundedMemo<number>({ entries: 100, cells: 100 });
    for (const each of ["a", "b", "c"]) memo.set("F", [each.repeat(400)], 1);
    expect(memo.get("F", ["a".repeat(400)])).toBeUndefined();
    expect(memo.get("F", ["c".repeat(400)])).toBe(1);
  });

  test("tells calls apart whose keys are the same text", () => {
    const memo = boundedMemo<number>(BOUNDS);
    const calls = [["a|string:b"], ["a", "b"], ["x", "a|string:b", "c"], ["x", "a", "b|string:c"]];
    for (const [place, args] of calls.entries()) expect(memo.getOrCompute("F", args, () => place)).toBe(place);
  });

  test("weighs a call once that is kept again", () => {
    const range = (seed: number) => Array.from({ length: 10 }, () => Array.from({ length: 10 }, () => seed));
    const memo = boundedMemo<number>({ entries: 100, cells: 200 });
    for (const each of [1, 1, 1, 2]) memo.set("F", [range(each)], each);
    expect([1, 2].map((each) => memo.get("F", [range(each)]))).toEqual([1, 2]);
  });

  test("weighs eight characters as a cell", () => {
    const memo = boundedMemo<number>({ entries: 100, cells: 33 });
    for (const each of ["a", "b", "c"]) memo.set("F", [each.repeat(80)], 1);
    expect(memo.get("F", ["a".repeat(80)])).toBe(1);
  });
});
