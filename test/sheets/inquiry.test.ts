import { describe, expect, test } from "vitest";
import { exchangerInquiry } from "../../src/sheets/exchangerInquiry";
import type { StarterSheet } from "../../src/sheets/sheet";
import { isCellFault } from "../../src/workbook/port";
import { valuesOf, withInputs } from "./calculated";

/** The sheet with the supplier's cells filled in. */
const answered = (answers: Readonly<Record<string, string | number>>): StarterSheet =>
  withInputs(exchangerInquiry, answers, "blank");

const offer = {
  "Made by": "AB",
  "Checked by": "CD",
  "Heat at the duty's temperatures": 118000,
  "UA with the fouling above": 8000,
  "Water drop at that flow": 2,
  "Refrigerant drop": 3,
  "Design pressure, refrigerant side": 650,
  "Test pressure, refrigerant side": 975,
  "Design pressure, water side": 50,
  "Warmest water allowed": 140,
} as const;

describe("Exchanger inquiry", () => {
  test("computes the duty of Fernhill Hall without a failing cell and leaves the supplier's checks open", async () => {
    const found = await valuesOf(exchangerInquiry);
    expect([...found.values()].filter((value) => isCellFault(value))).toEqual([]);
    expect(found.get("Offered heat covers the duty")).toBe("NOT CHECKED");
    expect(found.get("Streams at least 5 °F apart")).toBe("OK");
    expect(found.get("Design pressure above the standing pressure")).toBe("OK");
    expect(found.get("Master check")).toBe("NOT CHECKED");
    expect(found.get("Margin of the offered UA")).toBe("open");
    expect(found.get("UA needed, all zones")).toBeGreaterThan(4000);
  });

  test("accepts an offer that covers duty, UA, pressures and drops", async () => {
    const found = await valuesOf(answered(offer));
    expect(found.get("Offered UA covers UA and margin")).toBe("OK");
    expect(found.get("Offered heat and offered UA agree")).toBe("OK");
    expect(found.get("Master check")).toBe("OK");
  });

  test("finds an offer whose heat its own UA can't pass", async () => {
    const found = await valuesOf(answered({ ...offer, "UA with the fouling above": 3000 }));
    expect(found.get("Offered heat covers the duty")).toBe("OK");
    expect(found.get("Offered UA covers UA and margin")).toBe("LOOK");
    expect(found.get("Offered heat and offered UA agree")).toBe("LOOK");
    expect(found.get("Master check")).toBe("LOOK");
  });
});
