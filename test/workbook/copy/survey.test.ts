/** What is known of a workbook before a copy of it is made. */
import { expect, test } from "vitest";
import { surveyBook } from "../../../src/workbook/copy/survey";
import { addressText } from "../../../src/workbook/reader/reference";
import { CANCELLED } from "../../../src/workbook/timeSlices";
import { plainBook, zipOf } from "../package/zipParts";
import { bytesOf, engine, formula, fullWithUs, sheet, surveyOf, VELOCITY } from "./books";

const OURS = '_xldudf_WARMBACK_PIPE_VELOCITY(A1,"2 in")';

test("Sheets with our functions and those that they refer to are proposed, in the order of their tabs", async () => {
  const survey = await surveyOf(
    await bytesOf(
      [
        sheet("Prices", [[12]]),
        sheet("Inputs", [[40]]),
        sheet("Loop", [[formula('_xldudf_WARMBACK_PIPE_VELOCITY(flow,"2 in")', VELOCITY), formula("Prices!A1*2", 24)]]),
        sheet("Notes", [["by hand"]]),
      ],
      [{ name: "flow", formula: "Inputs!$A$1" }],
    ),
  );
  expect(survey.proposed).toEqual(["Inputs", "Loop"]);
  expect(survey.sheets.map(({ name, ours }) => [name, ours])).toEqual([
    ["Prices", 0],
    ["Inputs", 0],
    ["Loop", 1],
    ["Notes", 0],
  ]);
});

test("Cells that show an error, differ or can't be read are listed", async () => {
  const rows = [
    [40, formula(OURS, VELOCITY)],
    [40, formula('_xldudf_WARMBACK_PIPE_VELOCITY(A2,"2 in")', 99)],
    [40, formula('_xldudf_WARMBACK_PIPE_VELOCITY(XLOOKUP(1,A1:A9,A1:A9),"2 in")', 3)],
    [40, formula("1/0", { code: "#DIV/0!" })],
  ];
  const survey = await surveyOf(await bytesOf([sheet("Loop", rows)]));
  expect(survey.stored.failing.map(addressText)).toEqual(["Loop!B4"]);
  expect(survey.differing.map(addressText)).toEqual(["Loop!B2"]);
  expect(survey.unreadable.map(addressText)).toEqual(["Loop!B3"]);
});

test("A name whose formula is more than a reference is followed, and one that calls us makes its readers depend on us", async () => {
  const survey = await surveyOf(
    await bytesOf(
      [
        sheet("Loop", [
          [2400, formula('_xldudf_WARMBACK_PIPE_VELOCITY(B2,"2 in")', VELOCITY)],
          [1, formula("Gpm", 40), formula("Fast*2", 2 * VELOCITY), formula("Twice", 2 * VELOCITY)],
        ]),
      ],
      [
        { name: "Gpm", formula: "Loop!$A$1/60" },
        { name: "Fast", formula: '_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")' },
        { name: "Twice", formula: "Loop!$B$1*2" },
      ],
    ),
  );
  expect(survey.cells.map(({ address }) => addressText(address))).toEqual(["Loop!B1", "Loop!C2", "Loop!D2"]);
});

test.each(["#BUSY!", "#GETTING_DATA"])("A cell that still shows %s refuses the copy and is named", async (code) => {
  const data = `<sheetData><row r="1"><c r="A1"><v>40</v></c><c r="B1" t="e"><f>${OURS.replaceAll('"', "&quot;")}</f><v>${code}</v></c></row></sheetData>`;
  const bytes = zipOf(plainBook({ Loop: data }));
  await expect(surveyBook(bytes, engine)).rejects.toThrow("Excel is still calculating Loop!B1: wait until it is done");
});

test("An error that the file explains elsewhere, in a cell whose call is sound, counts as unfinished", async () => {
  const cell = (vm: string) =>
    `<sheetData><row r="1"><c r="A1"><v>40</v></c><c r="B1" t="e"${vm}><f>${OURS.replaceAll('"', "&quot;")}</f><v>#VALUE!</v></c></row></sheetData>`;
  await expect(surveyBook(zipOf(plainBook({ Loop: cell(' vm="1"') })), engine)).rejects.toThrow(
    "still calculating Loop!B1",
  );
  const survey = await surveyOf(zipOf(plainBook({ Loop: cell("") })));
  expect(survey.differing.map(addressText)).toEqual(["Loop!B1"]);
});

test("Nothing is there to hand over where no cell and no name uses us", async () => {
  expect(await surveyBook(await bytesOf([sheet("S", [[formula("1+1", 2)]])]), engine)).toBeUndefined();
});

test("Files that are no workbook are refused with a sentence", async () => {
  await expect(surveyBook(new TextEncoder().encode("no zip"), engine)).rejects.toThrow(/workbook/);
});

test("The work ends at the next slice once it is cancelled, and tells how far it is", async () => {
  const bytes = fullWithUs();
  const ending = new AbortController();
  const told: string[] = [];
  let now = 0;
  const slices = { slice: 1, now: () => (now += 2), turn: () => Promise.resolve() };
  await surveyBook(bytes, engine, { slices, onProgress: ({ text }) => void told.push(text) });
  expect(new Set(told)).toContain("reading the sheets");
  expect(told.some((text) => /^\d+ of \d+ formulas read$/.test(text))).toBe(true);
  const cancelled = surveyBook(bytes, engine, {
    slices,
    signal: ending.signal,
    onProgress: ({ text }) => text.endsWith("formulas read") && ending.abort(),
  });
  await expect(cancelled).rejects.toBe(CANCELLED);
});
