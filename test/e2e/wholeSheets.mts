/**
 * Pictures of the page to look at: every starter sheet whole, then the panel's views.
 * `npx tsx test/e2e/wholeSheets.mts FOLDER [light|dark|contrast] [sheet …]`
 */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { chromium, type Page } from "playwright-core";
import { ensureBuilt } from "../../scripts/ensureBuilt.mjs";
import { serve } from "../../scripts/serve";
import { STARTER_SHEETS } from "../../src/sheets";
import { CHROMIUM, FLAGS } from "../setup/chromiumProgram";

const [folder = "shots", look = "light", ...ids] = process.argv.slice(2);

const LOOKS = {
  light: { colorScheme: "light" },
  dark: { colorScheme: "dark" },
  contrast: { colorScheme: "dark", forcedColors: "active" },
} as const;

/** Of a row on the screen, and of what is around the sheet. */
const [ROW_PIXELS, AROUND_PIXELS] = [30, 260];
const WIDTH = 1700;
/** Of one picture: a longer one can't be read as it is shown. */
const SLICE = 1_300;

const isLook = (text: string): text is keyof typeof LOOKS => text in LOOKS;
if (!isLook(look)) throw new Error(`${look}: light, dark or contrast`);

/** Once nothing has moved for a while. */
async function still(page: Page): Promise<void> {
  await page.waitForTimeout(6_000);
}

const served = await serve({ folder: await ensureBuilt(), port: 0, open: false });
const browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
mkdirSync(folder, { recursive: true });
const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, ...LOOKS[look] });
const shot = async (name: string): Promise<void> => {
  await page.screenshot({ path: join(folder, `${look}-${name}.png`) });
};
await page.goto(served.address);
await page.getByRole("tab", { name: "Cautions" }).waitFor();
await still(page);
await shot("first-screen");
for (const tab of ["Explain", "Cautions", "Find"]) {
  await page.getByRole("tab", { name: tab }).click();
  await page.waitForTimeout(3_000);
  await shot(tab.toLowerCase());
}
for (const { id, name, print } of STARTER_SHEETS.filter((each) => ids.length === 0 || ids.includes(each.id))) {
  const isThere = await page.evaluate(
    async (wanted) => (await globalThis.warmbackPreview?.workbook.sheets())?.some((each) => each.name === wanted),
    name,
  );
  if (isThere !== true)
    await page.evaluate(
      (starter) => globalThis.warmbackPreview?.workbook.insert(starter),
      STARTER_SHEETS.find((each) => each.id === id) as never,
    );
  await page.evaluate((sheet) => globalThis.warmbackPreview?.workbook.select({ sheet, row: 0, column: 0 }), name);
  const rows = Number(/\d+$/.exec(print.area)?.[0] ?? 100);
  const height = rows * ROW_PIXELS + AROUND_PIXELS;
  await page.setViewportSize({ width: WIDTH, height });
  await still(page);
  for (let top = 0; top < height; top += SLICE) {
    const clip = { x: 0, y: top, width: WIDTH, height: Math.min(SLICE, height - top) };
    await page.screenshot({ path: join(folder, `${look}-${id}-${String(top / SLICE + 1)}.png`), clip });
  }
}
await browser.close();
await served.close();
