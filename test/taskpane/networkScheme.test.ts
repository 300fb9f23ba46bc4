/** The schematic of a network: its rows and lanes, against the cell's own table, and drawn in a browser. */
import { describe, expect, test } from "vitest";
import { COMPILED, type CellInput } from "../../core";
import { lanesOf } from "../../core/picture/lanes";
import { picturesOf, type Scheme } from "../../core/pictures";
import { panelEngine } from "../../src/taskpane/engine";
import { sessionLog } from "../../src/workbook/callLog";
import { isMatrix, isOutcomeFault } from "../../src/workbook/values";
import { HAS_CHROMIUM, usePane } from "./browser";

/** A pad with a bypass round the exchanger and a raised spa (invented). */
const ROWS: readonly (readonly (string | number)[])[] = [
  ["from", "to", "element", "size", "length", "K", "flow coefficient", "opening", "loss", "known flow"],
  ["pool", "pump in", "suction", "2 in", 40, "5.5", "", "", "", ""],
  ["pump in", "pump out", "pump", "", "", "", "", "", "", ""],
  ["pump out", "branch", "filter", "", "", "", "", "", 8, 60],
  ["branch", "join", "pool exchanger", "", "", "", "", "", 6, 50],
  ["branch", "join", "bypass valve", "", "", "", 60, 0.4, "", ""],
  ["join", "pool", "returns", "2 in", 60, "9", "", "", "", ""],
  ["join", "spa", "check valve, spa", "1-1/2 in", 45, "7.5", "", "", "", ""],
];
const PUMPS: CellInput = [
  ["pump", 1, 0, 66],
  ["pump", 1, 60, 55],
  ["pump", 1, 120, 20],
];
const NODES: CellInput = [["spa", 1, 2]];
const ARGS: readonly CellInput[] = [ROWS, PUMPS, NODES];

const schemeOf = (args: readonly CellInput[]): Scheme => {
  const compiled = COMPILED.get("PIPE.NETWORK");
  const [shown] = compiled === undefined ? [] : picturesOf(compiled, args);
  if (shown === undefined || !("parts" in shown)) throw new Error("no schematic");
  return shown;
};

describe("The schematic of a network as data", () => {
  const scheme = schemeOf(ARGS);

  test("goes from the pool along the water, draws branches beside each other and surfaces where water arrives", () => {
    expect(scheme.parts.map(({ symbol, name }, i) => [symbol, name, scheme.lanes?.at[i]])).toEqual([
      ["pool", "pool", 0],
      ["run", "suction", 0],
      ["pump", "pump", 0],
      ["filter", "filter", 0],
      ["node", "branch", 0],
      ["exchanger", "pool exchanger", 0],
      ["valve", "bypass valve", 1],
      ["node", "join", 0],
      ["run", "returns", 0],
      ["check valve", "check valve, spa", 1],
      ["pool", "pool", 0],
      ["pool", "spa", 0],
    ]);
  });

  test("has flows, heads and pressures of the cell's table beside its parts", () => {
    const outcome = panelEngine(sessionLog()).explain("PIPE.NETWORK", ARGS)?.outcome;
    if (outcome === undefined || isOutcomeFault(outcome) || !isMatrix(outcome.value)) throw new Error("no table");
    const table = outcome.value.slice(1);
    const of = (name: string, column: number): number => Number(table.find(([part]) => part === name)?.[column]);
    const details = (name: string): readonly string[] => scheme.parts.find((part) => part.name === name)?.details ?? [];
    expect(details("pool exchanger")).toEqual([
      `${of("pool exchanger", 3).toFixed(1)} gpm`,
      `${of("pool exchanger", 5).toFixed(1)} ft`,
    ]);
    expect(details("pump")[1]).toBe(`adds ${(-of("pump", 5)).toFixed(1)} ft`);
    expect(details("join")).toEqual([`${of("join", 7).toFixed(1)} psi`]);
    expect(scheme.rows).toHaveLength(ROWS.length - 1);
    scheme.rows.forEach((row, at) => {
      expect(row).toHaveLength(scheme.head.length);
      expect(Number(row[3])).toBeCloseTo(Number(table[at]?.[3]), 2);
    });
    expect(scheme.description).toMatch(/^The network in the order of its water: pool \(0\.0 psi\); suction \(2 in, /);
  });

  test("draws a branch that runs backwards as its water goes", () => {
    const turned = ROWS.map((row) => (row[2] === "returns" ? ["pool", "join", ...row.slice(2)] : row));
    const { parts } = schemeOf([turned, PUMPS, NODES]);
    expect(parts.map(({ name }) => name)).toEqual(scheme.parts.map(({ name }) => name));
    expect(parts.find(({ name }) => name === "returns")?.details).toContain("runs backwards");
  });
});

describe("Lanes of a network", () => {
  test("never put two lines on one lane at the same height, and hold every link once", () => {
    const link = (from: number, to: number) => ({ from, to });
    const cases = [
      [link(0, 1), link(1, 2), link(1, 2), link(1, 2), link(2, 0)],
      [link(0, 1), link(0, 1), link(0, 2), link(1, 2), link(2, 3), link(3, 0), link(3, 4)],
      [link(1, 2), link(2, 3), link(3, 1)],
      [link(0, 1), link(1, 2), link(2, 1), link(1, 0)],
    ];
    for (const links of cases) {
      const { rows, lines, at } = lanesOf(links, (node) => node === 0 || node === 4);
      const drawn = rows.flatMap((row) => ("link" in row ? [row.link] : []));
      expect([...drawn].sort()).toEqual(links.map((_, i) => i));
      expect(at).toHaveLength(rows.length);
      lines.forEach((a, i) =>
        lines.slice(i + 1).forEach((b) => {
          const apart =
            Math.max(a.from, a.to) <= Math.min(b.from, b.to) || Math.max(b.from, b.to) <= Math.min(a.from, a.to);
          expect(a.lane !== b.lane || apart).toBe(true);
        }),
      );
    }
  });
});

describe.skipIf(!HAS_CHROMIUM)("The schematic of a network in Explain", { timeout: 60_000 }, () => {
  const pane = usePane();

  test("is drawn with every part's name, fits 320 px and breaks no rule of accessibility", async () => {
    await pane.open("?empty&saves", { colorScheme: "light", viewport: { width: 320, height: 1100 } });
    const place = (rows: readonly (readonly (string | number | null)[])[], first: number) =>
      rows.flatMap((row, at) =>
        row.flatMap((content, column) =>
          content === "" || content === null
            ? []
            : [[`${"ABCDEFGHIJ".charAt(column)}${String(first + at)}`, content] as const],
        ),
      );
    const cells = [
      ...place(ROWS, 1),
      ...place(PUMPS as (string | number)[][], 10),
      ...place(NODES as (string | number)[][], 14),
      ["A20", "=WARMBACK.PIPE.NETWORK(A1:J8,A10:D12,A14:C14)"] as const,
    ];
    await pane.page.evaluate(async (all) => {
      for (const [at, content] of all) globalThis.book.type("Notes", at, content);
      await globalThis.book.calculate();
    }, cells);
    await pane.tab("Explain");
    await pane.select("Notes", "A20");
    await pane.page.locator("#view-explain .picture svg").waitFor();
    const picture = pane.page.getByRole("img", { name: /^The network in the order of its water: pool/ });
    expect(await picture.count()).toBe(1);
    const words = (await picture.locator("text").allTextContents()).join(" ");
    for (const { name } of schemeOf(ARGS).parts) expect(words).toContain(name);
    expect(await pane.violations()).toEqual([]);
    expect(await pane.tooWide()).toBe(0);
    const folder = process.env["SHOTS"];
    if (folder !== undefined) await pane.page.locator(".pictures").screenshot({ path: `${folder}/network.png` });
  });
});
