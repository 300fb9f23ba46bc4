/** The report of what functions.js is made of. */
import { expect, test } from "vitest";
import { measuredFunctions } from "../../scripts/bundle";
import { sizesByKind, sizesByFolder, textBytes } from "../../scripts/release/sizes";

test("The named parts and the folders each add up to the script", async () => {
  const { text, parts } = await measuredFunctions("size");
  for (const sizes of [sizesByKind(parts), sizesByFolder(parts)]) {
    const sum = sizes.reduce((all, [, bytes]) => all + bytes, 0);
    // Besides the parts there is what joins them.
    expect(sum / text.length).toBeGreaterThan(0.97);
    expect(sum / text.length).toBeLessThan(1.03);
  }
  expect(sizesByKind(parts).map(([name]) => name.split(":")[0])).toEqual(
    expect.arrayContaining(["code", "definitions", "texts", "data", "units"]),
  );
});

test("Texts are counted inside quotes and templates only", () => {
  expect(textBytes(`const a = "abc" + 'de' + \`f\${a + "g"}h\`; /"x/.test(a)`)).toBe(8);
});
