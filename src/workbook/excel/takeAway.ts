/** Takes away what a broken command left in the workbook: sheets and names, found again by their names. */
import { changing } from "./run";

/** What the workbook had before the command. */
export interface Before {
  /** Ids of its sheets. */
  readonly sheets: ReadonlySet<string>;
  /** Those of the names to be made that it had already. */
  readonly names: ReadonlySet<string>;
}

interface Leftovers {
  readonly before: Before;
  /** Whether a sheet that wasn't there before is the command's. */
  isOurs(title: string): boolean;
  /** Names of the workbook that the command makes. */
  readonly names: readonly string[];
}

async function deleteNames({ before, names }: Leftovers): Promise<void> {
  const made = names.filter((name) => !before.names.has(name));
  if (made.length === 0) return;
  await changing(async (context) => {
    const items = made.map((name) => context.workbook.names.getItemOrNullObject(name));
    for (const item of items) item.load("name");
    await context.sync();
    for (const item of items) if (!item.isNullObject) item.delete();
    await context.sync();
  });
}

async function deleteSheets({ before, isOurs }: Leftovers): Promise<void> {
  await changing(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id,items/name");
    await context.sync();
    for (const sheet of worksheets.items) if (!before.sheets.has(sheet.id) && isOurs(sheet.name)) sheet.delete();
    await context.sync();
  });
}

/** Each kind is tried for itself; what can't be taken away stays. */
export async function takeAway(leftovers: Leftovers): Promise<void> {
  await deleteNames(leftovers).catch(() => undefined);
  await deleteSheets(leftovers).catch(() => undefined);
}
