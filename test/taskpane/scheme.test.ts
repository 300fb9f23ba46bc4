/** The schematic of a loop: as data, against the cell's own table, and drawn in a browser. */
import { describe, expect, test } from "vitest";
import { COMPILED, type CellInput } from "../../core";
import { picturesOf, type Scheme } from "../../core/pictures";
import { panelEngine } from "../../src/taskpane/engine";
import { sessionLog } from "../../src/workbook/callLog";
import { isMatrix, isOutcomeFault } from "../../src/workbook/values";
import { HAS_CHROMIUM, until, usePane } from "./browser";

/** Parts of Fernhill Hall's loop (invented). */
const PARTS: readonly (readonly [string, string, number, string, (number | "")?, (number | "")?, number?])[] = [
  ["entrance", "2-1/2 in", 1, "suction"],
  ["pipe", "2-1/2 in", 35, "suction"],
  ["elbow 90", "2-1/2 in", 4, "suction"],
  ["ball valve", "2-1/2 in", 1, "suction"],
  ["basket strainer", "", 1, "suction", 2, 75],
  ["filter, dirty", "", 1, "return", 23, 75],
  ["pool exchanger", "", 1, "return", 6, 75],
  ["water sensor", "", 1, "return", 0.2, 75],
  ["gas heater", "", 1, "return", 5, 75],
  ["pipe", "2-1/2 in", 110, "return"],
  ["swing check", "2-1/2 in", 1, "return"],
  ["balancing valve", "2-1/2 in", 1, "return", "", "", 120],
  ["salt cell", "", 1, "return", 1, 75],
  ["exit", "2-1/2 in", 1, "return"],
];

const ITEMS: CellInput = PARTS.map(([what, size, count, side, loss = "", known = "", cv = ""]) => [
  what,
  size,
  count,
  loss,
  known,
  side,
  cv,
]);

const schemeOf = (args: readonly CellInput[]): Scheme => {
  const compiled = COMPILED.get("PIPE.LOOP");
  const [shown] = compiled === undefined ? [] : picturesOf(compiled, args);
  if (shown === undefined || !("parts" in shown)) throw new Error("no schematic");
  return shown;
};

const engine = panelEngine(sessionLog());

const rowsOf = (args: readonly CellInput[]): readonly (readonly unknown[])[] => {
  const outcome = engine.explain("PIPE.LOOP", args)?.outcome;
  if (outcome === undefined || isOutcomeFault(outcome) || !isMatrix(outcome.value)) throw new Error("no table");
  return outcome.value.slice(1);
};

describe("The schematic of a loop as data", () => {
  test("goes from the pool through suction, pump and return, fittings and pipe joined", () => {
    expect(schemeOf([ITEMS, 75, 82, "40"]).parts.map(({ symbol, name }) => [symbol, name])).toEqual([
      ["pool", "pool"],
      ["run", "entrance, 35 ft pipe, 4 × elbow 90"],
      ["valve", "ball valve"],
      ["strainer", "basket strainer"],
      ["pump", "pump"],
      ["filter", "filter, dirty"],
      ["exchanger", "pool exchanger"],
      ["sensor", "water sensor"],
      ["heater", "gas heater"],
      ["run", "110 ft pipe"],
      ["check valve", "swing check"],
      ["valve", "balancing valve"],
      ["part", "salt cell"],
      ["run", "exit"],
    ]);
  });

  test("has flow, temperature, heads and velocities of the cell's table beside its parts", () => {
    const args: readonly CellInput[] = [ITEMS, 75, 82, "40"];
    const scheme = schemeOf(args);
    const rows = rowsOf(args);
    const head = (what: string, at = 0): number => Number(rows.filter(([name]) => name === what)[at]?.[3]);
    expect(scheme.parts[0]?.details).toEqual(["75.0 gpm", "82 °F"]);
    const run = head("entrance") + head("pipe") + head("elbow 90");
    const speed = Number(rows.find(([name]) => name === "pipe")?.[4]);
    expect(scheme.parts[1]?.details).toEqual(["2-1/2 in", `${run.toFixed(1)} ft`, `${speed.toFixed(1)} ft/s`]);
    expect(scheme.parts.find(({ symbol }) => symbol === "pump")?.details).toEqual([
      `${head("total").toFixed(1)} ft in all`,
    ]);
    expect(scheme.rows).toHaveLength(PARTS.length);
    scheme.rows.forEach((row, at) => {
      expect(row).toHaveLength(scheme.head.length);
      expect(row[0]).toBe(rows[at]?.[0]);
      expect(Number(row[3])).toBeCloseTo(Number(rows[at]?.[3]), 3);
    });
  });

  test("says in words what it shows, in the cell's units", () => {
    const { description } = schemeOf([ITEMS, 75, 82, "40"]);
    expect(description).toMatch(
      /^The loop from the pool and back, 75\.0 gpm at 82 °F, [\d.]+ ft in all\. Suction: entrance, /,
    );
    expect(description).toMatch(/Return: filter, dirty \(23\.0 ft\); pool exchanger \(6\.0 ft\);.*\.$/);
    const metric = schemeOf([
      [
        ["pipe", "2 in", 10],
        ["pool exchanger", "", 1, 2, 10],
      ],
      10,
      28,
      "40",
      "SI",
    ]);
    expect(metric.description).toMatch(/10\.0 m³\/h at 28 °C, [\d.]+ m in all/);
  });

  test("takes a row that is a pump for the pump, and draws none for one row", () => {
    const symbols = schemeOf([
      [
        ["pipe", "2 in", 10],
        ["booster pump", "", 1, 1, 40],
      ],
      40,
    ]).parts.map(({ symbol }) => symbol);
    expect(symbols).toEqual(["pool", "run", "pump"]);
    const compiled = COMPILED.get("PIPE.LOOP");
    expect(compiled && picturesOf(compiled, [[["pipe", "2 in", 10]], 40])).toEqual([]);
  });
});

describe.skipIf(!HAS_CHROMIUM)("The schematic in Explain", { timeout: 60_000 }, () => {
  const pane = usePane();
  const fill = async (): Promise<void> => {
    const cells = PARTS.flatMap(([what, size, count, side, loss = "", known = "", cv = ""], row) =>
      [what, size, count, loss, known, side, cv].flatMap((content, column) =>
        content === "" ? [] : [[`${"ABCDEFG".charAt(column)}${String(row + 1)}`, content] as const],
      ),
    );
    await pane.page.evaluate(
      async (all) => {
        for (const [at, content] of all) globalThis.book.type("Notes", at, content);
        await globalThis.book.calculate();
      },
      [...cells, ["A20", `=WARMBACK.PIPE.LOOP(A1:G${String(PARTS.length)},75,82,"40")`] as const],
    );
    await pane.tab("Explain");
    await pane.select("Notes", "A20");
    await pane.page.locator("#view-explain .picture svg").waitFor();
  };

  test.each([
    ["light", { colorScheme: "light" }],
    ["dark", { colorScheme: "dark" }],
    ["forced colours", { colorScheme: "dark", forcedColors: "active" }],
  ] as const)(
    "is drawn with every part's name, fits 320 px and breaks no rule of accessibility, %s",
    async (name, mode) => {
      await pane.open("?empty&saves", { ...mode, viewport: { width: 320, height: 900 } });
      await fill();
      const picture = pane.page.getByRole("img", { name: /^The loop from the pool and back, 75.0 gpm at 82 °F/ });
      expect(await picture.count()).toBe(1);
      const words = (await picture.locator("text").allTextContents()).join(" ");
      for (const part of schemeOf([ITEMS, 75, 82, "40"]).parts) expect(words).toContain(part.name);
      const spill = await picture.evaluate((svg) => {
        const box = svg.getBoundingClientRect();
        return [...svg.querySelectorAll("text")].filter((one) => one.getBoundingClientRect().right > box.right + 1)
          .length;
      });
      expect(spill).toBe(0);
      expect(await pane.violations()).toEqual([]);
      expect(await pane.tooWide()).toBe(0);
      const folder = process.env["SHOTS"];
      if (folder !== undefined)
        await pane.page.locator(".pictures").screenshot({ path: `${folder}/scheme-${name.slice(0, 5)}.png` });
    },
  );

  test("is saved as a picture for paper", async () => {
    await pane.open("?empty&saves");
    await fill();
    await pane.page.getByRole("button", { name: "Save as picture: Schematic of the loop" }).click();
    await until(async () => (await pane.page.evaluate(() => globalThis.book.placed.length)) === 1);
    const [placed] = await pane.page.evaluate(() => globalThis.book.placed);
    expect(placed?.picture.name).toBe("PIPE.LOOP: Schematic of the loop");
    expect(placed?.picture.altText).toMatch(/^The loop from the pool and back/);
    expect(placed?.picture.height).toBeGreaterThan(placed?.picture.width ?? Infinity);
    const folder = process.env["SHOTS"];
    if (folder !== undefined && placed !== undefined) {
      const { writeFileSync } = await import("node:fs");
      writeFileSync(`${folder}/scheme-paper.png`, Buffer.from(placed.picture.png, "base64"));
    }
  });
});
