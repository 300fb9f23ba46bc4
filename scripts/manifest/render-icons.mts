/**
 * Draws the PNG icons from their SVG originals: `npx tsx scripts/manifest/render-icons.mts`.
 * Run it after changing an SVG and commit the PNGs. Needs Chromium (`apt-get install chromium`; another place: CHROMIUM=…).
 */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium, type Browser } from "playwright-core";
import { ICON_SIZES, type IconSize } from "./icons";

const QUIET = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-sync"];
const NO_TRAFFIC = ["--disable-background-networking", "--disable-component-update"];

const beside = (name: string): string => fileURLToPath(new URL(`../../manifest/icons/${name}`, import.meta.url));

/** At 16 px a scaled-down drawing blurs: that size has an original of its own, laid on the pixel grid. */
const originalOf = (size: IconSize): string => (size === 16 ? "icon-small.svg" : "icon.svg");

async function draw(browser: Browser, size: IconSize): Promise<void> {
  const page = await browser.newPage({ viewport: { width: size, height: size }, deviceScaleFactor: 1 });
  const svg = readFileSync(beside(originalOf(size)), "utf8");
  await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`);
  writeFileSync(beside(`icon-${size}.png`), await page.screenshot({ omitBackground: true, type: "png" }));
  await page.close();
  console.log(`icon-${size}.png from ${originalOf(size)}`);
}

const browser = await chromium.launch({
  executablePath: process.env["CHROMIUM"] ?? "/usr/bin/chromium",
  args: [...QUIET, ...NO_TRAFFIC],
});
try {
  for (const size of ICON_SIZES) await draw(browser, size);
} finally {
  await browser.close();
}
