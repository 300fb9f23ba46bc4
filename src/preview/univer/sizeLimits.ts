import type { Injector, Nullable } from "@univerjs/core";
import { ErrorType, ErrorValueObject, IFunctionService } from "@univerjs/engine-formula";
import type { ArrayValueObject, BaseFunction, BaseValueObject } from "@univerjs/engine-formula";

import type { CallSites } from "../host/callSites";

/**
 * Limits of arguments that decide how long one of the sheet's own functions works: the engine takes any number (0.25.1), and
 * 1E+308 rows never end. Beyond its limit a function answers `#NUM!`.
 */

/** As many as a sheet in Excel has. */
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;
/** Cells of one result, as many as a column has: about a second of work. */
const MOST_CELLS = MOST_ROWS;
const MOST_TERMS = 1_000_000;
const MOST_TEXT = 32_767;
/** Working days, each found by walking the calendar; one a week at least. */
const MOST_WORKING_DAYS = 100_000;
/** The engine sums all terms again for each success, and beyond a thousand trials its terms vanish. */
const MOST_TRIALS = 1_000;
/** Whole numbers are exact below this. */
const EXACT_BELOW = 2 ** 53;

interface ArgumentLimit {
  readonly place: number;
  readonly name: string;
  readonly most: number;
}

interface SizeRule {
  readonly limits: readonly ArgumentLimit[];
  /** The arguments whose product counts the cells of the result. */
  readonly cells?: readonly [number, number];
  /** What else the arguments break together, in words. */
  readonly broken?: (given: readonly BaseValueObject[]) => string | undefined;
}

const limit = (place: number, name: string, most: number): ArgumentLimit => ({ place, name, most });

const table = (rows: number, columns: number): SizeRule => ({
  limits: [limit(rows, "rows", MOST_ROWS), limit(columns, "columns", MOST_COLUMNS)],
  cells: [rows, columns],
});

/** Numbers that a sum runs over, one term for each. */
const terms = (...places: readonly (readonly [number, string])[]): SizeRule => ({
  limits: places.map(([place, name]) => limit(place, name, MOST_TERMS)),
});

const bessel: SizeRule = { limits: [limit(0, "x", MOST_TERMS), limit(1, "n", 1_000)] };
const trials: SizeRule = terms([0, "successes"], [1, "trials"]);
const hypergeometric: SizeRule = terms(
  [0, "sample successes"],
  [1, "sample size"],
  [2, "successes"],
  [3, "population"],
);

const payments: SizeRule = terms([3, "start"], [4, "end"]);
const workingDays: SizeRule = { limits: [limit(1, "days", MOST_WORKING_DAYS)] };
const trialsInverse: SizeRule = { limits: [limit(0, "trials", MOST_TRIALS)] };

const RULES: Readonly<Record<string, SizeRule>> = {
  SEQUENCE: table(0, 1),
  RANDARRAY: table(0, 1),
  MAKEARRAY: table(0, 1),
  EXPAND: table(1, 2),
  MUNIT: { limits: [limit(0, "dimension", 1_000)] },
  WRAPROWS: { limits: [limit(1, "count", MOST_COLUMNS)] },
  WRAPCOLS: { limits: [limit(1, "count", MOST_ROWS)] },
  REPT: { limits: [limit(1, "times", MOST_TEXT)] },
  BASE: { limits: [limit(2, "least length", 255)] },
  BESSELI: bessel,
  BESSELJ: bessel,
  BESSELK: bessel,
  BESSELY: bessel,
  "BINOM.DIST": trials,
  BINOMDIST: trials,
  "BINOM.INV": trialsInverse,
  CRITBINOM: trialsInverse,
  "BINOM.DIST.RANGE": terms([0, "trials"], [2, "successes"], [3, "most successes"]),
  "NEGBINOM.DIST": terms([0, "failures"], [1, "successes"]),
  NEGBINOMDIST: terms([0, "failures"], [1, "successes"]),
  "POISSON.DIST": terms([0, "x"]),
  POISSON: terms([0, "x"]),
  "HYPGEOM.DIST": hypergeometric,
  HYPGEOMDIST: hypergeometric,
  PERMUT: terms([1, "chosen"]),
  LCM: { limits: [], broken: (given) => commonMultipleTooLarge(given.flatMap(numbersOf)) },
  DB: terms([2, "life"], [3, "period"]),
  VDB: terms([2, "life"], [3, "start"], [4, "end"]),
  CUMIPMT: payments,
  CUMPRINC: payments,
  WORKDAY: workingDays,
  "WORKDAY.INTL": workingDays,
};

const written = (value: number): string =>
  Math.abs(value) < 1e15 ? value.toLocaleString("en-US") : value.toExponential().replace("e", "E");

const numberOf = (value: Nullable<BaseValueObject>): number => {
  if (!value || value.isNull() || value.isError()) return 0;
  const number = Number(value.getValue());
  return Number.isNaN(number) ? 0 : number;
};

/** All numbers of an argument; 0 for what is none. */
function numbersOf(value: BaseValueObject | undefined): readonly number[] {
  if (value === undefined || !value.isArray()) return [numberOf(value)];
  return (value as ArrayValueObject).getArrayValue().flatMap((row) => row.map(numberOf));
}

/** The number furthest from 0 in an argument. */
const largest = (value: BaseValueObject | undefined): number =>
  numbersOf(value).reduce((most, number) => (Math.abs(number) > Math.abs(most) ? number : most), 0);

const commonDivisor = (one: number, other: number): number => (other === 0 ? one : commonDivisor(other, one % other));

/** The engine's division never ends once the multiple of several numbers passes the largest number there is. */
function commonMultipleTooLarge(numbers: readonly number[]): string | undefined {
  let multiple = 1;
  for (const number of numbers.map((each) => Math.floor(Math.abs(each))).filter((each) => each > 0)) {
    if (number >= EXACT_BELOW) return `number: must be below ${written(EXACT_BELOW)}, got ${written(number)}`;
    multiple = (multiple / commonDivisor(multiple, number)) * number;
    if (multiple >= EXACT_BELOW) return `the common multiple must be below ${written(EXACT_BELOW)}`;
  }
  return undefined;
}

const refusal = (name: string, rule: SizeRule, given: readonly BaseValueObject[]): string | undefined => {
  for (const { place, name: argument, most } of rule.limits) {
    const got = largest(given[place]);
    if (Math.abs(got) > most) return `${name}: ${argument}: at most ${written(most)}, got ${written(got)}`;
  }
  const broken = rule.broken?.(given);
  if (broken !== undefined) return `${name}: ${broken}`;
  if (rule.cells === undefined) return undefined;
  const cells = rule.cells.reduce((product, place) => product * Math.max(1, Math.abs(largest(given[place]))), 1);
  return cells > MOST_CELLS ? `${name}: at most ${written(MOST_CELLS)} cells, got ${written(cells)}` : undefined;
};

/** Why a function refuses its arguments, undefined where it works. */
type Refusal = (
  given: readonly BaseValueObject[],
) => { readonly code: ErrorType; readonly message: string } | undefined;

const guard = (executor: BaseFunction, log: CallSites, refuse: Refusal): void => {
  const calculate = executor.calculate.bind(executor);
  executor.calculate = (...given: BaseValueObject[]) => {
    const fault = refuse(given);
    if (fault === undefined) return calculate(...given);
    log.refuse({ sheetId: executor.subUnitId ?? "", row: executor.row, column: executor.column }, fault);
    return ErrorValueObject.create(fault.code);
  };
};

/** Puts the limits before an engine's functions. */
export function limitSizes(injector: Injector, log: CallSites, withoutPictures: boolean): void {
  const functions = injector.get(IFunctionService);
  for (const [name, rule] of Object.entries(RULES)) {
    const executor = functions.getExecutor(name);
    if (executor === undefined || executor === null) continue;
    guard(executor, log, (given) => {
      const message = refusal(name, rule, given);
      return message === undefined ? undefined : { code: ErrorType.NUM, message };
    });
  }
  const image = withoutPictures ? functions.getExecutor("IMAGE") : undefined;
  if (image === undefined || image === null) return;
  guard(image, log, () => ({ code: ErrorType.CALC, message: "IMAGE: gives a picture, which no value can stand for" }));
}
