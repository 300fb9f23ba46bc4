/**
 * `npm run pictures`: makes the README's pictures of the page as it is, in Chromium: the sizing sheet with its answer, the
 * panel with its cautions, the pool loop's schematic. Fails where a picture is larger than a page should load.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium, type Locator, type Page } from "playwright-core";
import { ensureBuilt } from "../../scripts/ensureBuilt.mjs";
import { serve } from "../../scripts/serve";
import { CHROMIUM, FLAGS } from "../setup/chromiumProgram";
import { goToCell, rowOfCall, started } from "./driver";

const FOLDER = "docs/pictures";
const MOST_BYTES = 120_000;

/** A part of the page as WebP, which is half of a PNG; the driver's own pictures know no WebP. */
async function picture(page: Page, part: Locator, name: string): Promise<void> {
  await part.scrollIntoViewIfNeeded();
  const clip = await part.boundingBox();
  if (clip === null) throw new Error(`${name}: nothing is shown`);
  const session = await page.context().newCDPSession(page);
  const { data } = await session.send("Page.captureScreenshot", {
    format: "webp",
    quality: 82,
    clip: { ...clip, scale: 1 },
  });
  const bytes = Buffer.from(data, "base64");
  process.stdout.write(`${FOLDER}/${name} ${(bytes.length / 1000).toFixed(0)} kB\n`);
  if (bytes.length > MOST_BYTES) throw new Error(`${name} is larger than ${MOST_BYTES / 1000} kB`);
  writeFileSync(join(FOLDER, name), bytes);
}

mkdirSync(FOLDER, { recursive: true });
const served = await serve({ folder: await ensureBuilt(), port: 0, open: false });
const browser = await chromium.launch({ executablePath: CHROMIUM, args: FLAGS });
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 }, colorScheme: "light" });
  page.setDefaultTimeout(60_000);
  await page.goto(served.address);
  await started(page);
  await page.locator("#view-cautions li").first().waitFor();
  await picture(page, page.locator("body"), "sizing-sheet.webp");

  await goToCell(page, "Recovery sizing", await rowOfCall(page, "Recovery sizing", "REFRIG.PRESSURE("), 1);
  await page.getByRole("tab", { name: "Explain" }).click();
  await page.locator("#view-explain h3").first().waitFor();
  await picture(page, page.locator("#side"), "panel.webp");

  await page.getByRole("tab", { name: "Find" }).click();
  await page.getByRole("button", { name: "Insert sheet: Pool loop" }).click();
  await page.locator("#said", { hasText: /^A1 Pool loop/ }).waitFor();
  await goToCell(page, "Pool loop", await rowOfCall(page, "Pool loop", "PIPE.LOOP("), 1);
  await page.getByRole("tab", { name: "Explain" }).click();
  const schematic = page.locator("#view-explain .pictures figure svg").first();
  await schematic.waitFor();
  await picture(page, schematic, "loop-schematic.webp");
} finally {
  await browser.close();
  await served.close();
}
