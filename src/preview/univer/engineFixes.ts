import type { Injector } from "@univerjs/core";
import {
  ArrayValueObject,
  AstTreeBuilder,
  BaseReferenceObject,
  ErrorType,
  ErrorValueObject,
  Interpreter,
  LexerTreeBuilder,
  StringValueObject,
  ValueObjectFactory,
} from "@univerjs/engine-formula";
import type { BaseValueObject } from "@univerjs/engine-formula";

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
export const fixEngine = (injector: Injector): void => {
  const lexer = injector.get(LexerTreeBuilder);
  clearBetweenFormulas(lexer);
  limitRanges();
  readConstants();
  const read = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (...given) => {
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
  const interpreter = injector.get(Interpreter);
  const run = interpreter.execute.bind(interpreter);
  interpreter.execute = (node) => {
    try {
      return run(node);
    } catch {
      return ErrorValueObject.create(ErrorType.VALUE);
    }
  };
};
