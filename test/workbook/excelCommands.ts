/** Every command of the Excel adapter, with a workbook on which it sends all that it can send. */
import { expect } from "vitest";
import { excelWorkbook } from "../../src/workbook/excel/excelWorkbook";
import type { SheetCopies, ReferenceText } from "../../src/workbook/port";
import { quiet } from "../excelHost/running";
import { brokenAt, type Command } from "../excelHost/faults";
import { addTable, selectByHand, sheetNamed, type, type Profile } from "../excelHost";
import type { Host } from "../excelHost/host/objects";
import { spill } from "../excelHost/oddities";
import { SMALL } from "./contractSheets";
import { area } from "./onExcel";

/** What the adapter says to the code that is injected. */
export const SENTENCE = "Excel refused a value, a formula or an address";

function fill(host: Host): void {
  type(host, "Data!A1", 7);
  type(host, "Data!B1", "=A1*2");
  type(host, "Data!C1", "=A1*2");
  type(host, "Data!A2", "#N/A");
  spill(host, "Data!E1", "=WARMBACK.WATER.PROPERTIES(A1)", [["density"], ["heat"]]);
  addTable(sheetNamed(host.book, "Data"), "G1:H3", {
    name: "Pumps",
    columns: ["Flow", "Head"],
    headers: true,
    totals: false,
  });
  const data = sheetNamed(host.book, "Data");
  host.book.names.set("flow", { name: "flow", sheet: data, area: { row: 0, column: 0, rows: 1, columns: 1 } });
}

const COPY: SheetCopies = {
  sheets: [{ sheet: "Data", title: "Data values", areas: [{ row: 0, column: 1, values: [[14, "=A1"]] }] }],
  record: { ...SMALL, name: "Record", cells: { A1: { content: "=A1+1", text: true, entry: true, indent: true } } },
};

const PICTURE = {
  name: "Heat by month",
  altText: "Heat of each month.",
  png: "iVBORw0KGgoAAAA=",
  width: 390,
  height: 243,
};

const from = { sheet: "Data", row: 1, column: 6 };
/** Cells of which some may have a spill: so many that whole areas are asked for first. */
const MANY_CELLS = Array.from({ length: 25 }, (_, at) => ({
  text: `${"ABCDE".charAt(at % 5)}${String(1 + Math.floor(at / 5))}#`,
  from: { sheet: "Data", row: 9, column: 9 },
}));

const REFERENCES: readonly ReferenceText[] = ["A1", "Data!B1", "flow", "Pumps[Flow]", "[@Head]", "E1#", "none"].map(
  (text) => ({ text, from }),
);

const book = excelWorkbook();

const command = (name: string, run: Command["run"], prepare: (host: Host) => void = fill): Command => ({
  name,
  prepare,
  run,
});

export const COMMANDS: readonly Command[] = [
  command("sheets", () => book.sheets()),
  command("used", () => book.used("Data")),
  command("read", () => book.read([area("Data", 0, 0, 3, 8), area("Sheet1", 0, 0)])),
  command("resolve", () => book.resolve(REFERENCES)),
  command("find spills", () => book.resolve(MANY_CELLS)),
  command("selection", () => book.selection()),
  command("select", () => book.select({ sheet: "Data", row: 1, column: 1 })),
  command("recalculate", () => book.recalculate([area("Data", 0, 0, 2, 2)])),
  command("write", () =>
    book.write([
      { sheet: "Data", row: 0, column: 0, content: 8 },
      { sheet: "Data", row: 2, column: 0, content: "=A1" },
      { sheet: "Sheet1", row: 0, column: 0, content: "1-2" },
    ]),
  ),
  command(
    "write over a text",
    () => book.write([{ sheet: "Data", row: 0, column: 3, content: "=A1*3", fromText: true }]),
    (host) => {
      fill(host);
      const area = { row: 0, column: 3, rows: 1, columns: 1 };
      sheetNamed(host.book, "Data").formats.push({ area, name: "numberFormat", value: "@" });
      type(host, "Data!D1", "=A1*3");
    },
  ),
  command("insert", () => book.insert(SMALL)),
  command(
    "copy sheets",
    () => book.copySheets?.(COPY) ?? Promise.reject(new Error("no copies")),
    (host) => {
      fill(host);
      sheetNamed(host.book, "Data").protection = {};
    },
  ),
  command("place a picture", async () => book.placePicture?.(PICTURE, area("Data", 0, 0))),
  command("listen to selections", async (host) => {
    const stop = book.onSelection(() => undefined);
    await quiet(host);
    selectByHand(host, "Data!B2");
    await quiet(host);
    stop();
    await quiet(host);
  }),
  command("listen to changes", async (host) => {
    const stop = book.onChange(() => undefined);
    await quiet(host);
    type(host, "Data!A9", 1);
    await quiet(host);
    stop();
    await quiet(host);
  }),
];

/** What is wrong with how a command broke off; empty where nothing is. */
export async function wrongAt(
  profile: Profile,
  one: Command,
  labels: readonly string[],
  at: number,
): Promise<string[]> {
  const { refused, left, unhandled, unknown } = await brokenAt(profile, one, at);
  expect(unknown).toEqual([]);
  const place = `at ${labels[at] ?? "?"} (${String(at)})`;
  const loose = unhandled.map((message) => `${place} nobody handles "${message.slice(0, 60)}"`);
  if (refused === undefined) return loose;
  return [
    ...loose,
    ...(refused === SENTENCE ? [] : [`${place} the sentence is "${refused.slice(0, 90)}"`]),
    ...left.map((what) => `${place} ${what}`),
  ];
}
