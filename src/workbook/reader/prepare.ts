/** Cells to read, their formulas parsed, and what reading them needs. */
import type { CellInput } from "../../../core";
import type { SessionLog } from "../callLog";
import type { Address, CellValue, ReferenceText } from "../port";
import type { CellOutcome, ValueMatrix } from "../values";
import { mentionsUs, sitesIn, walkTree, type FormulaCall } from "./calls";
import { plainName } from "./evaluate";
import { boundValue } from "./scope";
import { isRefusal, type FormulaRefusal } from "./tokens";
import { parse, type Tree } from "./tree";

/** A cell to read; `spill` is its whole spill, if known. */
export interface CellToRead {
  readonly address: Address;
  readonly formula: string;
  readonly value: CellValue;
  readonly spill?: ValueMatrix;
}

/** The calculation, and the calls that it made in this session. */
export interface Engine {
  readonly known: ReadonlySet<string>;
  /** The result of a call; throws `Pending` if it isn't available yet. */
  call(id: string, args: readonly CellInput[]): CellOutcome;
  readonly log: SessionLog;
}

/** A cell whose formula was parsed. */
export interface Prepared {
  readonly cell: CellToRead;
  readonly tree: Tree | FormulaRefusal;
  readonly sites: readonly FormulaCall[];
}

export function prepare(cell: CellToRead, known: ReadonlySet<string>): Prepared {
  if (!mentionsUs(cell.formula)) return { cell, tree: { at: 0, why: "holds no call of ours" }, sites: [] };
  const tree = parse(cell.formula);
  return { cell, tree, sites: isRefusal(tree) ? [] : sitesIn(tree, known) };
}

/** The references that a prepared cell needs before it can be read. */
export function wantedBy({ cell, tree, sites }: Prepared): readonly ReferenceText[] {
  const wanted: ReferenceText[] = [];
  if (isRefusal(tree) || sites.length === 0) return wanted;
  walkTree(tree, (node, scope) => {
    if (node.kind !== "reference" || (scope && boundValue(scope, plainName(node.text))) !== undefined) return;
    wanted.push({ text: node.text, from: cell.address });
  });
  return wanted;
}
