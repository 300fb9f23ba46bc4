/**
 * How long a scan for cautions takes beside the host's own reads: 5,000 formulas over a workbook in memory. The
 * calculation takes a few microseconds only; the host answers at once, so its share is measured, not guessed.
 * Run: npx tsx bench/scan.ts
 */
import type { CellInput } from "../core";
import { sessionLog } from "../src/workbook/callLog";
import type { Area, Block, CellValue, Workbook } from "../src/workbook/port";
import { scanner } from "../src/workbook/scan/scan";
import type { CautionEngine } from "../src/workbook/scan/scan";
import type { CellOutcome } from "../src/workbook/values";

const ROWS = 5_000;

interface Case {
  readonly name: string;
  /** The formula of a row (from 1), and what it gives. */
  formula(row: number): string;
  value(row: number): CellValue;
}

const flow = (row: number): number => 20 + (row % 97) + row / ROWS;
const headLoss = (args: readonly CellInput[]): number => Number(args[0]) ** 1.852 * Number(args[2] ?? 100) * 1e-4;

const CASES: readonly Case[] = [
  {
    name: "own row's cells, all different",
    formula: (row) => `=WARMBACK.PIPE.HEADLOSS(A${String(row)},B${String(row)},C${String(row)})`,
    value: (row) => headLoss([flow(row), "2 in", 100]),
  },
  {
    name: "fixed cells, all equal",
    formula: () => "=WARMBACK.PIPE.HEADLOSS($A$1,$B$1,$C$1)",
    value: () => headLoss([flow(1), "2 in", 100]),
  },
  {
    name: "arithmetic and IF around",
    formula: (row) =>
      `=IF(A${String(row)}>0,ROUND(WARMBACK.PIPE.HEADLOSS(A${String(row)}*1,"2 in",SUM(C${String(row)},0)),9),0)`,
    value: (row) => Number(headLoss([flow(row), "2 in", 100]).toFixed(9)),
  },
  {
    name: "nested calls",
    formula: (row) => `=WARMBACK.PIPE.HEADLOSS(WARMBACK.PIPE.VELOCITY(A${String(row)}),B$1,C$1)`,
    value: (row) => headLoss([2 * flow(row), "2 in", 100]),
  },
  { name: "no formula of ours", formula: (row) => `=A${String(row)}*2`, value: (row) => 2 * flow(row) },
];

function book(of: Case, spent: { host: number; reads: number }): Workbook {
  const values = Array.from({ length: ROWS }, (_, at): CellValue[] => [
    flow(at + 1),
    "2 in",
    100,
    null,
    of.value(at + 1),
  ]);
  const formulas = Array.from({ length: ROWS }, (_, at) => ["", "", "", "", of.formula(at + 1)]);
  const cut = <T>(grid: readonly (readonly T[])[], { row, column, rows, columns }: Area): T[][] =>
    grid.slice(row, row + rows).map((cells) => cells.slice(column, column + columns));
  const never = (): never => {
    throw new Error("the scan asks for no such thing");
  };
  return {
    host: "preview",
    sheets: () => Promise.resolve([{ name: "Loop", visible: true, protected: false }]),
    used: (sheet) => Promise.resolve({ sheet, row: 0, column: 0, rows: ROWS, columns: 5 }),
    read(areas) {
      const from = performance.now();
      const blocks = areas.map((area): Block => ({ area, formulas: cut(formulas, area), values: cut(values, area) }));
      spent.host += performance.now() - from;
      spent.reads += 1;
      return Promise.resolve(blocks);
    },
    resolve: never,
    selection: never,
    select: never,
    write: never,
    insert: never,
    documentName: never,
    documentBytes: never,
    deliverCopy: never,
    recalculate: never,
    onSelection: never,
    onChange: never,
  };
}

function engine(counts: { calls: number }): CautionEngine {
  return {
    known: new Set(["PIPE.HEADLOSS", "PIPE.VELOCITY"]),
    log: sessionLog(),
    call(id, args): CellOutcome {
      counts.calls++;
      return { value: id === "PIPE.VELOCITY" ? 2 * Number(args[0]) : headLoss(args) };
    },
    cautionsOf: (_, args) =>
      Number(args[0]) > 110 ? [{ code: "fast-water", severity: "Caution", text: "water faster than 6 ft/s" }] : [],
  };
}

const RUNS = 7;

/** One scan by a new scanner: milliseconds beside the host's reads, and of the longest slice. */
async function once(of: Case) {
  const spent = { host: 0, reads: 0 };
  const counts = { calls: 0 };
  let longest = 0;
  let since = performance.now();
  const turn = async (): Promise<void> => {
    longest = Math.max(longest, performance.now() - since);
    await new Promise((resolve) => setImmediate(resolve));
    since = performance.now();
  };
  const scan = scanner(book(of, spent), engine(counts), { turn });
  const from = performance.now();
  const found = await scan.scan();
  return { beside: performance.now() - from - spent.host, longest, counts, found };
}

/** The first scan includes the warm-up of the script engine; the others show an open panel. */
async function measure(of: Case): Promise<readonly string[]> {
  const runs: Awaited<ReturnType<typeof once>>[] = [];
  for (let run = 0; run < RUNS; run++) runs.push(await once(of));
  const beside = runs.map((run) => run.beside);
  const sorted = [...beside].sort((a, b) => a - b);
  const longest = Math.min(...runs.map((run) => run.longest));
  const shown = [beside[0] ?? 0, sorted[RUNS >> 1] ?? 0, sorted[0] ?? 0, longest].map((one) => one.toFixed(1));
  const [first] = runs;
  const counted = [first?.found?.cells.length, first?.counts.calls, first?.found?.stale.length].map(String);
  return [of.name, ...shown, ...counted];
}

const HEAD = [
  "5,000 formulas, beside the host's reads",
  "first ms",
  "median ms",
  "best ms",
  "longest slice ms",
  "cells",
  "worked out",
  "stale",
];

async function main(): Promise<void> {
  const rows = [HEAD];
  for (const of of CASES) rows.push([...(await measure(of))]);
  const widths = HEAD.map((_, at) => Math.max(...rows.map((row) => row[at]?.length ?? 0)));
  for (const row of rows)
    console.log(
      row.map((text, at) => (at === 0 ? text.padEnd(widths[0] ?? 0) : text.padStart(widths[at] ?? 0))).join("  "),
    );
}

void main();
