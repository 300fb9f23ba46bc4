/** Starter sheets that take values from the names of another one. */
import type { StarterSheet } from "../../sheets/sheet";
import type { Workbook } from "../../workbook/port";
import { linkNames } from "../../workbook/starterCells";

/** The sheet that holds the names which another one takes values from. */
export function projectFor(starters: readonly StarterSheet[], sheet: StarterSheet): StarterSheet | undefined {
  const links = linkNames(sheet);
  return starters.find((each) => each !== sheet && links.some((name) => name in each.names));
}

/** Whether the workbook has a name that the sheet would bring. */
export async function hasNamesOf(
  workbook: Pick<Workbook, "sheets" | "resolve">,
  { names }: StarterSheet,
): Promise<boolean> {
  const [name] = Object.keys(names);
  const [{ name: sheet } = { name: "" }] = await workbook.sheets();
  if (name === undefined || sheet === "") return false;
  const [area] = await workbook.resolve([{ text: name, from: { sheet, row: 0, column: 0 } }]);
  return area !== undefined;
}
