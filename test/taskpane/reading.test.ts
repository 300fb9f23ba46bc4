/** Values along a picture, and its larger view. */
import { describe, expect, test } from "vitest";
import { COMPILED } from "../../core";
import { picturesOf, type Picture } from "../../core/pictures";
import { MIAMI_MONTHS } from "../../core/pool/data/miami";
import { stopsOf } from "../../src/taskpane/pictures/stops";
import { HAS_CHROMIUM, until, usePane } from "./browser";
import { YEAR, YEAR_CELLS } from "./yearCells";

const yearPictures = (): readonly Picture[] => {
  const compiled = COMPILED.get("POOL.YEAR");
  const all = compiled === undefined ? [] : picturesOf(compiled, [YEAR, MIAMI_MONTHS]);
  return all.flatMap((shown) => {
    if ("parts" in shown) return [];
    return "options" in shown ? shown.options.slice(0, 1).map(({ picture }) => picture) : [shown];
  });
};

describe("The values along a picture", () => {
  const [temperature, months, day] = yearPictures();

  test("are those of a day with set point and limit, of a month's bars, of an hour", () => {
    const days = temperature === undefined ? [] : stopsOf(temperature);
    expect(days).toHaveLength(365);
    const [without, withRecovery] = temperature?.curves.map(({ points }) => points[59]?.[1] ?? Number.NaN) ?? [];
    const shown = (value = Number.NaN): string => String(Number(value.toPrecision(4)));
    expect(days[59]?.text).toBe(
      `1 Mar: without recovery ${shown(without)} °F; with recovery ${shown(withRecovery)} °F; set point 82 °F; high limit 88 °F`,
    );
    const bars = months === undefined ? [] : stopsOf(months);
    expect(bars.map(({ x }) => x)).toEqual(months?.x.names);
    expect(bars[2]?.text).toMatch(/^Mar: taken by the pool [\d.]+ million BTU; back-up heat [\d.]+ million BTU; /);
    const hours = day === undefined ? [] : stopsOf(day);
    expect(hours).toHaveLength(24);
    expect(hours[15]?.text).toMatch(/^15 h: taken by the pool /);
  });

  test("go point after point where curves run their own ways", () => {
    const compiled = COMPILED.get("CYCLE.STATES");
    const [cycle] = compiled === undefined ? [] : picturesOf(compiled, ["R-410A", 45, 105]);
    if (cycle === undefined || !("curves" in cycle)) throw new Error("no picture");
    const stops = stopsOf(cycle);
    expect(stops).toHaveLength(7);
    expect(stops[0]?.text).toMatch(/^cycle: enthalpy [\d.]+ BTU\/lb; absolute pressure [\d.]+ psi/);
  });
});

describe.skipIf(!HAS_CHROMIUM)("Reading a picture in Explain", { timeout: 60_000 }, () => {
  const pane = usePane();
  const open = async (): Promise<void> => {
    await pane.open("?empty", { viewport: { width: 320, height: 800 } });
    await pane.page.evaluate(async (cells) => {
      for (const [at, content] of cells) globalThis.book.type("Notes", at, content);
      await globalThis.book.calculate();
    }, YEAR_CELLS);
    await pane.tab("Explain");
    await pane.select("Notes", "A80");
    await pane.page.locator(".picture svg").nth(2).waitFor();
  };
  const figure = () => pane.page.locator("figure").first();
  const shot = async (name: string): Promise<void> => {
    const folder = process.env["SHOTS"];
    if (folder !== undefined) await pane.page.screenshot({ path: `${folder}/${name}.png` });
  };

  test("the arrow keys move a cursor along the picture, and its values are read out and shown", async () => {
    await open();
    const slider = figure().getByRole("slider", { name: /^Values along the picture: Pool temperature/ });
    await slider.focus();
    for (let day = 0; day < 5; day++) await pane.page.keyboard.press("ArrowRight");
    expect(await slider.getAttribute("aria-valuetext")).toMatch(/^6 Jan: without recovery [\d.]+ °F; /);
    expect(await figure().locator(".reading-text").textContent()).toBe(await slider.getAttribute("aria-valuetext"));
    expect(await figure().locator("svg .cursor").getAttribute("visibility")).toBe("visible");
    await pane.page.keyboard.press("End");
    expect(await slider.getAttribute("aria-valuetext")).toMatch(/^31 Dec: /);
    const [cursor, width] = await figure()
      .locator("svg")
      .evaluate((svg) => [Number(svg.querySelector(".cursor")?.getAttribute("x1")), svg.getBoundingClientRect().width]);
    expect(cursor).toBeGreaterThan((width ?? 0) * 0.85);
    expect(await pane.violations()).toEqual([]);
    await shot("reading");
  });

  test("the pointer shows the values below it", async () => {
    await open();
    const bars = pane.page.locator("figure").nth(1);
    await bars.locator(".reading-text").scrollIntoViewIfNeeded();
    const box = await bars.locator("svg").boundingBox();
    if (box === null) throw new Error("no drawing");
    await pane.page.mouse.move(box.x + box.width * 0.62, box.y + box.height / 2);
    const text = (await bars.locator(".reading-text").textContent()) ?? "";
    expect(text).toMatch(/^(?:Jun|Jul|Aug): taken by the pool /);
    await pane.page.mouse.move(box.x + box.width - 20, box.y + box.height / 2);
    expect(await bars.locator(".reading-text").textContent()).toMatch(/^Dec: /);
  });

  test("a larger view opens over the panel, closes with Esc, and gives the focus back", async () => {
    await open();
    const button = pane.page.getByRole("button", { name: /^Larger view: Pool temperature/ });
    await button.press("Enter");
    const dialog = pane.page.getByRole("dialog", { name: /^Pool temperature through the year/ });
    await dialog.locator(".picture svg").waitFor();
    const width = async (place: typeof dialog): Promise<number> =>
      Number(await place.locator(".picture svg").first().getAttribute("width"));
    expect(await width(dialog)).toBeGreaterThan(1.5 * (await width(figure())));
    expect(await pane.violations()).toEqual([]);
    await shot("larger");
    await dialog.getByRole("slider").focus();
    await pane.page.keyboard.press("Home");
    expect(await dialog.locator(".reading-text").count()).toBe(1);
    await pane.page.keyboard.press("Escape");
    await until(async () => (await dialog.count()) === 0);
    const focused = await pane.page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
    expect(focused).toMatch(/^Larger view: Pool temperature/);
  });
});
