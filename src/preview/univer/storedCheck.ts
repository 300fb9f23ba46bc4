/**
 * Checks stored results without a calculation of the workbook: the engine works out each formula once, with the stored
 * results of the others as its inputs. Where every formula without a circle gives its stored result, so does the whole.
 */
import type { Injector, Workbook, Worksheet } from "@univerjs/core";
import {
  AstTreeBuilder,
  CELL_INVERTED_INDEX_CACHE,
  FORMULA_REF_TO_ARRAY_CACHE,
  FormulaDataModel,
  generateAstNode,
  IFormulaCurrentConfigService,
  IFormulaRuntimeService,
  Interpreter,
  Lexer,
} from "@univerjs/engine-formula";
import type { BaseReferenceObject, BaseValueObject } from "@univerjs/engine-formula";

import type { Area } from "../../workbook/port";
import type { PlainValue } from "../file/bookData";
import { sameAsFile } from "../file/differences";
import type { SlicedWork } from "../host/sheetBook";
import { mayCircle, type OrderedFormula } from "./formulaOrder";
import { plainValue } from "./cellValue";

export interface CheckWork extends SlicedWork {
  /** Whether the workbook has changed since: the check is void. */
  isStale(): boolean;
}

type AstNode = ReturnType<typeof generateAstNode>;
type EngineValue = ReturnType<Interpreter["execute"]>;

/** The engine's kinds of nodes that the check asks for. */
const REFERENCE = 1;
const FUNCTION = 4;

/** What a formula gives in its one cell; undefined where it fills several. */
function oneResult(given: EngineValue): PlainValue | null | undefined {
  const value = given.isReferenceObject() ? (given as BaseReferenceObject).toArrayValueObject() : given;
  if (value.isArray()) {
    const array = value as unknown as { getRowCount(): number; getColumnCount(): number; getFirstCell(): EngineValue };
    return array.getRowCount() * array.getColumnCount() === 1 ? oneResult(array.getFirstCell()) : undefined;
  }
  if (value.isError()) return (value as unknown as { getErrorType(): string }).getErrorType();
  if ((value as BaseValueObject).isLambda()) return undefined;
  return (value as BaseValueObject).isNull() ? 0 : (value as BaseValueObject).getValue();
}

interface Nodes {
  readonly references: readonly AstNode[];
  /** OFFSET and the like: the cells that they mean aren't known before. */
  readonly isUnclear: boolean;
  /** A function that gives its result later. */
  readonly isAsync: boolean;
}

function nodesOf(root: AstNode): Nodes {
  const references: AstNode[] = [];
  let [isUnclear, isAsync] = [false, false];
  const visit = (node: AstNode): void => {
    if (node.nodeType === REFERENCE) references.push(node);
    else if (node.nodeType === FUNCTION) isUnclear ||= (node as unknown as { isAddress(): boolean }).isAddress();
    for (const child of node.getChildren()) {
      isAsync ||= child.isAsync();
      visit(child);
    }
  };
  visit(root);
  return { references, isUnclear, isAsync };
}

/** The cells that references were found to mean. */
function inputsOf(references: readonly AstNode[]): OrderedFormula["inputs"] {
  const inputs: OrderedFormula["inputs"][number][] = [];
  for (const reference of references) {
    const value = reference.getValue();
    if (value?.isReferenceObject()) inputs.push((value as BaseReferenceObject).toUnitRange());
  }
  return inputs;
}

interface Found {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly stored: PlainValue | null;
}

function formulasOf(sheet: Worksheet): readonly Found[] {
  const found: Found[] = [];
  sheet.getCellMatrix().forValue((row, column, cell) => {
    const formula = cell?.f ?? "";
    if (formula !== "") found.push({ row, column, formula, stored: plainValue(cell) });
  });
  return found;
}

/** Loads what the engine reads while it works out a formula. */
function loadValues(injector: Injector): void {
  const model = injector.get(FormulaDataModel);
  injector.get(IFormulaCurrentConfigService).load({
    formulaData: {},
    arrayFormulaCellData: model.getArrayFormulaCellData(),
    arrayFormulaRange: model.getArrayFormulaRange(),
    forceCalculate: false,
    dirtyRanges: [],
    dirtyNameMap: {},
    dirtyDefinedNameMap: {},
    dirtySuperTableMap: {},
    dirtyUnitFeatureMap: {},
    dirtyUnitOtherFormulaMap: {},
    rowData: model.getHiddenRowsFiltered(),
  });
  injector.get(IFormulaRuntimeService).reset();
}

/** Works out one formula of the workbook that is loaded. */
function formulaRunner(injector: Injector, workbook: Workbook) {
  const config = injector.get(IFormulaCurrentConfigService);
  const runtime = injector.get(IFormulaRuntimeService);
  const interpreter = injector.get(Interpreter);
  const lexer = injector.get(Lexer);
  const builder = injector.get(AstTreeBuilder);
  const unit = workbook.getUnitId();
  return (sheet: Worksheet, { row, column, formula }: Found) => {
    const sheetId = sheet.getSheetId();
    const node = generateAstNode(unit, formula, lexer, builder, config);
    const { references, isUnclear, isAsync } = nodesOf(node);
    if (isAsync) return undefined;
    runtime.setCurrent(row, column, sheet.getRowCount(), sheet.getColumnCount(), sheetId, unit);
    const result = oneResult(interpreter.execute({ node, refOffsetX: 0, refOffsetY: 0 }));
    const cell: OrderedFormula = { sheetId, row, column, inputs: inputsOf(references) };
    node.resetCalculationState();
    return result === undefined ? undefined : { result, cell, isUnclear };
  };
}

const isSame = (stored: PlainValue, now: PlainValue | null): boolean =>
  typeof stored === "boolean" ? stored === Boolean(now) : sameAsFile(stored, now);

/**
 * The cells whose formulas give something else than is stored, or may do so; undefined where only a calculation of the
 * whole workbook can say it: formulas that fill several cells, circles, or so many cells that it costs no more.
 */
export async function outdatedCells(
  injector: Injector,
  workbook: Workbook,
  { pause, onProgress, isStale }: CheckWork,
): Promise<readonly Area[] | undefined> {
  loadValues(injector);
  const run = formulaRunner(injector, workbook);
  const sheets = workbook.getSheets();
  const cells: OrderedFormula[] = [];
  const outdated: Area[] = [];
  try {
    for (const [place, sheet] of sheets.entries()) {
      const isOver = async (wait: Promise<void>): Promise<boolean> => {
        onProgress?.(place, sheets.length);
        await wait;
        return isStale();
      };
      for (const found of formulasOf(sheet)) {
        const wait = pause();
        if (wait !== undefined && (await isOver(wait))) return undefined;
        const made = run(sheet, found);
        if (made === undefined) return undefined;
        cells.push(made.cell);
        if (!made.isUnclear && found.stored !== null && isSame(found.stored, made.result)) continue;
        const { row, column } = found;
        outdated.push({ sheet: sheet.getName(), row, column, rows: 1, columns: 1 });
      }
    }
  } finally {
    CELL_INVERTED_INDEX_CACHE.clear();
    FORMULA_REF_TO_ARRAY_CACHE.clear();
  }
  const isMost = outdated.length > 100 && outdated.length > cells.length / 10;
  const ids = sheets.map((sheet) => sheet.getSheetId());
  return isMost || (await mayCircle(cells, ids, pause)) || isStale() ? undefined : outdated;
}
