/** The labels of cells: the nearest text to the left in the same row. Cells asked for together are read together. */
import type { Address, Area, Workbook } from "../../workbook/port";

export interface CellLabels {
  /** "" for a cell without a label, or one that can't be read. */
  of(address: Address): Promise<string>;
}

/** So many columns to the left are looked through. */
const REACH = 8;
/** Longer labels are cut. */
const LONGEST = 48;

const leftOf = ({ sheet, row, column }: Address): Area => {
  const first = Math.max(0, column - REACH);
  return { sheet, row, column: first, rows: 1, columns: column - first };
};

const cut = (text: string): string => (text.length <= LONGEST ? text : `${text.slice(0, LONGEST - 1).trimEnd()}…`);

interface Asked {
  readonly address: Address;
  readonly answer: (label: string) => void;
}

export function cellLabels(book: Pick<Workbook, "read">): CellLabels {
  let asked: Asked[] = [];
  const readAll = async (): Promise<void> => {
    const batch = asked;
    asked = [];
    try {
      const blocks = await book.read(batch.map(({ address }) => leftOf(address)));
      for (const [at, { answer }] of batch.entries()) {
        const values = blocks[at]?.values[0] ?? [];
        const text = [...values].reverse().find((value) => typeof value === "string" && value.trim() !== "");
        answer(typeof text === "string" ? cut(text.trim()) : "");
      }
    } catch {
      // A label is a help only: without it the address remains.
      for (const { answer } of batch) answer("");
    }
  };
  return {
    of: (address) =>
      address.column === 0
        ? Promise.resolve("")
        : new Promise((answer) => {
            if (asked.length === 0) queueMicrotask(() => void readAll());
            asked.push({ address, answer });
          }),
  };
}
