import { readFileSync } from "node:fs";

/** Cells of a line of comma-separated text, quotes taken off. */
const cellsOf = (line: string): string[] =>
  [...line.matchAll(/("([^"]*)"|[^,]*)(,|$)/g)].slice(0, -1).map(([, plain, quoted]) => quoted ?? plain ?? "");

export interface Row {
  readonly word: (column: string) => string;
  readonly number: (column: string) => number;
}

/** Rows of a file in test/golden, its comment lines skipped. */
export const goldenRows = (file: string): readonly Row[] => {
  const text = readFileSync(new URL(`../golden/${file}`, import.meta.url), "utf8");
  const [header = "", ...lines] = text.split("\n").filter((line) => line.trim() !== "" && !line.startsWith("#"));
  const columns = cellsOf(`${header},`);
  return lines.map((line) => {
    const cells = cellsOf(`${line},`);
    const word = (column: string): string => {
      const cell = cells[columns.indexOf(column)];
      if (cell === undefined) throw new Error(`${file}: no column ${column} in ${line}`);
      return cell;
    };
    return { word, number: (column) => Number(word(column)) };
  });
};
