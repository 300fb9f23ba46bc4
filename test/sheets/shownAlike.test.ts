import { describe, expect, test } from "vitest";
import { STARTER_SHEETS } from "../../src/sheets";
import { alternatives } from "../../src/sheets/alternatives";
import { exchangerInquiry } from "../../src/sheets/exchangerInquiry";
import { refrigerantSide } from "../../src/sheets/refrigerantSide";
import { survey } from "../../src/sheets/survey";
import { valuesOf, withInputs } from "./calculated";

describe("what starter sheets show alike", () => {
  test("a signed change that is too small to show counts as 0 on every sheet", () => {
    const signed = STARTER_SHEETS.flatMap(({ cells }) =>
      Object.values(cells).filter(({ format = "" }) => format.includes(";-0")),
    );
    expect(signed.length).toBeGreaterThan(1);
    for (const { content } of signed) expect(String(content)).toMatch(/^=IF\(ABS\(.+\)<0\.005|^=IF\(ABS\(.+\)<0\.05/);
  });

  test("subcooling that misses its target by 0.01 °F shows no sign", async () => {
    const first = await valuesOf(refrigerantSide);
    const subcooling = Number(first.get("Subcooling"));
    const found = await valuesOf(withInputs(refrigerantSide, { "Subcooling wanted": subcooling + 0.01 }));
    expect(found.get("Subcooling over the one wanted")).toBe(0);
  });

  test("the decision fits its cell on Survey in bold", () => {
    expect(survey.widths[1]).toBeGreaterThan(20);
  });

  test("gauge pressures of Exchanger inquiry count from the air at the place", async () => {
    const low = await valuesOf(withInputs(exchangerInquiry, { Altitude: 0 }));
    const high = await valuesOf(withInputs(exchangerInquiry, { Altitude: 5000 }));
    const rise = Number(high.get("Condensing pressure")) - Number(low.get("Condensing pressure"));
    // ICAO standard atmosphere: 14.696 psi at sea level, 12.228 psi at 5,000 ft.
    expect(rise).toBeCloseTo(14.696 - 12.228, 2);
  });

  test("Alternatives shows the workbook's currency sign and never the word money as a unit", () => {
    const texts = Object.values(alternatives.cells).map(({ content }) => String(content));
    expect(texts.filter((text) => /\bmoney(?:\/|$)/.test(text))).toEqual([]);
    expect(texts).toContain("Currency sign");
  });
});
