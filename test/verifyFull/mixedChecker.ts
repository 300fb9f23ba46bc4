/**
 * What the lines of the mixed workbook must show. Calls are made again by a fresh core: in a bare page of the same browser,
 * whose results must be equal to the last bit, and in Node, whose Math differs in the last bits (another V8), to a part in
 * 10^9.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import type { CellScalar } from "../../core";
import { resultOf, type Line } from "../../bench/mixedBook";
import { COLUMN, followerOf, largestOf } from "../../bench/mixedSheets";
import type { CellValue } from "../../src/workbook/port";

/** The engine rounds products to 15 digits or so, as Excel shows them. */
const PRODUCTS = 1e-12;
/** Iterations end where their last bits differ. */
const BETWEEN_VERSIONS = 1e-9;

export type Shown = readonly (readonly CellValue[])[];

export interface MixedChecker {
  /** What is wrong in some lines, in words. */
  faults(shown: Shown, shared: readonly number[], lines: readonly number[]): Promise<readonly string[]>;
}

const plain = (value: CellValue | undefined): CellScalar =>
  value === undefined ? null : typeof value === "object" && value !== null ? value.code : value;

function isNear(one: CellScalar, other: CellScalar, part: number): boolean {
  if (typeof one !== "number" || typeof other !== "number") return one === other;
  return Math.abs(one - other) <= part * Math.max(Math.abs(one), Math.abs(other));
}

/** Loads a build's functions into an empty page, with the lines. */
async function loadCore(page: Page, build: string, lines: readonly Line[]): Promise<void> {
  for (const name of ["shim.js", "functions.js", "notes.js"])
    await page.addScriptTag({ content: readFileSync(join(build, name), "utf8") });
  await page.evaluate((all) => void Object.assign(globalThis, { mixedLines: all }), lines);
}

/** The page's own core calls lines with numbers. */
const callThere = (page: Page, calls: readonly (readonly [at: number, number: number])[]): Promise<CellScalar[]> =>
  page.evaluate((all) => {
    const { mixedLines, warmback } = globalThis as unknown as {
      readonly mixedLines: readonly Line[];
      readonly warmback: NonNullable<typeof globalThis.warmback>;
    };
    const { COMPILED, CATALOGUE, evaluate, isFault } = warmback.core;
    return all.map(([at, number]) => {
      const { id, args, varied, shown } = mixedLines[at] as Line;
      const given = structuredClone(args) as unknown[];
      if (varied?.cell !== undefined)
        (given[varied.argument] as unknown[][])[varied.cell[0]]?.splice(varied.cell[1], 1, number);
      else if (varied !== undefined) given[varied.argument] = number;
      const compiled = COMPILED.get(id);
      if (compiled === undefined) return `no function ${id}`;
      const out = evaluate(compiled, given, CATALOGUE);
      const cell = Array.isArray(out)
        ? (out as readonly (readonly CellScalar[])[])[shown?.[0] ?? 0]?.[shown?.[1] ?? 0]
        : out;
      return isFault(cell) ? (cell as unknown as { code: string }).code : (cell as CellScalar);
    });
  }, calls);

export async function mixedChecker(
  page: Page,
  build: string,
  lines: readonly Line[],
  largest: number,
): Promise<MixedChecker> {
  await loadCore(page, build, lines);
  return {
    faults: async (shown, shared, wanted) => {
      const at = (line: number, column: number): CellScalar => plain(shown[line]?.[column]);
      const number = (line: number): number => Number(at(line, COLUMN.number));
      const calling = callThere(
        page,
        wanted.map((line) => [line, number(line)] as const),
      );
      // Both at a time.
      const here = wanted.map((line) => (lines[line] === undefined ? null : resultOf(lines[line], number(line))));
      const there = await calling;
      const results = lines.map((_, line) => at(line, COLUMN.call));
      return wanted.flatMap((line, place) => {
        const it = lines[line];
        if (it === undefined) return [`no line ${line}`];
        const input = Number(at(line, COLUMN.input)) * (shared[it.shared] ?? Number.NaN);
        const result = at(line, COLUMN.call);
        const wrong = [
          isNear(number(line), input, PRODUCTS) || `number ${number(line)} for ${input}`,
          Object.is(result, there[place]) || `result ${String(result)} for ${String(there[place])}`,
          isNear(result, here[place] ?? null, BETWEEN_VERSIONS) || `result ${String(result)} unlike Node's`,
          isNear(at(line, COLUMN.follower), followerOf(result), PRODUCTS) || "what follows from the result",
          line >= largest ||
            isNear(at(line, COLUMN.largest), largestOf(results, line), PRODUCTS) ||
            `largest ${String(at(line, COLUMN.largest))} for ${largestOf(results, line)}`,
        ];
        return wrong.filter((each) => each !== true).map((each) => `line ${line} (${it.id}): ${String(each)}`);
      });
    },
  };
}
