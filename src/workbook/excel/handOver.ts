/** Puts a hand-over copy beside the originals: copied sheets with values, and the record. */
import type { CellValue, HandOverCopy, ValueArea } from "../port";
import { isCellFault } from "../port";
import { asText } from "./cells";
import { supports } from "./run";
import { insertStarter } from "./starter";

/** An error is typed as its code; Excel makes the error of it. */
const asValue = (value: CellValue): string | number | boolean => {
  if (value === null) return "";
  if (isCellFault(value)) return value.error;
  return typeof value === "string" ? asText(value) : value;
};

function putValues(worksheet: Excel.Worksheet, { row, column, values }: ValueArea): void {
  const range = worksheet.getRangeByIndexes(row, column, values.length, values[0]?.length ?? 1);
  range.values = values.map((line) => line.map(asValue));
}

const quoted = (names: readonly string[]): string => names.map((name) => `“${name}”`).join(", ");

/** Adds the copies and shows the record; what was added is taken away again where Excel breaks off. */
export async function addHandOver(context: Excel.RequestContext, { sheets, record }: HandOverCopy): Promise<string> {
  if (!supports("1.7")) throw new Error("this Excel can't copy sheets from an add-in: copy the sheet by hand");
  const { worksheets } = context.workbook;
  const copies = sheets.map(({ sheet, title }) => {
    const copy = worksheets.getItem(sheet).copy("End");
    copy.name = title;
    copy.protection.load("protected");
    return copy;
  });
  try {
    await context.sync();
    sheets.forEach(({ areas }, at) => {
      const copy = copies[at];
      if (copy === undefined) return;
      // A copy is as protected as its original; one without a password opens.
      if (copy.protection.protected) copy.protection.unprotect();
      for (const area of areas) putValues(copy, area);
    });
    const name = await insertStarter(context, record);
    return `the new sheets ${quoted([...sheets.map(({ title }) => title), name])}`;
  } catch (error) {
    for (const copy of copies) copy.delete();
    await context.sync().catch(() => undefined);
    throw error;
  }
}
