import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core";
import { mendKnowledge } from "../../src/workbook/mend/knowledge";
import { repairFormula } from "../../src/workbook/mend/repair";
import { DAMAGED, SOUND } from "./mendCorpus";

const KNOWLEDGE = mendKnowledge(CATALOGUE);

test("The corpus holds at least 60 damaged and 60 sound formulas", () => {
  expect(new Set(DAMAGED.map(({ now }) => now)).size).toBeGreaterThanOrEqual(60);
  expect(new Set(SOUND).size).toBeGreaterThanOrEqual(60);
});

describe("A damaged formula", () => {
  test.each(DAMAGED.map((one) => [one.now, one] as const))("is mended or refused with a reason: %s", (now, one) => {
    const repair = repairFormula(now, KNOWLEDGE);
    if (one.meant === undefined)
      expect(repair).toEqual({ state: "refused", why: expect.stringMatching(one.why ?? /$^/) as string });
    else expect(repair).toMatchObject({ state: "mended", formula: one.meant });
  });

  test.each(DAMAGED.flatMap(({ meant }) => (meant === undefined ? [] : [meant])))(
    "is sound once it is mended: %s",
    (formula) => {
      expect(repairFormula(formula, KNOWLEDGE)).toEqual({ state: "sound" });
    },
  );
});

describe("A sound formula", () => {
  test.each(SOUND)("stays as it is: %s", (formula) => {
    expect(repairFormula(formula, KNOWLEDGE)).toEqual({ state: "sound" });
  });
});

test("A table's @ stays and the user learns why", () => {
  const repair = repairFormula('=@_xldudf_WARMBACK_CYCLE_STATES("R-410A",45,105)', KNOWLEDGE);
  expect(repair).toMatchObject({ notes: ["The @ stays: it takes the first value of a table."] });
});

test("A sound call behind @ loses it where the cell shows #NAME?", () => {
  const formula = '=@WARMBACK.PIPE.VELOCITY(40,"2 in")';
  expect(repairFormula(formula, KNOWLEDGE, true)).toMatchObject({ formula: '=WARMBACK.PIPE.VELOCITY(40,"2 in")' });
});
