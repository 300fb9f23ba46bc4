import type { Injector } from "@univerjs/core";
import {
  ArrayValueObject,
  AstTreeBuilder,
  BaseReferenceObject,
  ErrorType,
  ErrorValueObject,
  IFormulaRuntimeService,
  Interpreter,
  LexerTreeBuilder,
  StringValueObject,
  ValueObjectFactory,
} from "@univerjs/engine-formula";
import type { BaseValueObject } from "@univerjs/engine-formula";

import type { CallSites } from "../host/callSites";
import { isPending } from "../../workbook/pending";
import { findCycles } from "./cycles";
import type { FormulaSlices } from "./formulaSlices";
import { workOutLongLines } from "./longLines";
import { limitSizes } from "./sizeLimits";

/** What a program watches of its engine; the page uses these defaults. */
export interface EngineWatch {
  /** Hears of each formula before it is calculated. */
  readonly onFormula?: (sheetId: string, row: number, column: number) => void;
  /** Hears when it is calculated. */
  readonly onFormulaEnd?: () => void;
  /** A formula with more operators overflows the stack of a browser's page. */
  readonly mostOperators?: number;
  /** IMAGE needs a browser. */
  readonly withoutPictures?: boolean;
  /** How many seconds without progress end the wait for a calculation. */
  readonly patience?: number;
  /** Nobody types: a calculation that is waited for begins at once. */
  readonly withoutTyping?: boolean;
  /** Formulas are calculated in slices. */
  readonly slices?: FormulaSlices;
}

/** Each operator makes a formula's tree one level deeper. */
export const MOST_OPERATORS = 1_500;

/** Signs and operators outside quoted texts. */
export const operatorsIn = (formula: string): number =>
  formula.replace(/^=|"[^"]*"/g, "").match(/<=|>=|<>|[-+*/^&=<>%@]/g)?.length ?? 0;

/** The formula reader's state that it forgets to clear between two formulas. */
interface ReaderState {
  _squareBracketState: number;
  _tableBracketState: boolean;
  _openBracketNormalIndexStack: number[];
  _resetTemp(): void;
}

/**
 * The engine's formula reader keeps the square brackets of a formula that it couldn't read open, and then misreads every
 * formula after it (seen in 0.25.1). This clears them with the rest.
 */
const clearBetweenFormulas = (lexer: LexerTreeBuilder): void => {
  const state = lexer as unknown as ReaderState;
  const reset = state._resetTemp.bind(lexer);
  state._resetTemp = () => {
    reset();
    state._squareBracketState = 0;
    state._tableBracketState = false;
    state._openBracketNormalIndexStack = [];
  };
};

/** More cells than any sheet here has: `A:ZZZZZ` reads as 10 million columns and fills the memory. */
const MOST_CELLS = 3_000_000;

const limited = new WeakSet<object>();

/** Refuses ranges beyond the sheet before they are read; the class has one prototype for all engines of a program. */
const limitRanges = (): void => {
  const { prototype } = BaseReferenceObject;
  if (limited.has(prototype)) return;
  limited.add(prototype);
  const toArray = prototype.toArrayValueObject;
  prototype.toArrayValueObject = function limitedToArray(this: BaseReferenceObject, ...given) {
    const { startRow, endRow, startColumn, endColumn } = this.getRangePosition();
    const cells = (endRow - startRow + 1) * (endColumn - startColumn + 1);
    if (cells > MOST_CELLS) throw new Error(`a range of ${cells} cells`);
    return toArray.apply(this, given);
  };
};

const counted = new WeakSet<object>();

/**
 * A whole column has as many rows as its sheet, a whole row as many columns. The engine counts none of them (0.25.1), so
 * that OFFSET moved `A:A` to a range without cells.
 */
const countWholeLines = (): void => {
  const { prototype } = BaseReferenceObject;
  if (counted.has(prototype)) return;
  counted.add(prototype);
  prototype.getRowCount = function countRows(this: BaseReferenceObject) {
    const { startRow, endRow } = this.getRangePosition();
    return endRow - startRow + 1;
  };
  prototype.getColumnCount = function countColumns(this: BaseReferenceObject) {
    const { startColumn, endColumn } = this.getRangePosition();
    return endColumn - startColumn + 1;
  };
};

/** A cell of an array constant and the mark behind it: a text in quotes, or what has no mark in it. */
const CONSTANT = /\s*(?:"((?:[^"]|"")*)"\s*|([^,;"]*))([,;]|$)/y;

/** The rows of an array constant, its braces taken off; undefined where it can't be read so. */
const constantRows = (text: string): BaseValueObject[][] | undefined => {
  const rows: BaseValueObject[][] = [[]];
  CONSTANT.lastIndex = 0;
  for (;;) {
    const hit = CONSTANT.exec(text);
    if (hit === null) return undefined;
    const [, quoted, plain = "", mark] = hit;
    rows
      .at(-1)
      ?.push(
        quoted === undefined
          ? ValueObjectFactory.create(plain.trim())
          : StringValueObject.create(quoted.replace(/""/g, '"')),
      );
    if (mark === "") return rows;
    if (mark === ";") rows.push([]);
  }
};

/** What the engine's arrays keep of a constant. */
interface ArrayState {
  _formatValue(raw: unknown): BaseValueObject[][];
  _rowCount: number;
  _columnCount: number;
}

/** The engine cuts texts of array constants at their commas and semicolons, and makes "5/8" a date (seen in 0.25.1). */
const readConstants = (): void => {
  const prototype = ArrayValueObject.prototype as unknown as ArrayState;
  if (limited.has(prototype)) return;
  limited.add(prototype);
  const format = prototype._formatValue;
  prototype._formatValue = function readConstant(this: ArrayState, raw: unknown) {
    const rows = typeof raw === "string" ? constantRows(raw.slice(1, -1)) : undefined;
    if (rows === undefined) return format.call(this, raw);
    this._rowCount = rows.length;
    this._columnCount = Math.max(...rows.map((row) => row.length));
    return rows;
  };
};

/**
 * Keeps one bad formula from ending every calculation: where reading, building or running it throws (as a misshapen LAMBDA
 * does in 0.25.1), that formula alone becomes `#VALUE!`.
 */
export const fixEngine = (injector: Injector, log: CallSites, watch: EngineWatch): void => {
  const lexer = injector.get(LexerTreeBuilder);
  clearBetweenFormulas(lexer);
  limitRanges();
  countWholeLines();
  readConstants();
  limitSizes(injector, log, watch.withoutPictures === true);
  const isCyclic = findCycles(injector);
  const most = watch.mostOperators ?? MOST_OPERATORS;
  const read = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (...given) => {
    if (operatorsIn(given[0]) > most) return ErrorType.VALUE;
    try {
      return read(...given);
    } catch {
      return ErrorType.VALUE;
    }
  };
  const builder = injector.get(AstTreeBuilder);
  const build = builder.parse.bind(builder);
  builder.parse = (node) => {
    try {
      const built = build(node);
      if (built !== null && built !== undefined) return built;
    } catch {
      // Falls through to the error below.
    }
    const error = read(`=${ErrorType.VALUE}`);
    return typeof error === "object" ? build(error as Parameters<typeof build>[0]) : null;
  };
  workOutLongLines(injector, log);
  watchFormulas(injector, isCyclic, watch);
};

/** Reports each formula, answers circular ones, and turns what a calculation throws into an error value. */
const watchFormulas = (
  injector: Injector,
  isCyclic: ReturnType<typeof findCycles>,
  { onFormula, onFormulaEnd }: EngineWatch,
): void => {
  const interpreter = injector.get(Interpreter);
  const runtime = injector.get(IFormulaRuntimeService);
  const run = interpreter.execute.bind(interpreter);
  const runLater = interpreter.executeAsync.bind(interpreter);
  // The body of a LAMBDA is run inside its formula.
  let depth = 0;
  const end = (): void => {
    depth -= 1;
    if (depth === 0) onFormulaEnd?.();
  };
  const begin = (): boolean => {
    depth += 1;
    const { currentSubUnitId, currentRow, currentColumn } = runtime;
    if (depth === 1) onFormula?.(currentSubUnitId, currentRow, currentColumn);
    return isCyclic(currentSubUnitId, currentRow, currentColumn);
  };
  interpreter.execute = (node) => {
    try {
      return begin() ? ErrorValueObject.create(ErrorType.CYCLE) : run(node);
    } catch (thrown) {
      if (isPending(thrown)) throw thrown;
      return ErrorValueObject.create(ErrorType.VALUE);
    } finally {
      end();
    }
  };
  interpreter.executeAsync = async (node) => {
    begin();
    try {
      return await runLater(node);
    } catch {
      return ErrorValueObject.create(ErrorType.VALUE);
    } finally {
      end();
    }
  };
};
