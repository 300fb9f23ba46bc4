/** The workbook port over Office.js. What a host may lack is tested for when it is needed. */
import { readAreas, rangeOf, writeCells } from "./cells";
import { addHandOver } from "./handOver";
import { PICTURES, placePicture } from "./picture";
import { resolveReferences } from "./references";
import { isMissing, reading, supports, writing } from "./run";
import { insertStarter } from "./starter";
import type { Address, Area, PlacedPicture, SheetFacts, Unsubscribe, Workbook } from "../port";

async function sheets(): Promise<readonly SheetFacts[]> {
  return reading(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name,items/visibility,items/protection/protected");
    await context.sync();
    return worksheets.items.map(({ name, visibility, protection }) => ({
      name,
      visible: visibility === "Visible",
      protected: protection.protected,
    }));
  });
}

async function used(sheet: string): Promise<Area | undefined> {
  return reading(async (context) => {
    const worksheet = context.workbook.worksheets.getItemOrNullObject(sheet);
    worksheet.load("name");
    await context.sync();
    if (worksheet.isNullObject) return undefined;
    const range = worksheet.getUsedRangeOrNullObject(true);
    range.load("rowIndex,columnIndex,rowCount,columnCount");
    await context.sync();
    if (range.isNullObject) return undefined;
    const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = range;
    return { sheet: worksheet.name, row, column, rows, columns };
  });
}

/** Rejects by name where a sheet is missing; Excel itself doesn't say which. */
async function named<T>(names: readonly string[], run: () => Promise<T>): Promise<T> {
  try {
    return await run();
  } catch (error) {
    const cause = error instanceof Error ? error.cause : undefined;
    if (!isMissing(cause)) throw error;
    const there = new Set((await sheets()).map(({ name }) => name.toLowerCase()));
    const gone = names.find((name) => !there.has(name.toLowerCase()));
    throw gone === undefined ? error : new Error(`there is no sheet named "${gone}"`, { cause: error });
  }
}

const sheetsOf = (places: readonly { readonly sheet: string }[]): readonly string[] => places.map(({ sheet }) => sheet);

/** The cell that has the cursor; undefined where something else than cells is selected. */
async function selection(): Promise<Address | undefined> {
  try {
    return await reading(async (context) => {
      const cell = context.workbook.getActiveCell();
      cell.load("rowIndex,columnIndex,worksheet/name");
      await context.sync();
      return { sheet: cell.worksheet.name, row: cell.rowIndex, column: cell.columnIndex };
    });
  } catch {
    return undefined;
  }
}

async function select(address: Address): Promise<void> {
  await named([address.sheet], () =>
    reading(async (context) => {
      context.workbook.worksheets.getItem(address.sheet).activate();
      rangeOf(context, { ...address, rows: 1, columns: 1 }).select();
      await context.sync();
    }),
  );
}

async function recalculate(areas: readonly Area[]): Promise<void> {
  await named(sheetsOf(areas), () =>
    writing(async (context) => {
      for (const area of areas) rangeOf(context, area).setDirty();
      await context.sync();
    }),
  );
}

interface Handler {
  readonly context: OfficeExtension.ClientRequestContext;
  remove(): void;
}

/** Adds handlers now and takes them away when told to, even where they are still being added. */
function listening(add: (context: Excel.RequestContext) => readonly Handler[]): Unsubscribe {
  const added = reading(async (context) => {
    const handlers = add(context);
    await context.sync();
    return handlers;
  }).catch((): readonly Handler[] => []);
  return () => {
    void added.then(async (handlers) => {
      for (const handler of handlers) handler.remove();
      await handlers[0]?.context.sync();
    });
  };
}

function onSelection(call: (address: Address) => void): Unsubscribe {
  let open = true;
  const stop = listening((context) => [
    context.workbook.onSelectionChanged.add(async () => {
      const address = await selection();
      if (open && address !== undefined) call(address);
    }),
  ]);
  return () => {
    open = false;
    stop();
  };
}

async function sheetName(id: string): Promise<string | undefined> {
  return reading(async (context) => {
    const worksheet = context.workbook.worksheets.getItemOrNullObject(id);
    worksheet.load("name");
    await context.sync();
    return worksheet.isNullObject ? undefined : worksheet.name;
  });
}

/** Edits and recalculations: both change what a sheet shows. */
function onChange(call: (sheets: readonly string[]) => void): Unsubscribe {
  if (!supports("1.9")) return () => undefined;
  let open = true;
  const tell = async ({ worksheetId }: { worksheetId: string }): Promise<void> => {
    const name = await sheetName(worksheetId);
    if (open && name !== undefined) call([name]);
  };
  const stop = listening(({ workbook: { worksheets } }) => [
    worksheets.onChanged.add(tell),
    worksheets.onCalculated.add(tell),
  ]);
  return () => {
    open = false;
    stop();
  };
}

/** The workbook that Excel has open beside the panel. */
export function excelWorkbook(): Workbook {
  return {
    host: "excel",
    sheets,
    used,
    read: (areas) => named(sheetsOf(areas), () => reading((context) => readAreas(context, areas))),
    resolve: (references) => reading((context) => resolveReferences(context, references)),
    selection,
    select,
    write: (cells) => named(sheetsOf(cells), () => writing((context) => writeCells(context, cells))),
    insert: (sheet) => writing((context) => insertStarter(context, sheet)),
    handOver: (copy) => named(sheetsOf(copy.sheets), () => writing((context) => addHandOver(context, copy))),
    // Which Excel this is can be asked once Office is ready, which may be later than now.
    get placePicture() {
      if (!supports(PICTURES)) return undefined;
      return (picture: PlacedPicture, beside: Area) =>
        named([beside.sheet], () => writing((context) => placePicture(context, picture, beside)));
    },
    recalculate,
    onSelection,
    onChange,
  };
}
