/** Words that look alike, by the edit distance of Levenshtein. */
import { describe, expect, test } from "vitest";
import { isMisspelt, lookalike, nearest } from "../../core/kernel/call/nearest";

describe("The nearest word", () => {
  // Distances as textbooks of string algorithms print them: kitten and sitting 3, Saturday and Sunday 3, gumbo and gambol 2.
  test.each([
    ["sitting", ["saturday", "kitten", "execution"], "kitten"],
    ["sunday", ["saturday", "intention"], "saturday"],
    ["gambol", ["gamble tables", "gumbo", "gabbros"], "gumbo"],
  ])("to %s in %j is %s", (wanted, known, found) => expect(nearest(wanted, known)).toBe(found));

  test("is one that holds the other, before one with a letter wrong", () => {
    expect(nearest("area", ["aria", "pool area"])).toBe("pool area");
    expect(nearest("win", ["bin", "wind at 10 m"])).toBe("wind at 10 m");
    expect(nearest("bubble cover", ["double cover", "bubble"])).toBe("bubble");
  });

  test("is not one that holds two letters by chance", () => expect(nearest("in", ["inside", "on"])).toBe("on"));

  test("is the one with the fewest further letters, and the first of equals", () => {
    expect(nearest("area", ["roof area of the hall", "pool area"])).toBe("pool area");
    expect(nearest("bubble cover", ["bub", "bubble"])).toBe("bubble");
    expect(nearest("a1", ["a2", "a3"])).toBe("a2");
  });

  test("of an empty list is empty", () => expect(nearest("area", [])).toBe(""));
});

describe("A word looks like another", () => {
  test("if two fifths of its letters differ at most", () => {
    expect(lookalike("gumbo", ["gambol"])).toBe("gambol");
    expect(lookalike("sitting", ["kitten"])).toBeUndefined();
    expect(lookalike("meilenstein", ["levenshtein"])).toBe("levenshtein");
  });

  test("if one letter differs, however short it is", () => {
    expect(lookalike("?!", ["area"])).toBeUndefined();
    expect(lookalike("a1", ["a2"])).toBe("a2");
    expect(lookalike("ab", ["cd"])).toBeUndefined();
  });
});

describe("A word is misspelt", () => {
  test.each([
    ["flwo", "flow", false],
    ["flov", "flow", true],
    ["watre", "water", true],
    ["wetre", "water", false],
    ["pressrue", "pressure", true],
    ["presrues", "pressure", false],
    ["dischxyze", "discharge", true],
    ["dxschxyze", "discharge", false],
    ["condesingg", "condensing", true],
    ["cindeisgmg", "condensing", false],
  ])("%s for %s: %s (one letter below five, two below nine, else three)", (text, known, misspelt) =>
    expect(isMisspelt(text, [known])).toBe(misspelt),
  );

  test("by the letters of the shorter of both", () => {
    expect(isMisspelt("flowss", ["flow"])).toBe(false);
    expect(isMisspelt("Pool aera:", ["wind", "pool area"])).toBe(true);
  });
});
