/**
 * Lists the formulas that a calculation goes through, in slices. The engine reads every formula of the workbook afresh
 * for each calculation (0.25.1); here one whose text is unchanged keeps what was read of it.
 */
import type { Injector, IRange, IUnitRange } from "@univerjs/core";
import {
  IDependencyManagerService,
  IFormulaCurrentConfigService,
  IFormulaDependencyGenerator,
} from "@univerjs/engine-formula";
import { IFormulaRuntimeService } from "@univerjs/engine-formula";
import { LONG_SLICE, timeSlices } from "../../workbook/timeSlices";
import { listInParts, type UnitFormulas } from "./formulaParts";

interface AstNode {
  isForcedCalculateFunction(): boolean;
  getChildren(): readonly AstNode[];
}

/** A formula of the workbook in the engine's list. */
interface FormulaTree {
  readonly treeId: number;
  readonly formula: string;
  readonly unitId: string;
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
  readonly refOffsetX: number;
  readonly refOffsetY: number;
  readonly isVirtual: boolean;
  readonly isCache: boolean;
  isDirty: boolean;
  addressFunctionNodes: readonly AstNode[];
  pushRangeList(ranges: readonly IUnitRange[]): void;
}

type UnitData = Readonly<Record<string, Readonly<Record<string, object>> | undefined>>;

/** The part of the engine's generator that is replaced, and what the replacement uses. */
interface Generator {
  _generateTreeList(
    formulas: UnitFormulas,
    others: Readonly<Record<string, unknown>>,
    units: UnitData,
  ): Promise<FormulaTree[]>;
  _registerFormulas(units: readonly string[], formulas: UnitFormulas, data: unknown, list: FormulaTree[]): void;
  _registerOtherFormulas(others: unknown, units: readonly string[], list: FormulaTree[]): void;
  _registerFeatureFormulas(list: FormulaTree[]): void;
  _getTreeNode(tree: FormulaTree): AstNode;
  _includeTree(tree: FormulaTree, node: AstNode): boolean;
  _getAddressFunctionNodeList(node: AstNode): readonly AstNode[];
  _getRangeListByNode(data: object): Promise<readonly IUnitRange[]>;
  _calculateListByFunctionRefNode(list: readonly FormulaTree[]): Promise<void>;
  readonly _executedAddressFunctionNodeIds: Set<unknown>;
  _updateRangeFlattenCache: Map<string, Map<string, readonly IRange[]>>;
}

/** What was read of a formula. */
interface Known {
  readonly formula: string;
  readonly ranges: readonly IUnitRange[];
}

/** A range of few rows is found by its rows. */
const FEW_ROWS = 8;

/** Whether a cell is in one of many ranges. */
function inRanges(ranges: readonly IRange[]): (row: number, column: number) => boolean {
  const rows = new Map<number, IRange[]>();
  const large: IRange[] = [];
  for (const range of ranges) {
    if (!(range.endRow - range.startRow < FEW_ROWS)) large.push(range);
    else
      for (let row = range.startRow; row <= range.endRow; row++) {
        const line = rows.get(row);
        if (line === undefined) rows.set(row, [range]);
        else line.push(range);
      }
  }
  const holds = (row: number, column: number) => (range: IRange) =>
    !(row < range.startRow || row > range.endRow || column < range.startColumn || column > range.endColumn);
  return (row, column) => rows.get(row)?.some(holds(row, column)) === true || large.some(holds(row, column));
}

/** Stands for a formula without volatile functions and names: only its place can make it dirty. */
const NO_NODE: AstNode = { isForcedCalculateFunction: () => false, getChildren: () => [] };

const isForced = (node: AstNode): boolean =>
  node.isForcedCalculateFunction() || node.getChildren().some((child) => isForced(child));

export function keepDependencyTrees(injector: Injector): void {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator;
  const config = injector.get(IFormulaCurrentConfigService);
  const runtime = injector.get(IFormulaRuntimeService);
  const manager = injector.get(IDependencyManagerService);
  const partsOf = listInParts(injector);
  const known = new Map<number, Known>();
  /** Whether a formula is calculated for itself: by its own function, or because it is in what changed. */
  const dirtyCells = () => {
    const changed = generator._updateRangeFlattenCache;
    const sheets = new Map<string, (row: number, column: number) => boolean>();
    for (const [unit, ranges] of changed)
      for (const [sheet, list] of ranges) sheets.set(`${unit} ${sheet}`, inRanges(list));
    return (tree: FormulaTree, node: AstNode): boolean => {
      const { unitId, subUnitId, row, column } = tree;
      generator._updateRangeFlattenCache = new Map();
      const included = generator._includeTree(tree, node);
      generator._updateRangeFlattenCache = changed;
      if (included) return true;
      const excluded = config.getExcludedRange()?.[unitId]?.[subUnitId]?.getValue(row, column);
      return excluded === undefined || excluded === null
        ? sheets.get(`${unitId} ${subUnitId}`)?.(row, column) === true
        : false;
    };
  };
  const readTree = async (tree: FormulaTree, isDirty: ReturnType<typeof dirtyCells>): Promise<void> => {
    const { treeId, formula, refOffsetX, refOffsetY } = tree;
    const node = generator._getTreeNode(tree);
    tree.isDirty = isDirty(tree, node);
    const addresses = generator._getAddressFunctionNodeList(node);
    if (addresses.length > 0) tree.addressFunctionNodes = addresses;
    if (tree.isVirtual) return;
    runtime.setCurrent(tree.row, tree.column, tree.rowCount, tree.columnCount, tree.subUnitId, tree.unitId);
    const ranges = await generator._getRangeListByNode({ node, refOffsetX, refOffsetY });
    tree.pushRangeList(ranges);
    if (addresses.length === 0 && !isForced(node)) known.set(treeId, { formula, ranges });
  };
  generator._generateTreeList = async (formulas, others, units) => {
    const pause = timeSlices({ slice: LONG_SLICE }, []);
    const list: FormulaTree[] = [];
    if (config.isForceCalculate()) {
      manager.reset();
      known.clear();
    }
    for (const { unit, sheet, formulas: part } of partsOf(formulas)) {
      const wait = pause();
      if (wait !== undefined) await wait;
      // A sheet added since the calculation began is calculated next.
      if (units[unit]?.[sheet] !== undefined)
        generator._registerFormulas([unit], { [unit]: { [sheet]: part } }, units, list);
    }
    generator._registerOtherFormulas(others, Object.keys(others), list);
    generator._registerFeatureFormulas(list);
    const isDirty = dirtyCells();
    const isUsual = [config.getDirtyNameMap(), config.getDirtyDefinedNameMap(), config.getDirtySuperTableMap()].every(
      (names) => Object.keys(names).length === 0,
    );
    for (const tree of list) {
      const wait = pause();
      if (wait !== undefined) await wait;
      if (!tree.formula) {
        if (!tree.isCache) manager.addDependencyRTreeCache(tree as never);
        continue;
      }
      const before = isUsual && !tree.isVirtual ? known.get(tree.treeId) : undefined;
      if (before?.formula === tree.formula) {
        tree.isDirty = isDirty(tree, NO_NODE);
        tree.pushRangeList(before.ranges);
      } else {
        known.delete(tree.treeId);
        await readTree(tree, isDirty);
        if (!tree.isCache) manager.addDependencyRTreeCache(tree as never);
      }
    }
    // It sorts all formulas by their place, which only OFFSET and INDIRECT ask for.
    if (list.some(({ addressFunctionNodes }) => addressFunctionNodes.length > 0))
      await generator._calculateListByFunctionRefNode(list);
    else generator._executedAddressFunctionNodeIds.clear();
    return list;
  };
}
