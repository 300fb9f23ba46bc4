/** Starter sheets on paper: LibreOffice's PDF of a workbook of their values, and where its texts lie. */
import { execFileSync } from "node:child_process";
import { existsSync } from "node:fs";
import { inject } from "vitest";
import { starterBook } from "../../src/preview/file/starterBook";
import { loadFunctions } from "../../src/preview/host/loadFunctions";
import { startHeadless } from "../../src/preview/univer/start";
import { STARTER_SHEETS } from "../../src/sheets";
import { newWorkbook, packageBytes, type NewSheet } from "../../src/workbook/package";
import { converted, skipsLibreOffice } from "../workbook/package/libreOffice";

export type Paper = "Letter" | "A4";

const POPPLER = existsSync("/usr/bin/pdftohtml");

/** A font of Arial's widths; with a wider one LibreOffice makes the columns wider too and shrinks all of it. */
function hasArial(): boolean {
  try {
    return /Arial|Liberation Sans/.test(execFileSync("fc-match", ["Arial"], { encoding: "utf8" }));
  } catch {
    return false;
  }
}

/** Where a program is missing the tests are named as not run; with CI=true they fail. */
export const skipsPaper = skipsLibreOffice || ((!POPPLER || !hasArial()) && process.env["CI"] !== "true");
export const onPaper = (title: string): string =>
  skipsPaper ? `NOT RUN (apt-get install libreoffice-calc poppler-utils fonts-liberation): ${title}` : title;

const chartsOf = (name: string): NewSheet["charts"] => STARTER_SHEETS.find((sheet) => sheet.name === name)?.charts;

/** All starter sheets with the values that they show and their charts. */
export async function shownSheets(): Promise<readonly NewSheet[]> {
  const book = startHeadless(loadFunctions(inject("build")), starterBook(STARTER_SHEETS));
  try {
    await book.whenCalculated();
    return book.data().sheets.map(({ name, cells, widths, heights, print }) => ({
      name,
      widths,
      heights,
      charts: chartsOf(name) ?? [],
      ...(print && { print }),
      cells: cells.map(({ row, column, value, look, format }) => ({
        row,
        column,
        value,
        style: { ...look, ...(format !== undefined && { format }) },
      })),
    }));
  } finally {
    book.dispose();
  }
}

export interface PrintedText {
  readonly text: string;
  /** Points from the page's upper left corner; the size is that of the font. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly size: number;
}

export interface PrintedPage {
  readonly width: number;
  readonly height: number;
  readonly texts: readonly PrintedText[];
}

export async function pdfOf(sheets: readonly NewSheet[], paper: Paper): Promise<Uint8Array> {
  const onIt = sheets.map((sheet) => ({ ...sheet, print: { ...sheet.print, paper } }));
  return converted(await packageBytes(await newWorkbook(onIt)), "xlsx", "pdf");
}

/** pdftohtml rounds to whole pixels: these are a third of a point, its largest zoom. */
const ZOOM = 3;

const decoded = (text: string): string =>
  text
    .replace(/<[^>]*>/g, "")
    .replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code)))
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&amp;", "&")
    .trim();

/** Pages of a PDF with their texts, from top to bottom. */
export function pagesOf(pdf: Uint8Array): readonly PrintedPage[] {
  const args = ["-xml", "-i", "-hidden", "-stdout", "-zoom", String(ZOOM), "-", "pages"];
  const xml = execFileSync("pdftohtml", args, { input: pdf, encoding: "utf8", maxBuffer: 64 * 1024 * 1024 });
  const sizes = new Map(
    [...xml.matchAll(/<fontspec id="(\d+)" size="(-?\d+)"/g)].map(([, id = "", size = ""]) => [
      id,
      Number(size) / ZOOM,
    ]),
  );
  return xml
    .split("<page ")
    .slice(1)
    .map((page) => {
      const number = (name: string): number => Number(new RegExp(`${name}="(\\d+)"`).exec(page)?.[1]) / ZOOM;
      const texts = [
        ...page.matchAll(/<text top="(-?\d+)" left="(-?\d+)" width="(\d+)" height="\d+" font="(\d+)">(.*?)<\/text>/g),
      ].map(([, top, left, width, font = "", text = ""]) => ({
        text: decoded(text),
        top: Number(top) / ZOOM,
        left: Number(left) / ZOOM,
        width: Number(width) / ZOOM,
        size: sizes.get(font) ?? 0,
      }));
      return {
        width: number("width"),
        height: number("height"),
        texts: texts.filter(({ text }) => text !== "").sort((a, b) => a.top - b.top || a.left - b.left),
      };
    });
}

/** Lines in which a text is printed, one above the other at one left edge; 0 where it isn't found whole. */
export function linesOnPaper(pages: readonly PrintedPage[], text: string): number {
  const whole = text.replace(/\s+/g, "");
  for (const { texts } of pages)
    for (const first of texts) {
      if (!whole.startsWith(first.text.replace(/\s+/g, ""))) continue;
      let [said, lines] = ["", 0];
      for (const next of texts) {
        if (next.top < first.top || Math.abs(next.left - first.left) > 1 || said.length >= whole.length) continue;
        const longer = said + next.text.replace(/\s+/g, "");
        if (!whole.startsWith(longer)) break;
        [said, lines] = [longer, lines + 1];
      }
      if (said === whole) return lines;
    }
  return 0;
}
