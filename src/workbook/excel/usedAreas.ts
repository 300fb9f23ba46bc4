/** Where sheets hold something. Questions that come together go to Excel in one request. */
import type { Area } from "../port";
import { MOST_COLUMNS, MOST_ROWS } from "../reader/reference";
import { inPortions } from "./portions";
import { brief, reading } from "./run";

const COST = 1_000;

interface Question {
  readonly sheet: string;
  readonly kind: "used" | "formulas";
}

interface Waiting extends Question {
  resolve(area: Area | undefined): void;
  reject(error: unknown): void;
}

const SAID = { used: "rowIndex,columnIndex,rowCount,columnCount", formulas: "address" };

function asked(worksheet: Excel.Worksheet, { kind }: Question): Excel.Range | Excel.RangeAreas {
  if (kind === "used") return brief(worksheet.getUsedRangeOrNullObject(true));
  return brief(brief(worksheet.getRange()).getSpecialCellsOrNullObject("Formulas"));
}

const columnOf = (letters: string): number =>
  [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

const PART = /!\$?([A-Z]{0,3})\$?(\d*)(?::\$?([A-Z]{0,3})\$?(\d*))?(?=[,;\s]|$)/g;

/** The rectangle around all parts of an address such as "Data!B2:B9,Data!D4": whole rows and columns have no other end. */
export function aroundParts(sheet: string, address: string): Area {
  let [top, left, bottom, right] = [MOST_ROWS, MOST_COLUMNS, 0, 0];
  for (const [, from = "", first = "", to = from, last = first] of address.matchAll(PART)) {
    left = Math.min(left, from === "" ? 0 : columnOf(from));
    right = Math.max(right, to === "" ? MOST_COLUMNS - 1 : columnOf(to));
    top = Math.min(top, first === "" ? 0 : Number(first) - 1);
    bottom = Math.max(bottom, last === "" ? MOST_ROWS - 1 : Number(last) - 1);
  }
  return { sheet, row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

function areaOf(sheet: string, { kind }: Question, range: Excel.Range | Excel.RangeAreas): Area | undefined {
  if (range.isNullObject) return undefined;
  if (kind === "formulas") return aroundParts(sheet, range.address);
  const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = range as Excel.Range;
  return { sheet, row, column, rows, columns };
}

const answer = (questions: readonly Question[]): Promise<readonly (Area | undefined)[]> =>
  reading(async (context) => {
    const worksheets = questions.map(({ sheet }) => context.workbook.worksheets.getItemOrNullObject(sheet));
    for (const worksheet of worksheets) worksheet.load("name");
    const ranges = questions.map((question, at) => {
      const range = asked(worksheets[at] as Excel.Worksheet, question);
      (range as Excel.Range).load(SAID[question.kind]);
      return range;
    });
    await context.sync();
    return questions.map((question, at) => {
      const [worksheet, range] = [worksheets[at], ranges[at]];
      if (worksheet === undefined || worksheet.isNullObject || range === undefined) return undefined;
      return areaOf(worksheet.name, question, range);
    });
  });

async function answerAll(waiting: readonly Waiting[]): Promise<void> {
  try {
    const areas = await inPortions(waiting, { cost: () => COST, run: answer });
    waiting.forEach(({ resolve }, at) => resolve(areas[at]));
  } catch (error) {
    for (const { reject } of waiting) reject(error);
  }
}

/** Asks of one task, gathered until its end. */
function gathered(): (question: Question) => Promise<Area | undefined> {
  let waiting: Waiting[] = [];
  return (question) =>
    new Promise((resolve, reject) => {
      waiting.push({ ...question, resolve, reject });
      if (waiting.length > 1) return;
      queueMicrotask(() => {
        const all = waiting;
        waiting = [];
        void answerAll(all);
      });
    });
}

const ask = gathered();

/** The used part of a sheet, undefined where it is empty or missing. */
export const usedArea = (sheet: string): Promise<Area | undefined> => ask({ sheet, kind: "used" });

/** The rectangle around a sheet's formulas, undefined where there are none. */
export const formulaArea = (sheet: string): Promise<Area | undefined> => ask({ sheet, kind: "formulas" });
