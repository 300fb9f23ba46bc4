/** Parts that stay unpacked between the check of a file and its reading. */
import { expect, test } from "vitest";
import { forgetUnpacked, openPackage, PACKAGE_LIMITS } from "../../../src/workbook/package";
import { partText } from "../../../src/workbook/package/parts/package";
import { plainBook, zipOf } from "./zipParts";

const SHEET = "xl/worksheets/sheet1.xml";
const file = (): Uint8Array =>
  zipOf(plainBook({ S: '<sheetData><row r="1"><c r="A1"><v>7</v></c></row></sheetData>' }));

test("a part that stays unpacked is read without unpacking it again, until it is forgotten", async () => {
  const bytes = file();
  const pack = await openPackage(bytes, {}, PACKAGE_LIMITS, true);
  const text = await partText(await openPackage(file()), SHEET);
  // Nothing can be unpacked any more.
  bytes.fill(0);
  expect(text).toContain("<v>7</v>");
  expect(await partText(pack, SHEET)).toBe(text);
  await expect(partText(forgetUnpacked(pack), SHEET)).rejects.toThrow(SHEET);
});

test("nothing stays unpacked unless that is asked for", async () => {
  expect((await openPackage(file())).unpacked).toBeUndefined();
});
