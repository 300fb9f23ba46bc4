/** What each touched cell of a sheet becomes, once it is known what the file holds there. */
import type { Area, CellValue } from "../../port";
import { shiftOf } from "../formula/shift";
import { keyOf, placeOfKey, type ArrayCells, type Collected } from "../sheet/collect";
import { contains } from "../sheet/formulas";
import type { ScannedCell } from "../sheet/scan";
import type { CellContent } from "./changes";

type Cells = Omit<Area, "sheet">;

/** A change as one cell sees it: "part" is one that an array formula elsewhere fills. */
export type Content = CellContent | { readonly kind: "part"; readonly value: CellValue };

export interface CellPlan {
  readonly content?: Content;
  readonly format?: string;
}

export interface PatchPlan {
  readonly cells: ReadonlyMap<number, CellPlan>;
  /** Cells of groups that are written out, by key: the formula that each gets. */
  readonly expanded: ReadonlyMap<number, { readonly cell: ScannedCell; readonly formula: string }>;
  readonly frozenAreas: readonly Cells[];
  readonly expandedGroups: number;
  /** Keys of cells whose group can't be written out. */
  readonly frozenCells: readonly number[];
}

/** Whether the formula of a cell goes or changes. */
export const replacesFormula = (content: Content | undefined): boolean =>
  content !== undefined && content.kind !== "result";

/** The changes of one sheet by cell; what an array formula fills counts as changed with it. */
export function changesByCell(
  changes: readonly {
    readonly row: number;
    readonly column: number;
    readonly content?: CellContent;
    readonly format?: string;
  }[],
): Map<number, CellPlan> {
  const plans = new Map<number, CellPlan>();
  const put = (row: number, column: number, plan: CellPlan): void => {
    const key = keyOf(row, column);
    const known = plans.get(key);
    plans.set(key, known === undefined ? plan : { ...known, ...plan });
  };
  for (const { row, column, content, format } of changes) {
    put(row, column, { ...(content !== undefined && { content }), ...(format !== undefined && { format }) });
    if (content?.kind !== "formula") continue;
    content.spill?.forEach((line, down) =>
      line.forEach((value, right) => {
        if (down + right > 0) put(row + down, column + right, { content: { kind: "part", value } });
      }),
    );
  }
  return plans;
}

/** Whether a change falls into the area, be there a cell in the file or not. */
function isTouched({ row, column, rows, columns }: Cells, plans: ReadonlyMap<number, CellPlan>): boolean {
  if (rows * columns > plans.size)
    return [...plans].some(
      ([key, { content }]) => replacesFormula(content) && contains({ row, column, rows, columns }, placeOfKey(key)),
    );
  for (let down = 0; down < rows; down++)
    for (let right = 0; right < columns; right++)
      if (replacesFormula(plans.get(keyOf(row + down, column + right))?.content)) return true;
  return false;
}

/** A cell that only holds a value needs no change when it is frozen. */
export const staysAsIs = ({ attributes, formula }: ScannedCell): boolean =>
  formula === undefined && attributes["t"] !== "str" && !("cm" in attributes) && !("vm" in attributes);

/** An array of which one cell changes: frozen whole; emptied where its own formula is replaced. */
function planArray({ first, others, area }: ArrayCells, plans: Map<number, CellPlan>): boolean {
  if (!isTouched(area, plans)) return false;
  const own = plans.get(keyOf(first.row, first.column))?.content;
  const replaced = own?.kind === "formula" || own?.kind === "value";
  for (const cell of [first, ...others]) {
    const key = keyOf(cell.row, cell.column);
    const plan = plans.get(key);
    if (replacesFormula(plan?.content)) continue;
    if (replaced) plans.set(key, { ...plan, content: { kind: "part", value: null } });
    else if (plan?.content !== undefined || !staysAsIs(cell)) {
      const result = plan?.content?.kind === "result" ? { value: plan.content.value } : {};
      plans.set(key, { ...plan, content: { kind: "frozen", ...result } });
    }
  }
  return !replaced;
}

interface Expansion {
  readonly expanded: Map<number, { readonly cell: ScannedCell; readonly formula: string }>;
  groups: number;
  readonly frozen: number[];
}

function expandGroups({ groups }: Collected, plans: Map<number, CellPlan>): Expansion {
  const result: Expansion = { expanded: new Map(), groups: 0, frozen: [] };
  for (const { first, members } of groups.values()) {
    if (first === undefined || !replacesFormula(plans.get(keyOf(first.row, first.column))?.content)) continue;
    result.groups++;
    const shift = shiftOf(first.formula?.text ?? "");
    for (const cell of members) {
      const key = keyOf(cell.row, cell.column);
      if (replacesFormula(plans.get(key)?.content)) continue;
      const own = cell.formula?.text ?? "";
      const formula = own === "" ? shift?.(cell.row - first.row, cell.column - first.column) : own;
      if (formula !== undefined) result.expanded.set(key, { cell, formula });
      else {
        result.frozen.push(key);
        plans.set(key, { ...plans.get(key), content: { kind: "frozen" } });
      }
    }
  }
  return result;
}

/** @param plans as the changes ask; what follows from arrays and groups is added */
export function planSheet(collected: Collected, plans: Map<number, CellPlan>): PatchPlan {
  const frozenAreas = collected.arrays.filter((array) => planArray(array, plans)).map(({ area }) => area);
  const { expanded, groups, frozen } = expandGroups(collected, plans);
  return { cells: plans, expanded, frozenAreas, expandedGroups: groups, frozenCells: frozen };
}
