import { isCellFault } from "../../workbook/port";
import type { Address } from "../../workbook/port";
import { cellsText } from "../../workbook/reader/reference";
import type { SheetBook } from "../host/sheetBook";
import type { ValidationData } from "../file/bookData";
import type { HostArgument } from "../host/hostValues";
import { plainMessage } from "../host/faultMessages";

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

/** The words of a list that its rule holds itself. */
export const listOf = (validation: ValidationData | undefined): readonly string[] | undefined => {
  const source = validation?.type === "list" ? validation.formulae[0] : undefined;
  return typeof source === "string" && source.startsWith('"') ? source.slice(1, -1).split(",") : undefined;
};

const choiceFor = (book: SheetBook, cell: Address): HTMLElement | undefined => {
  const words = listOf(book.validation(cell));
  if (words === undefined) return undefined;
  const current = book.read({ ...cell, rows: 1, columns: 1 }).values[0]?.[0] ?? null;
  const select = document.createElement("select");
  select.setAttribute("aria-label", `Choices for ${cellsText({ ...cell, rows: 1, columns: 1 })}`);
  const shown = words.includes(String(current)) ? words : ["", ...words];
  for (const word of shown) select.add(new Option(word, word, false, word === String(current)));
  select.addEventListener("change", () => book.write([{ ...cell, content: select.value }]));
  return select;
};

/** Keeps the line above the grid at the selected cell, and follows its results. */
export const connectMessage = (book: SheetBook, line: HTMLElement, countCautions: CountCautions): void => {
  const show = (): void => {
    const cell = book.selection();
    if (cell === undefined) return;
    const address = document.createElement("strong");
    address.textContent = cellsText({ ...cell, rows: 1, columns: 1 });
    const text = document.createElement("span");
    text.textContent = messageFor(book, cell, countCautions);
    const choice = choiceFor(book, cell);
    line.replaceChildren(address, text, ...(choice === undefined ? [] : [choice]));
  };
  book.onSelection(show);
  book.onChange(show);
  show();
};
