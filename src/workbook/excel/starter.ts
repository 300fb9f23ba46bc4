/** Puts a starter sheet into the workbook. */
import type { SheetCell, StarterSheet } from "../../sheets/sheet";
import { freeName, linkNames, linkedSheet, placedCells } from "../starterCells";
import type { Placed } from "../starterCells";
import { addSheetCharts } from "./charts";
import { dressings } from "./dress";
import { inPortions } from "./portions";
import { columnPoints, MARGINS, starterPrint } from "../starterPrint";
import { brief, changing, reading, supports, writing } from "./run";
import { codeOf } from "./sentences";
import type { InsertOptions } from "../port";

import { takeAway, type Before } from "./takeAway";
import { asText, asTyped } from "./typed";
import { CANCELLED } from "../timeSlices";

type Content = string | number | boolean;

const typedCell = ({ content, text }: SheetCell): Content =>
  text === true ? asText(String(content)) : asTyped(content);

/** Everything that cells hold, as one grid from A1 on. */
function grid(cells: readonly Placed[]): Content[][] {
  const rows = Math.max(...cells.map(({ row }) => row)) + 1;
  const columns = Math.max(...cells.map(({ column }) => column)) + 1;
  const found = Array.from({ length: rows }, () => new Array<Content>(columns).fill(""));
  for (const { row, column, cell } of cells) (found[row] ?? [])[column] = typedCell(cell);
  return found;
}

/** What the workbook has already, and the sheet's free title. */
interface Plan extends Before {
  readonly title: string;
  /** Names of the workbook that the sheet takes values from. */
  readonly links: ReadonlySet<string>;
}

const STRUCTURE =
  "the workbook's structure is protected, so no sheet can be added: take that protection off first (Review, Protect Workbook)";

/** @throws a sentence where the workbook takes no new sheet */
export async function refuseProtected(context: Excel.RequestContext): Promise<void> {
  if (!supports("1.7")) return;
  const { protection } = context.workbook;
  protection.load("protected");
  await context.sync();
  if (protection.protected) throw new Error(STRUCTURE);
}

function planFor(sheet: StarterSheet): Promise<Plan> {
  return reading(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id,items/name");
    const keys = Object.keys(sheet.names);
    const links = linkNames(sheet);
    const linked = links.map((name) => context.workbook.names.getItemOrNullObject(name));
    for (const name of linked) name.load("name");
    const names = keys.map((name) => context.workbook.names.getItemOrNullObject(name));
    for (const name of names) name.load("name");
    await refuseProtected(context);
    await context.sync();
    return {
      title: freeName(
        sheet.name,
        worksheets.items.map(({ name }) => name),
      ),
      sheets: new Set(worksheets.items.map(({ id }) => id)),
      names: new Set(keys.filter((_, at) => names[at]?.isNullObject === false)),
      links: new Set(links.filter((_, at) => linked[at]?.isNullObject === false)),
    };
  });
}

/** Bytes of a line of contents, and of one setting of an area. */
const lineCost = (line: readonly Content[]): number =>
  line.reduce<number>((sum, content) => sum + (typeof content === "string" ? content.length + 4 : 20), 0);
const DRESSING_COST = 1_200;

interface Line {
  readonly row: number;
  readonly contents: readonly Content[];
}

async function fill(
  context: Excel.RequestContext,
  title: string,
  cells: readonly Placed[],
  { signal, onProgress }: InsertOptions,
): Promise<void> {
  const sheetNamed = (): Excel.Worksheet => context.workbook.worksheets.getItem(title);
  const lines = grid(cells).map((contents, row): Line => ({ row, contents }));
  await inPortions(lines, {
    cost: ({ contents }) => lineCost(contents),
    async run(some) {
      const [first] = some;
      if (first === undefined) return [];
      if (signal?.aborted === true) throw CANCELLED;
      onProgress?.(first.row, lines.length);
      const range = sheetNamed().getRangeByIndexes(first.row, 0, some.length, first.contents.length);
      brief(range).formulas = some.map(({ contents }) => [...contents]);
      await context.sync();
      return [];
    },
  });
  await inPortions(dressings(cells), {
    cost: () => DRESSING_COST,
    async run(some) {
      const worksheet = sheetNamed();
      for (const set of some) set(worksheet);
      await context.sync();
      return [];
    },
  });
}

function freeze(worksheet: Excel.Worksheet, { frozenRows, frozenColumns = 0 }: StarterSheet): void {
  const { freezePanes } = worksheet;
  if (frozenColumns === 0) freezePanes.freezeRows(frozenRows);
  else freezePanes.freezeAt(worksheet.getRangeByIndexes(0, 0, frozenRows, frozenColumns));
}

async function build(
  context: Excel.RequestContext,
  sheet: StarterSheet,
  { title, names }: Plan,
  options: InsertOptions,
): Promise<void> {
  const worksheet = context.workbook.worksheets.add(title);
  for (const [name, address] of Object.entries(sheet.names))
    (names.has(name) ? worksheet.names : context.workbook.names).add(name, brief(worksheet.getRange(address)));
  sheet.widths.forEach((width, column) => {
    brief(worksheet.getRangeByIndexes(0, column, 1, 1)).format.columnWidth = columnPoints(width);
  });
  if (sheet.frozenRows > 0 && supports("1.7")) freeze(worksheet, sheet);
  await context.sync();
  await fill(context, title, placedCells(sheet), options);
  if (options.signal?.aborted === true) throw CANCELLED;
  context.workbook.worksheets.getItem(title).activate();
  await context.sync();
}

/** A sheet without its page set-up is of use: where there is no printer, Excel refuses to set one. */
async function setUpPage(title: string, starter: StarterSheet): Promise<void> {
  if (!supports("1.9")) return;
  const print = starterPrint(starter);
  await changing(async (context) => {
    const sheetNamed = (): Excel.Worksheet => context.workbook.worksheets.getItem(title);
    const page = sheetNamed().pageLayout;
    page.setPrintArea(print.area);
    page.setPrintTitleRows(`$${print.titleRows.replace(":", ":$")}`);
    page.orientation = print.landscape ? "Landscape" : "Portrait";
    page.zoom = { horizontalFitToPages: 1 };
    for (const [side, points] of Object.entries(MARGINS)) page[side as keyof typeof MARGINS] = points;
    const footers = page.headersFooters.defaultForAllPages;
    footers.centerFooter = print.footer;
    if (print.footerLeft !== undefined) footers.leftFooter = print.footerLeft;
    if (print.footerRight !== undefined) footers.rightFooter = print.footerRight;
    for (const row of print.breaks ?? [])
      sheetNamed().horizontalPageBreaks.add(brief(sheetNamed().getRange(`A${String(row)}`)));
    await context.sync();
  }).catch(() => undefined);
}

/** Rows that fold; a sheet without them is of use. */
async function groupRows(title: string, { groups = [] }: StarterSheet): Promise<void> {
  if (groups.length === 0 || !supports("1.10")) return;
  await changing(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(title);
    for (const group of groups) brief(worksheet.getRange(group)).group("ByRows");
    await context.sync();
  }).catch(() => undefined);
}

/** Adds the sheet and shows it; answers its name. A sheet that can't be finished is taken away again. */
export async function insertStarter(starter: StarterSheet, options: InsertOptions = {}): Promise<string> {
  const plan = await planFor(starter);
  const sheet = linkedSheet(starter, (name) => plan.links.has(name));
  let taken = false;
  const run = async (context: Excel.RequestContext): Promise<void> => {
    try {
      await build(context, sheet, plan, options);
    } catch (error) {
      // Somebody else's sheet got the title meanwhile.
      taken = codeOf(error) === "ItemAlreadyExists";
      throw error;
    }
  };
  await writing(run, async () => {
    if (taken) return;
    await takeAway({ before: plan, isOurs: (title) => title === plan.title, names: Object.keys(sheet.names) });
  });
  await setUpPage(plan.title, sheet);
  await groupRows(plan.title, sheet);
  await addSheetCharts(plan.title, sheet);
  return plan.title;
}
