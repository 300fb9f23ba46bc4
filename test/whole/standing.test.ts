/** Cautions in two kinds: raised by a call's numbers, or standing for the function whatever the numbers. */
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile } from "../../core/kernel/call/evaluate";
import type { RaisedCaution } from "../../core/kernel/define/caution";
import { explain } from "../../core/kernel/explain/explain";
import type { CellInput } from "../../core/kernel/values/cellInput";

const cautionsOf = (id: string, raw: readonly CellInput[]): readonly RaisedCaution[] => {
  const definition = CATALOGUE.find((one) => one.id === id);
  if (definition === undefined) throw new Error(id);
  return explain(compile(definition), raw, CATALOGUE, { steps: false }).cautions;
};

const RULES = [...new Map(CATALOGUE.flatMap(({ cautions }) => cautions.map(({ rule }) => [rule.code, rule] as const)))];

describe("standing cautions", () => {
  test("are all rules that ask nothing of a call", () => {
    const asksNothing = RULES.filter(([, { needs, when }]) => Object.keys(needs).length === 0 && when.length === 0);
    expect(asksNothing.length).toBeGreaterThan(10);
    expect(asksNothing.filter(([, { standing }]) => standing !== true).map(([code]) => code)).toEqual([]);
  });

  test("are fewer than a third of all rules, and each is known by its code", () => {
    const standing = RULES.filter(([, rule]) => rule.standing === true);
    expect(standing.length).toBeLessThan(RULES.length / 3);
    expect(standing.map(([code]) => code)).toContain("SINK-DOUBLE-WALL");
  });

  test("are said so where a call raises them, and others aren't", () => {
    const cautions = cautionsOf("PIPE.CEMENT", [[["2 in", 40]]]);
    expect(cautions.find(({ code }) => code === "PIPE-SOLVENT-CEMENT")?.standing).toBe(true);
    const fast = cautionsOf("PIPE.VELOCITY", [120, "1-1/2 in"]);
    expect(fast.length).toBeGreaterThan(0);
    expect(fast.filter(({ standing }) => standing === true)).toEqual([]);
  });
});
