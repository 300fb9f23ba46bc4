/** What Excel tells of by itself: another cell is selected, cells changed or were calculated. */
import type { Address, Area, Unsubscribe } from "../port";
import { brief, reading, supports } from "./run";
import { isElsewhere } from "./sentences";

/** The cell that has the cursor; undefined while another workbook stays in front. */
export async function selection(): Promise<Address | undefined> {
  try {
    return await reading(async (context) => {
      const cell = brief(context.workbook.getActiveCell());
      cell.load("rowIndex,columnIndex,worksheet/name");
      await context.sync();
      return { sheet: cell.worksheet.name, row: cell.rowIndex, column: cell.columnIndex };
    });
  } catch (error) {
    if (!isElsewhere(error)) throw error;
    return undefined;
  }
}

/** All selected ranges; undefined where none is, such as with a chart selected. */
export async function selectedAreas(): Promise<readonly Area[] | undefined> {
  if (!supports("1.9")) return undefined;
  try {
    return await reading(async (context) => {
      const { areas } = brief(context.workbook.getSelectedRanges());
      areas.load("items/rowIndex,items/columnIndex,items/rowCount,items/columnCount,items/worksheet/name");
      await context.sync();
      return areas.items.map(({ worksheet, rowIndex, columnIndex, rowCount, columnCount }) => ({
        sheet: worksheet.name,
        row: rowIndex,
        column: columnIndex,
        rows: rowCount,
        columns: columnCount,
      }));
    });
  } catch (error) {
    if (!isElsewhere(error)) throw error;
    return undefined;
  }
}

interface Handler {
  readonly context: OfficeExtension.ClientRequestContext;
  remove(): void;
}

/** Adds handlers now and takes them away when the returned function is called, even where they are still being added. */
function listening(add: (context: Excel.RequestContext) => readonly Handler[]): Unsubscribe {
  const added = reading(async (context) => {
    const handlers = add(context);
    await context.sync();
    return handlers;
  }).catch((): readonly Handler[] => []);
  const remove = async (): Promise<void> => {
    const handlers = await added;
    for (const handler of handlers) handler.remove();
    await handlers[0]?.context.sync();
  };
  // A handler that Excel keeps calls nobody.
  return () => void remove().catch(() => undefined);
}

export function onSelection(call: (address: Address) => void): Unsubscribe {
  let open = true;
  const look = async (): Promise<void> => {
    const address = await selection().catch(() => undefined);
    if (open && address !== undefined) call(address);
  };
  const stop = listening((context) => [context.workbook.onSelectionChanged.add(look)]);
  return () => {
    open = false;
    stop();
  };
}

/** The names that sheets have now, by their ids. */
const namesOf = (ids: ReadonlySet<string>): Promise<readonly string[]> =>
  reading(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id,items/name");
    await context.sync();
    return worksheets.items.filter(({ id }) => ids.has(id)).map(({ name }) => name);
  });

/** Events that come within so many milliseconds are answered together: one request, not one for each. */
const TOGETHER = 50;

/** Edits and recalculations: both change what a sheet shows. */
export function onChange(call: (sheets: readonly string[]) => void): Unsubscribe {
  if (!supports("1.9")) return () => undefined;
  let ids = new Set<string>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let open = true;
  const tell = async (): Promise<void> => {
    const those = ids;
    ids = new Set();
    timer = undefined;
    const names = await namesOf(those).catch(() => []);
    if (open && names.length > 0) call(names);
  };
  const note = ({ worksheetId }: { worksheetId: string }): Promise<void> => {
    ids.add(worksheetId);
    timer ??= setTimeout(() => void tell(), TOGETHER);
    return Promise.resolve();
  };
  const stop = listening(({ workbook: { worksheets } }) => [
    worksheets.onChanged.add(note),
    worksheets.onCalculated.add(note),
  ]);
  return () => {
    open = false;
    clearTimeout(timer);
    stop();
  };
}
