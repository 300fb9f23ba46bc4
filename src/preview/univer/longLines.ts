/**
 * Works out formulas over whole columns and rows of very long sheets from the used cells (engine 0.25.1). The engine makes
 * an array of 1,048,576 rows of each and goes through it once an operator, which takes seconds. Here each line ends a few
 * empty cells behind the last used one of all lines in the formula. Functions that make one value of a line are asked
 * twice, with one empty cell more the second time: where that changes nothing, the rest of the line doesn't either, and
 * what it adds to a sum it adds once for each further cell. Everything else is refused.
 */
import type { Injector } from "@univerjs/core";
import {
  ErrorType,
  ErrorValueObject,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  Interpreter,
  NumberValueObject,
} from "@univerjs/engine-formula";
import type { BaseAstNode, BaseValueObject } from "@univerjs/engine-formula";

import { plainName } from "../../workbook/reader/evaluate";
import { lineUse, LONG_COLUMNS, LONG_ROWS, MOST_LINE_CELLS } from "../file/readable/longLines";
import type { CallSites } from "../host/callSites";
import { clampLine } from "./lineCells";
import { isCut, isReferenceNode, linePlan, nodeValue, type FormulaTree, type LinePlan } from "./linePlan";
import { isSameValue, extentOf, type EngineValue } from "./lineValues";

/** Thrown within this file where each cell of a line is needed. */
const NEEDS_LINE = new Error("each cell of a long line is needed");

const nodeName = (node: BaseAstNode): string => plainName(node.getToken().trim());

const takesCorners = (node: BaseAstNode): boolean => nodeName(node) === "@" || lineUse(nodeName(node)) === "corners";

const numberOf = (value: EngineValue): number | undefined => {
  const one = value as BaseValueObject;
  return value.isValueObject() && one.isNumber() ? Number(one.getValue()) : undefined;
};

/** Something is longer than the used cells and none of the lines. */
const hasOtherLine = (node: BaseAstNode, { kinds, way, used }: LinePlan): boolean =>
  node.getChildren().some((child) => {
    const value = kinds.get(child) === "short" ? nodeValue(child) : undefined;
    return value !== undefined && extentOf(value)[way] > Math.max(used, 1);
  });

/** Works nodes out with lines of so many cells. */
function lineWorker(plan: LinePlan, { refOffsetX, refOffsetY }: FormulaTree) {
  const { kinds, way, used, size } = plan;
  // Two empty cells, so that something that is there once isn't taken for what is there often.
  const least = used + 2;
  /** What is the same however long the lines are. */
  const settled = new Set<BaseAstNode>();
  const work = (node: BaseAstNode, count: number): void => {
    const isWhole = isCut(node, kinds) && takesCorners(node);
    for (const child of node.getChildren()) evaluate(child, isWhole ? Infinity : count);
    if (kinds.get(node) === "calculated" && hasOtherLine(node, plan)) throw NEEDS_LINE;
    if (isReferenceNode(node)) node.setRefOffset(refOffsetX, refOffsetY);
    node.execute();
    if (kinds.get(node) === "line") clampLine(nodeValue(node), way, count);
  };
  const evaluate = (node: BaseAstNode, count: number): void => {
    if (settled.has(node)) return;
    work(node, count);
    if (kinds.get(node) === "short") settled.add(node);
  };
  const result = (node: BaseAstNode, count: number): EngineValue => {
    work(node, count);
    const value = nodeValue(node);
    if (value === undefined) throw NEEDS_LINE;
    return value;
  };
  const settle = (node: BaseAstNode): void => {
    for (const child of node.getChildren()) settle(child);
    if (!isCut(node, kinds)) return;
    const first = result(node, least);
    settled.add(node);
    if (takesCorners(node)) return;
    const second = result(node, least + 1);
    if (isSameValue(first, second)) return;
    const [a, b] = [numberOf(first), numberOf(second)];
    if (lineUse(nodeName(node)) !== "sum" || a === undefined || b === undefined) throw NEEDS_LINE;
    node.setValue(NumberValueObject.create(a + (size - least) * (b - a)));
  };
  return {
    settle,
    result: (node: BaseAstNode) => (settled.has(node) ? nodeValue(node) : result(node, least)),
    /** Gives the lines their whole length back: what follows from their other cells is found by it. */
    restore: () => {
      for (const [node, kind] of kinds) if (kind === "line") work(node, Infinity);
    },
  };
}

/** Whether a workbook has a sheet with long lines; asked for each formula of a calculation. */
function longSheets(config: IFormulaCurrentConfigService): () => boolean {
  const known = new WeakMap<object, boolean>();
  return () => {
    const units = config.getUnitData();
    const before = known.get(units);
    if (before !== undefined) return before;
    const sheets = Object.values(units).flatMap((unit) => Object.values(unit ?? {}));
    const isLong = sheets.some((one) => one && (one.rowCount > LONG_ROWS || one.columnCount > LONG_COLUMNS));
    known.set(units, isLong);
    return isLong;
  };
}

type Runtime = IFormulaRuntimeService & { readonly currentRowCount: number; readonly currentColumnCount: number };

function refusal(runtime: Runtime, log: CallSites, cells: number): EngineValue {
  const [most, got] = [MOST_LINE_CELLS, cells].map((one) => one.toLocaleString("en-US"));
  const message = `a calculation that needs each cell of a whole column or row: at most ${most} cells, got ${got}`;
  const site = { sheetId: runtime.currentSubUnitId, row: runtime.currentRow, column: runtime.currentColumn };
  log.refuse(site, { code: ErrorType.NUM, message });
  return ErrorValueObject.create(ErrorType.NUM);
}

/** A result as long as the lines; undefined where it is small enough to be worked out as the engine does. */
function longResult(value: EngineValue, { way, size }: LinePlan, runtime: Runtime, log: CallSites) {
  const { rows: high, columns: wide } = extentOf(value);
  const [rows, columns] = way === "rows" ? [size, wide] : [high, size];
  if (rows * columns <= MOST_LINE_CELLS) return undefined;
  const { currentRow, currentRowCount, currentColumn, currentColumnCount } = runtime;
  const hasRoom = currentRow + rows <= currentRowCount && currentColumn + columns <= currentColumnCount;
  return hasRoom ? refusal(runtime, log, rows * columns) : ErrorValueObject.create(ErrorType.SPILL);
}

/** @param injector of an engine that has a workbook */
export function workOutLongLines(injector: Injector, log: CallSites): void {
  const interpreter = injector.get(Interpreter);
  const runtime = injector.get(IFormulaRuntimeService) as Runtime;
  const hasLongSheet = longSheets(injector.get(IFormulaCurrentConfigService));
  const run = interpreter.execute.bind(interpreter);
  const runLong = (tree: FormulaTree, plan: LinePlan): EngineValue | undefined => {
    if (plan.kind === undefined) throw NEEDS_LINE;
    if (plan.isAsItIs) return undefined;
    const worker = lineWorker(plan, tree);
    try {
      worker.settle(tree.root);
      const value = worker.result(tree.root);
      return value === undefined || plan.kind === "short" ? value : longResult(value, plan, runtime, log);
    } finally {
      worker.restore();
    }
  };
  let isInside = false;
  interpreter.execute = (data) => {
    const { node: root, refOffsetX, refOffsetY } = data;
    const tree = !isInside && root && hasLongSheet() ? { root, refOffsetX, refOffsetY } : undefined;
    const plan = tree && linePlan(tree);
    if (plan === undefined || tree === undefined) return run(data);
    isInside = true;
    try {
      const value = runLong(tree, plan);
      if (value !== undefined) return value;
    } catch (thrown) {
      if (thrown !== NEEDS_LINE) throw thrown;
      if (plan.cells > MOST_LINE_CELLS && plan.isCalculated) return refusal(runtime, log, plan.cells);
    } finally {
      isInside = false;
    }
    tree.root.resetCalculationState();
    return run(data);
  };
}
