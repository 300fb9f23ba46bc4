/** Which rows of a starter sheet fold: those under a part's heading, and in it those under a group's. */
/** What of a line matters here. */
export interface FoldingLine {
  readonly label: string;
  readonly labelStyle?: string | undefined;
  readonly key?: string | undefined;
  readonly value?: unknown;
  readonly extra?: unknown;
  readonly spills?: number | undefined;
  readonly fold?: "starts" | "ends" | undefined;
}

/** A line with the row, counted from 1, in which it lies. */
export type PlacedLine<L extends FoldingLine = FoldingLine> = readonly [row: number, line: L];

const isPart = ({ labelStyle }: FoldingLine): boolean => labelStyle === "Heading 2";

/** The heads of a table have values of their own. */
const isGroup = ({ labelStyle, value, extra }: FoldingLine): boolean =>
  labelStyle === "Heading 3" && value === undefined && extra === undefined;

const isEmpty = ({ key, label, value, extra, spills }: FoldingLine): boolean =>
  label === "" && key === undefined && value === undefined && extra === undefined && spills === undefined;

/** The rows after a heading up to the line that ends them, without the empty lines before it. */
function rowsUnder(lines: readonly PlacedLine[], at: number, ends: (line: FoldingLine) => boolean): readonly string[] {
  const found = lines.findIndex(([, line], place) => place > at && ends(line));
  let last = (found < 0 ? lines.length : found) - 1;
  while (last > at && isEmpty(lines[last]?.[1] ?? { label: "" })) last -= 1;
  const [row, { spills = 0 }] = lines[last] ?? [0, { label: "" }];
  const [from, to] = [(lines[at]?.[0] ?? 0) + 1, row + spills];
  return last === at ? [] : [from === to ? `A${from}` : `A${from}:A${to}`];
}

/** The rows that fold, a part before the groups in it. */
export function foldingRows(lines: readonly PlacedLine[]): readonly string[] {
  let inPart = false;
  return lines.flatMap(([, line], at) => {
    if (line.fold === "ends" || isPart(line)) inPart = line.fold === "starts";
    if (!inPart) return [];
    if (isPart(line)) return rowsUnder(lines, at, (next) => isPart(next) || next.fold === "ends");
    if (!isGroup(line)) return [];
    return rowsUnder(lines, at, (next) => isGroup(next) || isPart(next) || next.fold === "ends");
  });
}
