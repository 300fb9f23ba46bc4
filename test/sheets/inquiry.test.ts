import { describe, expect, test } from "vitest";
import { emptySheet } from "../../src/preview/data";
import { loadFunctions } from "../../src/preview/load";
import { startHeadless } from "../../src/preview/univer/start";
import { previewWorkbook } from "../../src/preview/workbook";
import { exchangerInquiry } from "../../src/sheets/exchangerInquiry";
import type { StarterSheet } from "../../src/sheets/sheet";
import { isFault, type CellValue } from "../../src/workbook/port";

type Cells = ReadonlyMap<string, CellValue>;

/** The sheet with the supplier's cells filled in, by label; the blank line of that label counts. */
const answered = (answers: Readonly<Record<string, string | number>>): StarterSheet => {
  const cells = { ...exchangerInquiry.cells };
  for (const [label, content] of Object.entries(answers)) {
    const at = Object.entries(cells)
      .filter(([place, cell]) => place.startsWith("A") && cell.content === label)
      .map(([place]) => `B${place.slice(1)}`)
      .find((place) => cells[place]?.content === "");
    const cell = at === undefined ? undefined : cells[at];
    if (at === undefined || !cell) throw new Error(`no blank beside ${label}`);
    cells[at] = { ...cell, content };
  }
  return { ...exchangerInquiry, cells };
};

/** Label → value; the last line of a label counts. */
const calculated = async (sheet: StarterSheet): Promise<Cells> => {
  const book = startHeadless(loadFunctions("dist"), { sheets: [emptySheet("Start")], names: [] });
  try {
    const workbook = previewWorkbook(book);
    const name = await workbook.insert(sheet);
    await book.settled();
    const used = await workbook.used(name);
    if (!used) throw new Error("the sheet is empty");
    const [block] = await workbook.read([used]);
    return new Map((block?.values ?? []).map(([label, value = ""]) => [String(label), value]));
  } finally {
    book.dispose();
  }
};

const offer = {
  "Heat at the duty's temperatures": 115000,
  "UA with the fouling above": 6300,
  "Water drop at that flow": 2,
  "Refrigerant drop": 3,
  "Design pressure, refrigerant side": 650,
  "Test pressure, refrigerant side": 975,
  "Design pressure, water side": 50,
  "Warmest water allowed": 140,
} as const;

describe("Exchanger inquiry", () => {
  test("works out the duty of Fernhill Hall without a failing cell and leaves the supplier's checks open", async () => {
    const found = await calculated(exchangerInquiry);
    expect([...found.values()].filter((value) => isFault(value))).toEqual([]);
    expect(found.get("Offered heat covers the duty")).toBe("OPEN");
    expect(found.get("Streams at least 5 °F apart")).toBe("OK");
    expect(found.get("Design pressure above the standing pressure")).toBe("OK");
    expect(found.get("Master check")).toBe("LOOK AT THE CHECKS");
    expect(found.get("The offer's UA over the UA needed, less one")).toBe("open");
    expect(found.get("UA needed, all zones")).toBeGreaterThan(4000);
  });

  test("accepts an offer that covers duty, UA, pressures and drops", async () => {
    const found = await calculated(answered(offer));
    expect(found.get("Offered UA covers UA and margin")).toBe("OK");
    expect(found.get("Offered heat and offered UA agree")).toBe("OK");
    expect(found.get("Master check")).toBe("OK");
  });

  test("finds an offer whose heat its own UA can't pass", async () => {
    const found = await calculated(answered({ ...offer, "UA with the fouling above": 3000 }));
    expect(found.get("Offered heat covers the duty")).toBe("OK");
    expect(found.get("Offered UA covers UA and margin")).toBe("CHECK");
    expect(found.get("Offered heat and offered UA agree")).toBe("CHECK");
    expect(found.get("Master check")).toBe("LOOK AT THE CHECKS");
  });
});
