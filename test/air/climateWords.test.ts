import { describe, expect, test } from "vitest";
import { climateWord, meanAndSwing } from "../../core/air/climateWords";

describe("heads of climate tables", () => {
  test.each([
    ["Dry bulb", "air"],
    ["Tdb", "air"],
    ["Dry Bulb Temperature", "air"],
    ["rh", "humidity"],
    ["Relative Humidity", "humidity"],
    ["dew point", "dew point"],
    ["Tdp", "dew point"],
    ["GHI", "sun"],
    ["high", "high"],
    ["Low", "low"],
    ["wind at 10 m", "wind"],
  ])("%s is the column %s", (head, word) => expect(climateWord(head)).toBe(word));

  test.each(["wine", "", "constructor", "precipitation"])("%s is none", (head) =>
    expect(climateWord(head)).toBeUndefined(),
  );

  test("high and low give mean and swing", () => expect(meanAndSwing(305, 295)).toEqual({ air: 300, swing: 10 }));
});
