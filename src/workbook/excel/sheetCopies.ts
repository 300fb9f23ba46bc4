/** Puts copies of sheets beside the originals: values in place of formulas, and the record. */
import type { CellValue, SheetCopies, ValueArea } from "../port";
import { isCellFault } from "../port";
import { inPortions } from "./portions";
import { brief, changing, reading, supports } from "./run";
import { codeOf } from "./sentences";
import { insertStarter, refuseProtected } from "./starter";
import { takeAway } from "./takeAway";
import { asText } from "./typed";

type Content = string | number | boolean;

/** An error is typed as its code; Excel makes the error of it. */
const asValue = (value: CellValue): Content => {
  if (value === null) return "";
  if (isCellFault(value)) return value.code;
  return typeof value === "string" ? asText(value) : value;
};

/** A row of values, from its first cell on. */
interface Line {
  readonly title: string;
  readonly row: number;
  readonly column: number;
  readonly contents: readonly Content[];
}

const RANGE_COST = 400;

const linesOf = (title: string, { row, column, values }: ValueArea): readonly Line[] =>
  values.map((line, down) => ({ title, row: row + down, column, contents: line.map(asValue) }));

const isNext = (line: Line, { title, row, column, contents }: Line): boolean =>
  line.title === title && line.row === row + 1 && line.column === column && line.contents.length === contents.length;

/** Lines that lie below each other, as one write. */
function joined(lines: readonly Line[]): readonly (readonly Line[])[] {
  const found: Line[][] = [];
  for (const line of lines) {
    const last = found.at(-1)?.at(-1);
    if (last !== undefined && isNext(line, last)) found.at(-1)?.push(line);
    else found.push([line]);
  }
  return found;
}

async function putValues(lines: readonly Line[]): Promise<void> {
  await inPortions(lines, {
    cost: ({ contents }) => contents.reduce<number>((sum, one) => sum + String(one).length + 4, RANGE_COST),
    run: (some) =>
      changing(async (context) => {
        for (const block of joined(some)) {
          const { title, row, column, contents } = block[0] as Line;
          const sheet = context.workbook.worksheets.getItem(title);
          const range = brief(sheet.getRangeByIndexes(row, column, block.length, contents.length));
          range.values = block.map((line) => [...line.contents]);
        }
        await context.sync();
        return [];
      }),
  });
}

/** Copies a sheet and opens the copy: it is as protected as its original; one without a password opens. */
async function copySheet(sheet: string, title: string): Promise<void> {
  try {
    await changing(async (context) => {
      const copy = context.workbook.worksheets.getItem(sheet).copy("End");
      copy.name = title;
      copy.protection.load("protected");
      await context.sync();
      if (copy.protection.protected) copy.protection.unprotect();
      await context.sync();
    });
  } catch (error) {
    if (codeOf(error) !== "BadPassword") throw error;
    throw new Error(`the sheet "${sheet}" is protected with a password: take its protection off first`, {
      cause: error,
    });
  }
}

const sheetIds = (): Promise<ReadonlySet<string>> =>
  reading(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id");
    await refuseProtected(context);
    await context.sync();
    return new Set(worksheets.items.map(({ id }) => id));
  });

/** Excel's own name for a copy: "Data (2)", the original's cut where it is long. */
const isCopyOf = (title: string, sheet: string): boolean => {
  const [, start] = /^(.+) \(\d+\)$/.exec(title) ?? [];
  return start !== undefined && sheet.startsWith(start);
};

const quoted = (names: readonly string[]): string => names.map((name) => `“${name}”`).join(", ");

/** Adds the copies and shows the record; what was added is taken away again where Excel breaks off. */
export async function addSheetCopies({ sheets, record }: SheetCopies): Promise<string> {
  if (!supports("1.7")) throw new Error("this Excel can't copy sheets from an add-in: copy the sheet by hand");
  const before = { sheets: await sheetIds(), names: new Set<string>() };
  try {
    for (const { sheet, title } of sheets) await copySheet(sheet, title);
    await putValues(sheets.flatMap(({ title, areas }) => areas.flatMap((area) => linesOf(title, area))));
    const name = await insertStarter(record);
    return `the new sheets ${quoted([...sheets.map(({ title }) => title), name])}`;
  } catch (error) {
    const isOurs = (name: string): boolean =>
      sheets.some(({ sheet, title }) => name === title || isCopyOf(name, sheet));
    await takeAway({ before, isOurs, names: [] });
    throw error;
  }
}
