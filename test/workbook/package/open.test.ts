/** Files that are no workbook, that are damaged, or that are larger than they say. */
import { strToU8, zipSync } from "fflate";
import { expect, test } from "vitest";
import { isPackageRefusal, openPackage, packageBytes, PACKAGE_LIMITS, readBook } from "../../../src/workbook/package";
import { openParts } from "../../../src/workbook/package/parts/package";
import { contentTypes, plainBook, rels, zipOf, type PartTexts } from "./zipParts";

/** The refusal's code and sentence; opening and reading the workbook part. */
async function refused(bytes: Uint8Array, limits = PACKAGE_LIMITS): Promise<string> {
  try {
    await readBook(await openParts(bytes, {}, limits));
  } catch (error) {
    if (isPackageRefusal(error)) return `${error.code}: ${error.message}`;
    throw error;
  }
  return "opened";
}

const bytes = (...parts: readonly (readonly number[] | string)[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap((part) => (typeof part === "string" ? [...part].flatMap((c) => [c.charCodeAt(0), 0]) : [...part])),
  );

const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const book = () => plainBook({ S: '<sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>' });

test("Files of other kinds are refused, each with a sentence of its own", async () => {
  expect(await refused(bytes(COMPOUND, new Array<number>(600).fill(0), "EncryptedPackage"))).toBe(
    "encrypted: This workbook is encrypted with a password: save it without one first.",
  );
  expect(await refused(bytes(COMPOUND, new Array<number>(600).fill(0), "Workbook"))).toBe(
    "other-format: This is a file of the older .xls kind or of another program: save it as .xlsx in Excel first.",
  );
  expect(await refused(bytes([9, 8, 16, 0, 0, 6]))).toBe(
    "other-format: This is a workbook of the older .xls kind: save it as .xlsx in Excel first.",
  );
  expect(await refused(strToU8("flow,head\n40,12"))).toBe("no-workbook: This file is no .xlsx workbook.");
  expect(await refused(new Uint8Array())).toBe("no-workbook: This file is no .xlsx workbook.");
});

test("A zip that holds no workbook and a binary workbook are refused", async () => {
  expect(await refused(zipOf({ "a.txt": "hello" }))).toBe("no-workbook: This zip holds no Excel workbook.");
  const word: PartTexts = {
    "[Content_Types].xml": contentTypes(
      {},
      { "word/document.xml": "application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml" },
    ),
    "_rels/.rels": rels([["rId1", "officeDocument", "word/document.xml"]]),
    "word/document.xml": "<document/>",
  };
  expect(await refused(zipOf(word))).toBe("no-workbook: This zip holds no Excel workbook.");
  const binary: PartTexts = {
    "[Content_Types].xml": contentTypes(
      {},
      { "xl/workbook.bin": "application/vnd.ms-excel.sheet.binary.macroEnabled.main" },
    ),
    "_rels/.rels": rels([["rId1", "officeDocument", "xl/workbook.bin"]]),
    "xl/workbook.bin": "x",
  };
  expect(await refused(zipOf(binary))).toBe(
    "other-format: This is a binary workbook (.xlsb): save it as .xlsx in Excel first.",
  );
});

test("A file that is cut off anywhere or changed in a part is refused as damaged", async () => {
  const whole = zipOf(book());
  for (const length of [whole.length - 1, Math.floor(whole.length / 2), 40, 4]) {
    expect(await refused(whole.slice(0, length)), String(length)).toMatch(
      /^broken: This file is damaged and can't be read/,
    );
  }
  const changed = whole.slice();
  // Inside the packed bytes of the first part.
  changed[60]! ^= 0x55;
  expect(await refused(changed)).toMatch(/^broken: This file is damaged/);
});

test("Every byte of a small workbook may be damaged: it opens or is refused, and never fails otherwise", async () => {
  const whole = zipOf(book());
  const outcomes = new Set<string>();
  for (let at = 0; at < whole.length; at += 3) {
    const changed = whole.slice();
    changed[at]! ^= 0xff;
    outcomes.add((await refused(changed)).split(":")[0]!);
  }
  expect(
    [...outcomes].every((one) =>
      ["opened", "broken", "no-workbook", "encrypted", "too-large", "other-format"].includes(one),
    ),
  ).toBe(true);
});

test("Limits count what unpacks, whatever the headers say", async () => {
  const limits = { packedBytes: 100_000, unpackedBytes: 300_000, parts: 20, ratio: 50, ratioFrom: 10_000 };
  const with_ = (more: PartTexts) => zipOf({ ...book(), ...more });
  const noise = new Uint8Array(150_000);
  let seed = 1;
  for (let at = 0; at < noise.length; at++) {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) | 0;
    noise[at] = seed >> 16;
  }
  expect(await refused(with_({ "xl/media/a.bin": noise }), limits)).toBe(
    "too-large: This file is too large: 0.1 MB, at most 0.1 MB can be opened.",
  );
  expect(await refused(with_({ "xl/a.bin": new Uint8Array(40_000) }), limits)).toBe(
    "too-large: A part of this file unpacks to more than 50 times its size, which no ordinary workbook does.",
  );
  expect(await refused(with_({ "xl/a.bin": new Uint8Array(400_000) }), { ...limits, ratio: 1e9 })).toBe(
    "too-large: This file is too large once unpacked: more than the 0.3 MB that can be opened.",
  );
  expect(
    await refused(with_(Object.fromEntries(Array.from({ length: 30 }, (_, at) => [`xl/a${at}.xml`, "<a/>"]))), limits),
  ).toBe("too-large: This file holds 37 parts, at most 20 can be opened.");
  // A header that calls a megabyte a handful of bytes.
  const lying = zipSync({ "a.bin": new Uint8Array(1_000_000) });
  const view = new DataView(lying.buffer);
  view.setUint32(22, 5, true);
  view.setUint32(lying.length - 22 - (46 + 5) + 24, 5, true);
  expect(await refused(lying, limits)).toMatch(/^too-large/);
});

test("The limits are those that the help names", () => {
  const mb = 1_048_576;
  expect(PACKAGE_LIMITS).toEqual({
    packedBytes: 50 * mb,
    unpackedBytes: 400 * mb,
    parts: 10_000,
    ratio: 200,
    ratioFrom: mb,
  });
});

test("Parts that share their bytes or their name are refused", async () => {
  const zip = zipOf(book());
  const view = new DataView(zip.buffer);
  const central = [...zip.keys()].filter((at) => at + 4 < zip.length && view.getUint32(at, true) === 0x02014b50);
  view.setUint32(central[1]! + 42, view.getUint32(central[0]! + 42, true), true);
  expect(await refused(zip)).toMatch(/^broken: .*overlaps another part/);
  expect(await refused(zipOf({ ...book(), "XL/Workbook.xml": "<a/>" }))).toMatch(/two of its parts have one name/);
  expect(await refused(zipOf({ ...book(), "xl/../../a.xml": "<a/>" }))).toMatch(/^broken/);
});

test("A part that declares a document type or is no sound XML is refused", async () => {
  const declared = {
    ...book(),
    "xl/workbook.xml": `<!DOCTYPE a [<!ENTITY b "c">]>${String(book()["xl/workbook.xml"]).slice(56)}`,
  };
  expect(await refused(zipOf(declared))).toMatch(/^broken: .*xl\/workbook.xml declares a document type/);
  expect(await refused(zipOf({ ...book(), "xl/workbook.xml": "<workbook><sheets></workbook>" }))).toMatch(
    /no sound XML/,
  );
});

test("A workbook that was only opened is written with the same parts", async () => {
  const parts = book();
  const pack = await openPackage(zipOf(parts));
  const again = await openPackage(await packageBytes(pack));
  expect([...again.parts.values()].map(({ path }) => path)).toEqual(Object.keys(parts));
  expect([...again.parts.values()].map((part) => "entry" in part && part.entry.crc)).toEqual(
    [...pack.parts.values()].map((part) => "entry" in part && part.entry.crc),
  );
});

test("Work ends where its signal says so, and tells how far it is", async () => {
  const control = new AbortController();
  control.abort();
  await expect(openPackage(zipOf(book()), { signal: control.signal })).rejects.toThrow("ended");
  const told: number[] = [];
  await openPackage(zipOf(book()), { onProgress: (done, of) => void told.push(done / of) });
  expect(told.length).toBe(7);
  expect(told.every((share, at) => share <= 1 && share >= (told[at - 1] ?? 0))).toBe(true);
});
