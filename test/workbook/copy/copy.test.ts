/** The finished copy: values, what explains it, and nothing of what was left out. */
import { expect, test } from "vitest";
import { RECORD_COLUMNS } from "../../../src/workbook/copy/recordPage";
import { copyName } from "../../../src/workbook/copy/copyName";
import { makeCopy } from "../../../src/workbook/copy/handOver";
import { callsUs, openPackage, readBook } from "../../../src/workbook/package";
import { CANCELLED } from "../../../src/workbook/timeSlices";
import { problemsOf } from "../package/soundness";
import {
  bytesOf,
  copyOf,
  engine,
  FACTS,
  formula,
  fullWithUs,
  linesOf,
  partTexts,
  readSheets,
  resultOf,
  sheet,
  surveyOf,
  VELOCITY,
} from "./books";

const HEADLOSS = resultOf("PIPE.HEADLOSS", 90, "2 in", 100);

const LOOP = sheet("Loop", [
  ["Fernhill Hall (invented): pool loop"],
  ["Flow", 90, "gpm"],
  ["Size", "2 in"],
  ["Run", 100, "ft"],
  ["Head lost", formula("_xldudf_WARMBACK_PIPE_HEADLOSS(B2,B3,B4)", HEADLOSS), "ft"],
  ["Twice that", formula("B5*2", HEADLOSS * 2)],
  ["Sum", formula("B2+B4", 190)],
  ["Refused", formula('_xldudf_WARMBACK_PIPE_HEADLOSS(B2,"2 in",-5)', { code: "#VALUE!" })],
  ["Again", formula("IFERROR(_xldudf_WARMBACK_PIPE_HEADLOSS(B2,B3,B4),0)", HEADLOSS)],
]);

const LOOP_BOOK = await bytesOf([LOOP]);

const sheetOf = async (bytes: Uint8Array, name: string) => {
  const found = (await readSheets(bytes)).get(name);
  if (found === undefined) throw new Error(`no sheet ${name}`);
  return found;
};

test("Cells that need us hold their values at full precision, other formulas stay live", async () => {
  const { bytes, summary } = await copyOf(LOOP_BOOK);
  const { at } = await sheetOf(bytes, "Loop");
  expect(["B5", "B6", "B9"].map((cell) => [at(cell)?.value, at(cell)?.formula])).toEqual([
    [HEADLOSS, undefined],
    [HEADLOSS * 2, undefined],
    [HEADLOSS, undefined],
  ]);
  expect(at("B7")?.formula).toMatchObject({ text: "B2+B4" });
  expect(summary).toMatchObject({ ours: 3, dependent: 1, live: 1, othersFrozen: 0 });
});

test("All formulas become values where that is chosen", async () => {
  const { bytes, summary } = await copyOf(LOOP_BOOK, { others: "frozen" });
  const { cells, value } = await sheetOf(bytes, "Loop");
  expect(cells.filter((cell) => cell.formula !== undefined)).toEqual([]);
  expect(value("B7")).toBe(190);
  expect(summary).toMatchObject({ live: 0, othersFrozen: 1 });
});

test("The record has project, file, date and edition, a label beside each address, source, method and cautions", async () => {
  const { bytes } = await copyOf(LOOP_BOOK);
  const lines = linesOf(await sheetOf(bytes, "Record"));
  expect(lines[1]?.[0]).toBe(
    `Project: Fernhill Hall (invented)   File: bid.xlsx   Date of the copy: 2026-11-26   Calculated by: ${engine.edition}`,
  );
  expect(lines[3]).toEqual(RECORD_COLUMNS.map(([heading]) => heading));
  const line = lines.find(([cell]) => cell === "Loop!B5") ?? [];
  expect(line.slice(0, 3)).toEqual(["Loop!B5", "Head lost", "=WARMBACK.PIPE.HEADLOSS(B2,B3,B4)"]);
  expect(line[3]).toContain("flow: 90 gpm\nsize: 2 in\nlength: 100 ft\nby default: ");
  expect(line[4]).toBe(HEADLOSS);
  expect(line[5]).toBe("ft");
  expect(line[6]).toMatch(/^PIPE.HEADLOSS: Friction head/);
  expect(line[7]).toContain("ASTM D1785");
  expect(line[8]).toMatch(/^Warning: /);
  const refused = lines.find(([cell]) => cell === "Loop!B8");
  expect(refused?.[4]).toBe("#VALUE! length: must be at least 0 ft, got -5 ft");
  expect(lines.find(([cell]) => cell === "Loop!B9")?.slice(3, 4)).toEqual([
    expect.stringMatching(/^as Loop!B5\ngives 11\./),
  ]);
  expect(lines.find(([cell]) => cell === "Loop!B6")).toEqual(["Loop!B6", "Twice that", "=B5*2", "", HEADLOSS * 2]);
  expect(lines[2]?.[0]).toContain("A cell without a method depends on those above it; its unit is on its sheet.");
  expect(lines.find(([cell]) => cell === "Loop!B7")).toBeUndefined();
});

test("The copy's file holds a method once, behind the texts of the workbook's own sheets", async () => {
  const list = async (bytes: Uint8Array): Promise<string> =>
    partTexts((await copyOf(bytes)).bytes)["xl/sharedStrings.xml"] ?? "";
  const full = await list(fullWithUs());
  const own = partTexts(fullWithUs())["xl/sharedStrings.xml"] ?? "";
  for (const [text, before] of [
    [await list(LOOP_BOOK), 0],
    [full, own.split("<si>").length - 1],
  ] as const) {
    expect(text.match(/PIPE\.(?:HEADLOSS|VELOCITY): [A-Z]/g)).toHaveLength(1);
    expect(text).not.toMatch(/<sst[^>]*ount=/);
    expect(text.split("<si>").findIndex((item) => item.includes("PIPE.")) - 1).toBeGreaterThanOrEqual(before);
  }
});

test("The Read me says in plain words what the copy is, and the errors of the copy beside those of the original", async () => {
  const { bytes } = await copyOf(LOOP_BOOK);
  const text = (await sheetOf(bytes, "Read me")).texts().join("\n");
  for (const part of [
    "Fernhill Hall (invented)",
    "bid.xlsx",
    "2026-11-26",
    engine.edition,
    "Sheets of the original: Loop.",
    "3 cells with a function of the add-in hold their values",
    "1 formula without the add-in still calculates.",
    "1 cell shows an error in this copy, 1 on the same sheets of the original. In the copy: Loop!B8.",
    "local codes",
  ])
    expect(text).toContain(part);
});

test("The supplier's page has inputs and results and fits one printed page", async () => {
  const { bytes } = await copyOf(LOOP_BOOK);
  const lines = linesOf(await sheetOf(bytes, "For the supplier"));
  expect(lines).toContainEqual(["flow", 90, "gpm", ""]);
  expect(lines).toContainEqual(["Head lost", HEADLOSS, "ft", "Loop!B5"]);
  const xml = Object.values(partTexts(bytes)).find((text) => text.includes("For the supplier</t>")) ?? "";
  expect(xml).toContain('<pageSetUpPr fitToPage="1"/>');
  expect(xml).toContain('<pageSetup orientation="portrait"/>');
});

/** Every mark that a text holds. */
const marks = (texts: Iterable<string>): readonly string[] => {
  const found = new Set<string>();
  for (const text of texts)
    for (const [, key = ""] of text.replaceAll("%20", " ").matchAll(/CANARY (\w+(?: \w+)?) of Fernhill/g))
      found.add(key);
  return [...found].sort();
};

const LEAVE_OUT = { choice: { sheets: ["Loop"], drop: new Set(["rows:Loop:24-24", "columns:Loop:H-H"]) } };

test("What a copy leaves out has no trace in it, the sheets that explain it included", async () => {
  const bytes = fullWithUs();
  expect(marks(Object.values(partTexts(bytes))).length).toBeGreaterThan(35);
  const copy = await copyOf(bytes, LEAVE_OUT);
  const texts = partTexts(copy.bytes);
  expect(marks(Object.values(texts))).toEqual([]);
  expect(
    Object.entries(texts)
      .filter(([, text]) => /cfg|Secret|scratch|MarginName/.test(text))
      .map(([path]) => path),
  ).toEqual([]);
  expect(problemsOf(texts)).toEqual([]);
});

test("A formula over something left out is a value whose record doesn't show the formula", async () => {
  const copy = await copyOf(fullWithUs(), LEAVE_OUT);
  const sheets = await readSheets(copy.bytes);
  const lines = linesOf(sheets.get("Record")!);
  const hidden = "not shown: it refers to something that isn't in this copy";
  expect(["Loop!B40", "Loop!B41", "Loop!C41"].map((at) => lines.find(([cell]) => cell === at)?.[2])).toEqual([
    '=WARMBACK.PIPE.VELOCITY(A40,"2 in")',
    hidden,
    hidden,
  ]);
  expect(sheets.get("Loop")?.at("B40")).toMatchObject({ value: VELOCITY });
  expect(copy.report.frozen.map(({ reason }) => reason)).toEqual(["the sheet cfg", "the sheet cfg"]);
  expect(copy.report.sheets).toEqual([
    { name: "Prices", reasons: ["a validation on Loop needs it"] },
    { name: "Loop", reasons: [] },
  ]);
});

test("No call of ours is left in cells, names and rules", async () => {
  const rows = [[40, formula('_xldudf_WARMBACK_PIPE_VELOCITY(A1,"2 in")', VELOCITY), formula("Fast*2", 2 * VELOCITY)]];
  const validations = [{ areas: "A1", type: "custom" as const, formulas: ['WARMBACK.PIPE.VELOCITY(A1,"2 in")<6'] }];
  const bytes = await bytesOf(
    [sheet("Loop", rows, { validations })],
    [{ name: "Fast", formula: '_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")' }],
  );
  const keep = new Set(["name:!fast"]);
  const { bytes: made } = await copyOf(bytes, { choice: { sheets: ["Loop"], keep } });
  const book = await readBook(await openPackage(made));
  expect(book.names.filter(({ formula: text }) => callsUs(text))).toEqual([]);
  expect(book.names.find(({ name }) => name === "Fast")?.formula).toBe(String(VELOCITY));
  expect((await sheetOf(made, "Loop")).cells.filter((cell) => cell.formula !== undefined)).toEqual([]);
  expect(partTexts(made)["xl/worksheets/sheet1.xml"]).not.toContain("WARMBACK");
  expect((await sheetOf(made, "Read me")).texts().join(" ")).toContain(
    "calculated columns with a function of the add-in were taken out: 1.",
  );
});

test("A text that would be a command in a cell gets the quote prefix, frozen or in the record", async () => {
  const command = "=cmd|' /C calc'!A0";
  const rows = [
    [command, formula('_xldudf_WARMBACK_PIPE_VELOCITY(40,"2 in")', VELOCITY)],
    [formula('A1&IF(B1>0,"","x")', command)],
  ];
  const { bytes } = await copyOf(await bytesOf([sheet("Loop", rows)]));
  const { styles } = await readBook(await openPackage(bytes));
  const sheets = await readSheets(bytes);
  const quoted = (name: string, at: string) => {
    const cell = sheets.get(name)?.at(at);
    return [cell?.value, cell?.formula, styles.cells[cell?.style ?? 0]?.quotePrefix];
  };
  expect(quoted("Loop", "A2")).toEqual([command, undefined, true]);
  expect(quoted("Record", "B5")).toEqual([command, undefined, true]);
  expect(quoted("Record", "C5")).toEqual(['=WARMBACK.PIPE.VELOCITY(40,"2 in")', undefined, true]);
});

test("A sheet of the workbook that has the name of ours keeps it", async () => {
  const { added, bytes } = await copyOf(await bytesOf([LOOP, sheet("Record", [["mine"]])]), {
    choice: { sheets: ["Loop", "Record"] },
  });
  expect(added).toEqual(["Read me", "Record 2", "For the supplier"]);
  expect((await sheetOf(bytes, "Read me")).texts().join(" ")).toContain("The sheet Record 2 names for each such cell");
});

test("The original's bytes stay as they are, and a cancelled copy ends at the next slice", async () => {
  const bytes = fullWithUs();
  const before = bytes.slice();
  const survey = await surveyOf(bytes);
  const plan = { choice: { sheets: survey.proposed }, others: "live", facts: FACTS } as const;
  let now = 0;
  const slices = { slice: 1, now: () => (now += 2), turn: () => Promise.resolve() };
  const stages = new Set<string>();
  await makeCopy(survey, plan, engine, {
    slices,
    onProgress: ({ text }) => void stages.add(text.replace(/\d+/g, "n")),
  });
  expect([...stages].sort()).toEqual([
    "checking the copy",
    "n of n cells recorded",
    "packing the copy",
    "writing the copy",
  ]);
  for (const stage of stages) {
    const ending = new AbortController();
    const onProgress = ({ text }: { text: string }): void => {
      if (text.replace(/\d+/g, "n") === stage) ending.abort();
    };
    await expect(makeCopy(survey, plan, engine, { slices, onProgress, signal: ending.signal }), stage).rejects.toBe(
      CANCELLED,
    );
  }
  expect(bytes).toEqual(before);
});

test("A copy's file is called after the workbook", () => {
  expect(["bid.xlsm", "my.pool.xlsx", "", "Book1"].map(copyName)).toEqual([
    "bid hand-over copy.xlsx",
    "my.pool hand-over copy.xlsx",
    "Hand-over copy.xlsx",
    "Book1 hand-over copy.xlsx",
  ]);
});
