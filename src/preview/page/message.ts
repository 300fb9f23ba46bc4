import { isCellFault } from "../../workbook/port";
import type { Address } from "../../workbook/port";
import { cellsText } from "../../workbook/reader/reference";
import type { SheetBook } from "../host/sheetBook";
import { entryFault } from "../file/entryFault";
import type { HostArgument } from "../host/hostValues";
import { plainMessage } from "../host/faultMessages";
import type { ScreenBook } from "../univer/screen";

/** How many cautions a call has. */
export type CountCautions = (id: string, args: readonly HostArgument[]) => number;

const cautionText = (count: number): string =>
  count === 0 ? "" : `${count} ${count === 1 ? "caution" : "cautions"}: see the panel`;

/** The message for a cell: the full text of its error, its cautions, or what may be typed into it. */
export const messageFor = (book: SheetBook, cell: Address, countCautions: CountCautions): string => {
  const value = book.read({ ...cell, rows: 1, columns: 1 }).values[0]?.[0] ?? null;
  const count = book.calls(cell).reduce((sum, { id, args }) => sum + countCautions(id, args), 0);
  const error = isCellFault(value) ? `${value.code} ${value.message ?? plainMessage(value.code)}` : "";
  const prompt = book.validation(cell)?.prompt ?? "";
  const kept = book.kept(cell);
  const stored = kept === undefined ? "" : `The file's result of ${kept.formula}: ${kept.why} can't be read here`;
  return [error, stored, cautionText(count), prompt].filter((part) => part !== "").join(" · ");
};

const one = (cell: Address) => ({ ...cell, rows: 1, columns: 1 });

/** What is wrong with what was typed into a cell; "" where nothing is. */
export function invalidEntry(book: SheetBook, cell: Address): string {
  const { formulas, values } = book.read(one(cell));
  const value = values[0]?.[0] ?? null;
  if ((formulas[0]?.[0] ?? "") !== "" || isCellFault(value)) return "";
  const fault = entryFault(book.validation(cell), value, cell);
  return fault === undefined ? "" : `✕ Invalid entry. Expected: ${fault}`;
}

type MessageBook = SheetBook & Pick<ScreenBook, "shown">;

const part = (tag: string, text: string, kind = ""): HTMLElement => {
  const made = document.createElement(tag);
  made.textContent = text;
  made.className = kind;
  return made;
};

/**
 * Keeps the line above the grid at the selected cell, and follows its results.
 * @param said a live region: it is read aloud when it changes, so it holds no control
 */
export const connectMessage = (book: MessageBook, said: HTMLElement, countCautions: CountCautions): void => {
  let last = "";
  const show = (): void => {
    const cell = book.selection();
    if (cell === undefined) return;
    const address = cellsText(one(cell));
    const parts = [book.shown(cell), invalidEntry(book, cell), messageFor(book, cell, countCautions)];
    const now = JSON.stringify([cell, parts]);
    if (now === last) return;
    last = now;
    const [value = "", invalid = "", text = ""] = parts;
    said.replaceChildren(
      part("strong", address),
      " ",
      part("span", value === "" ? "blank" : value, "value"),
      ...(invalid === "" ? [] : [" ", part("em", invalid, "invalid")]),
      " ",
      part("span", invalid === "" ? text : ""),
    );
  };
  book.onSelection(show);
  book.onChange(show);
  show();
};
