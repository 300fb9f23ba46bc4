import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { EDITION } from "../../core";
import { changesIn } from "../../scripts/changes";
import { STARTER_SHEETS } from "../../src/sheets";
import { editionCheck } from "../../src/workbook/edition/editionCheck";
import { stamped, stampsIn } from "../../src/workbook/edition/stamp";
import { filteredUses, functionUses } from "../../src/workbook/scan/functionUses";
import { at, fakePort } from "./fakeWorkbook";
import { ENGINE, onPreview, type OnPreview } from "./previewEngine";

const LOG = `# Change log

## 0.2.0

- \`PIPE.VELOCITY\` **result**: counts the bore of schedule 80.

## 0.1.0

- \`PIPE.HEADLOSS\`, \`PIPE.VELOCITY\`: new.
- Every function: units are read in the trade's spellings.
`;

test("The change log is read by edition, each line with the functions that it names", () => {
  expect(changesIn(LOG)).toEqual([
    { edition: "0.2.0", text: "PIPE.VELOCITY result: counts the bore of schedule 80.", ids: ["PIPE.VELOCITY"] },
    { edition: "0.1.0", text: "PIPE.HEADLOSS, PIPE.VELOCITY: new.", ids: ["PIPE.HEADLOSS", "PIPE.VELOCITY"] },
    { edition: "0.1.0", text: "Every function: units are read in the trade's spellings.", ids: [] },
  ]);
});

describe("The stamp of an edition", () => {
  let on: OnPreview;
  beforeAll(async () => {
    on = await onPreview("Pool loop");
  });
  afterAll(() => on.sheets.dispose());

  test("is a value on every starter sheet that is inserted, and is found again", async () => {
    const [first] = STARTER_SHEETS;
    if (first === undefined) throw new Error("no starter");
    const name = await on.book.insert(stamped(first, "Warmback 0.0.9"));
    const used = await on.book.used(name);
    const blocks = used === undefined ? [] : await on.book.read([used]);
    const stamps = stampsIn(blocks);
    expect(stamps.map(({ edition }) => edition)).toEqual(["Warmback 0.0.9"]);
    const { row = 0, column = 0 } = stamps[0]?.address ?? {};
    expect(blocks[0]?.formulas[row]?.[column]).toBe("");
  });

  test.each([
    ["Computed by Warmback 0.1.0. The sheets of this copy hold values", "Warmback 0.1.0"],
    ["Warmback 0.2.0-beta", "Warmback 0.2.0-beta"],
    ["Warmback is an add-in", undefined],
    ["see Warmback 0.1.0", undefined],
  ])("is read from %j", (value, edition) => {
    const block = { area: { ...at("S", "A1"), rows: 1, columns: 1 }, formulas: [[""]], values: [[value]] };
    expect(stampsIn([block])[0]?.edition).toBe(edition);
  });
});

test("A workbook of another edition shows stored values against new ones, beside the lines that name their functions", async () => {
  const { book } = fakePort({
    Loop: {
      A1: "Made with Warmback 0.0.9",
      B1: { formula: '=WARMBACK.PIPE.VELOCITY(40,"2 in")', value: 3.1 },
      B2: { formula: '=WARMBACK.PIPE.HEADLOSS(40,"2 in",100)*2', value: 1 },
      B3: { formula: '=WARMBACK.REFRIG.PRESSURE("R-32",40)', value: 1 },
      B4: { formula: "=WARMBACK.POOL.AREA(UNKNOWN(3))", value: 2 },
      B5: { formula: '=WARMBACK.PIPE.BORE("2 in")', value: 2.049 },
      B6: { formula: "=SUM(B1:B2)", value: 9 },
    },
  });
  const report = await editionCheck(book, ENGINE, changesIn(LOG));
  expect(report.stamps.map(({ edition }) => edition)).toEqual(["Warmback 0.0.9"]);
  expect(report.stamps[0]?.edition).not.toBe(EDITION);
  expect(report.compared).toBe(4);
  expect(report.unread).toEqual([at("Loop", "B4")]);
  expect(
    report.differences.map(({ address, stored, now, changes }) => [address.row, stored, now, changes.length]),
  ).toEqual([
    [0, 3.1, expect.closeTo(3.892, 2), 2],
    [1, 1, undefined, 1],
    [2, 1, expect.any(Number), 0],
  ]);
});

describe("The list of uses", () => {
  const use = (text: string, id: string): { address: ReturnType<typeof at>; formula: string; ids: string[] } => ({
    address: at("Loop", text),
    formula: `=WARMBACK.${id}(1)`,
    ids: [id, id],
  });
  const report = {
    severities: [],
    cells: [use("A2", "PIPE.SIZE"), use("A1", "PIPE.SIZE"), use("B1", "COST.OFHEAT"), use("B9", "PIPE.SIZE")],
    failing: [{ address: at("Loop", "B9"), error: "#VALUE!", message: "flow: is blank" }],
    unreadable: [],
    uncomputed: [],
    stale: [],
  };

  test("puts failures first, then goes by function, sheet and cell, each function of a cell once", () => {
    expect(functionUses(report).map(({ id, address, error }) => [id, address.row, address.column, error])).toEqual([
      ["PIPE.SIZE", 8, 1, "#VALUE! flow: is blank"],
      ["COST.OFHEAT", 0, 1, undefined],
      ["PIPE.SIZE", 0, 0, undefined],
      ["PIPE.SIZE", 1, 0, undefined],
    ]);
  });

  test("keeps those that hold every word of the filter", () => {
    expect(filteredUses(functionUses(report), "pipe loop!a")).toHaveLength(2);
    expect(filteredUses(functionUses(report), "blank")).toHaveLength(1);
    expect(filteredUses(functionUses(report), " ")).toHaveLength(4);
    expect(filteredUses(functionUses(report), "absent")).toHaveLength(0);
  });
});
