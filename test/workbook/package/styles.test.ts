/** Styles that are added to a workbook. */
import { describe, expect, test } from "vitest";
import { MINIMAL_STYLES } from "../../../src/workbook/package/create/minimal";
import { styleBuilder } from "../../../src/workbook/package/styles/build";
import { PLAIN_STYLES } from "./zipParts";

describe("A look without a font of its own", () => {
  const fontsOf = (source: string, own: { readonly font?: string; readonly size?: number } = {}): readonly string[] => {
    const styles = styleBuilder("xl/styles.xml", source);
    styles.of({ bold: true, ...own }, false);
    return [...styles.text().matchAll(/<font>(.*?)<\/font>/g)].map(([, font = ""]) => font);
  };

  test("has the workbook's own, by name and size", () => {
    const theirs = PLAIN_STYLES.replace("Calibri", "Aptos Narrow").replace('val="11"', 'val="12"');
    expect(fontsOf(theirs)[1]).toBe('<b/><sz val="12"/><name val="Aptos Narrow"/>');
  });

  test("of a new workbook has a font whose widths every program knows", () => {
    expect(fontsOf(MINIMAL_STYLES)).toEqual([
      '<sz val="10"/><name val="Arial"/><family val="2"/>',
      '<b/><sz val="10"/><name val="Arial"/>',
    ]);
  });

  test("has it where the workbook names none", () =>
    expect(fontsOf(PLAIN_STYLES.replace(/<sz .*?\/><name .*?\/>/, ""))[1]).toBe(
      '<b/><sz val="10"/><name val="Arial"/>',
    ));

  test("keeps what it has of its own", () =>
    expect(fontsOf(PLAIN_STYLES, { font: "Georgia", size: 9 })[1]).toBe('<b/><sz val="9"/><name val="Georgia"/>'));
});
