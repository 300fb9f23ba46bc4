import { describe, expect, test } from "vitest";
import { wordLines } from "../../src/taskpane/pictures/wordLines";

describe("The words of a schematic", () => {
  test("break at spaces, and no line is longer than its letters", () => {
    expect(wordLines("pool exchanger, new", 10)).toEqual(["pool", "exchanger,", "new"]);
    for (const letters of [1, 5, 9, 14])
      for (const line of wordLines("Desuperheater/condenser-exchanger of the machine", letters))
        expect(line.length).toBeLessThanOrEqual(letters);
  });

  test("go on after a hyphen or a slash where a word is longer than a line", () => {
    expect(wordLines("bypass-throttle-valve", 16)).toEqual(["bypass-throttle-", "valve"]);
    expect(wordLines("Countercurrentexchanger", 14)).toEqual(["Countercurrent", "exchanger"]);
  });

  test("keep every letter", () => {
    const text = "Countercurrentexchanger 2-1/2 in";
    expect(wordLines(text, 6).join("").replace(/ /g, "")).toBe(text.replace(/ /g, ""));
  });
});
