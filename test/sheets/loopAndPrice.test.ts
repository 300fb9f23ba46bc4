import { describe, expect, inject, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { placedArgs } from "../../core/kernel/define/unitsArgument";
import { emptySheet } from "../../src/preview/file/bookData";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { startHeadless } from "../../src/preview/univer/start";
import { previewWorkbook } from "../../src/preview/host/previewWorkbook";
import { sheetOf } from "../../src/sheets/layout";
import { otherSinks } from "../../src/sheets/otherSinks";
import { poolLoop } from "../../src/sheets/poolLoop";
import type { StarterSheet } from "../../src/sheets/sheet";
import { takeOff } from "../../src/sheets/takeOff";
import { readCalls } from "../../src/workbook/reader/calls";
import { isRefusal } from "../../src/workbook/reader/tokens";
import { parse } from "../../src/workbook/reader/tree";

const KNOWN = new Set(CATALOGUE.map(({ id }) => id));

/** How many formulas each sheet has. */
const FORMULAS: Readonly<Record<string, number>> = { "Pool loop": 131, "Take-off and price": 73, "Other sinks": 34 };

describe.each([poolLoop, takeOff, otherSinks].map((sheet) => [sheet.name, sheet] as const))("sheet %s", (_, sheet) => {
  const formulas = Object.entries(sheet.cells).flatMap(([address, { content }]) =>
    typeof content === "string" && content.startsWith("=") ? [[address, content] as const] : [],
  );

  test("names only lines that it has, and every formula can be parsed", () => {
    expect(formulas).toHaveLength(FORMULAS[sheet.name] ?? 0);
    for (const [address, formula] of formulas) {
      expect(formula, address).not.toMatch(/\[|\{@\}|undefined/);
      expect(isRefusal(parse(formula)), `${address} ${formula}`).toBe(false);
    }
  });

  test("calls known functions with all required arguments and none too many", () => {
    for (const [address, formula] of formulas) {
      const calls = readCalls(formula, KNOWN);
      expect(calls.length, `${address} ${formula}`).toBe(formula.split("WARMBACK.").length - 1);
      for (const { id, args } of calls) {
        const definition = lookUp(CATALOGUE, id);
        if (!definition) throw new Error(`${address} ${id}`);
        const placed = placedArgs(definition);
        const required = placed.filter(([, arg]) => arg.presence === "required").length;
        expect(args.length, `${address} ${formula}`).toBeGreaterThanOrEqual(required);
        expect(args.length, `${address} ${formula}`).toBeLessThanOrEqual(placed.length);
      }
    }
  });

  test("keeps its cells within its widths and its print area", () => {
    const last = (/:([A-Z])\d+$/.exec(sheet.print.area) ?? [])[1] ?? "";
    expect(sheet.widths).toHaveLength(last.charCodeAt(0) - 64);
    for (const address of Object.keys(sheet.cells))
      expect(address.charCodeAt(0)).toBeLessThanOrEqual(last.charCodeAt(0));
  });

  test("marks its example as invented", () => {
    expect(JSON.stringify(sheet.cells)).toMatch(/Fernhill Hall is an invented example/);
  });
});

/** Rows of the calculated sheet by their label. */
const calculated = async (sheet: StarterSheet): Promise<ReadonlyMap<string, readonly unknown[]>> => {
  const book = startHeadless(loadFunctions(inject("build")), { sheets: [emptySheet("Start")], names: [] });
  try {
    const workbook = previewWorkbook(book);
    const name = await workbook.insert(sheet);
    await book.whenCalculated();
    const used = await workbook.used(name);
    if (!used) throw new Error("the sheet is empty");
    const [block] = await workbook.read([used]);
    return new Map((block?.values ?? []).map((row) => [String(row[0]), row]));
  } finally {
    book.dispose();
  }
};

describe("the loop before and after", () => {
  test("a valve's head follows its flow coefficient at the flow after the change", async () => {
    const rows = await calculated(poolLoop);
    const flow = Number(rows.get("Flow where pump and loop meet")?.[2]);
    const [, , , , , , coefficient, head] = rows.get("balancing valve") ?? [];
    // 1 psi is 2.31 ft of water.
    expect(Number(head)).toBeCloseTo(2.31 * (flow / Number(coefficient)) ** 2, 2);
  });

  test("flow, turnover, velocities and suction head are side by side, with what is lost", async () => {
    const rows = await calculated(poolLoop);
    const both = (label: string): readonly [number, number] => {
      const [, before, after] = rows.get(label) ?? [];
      return [Number(before), Number(after)];
    };
    const [flow, less] = both("Flow where pump and loop meet");
    expect(Number(rows.get("Flow lost by the new exchanger")?.[1])).toBeCloseTo(flow - less, 9);
    expect(less).toBeLessThan(flow);
    const [turnover, longer] = both("Turnover");
    expect(turnover * flow).toBeCloseTo(longer * less, 6);
    for (const label of ["Fastest water, suction", "Fastest water, return"]) {
      const [fast, slower] = both(label);
      expect(fast / slower).toBeCloseTo(flow / less, 9);
    }
    const [suction, more] = both("Suction head available");
    expect(more).toBeGreaterThan(suction);
    const checks = [
      "Suction within 6 ft/s",
      "Return within 8 ft/s",
      "Turnover kept after",
      "Drain covers carry the flow",
    ];
    for (const label of checks) expect(rows.get(label)?.[1], label).toBe("OK");
  });
});

describe("the builder", () => {
  test("the builder puts further columns, a line's own row and another column's address where they are named", () => {
    const { cells, print } = sheetOf({
      id: "trial",
      name: "Trial",
      summary: "",
      widths: [1, 1, 1, 1],
      columns: { unit: "D", source: "E", note: "F", last: "F" },
      frozenRows: 1,
      named: {},
      lines: [
        { key: "one", label: "One", value: 1, unit: "ft", extra: { C: { content: 2, style: "Input" } } },
        { label: "Two", value: "=[one]+[one@C]", extra: { C: { content: "=$A[@]" } } },
      ],
    });
    expect(cells["D1"]?.content).toBe("ft");
    expect(cells["B2"]?.content).toBe("=$B$1+$C$1");
    expect(cells["C2"]?.content).toBe("=$A2");
    expect(print.area).toBe("A1:F2");
  });
});
