/** What a new sheet says of its rows besides their cells: height, outline, whether they show. */
import { parseCells } from "../../reader/reference";
import type { NewSheet } from "./newSheet";

interface Span {
  readonly first: number;
  readonly last: number;
}

/** The first and the last row of each group, counted from 0. */
const spansOf = ({ groups = [] }: NewSheet): readonly Span[] =>
  groups.flatMap((area) => {
    const cells = parseCells(area);
    return cells === undefined ? [] : [{ first: cells.row, last: cells.row + cells.rows - 1 }];
  });

/** Groups lie in each other; the row that a group folds under is above it: ECMA-376 part 1, 18.3.1.61 and 18.3.1.73. */
export function rowAttributes(sheet: NewSheet): ReadonlyMap<number, string> {
  const { heights = {}, hiddenRows = [] } = sheet;
  const spans = spansOf(sheet);
  const hidden = new Set(hiddenRows);
  const rows = new Set([...Object.keys(heights).map(Number), ...hidden]);
  for (const { first, last } of spans) for (let row = first - 1; row <= last; row++) if (row >= 0) rows.add(row);
  return new Map(
    [...rows]
      .sort((a, b) => a - b)
      .map((row) => {
        const height = heights[row];
        const level = spans.filter(({ first, last }) => first <= row && row <= last).length;
        const isFolded = spans.some(({ first }) => first - 1 === row && hidden.has(first));
        return [
          row,
          (height === undefined ? "" : ` ht="${height}" customHeight="1"`) +
            (hidden.has(row) ? ' hidden="1"' : "") +
            (level === 0 ? "" : ` outlineLevel="${level}"`) +
            (isFolded ? ' collapsed="1"' : ""),
        ] as const;
      }),
  );
}

/** How deep the groups lie in each other. */
export const outlineDepth = (sheet: NewSheet): number => {
  const spans = spansOf(sheet);
  return Math.max(
    0,
    ...spans.map(({ first }) => spans.filter((one) => one.first <= first && first <= one.last).length),
  );
};
