/** Pictures as data, against the cells' own results, and drawn in a browser. */
import type { CellInput } from "../../core";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { rawByPlace } from "../../core/kernel/explain/describe";
import {
  PICTURED,
  picturesOf as shownOf,
  type Picture,
  type PictureChoice,
  type ShownPicture,
} from "../../core/pictures";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { COMPILED } from "../../core/catalogue";
import { LIGHT_PICTURES } from "../../src/taskpane/pictures/light";
import { panelEngine } from "../../src/taskpane/engine";
import { sessionLog } from "../../src/workbook/callLog";
import { isMatrix, isOutcomeFault } from "../../src/workbook/values";
import { HAS_CHROMIUM, inEachMode, MODES, until, usePane } from "./browser";
import { typed, YEAR, YEAR_CELLS, type Cells } from "./yearCells";

const engine = panelEngine(sessionLog());

const outOf = (id: string, args: readonly CellInput[]): readonly (readonly unknown[])[] => {
  const outcome = engine.explain(id, args)?.outcome;
  if (outcome === undefined || isOutcomeFault(outcome) || !isMatrix(outcome.value))
    throw new Error(`${id} gives no table`);
  return outcome.value;
};

const placesOf = (id: string, args: readonly CellInput[]): readonly ShownPicture[] => {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`there is no ${id}`);
  return shownOf(compiled, args);
};

/** All pictures, of a choice every one; no schematics. */
const picturesOf = (id: string, args: readonly CellInput[]): readonly Picture[] =>
  placesOf(id, args).flatMap((shown) => {
    if ("parts" in shown) return [];
    return "options" in shown ? shown.options.map(({ picture }) => picture) : [shown];
  });

const numbers = ({ curves, stacks = [] }: Picture): readonly number[] => [
  ...curves.flatMap(({ points }) => points.flat()),
  ...stacks.flatMap(({ values }) => values),
];

const ZONES: CellInput = [
  ["refrigerant", "R-407C"],
  ["heat rejected", 112000],
  ["condensing", 105],
  ["evaporating", 45],
  ["water flow", 40],
  ["entering water", 82],
];
const BALANCE: CellInput = [
  ["refrigerant", "R-410A"],
  ["rated cooling", 90000],
  ["UA", 5000],
  ["water flow", 40],
  ["entering water", 82],
];
describe("Pictures as data", () => {
  test("pictures belong to functions that exist, and those that no worker runs are named as light", () => {
    expect(PICTURED).toHaveLength(9);
    for (const id of PICTURED) expect(lookUp(CATALOGUE, id)?.memoised === true, id).toBe(!LIGHT_PICTURES.includes(id));
    for (const id of LIGHT_PICTURES) expect(PICTURED).toContain(id);
  });

  // PIPE.NETWORK has a schematic alone: see networkScheme.test.ts.
  test.each(PICTURED.filter((id) => !LIGHT_PICTURES.includes(id) && id !== "PIPE.NETWORK"))(
    "the pictures of %s have finite numbers, a sentence and a table for its own examples",
    (id) => {
      const definition = lookUp(CATALOGUE, id);
      const examples = (definition?.checks ?? []).map(
        ({ inputs }) => rawByPlace(definition as never, inputs) as CellInput[],
      );
      const drawn = examples.flatMap((args) => picturesOf(id, args));
      expect(drawn.length).toBeGreaterThan(0);
      for (const picture of drawn) {
        expect(numbers(picture).every(Number.isFinite), picture.title).toBe(true);
        expect(picture.description).toMatch(/\.$/);
        expect(picture.description).not.toContain("NaN");
        for (const row of picture.rows) expect(row).toHaveLength(picture.head.length);
      }
    },
  );

  test("a refused call has no pictures", () => {
    expect(picturesOf("CYCLE.STATES", ["R-410A", 105, 45])).toEqual([]);
    expect(picturesOf("CYCLE.STATES", ["no such refrigerant", 45, 105])).toEqual([]);
    expect(picturesOf("PIPE.HEADLOSS", [40, "2 in", 100])).toEqual([]);
  });

  test.each(["US", "SI"])("the cycle's picture goes through the points that the cell gives, in %s units", (units) => {
    const args: CellInput[] = units === "US" ? ["R-410A", 45, 105] : ["R-410A", 7, 41, null, null, null, "SI"];
    const [picture] = picturesOf("CYCLE.STATES", args);
    const loop = picture?.curves.find(({ name }) => name === "cycle");
    const corners = new Map(outOf("CYCLE.STATES", args).map(([point, p, , h]) => [point, [h, p] as const]));
    const places = ["suction", "discharge", "dew point", "bubble point", "liquid", "after expansion", "suction"];
    expect(loop?.points).toHaveLength(places.length);
    places.forEach((place, at) => {
      const [h, p] = corners.get(place) ?? [];
      expect(loop?.points[at]?.[0]).toBeCloseTo(Number(h), 6);
      expect(loop?.points[at]?.[1]).toBeCloseTo(Number(p), 6);
    });
    expect(picture?.marks?.map(({ label }) => label)).toEqual(["1", "2", "3", "4"]);
  });

  test("the dome's pressure rises to the top and falls, with dew to the right of bubble", () => {
    const [picture] = picturesOf("CYCLE.STATES", ["R-410A", 45, 105]);
    const dome = picture?.curves.find(({ tone }) => tone === "outline")?.points ?? [];
    expect(dome).toHaveLength(96);
    const half = dome.length / 2;
    for (let at = 1; at < half; at++) expect(dome[at]?.[1]).toBeGreaterThan(dome[at - 1]?.[1] ?? 0);
    for (let at = half + 1; at < dome.length; at++) expect(dome[at]?.[1]).toBeLessThan(dome[at - 1]?.[1] ?? 0);
    for (let at = 0; at < half; at++)
      expect(dome[dome.length - 1 - at]?.[0]).toBeGreaterThan(dome[at]?.[0] ?? Number.NaN);
  });

  test("the picture of zones ends where the cell's zones end, and its pinch is the cell's", () => {
    const [picture] = picturesOf("EXCHANGER.ZONES", [ZONES]);
    const [head = [], ...rows] = outOf("EXCHANGER.ZONES", [ZONES]);
    const duty = rows.map((row) => Number(row[1]));
    const total = rows.at(-1) ?? [];
    expect(picture?.stretches?.map(({ label }) => label)).toEqual(["desuperheating", "condensing", "subcooling"]);
    expect(duty).toHaveLength(4);
    picture?.stretches?.forEach(({ from, to }, at) => expect(to - from).toBeCloseTo(duty[at] ?? Number.NaN, 4));
    const [refrigerant, water] = picture?.curves ?? [];
    const gaps = (refrigerant?.points ?? []).map(([, T], at) => T - (water?.points[at]?.[1] ?? 0));
    const least = head.findIndex((each) => String(each).startsWith("least difference"));
    expect(Math.min(...gaps)).toBeCloseTo(Number(total[least]), 6);
    expect(Math.min(...gaps)).toBeGreaterThan(0);
  });

  test("the pictures of a balance show both cycles at the cell's temperatures, and streams where they don't cross", () => {
    const pictures = picturesOf("EXCHANGER.BALANCE", [BALANCE]);
    expect(pictures.map(({ title }) => title)).toEqual([
      "Pressure against enthalpy",
      "Temperature against heat passed",
    ]);
    const rows = new Map(outOf("EXCHANGER.BALANCE", [BALANCE]).map(([label, value]) => [label, Number(value)]));
    const told = pictures[0]?.description ?? "";
    expect(told).toContain(`condensing at ${rows.get("condensing")?.toFixed(1) ?? ""} °F`);
    expect(told).toContain(`condensing at ${rows.get("condensing outdoors")?.toFixed(1) ?? ""} °F`);
    const heat = pictures[1]?.curves[0]?.points.at(-1)?.[0];
    expect((heat ?? 0) / (rows.get("heat into pool") ?? 1)).toBeCloseTo(1, 6);
  });

  test("the picture of a year holds the cell's monthly means and sums", () => {
    const args: CellInput[] = [YEAR, MIAMI_MONTHS];
    const [temperature, months, day] = picturesOf("POOL.YEAR", args);
    const [head = [], ...rows] = outOf("POOL.YEAR", args);
    const column = (name: string): readonly number[] => {
      const at = head.findIndex((each) => String(each).replace(/,? \(.*$/, "") === name);
      expect(at, `${name} in ${head.join("; ")}`).toBeGreaterThan(0);
      return rows.slice(0, 12).map((row) => Number(row[at]));
    };
    column("pool with").forEach((mean, at) => expect(Number(temperature?.rows[at]?.[2])).toBeCloseTo(mean, 1));
    const [taken = [], backUp = []] = (months?.stacks ?? []).map(({ values }) => values);
    column("heat taken held").forEach((heat, at) => expect((taken[at] ?? 0) * 1e6).toBeCloseTo(heat, -1));
    column("back up with").forEach((heat, at) => expect((backUp[at] ?? 0) * 1e6).toBeCloseTo(heat, -1));
    expect(months?.y.label).toBe("heat, million BTU");
    expect(temperature?.curves.map(({ points }) => points.length)).toEqual([365, 365]);
    expect(temperature?.levels?.map(({ label }) => label)).toEqual(["set point", "high limit"]);
    expect(temperature?.x.pointNames?.filter((_, at) => [0, 59, 364].includes(at))).toEqual([
      "1 Jan",
      "1 Mar",
      "31 Dec",
    ]);
    expect(day?.rows).toHaveLength(24);
  });

  test("every month has a usual day on one scale, first that of the month with most heat", () => {
    const args: CellInput[] = [YEAR, MIAMI_MONTHS];
    const days = placesOf("POOL.YEAR", args).find((shown): shown is PictureChoice => "options" in shown);
    expect(days?.label).toBe("month");
    expect(days?.options.map(({ name }) => name)).toEqual(
      outOf("POOL.YEAR", args)
        .slice(1, 13)
        .map(([name]) => name),
    );
    // The mean of a month's hours times its hours is the month's heat, which the cell tells.
    const [head = [], ...rows] = outOf("POOL.YEAR", args);
    const at = head.findIndex((each) => /^heat taken(?! held)/.test(String(each)));
    const heats = rows.slice(0, 12).map((row) => Number(row[at]));
    expect(days?.first).toBe(heats.indexOf(Math.max(...heats)));
    const lengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    days?.options.forEach(({ picture }, month) => {
      const taken = picture.rows.reduce((sum, row) => sum + Number(row[1]), 0) * (lengths[month] ?? 0);
      expect(Math.abs(taken - (heats[month] ?? 0))).toBeLessThan(1e-3 * (heats[month] ?? 0) + 100);
      expect(picture.y.span).toEqual(days.options[0]?.picture.y.span);
      for (const [, height] of picture.curves.flatMap(({ points }) => points)) {
        expect(height).toBeGreaterThanOrEqual(picture.y.span?.[0] ?? Number.NaN);
        expect(height).toBeLessThanOrEqual(picture.y.span?.[1] ?? Number.NaN);
      }
    });
  });
});

describe.skipIf(!HAS_CHROMIUM)("Pictures in Explain", { timeout: 60_000 }, () => {
  const pane = usePane();
  const CELLS: Cells = [
    ...typed(BALANCE, "AB"),
    ...typed(ZONES, "DE"),
    ...YEAR_CELLS,
    ["A20", "=WARMBACK.EXCHANGER.BALANCE(A1:B5)"],
    ["A60", "=WARMBACK.EXCHANGER.ZONES(D1:E6)"],
  ];
  const show = async (cell: string, count: number): Promise<void> => {
    await pane.select("Notes", cell);
    await pane.page.locator("#view-explain .where", { hasText: cell }).waitFor();
    await until(async () => (await pane.page.locator("#view-explain .picture svg").count()) === count);
  };
  const fill = (): Promise<void> =>
    pane.page.evaluate(async (cells) => {
      for (const [at, content] of cells) globalThis.book.type("Notes", at, content);
      await globalThis.book.calculate();
    }, CELLS);

  test("pictures break no rule of accessibility and fit 320 px, light, dark and in forced colours", async () => {
    await pane.open("", { viewport: { width: 320, height: 900 } });
    await fill();
    await pane.tab("Explain");
    const fold = async (): Promise<void> => {
      for (const summary of await pane.page.locator(".pictures summary").all()) await summary.click();
    };
    for (const [cell, count] of [
      ["A20", 2],
      ["A60", 1],
      ["A80", 3],
    ] as const) {
      await show(cell, count);
      await fold();
      await inEachMode(pane, async (name) => {
        expect(await pane.violations(), `${cell}, ${name}`).toEqual([]);
        expect(await pane.tooWide(), `${cell}, ${name}`).toBe(0);
      });
      await fold();
      const folder = process.env["SHOTS"];
      if (folder === undefined) continue;
      await inEachMode(pane, async (name) => {
        await pane.page.locator(".pictures").screenshot({ path: `${folder}/${name.slice(0, 5)}-${cell}.png` });
      });
    }
  });

  test("a picture is read out as one sentence, follows the width and has its numbers below", async () => {
    await pane.open();
    await fill();
    await pane.tab("Explain");
    await show("A60", 1);
    const picture = pane.page.getByRole("img", { name: /^Temperatures of refrigerant and water over/ });
    expect(await picture.count()).toBe(1);
    const width = async (): Promise<number> => Number(await picture.getAttribute("width"));
    const narrow = await width();
    await pane.page.setViewportSize({ width: 480, height: 700 });
    await until(async () => (await width()) >= narrow + 150);
    await pane.page.getByText("Numbers of the picture").click();
    expect(await pane.page.locator(".pictures tbody tr").count()).toBe(5);
    expect(await pane.page.locator(".pictures .legend li").allTextContents()).toEqual(["refrigerant", "water"]);
  });
});

describe.skipIf(!HAS_CHROMIUM)("Pictures for the sheet", { timeout: 60_000 }, () => {
  const pane = usePane();
  const open = async (query: string): Promise<void> => {
    await pane.open(`?empty&${query}`);
    await pane.page.evaluate(async (cells) => {
      for (const [at, content] of cells) globalThis.book.type("Notes", at, content);
      await globalThis.book.calculate();
    }, YEAR_CELLS);
    await pane.tab("Explain");
    await pane.select("Notes", "A80");
    await pane.page.locator(".picture svg").nth(2).waitFor();
  };
  const button = (name: RegExp) => pane.page.locator(".pictures").getByRole("button", { name });

  test("no picture is offered where the host can neither place nor save it", async () => {
    await open("");
    expect(await button(/picture/i).count()).toBe(0);
  });

  /** Size and some colours of a PNG, read by the browser. */
  const look = (
    png: string,
  ): Promise<{ width: number; height: number; corners: string[]; inks: Record<string, number> }> =>
    pane.page.evaluate(async (data) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      const canvas = document.createElement("canvas");
      const { naturalWidth: width, naturalHeight: height } = image;
      Object.assign(canvas, { width, height });
      const brush = canvas.getContext("2d");
      if (brush === null) throw new Error("no canvas");
      brush.drawImage(image, 0, 0);
      const { data: bytes } = brush.getImageData(0, 0, width, height);
      const at = (place: number): string => [...bytes.slice(4 * place, 4 * place + 4)].join(" ");
      const inks: Record<string, number> = {};
      for (let place = 0; place < width * height; place++) inks[at(place)] = (inks[at(place)] ?? 0) + 1;
      return { width, height, corners: [0, width - 1, width * (height - 1), width * height - 1].map(at), inks };
    }, png);

  test("a picture goes beside the table as a sharp PNG, dark on white, with name, alternative text and size on paper, in every colour scheme", async () => {
    await open("places");
    expect(await button(/^Save as picture/).count()).toBe(0);
    const placed = () => pane.page.evaluate(() => globalThis.book.placed);
    await inEachMode(pane, async (name) => {
      const before = (await placed()).length;
      await button(/^Insert as picture: Heat by month/).press("Enter");
      await until(async () => (await placed()).length === before + 1);
      await pane.page.locator(".status", { hasText: "Inserted beside the table." }).waitFor();
      const { beside, picture } = (await placed()).at(-1)!;
      // The table of twelve months, its heads and the year's row.
      expect(beside, name).toMatchObject({ sheet: "Notes", row: 79, column: 0, rows: 14 });
      const { altText, png, width, height } = picture;
      expect(picture.name).toBe("POOL.YEAR: Heat by month, pool held at the set point");
      expect(altText).toMatch(/^Heat of each month with recovery, stacked; in the year /);
      const seen = await look(png);
      expect([seen.width * 0.75, seen.height * 0.75], name).toEqual([2 * width, 2 * height]);
      expect(seen.corners, name).toEqual(Array(4).fill("255 255 255 255"));
      // The tones of the light scheme: accent, danger and caution; each bar is thousands of pixels.
      for (const tone of ["11 92 110 255", "173 31 26 255", "112 85 0 255"])
        expect(seen.inks[tone], `${tone}, ${name}`).toBeGreaterThan(2000);
      expect(seen.inks["27 35 38 255"], `ink, ${name}`).toBeGreaterThan(500);
      expect(await pane.page.locator(".paper").count(), name).toBe(0);
    });
    expect(await placed()).toHaveLength(MODES.length);
  });

  test("the chosen picture is saved as a file where the host can only do that", async () => {
    await open("saves");
    await pane.page.getByRole("combobox", { name: "month" }).selectOption("Feb");
    await button(/^Save as picture: The usual day of Feb/).click();
    await pane.page.locator(".status", { hasText: "Saved as the file Picture.png." }).waitFor();
    const [saved] = await pane.page.evaluate(() => globalThis.book.placed);
    expect(saved?.picture.name).toBe("POOL.YEAR: The usual day of Feb, pool left to itself");
    expect(saved?.picture.altText).toMatch(/^Means of the hours of Feb: /);
  });

  test("the picture of a usual day follows the month that is chosen by keyboard, with legend and numbers, and keeps it", async () => {
    await open("");
    const month = pane.page.getByRole("combobox", { name: "month" });
    const figure = pane.page.locator("figure", { has: month });
    const first = await month.inputValue();
    expect(await figure.locator("figcaption").textContent()).toBe(`The usual day of ${first}, pool left to itself`);
    await figure.getByText("Numbers of the picture").click();
    const numbers = async (): Promise<string> => (await figure.locator("tbody").textContent()) ?? "";
    const before = await numbers();
    await month.focus();
    await pane.page.keyboard.press("Home");
    await until(
      async () => (await figure.locator("figcaption").textContent()) === "The usual day of Jan, pool left to itself",
    );
    expect(await month.inputValue()).toBe("Jan");
    expect(await figure.getByRole("img", { name: /^Means of the hours of Jan/ }).count()).toBe(1);
    expect(await figure.locator("details").getAttribute("open")).toBe("");
    expect(await numbers()).not.toBe(before);
    expect(await pane.text(".unseen[role=status]")).toMatch(/^Means of the hours of Jan: the pool takes most/);
    expect(await pane.page.evaluate(() => document.activeElement?.tagName)).toBe("SELECT");
    expect(await pane.violations()).toEqual([]);
    // What the sheet's other cells do changes nothing of it.
    await pane.page.evaluate(() => globalThis.book.changed("Notes"));
    await pane.page.waitForTimeout(600);
    expect(await month.inputValue()).toBe("Jan");
    expect(await figure.locator("figcaption").textContent()).toContain("of Jan,");
  });
});
