/** The seasonal rating of staged and variable-speed machines, by temperature bins. */
import { notAvailable, valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import type { Trace } from "../../kernel/define/steps";
import {
  binLoad,
  coolingBetween,
  cyclingPower,
  lowerShare,
  powerBetween,
  ratingBetween,
  ratingByParabola,
  seasonalRating,
  singleSpeedRating,
  stagedPower,
} from "./equations";

const degF = (value: number): number => us("temperature", value);
export const [AT_67, AT_82, AT_87, AT_95] = [degF(67), degF(82), degF(87), degF(95)];

/** Share of the cooling season's hours by bins of 5 °F from 67 °F. */
const BIN_HOURS = [0.214, 0.231, 0.216, 0.161, 0.104, 0.052, 0.018, 0.004];
const binAt = (place: number): number => degF(67 + 5 * place);

/** Net cooling and power, W. */
export interface RatingTest {
  readonly cooling: number;
  readonly power: number;
}

export interface StagedTests {
  /** Full capacity at 95 and 82 °F; least at 82 and 67 °F. */
  readonly full95: RatingTest;
  readonly full82: RatingTest;
  readonly low82: RatingTest;
  readonly low67: RatingTest;
  /** At the intermediate speed, at 87 °F. */
  readonly intermediate87?: RatingTest;
}

export interface SeasonRules {
  readonly lowLoss: number;
  readonly fullLoss: number;
  /** The low stage is locked out from here, K. */
  readonly lockout?: number | undefined;
  /** Factor on the load. */
  readonly loadFactor: number;
  readonly parabola: boolean;
}

export interface Season {
  readonly rating: number;
  /** Means of the bins by their hours, W. */
  readonly cooling: number;
  readonly power: number;
  /** How each bin is met. */
  readonly bins: readonly string[];
}

const between = (
  a: RatingTest,
  b: RatingTest,
  Ta: number,
  Tb: number,
  T: number,
  of: string,
  trace: Trace,
): RatingTest => ({
  cooling: trace.step(coolingBetween, { Q1: a.cooling, Q2: b.cooling, T, T1: Ta, T2: Tb }, of),
  power: trace.step(powerBetween, { P1: a.power, P2: b.power, T, T1: Ta, T2: Tb }, of),
});

const lowAt = ({ low67, low82 }: StagedTests, T: number, trace: Trace): RatingTest =>
  between(low67, low82, AT_67, AT_82, T, "least", trace);
const fullAt = ({ full82, full95 }: StagedTests, T: number, trace: Trace): RatingTest =>
  between(full82, full95, AT_82, AT_95, T, "full", trace);

type Lines = readonly [value: number, slope: number];

/** The intermediate line of one figure: its test at 87 °F, its slope between those of least and full. */
function intermediateLine(tests: StagedTests, mid: RatingTest, figure: keyof RatingTest, silent: Trace): Lines {
  const low = lowAt(tests, AT_87, silent)[figure];
  const full = fullAt(tests, AT_87, silent)[figure];
  if (!(mid[figure] > low && mid[figure] < full))
    throw valueError(`inputs: intermediate ${figure} at 87 must be between those of least and full speed there`);
  const N = (mid[figure] - low) / (full - low);
  const slopeLow = (tests.low82[figure] - tests.low67[figure]) / (AT_82 - AT_67);
  const slopeFull = (tests.full95[figure] - tests.full82[figure]) / (AT_95 - AT_82);
  return [mid[figure], slopeLow * (1 - N) + slopeFull * N];
}

const onLine = ([value, slope]: Lines, T: number): number => value + slope * (T - AT_87);

interface Intermediate {
  readonly cooling: Lines;
  readonly power: Lines;
}

const intermediateOf = (tests: StagedTests, mid: RatingTest, trace: Trace): Intermediate => ({
  cooling: intermediateLine(tests, mid, "cooling", trace),
  power: intermediateLine(tests, mid, "power", trace),
});

const ratingOf = ({ cooling, power }: RatingTest): number => cooling / power;

/** Where a line of capacity meets the load, K: both are straight, so two points of the difference are enough. */
function balancePoint(capacity: (T: number) => number, load: (T: number) => number): number {
  const [a, b] = [capacity(AT_82) - load(AT_82), capacity(AT_95) - load(AT_95)];
  return AT_82 + ((AT_95 - AT_82) * a) / (a - b);
}

/** Rating at a load between least and full speed. */
type Middle = (T: number, load: number, low: RatingTest, full: RatingTest) => number;

function byLoad(mid: Intermediate, trace: Trace): Middle {
  return (T, L, low, full) => {
    const at = { cooling: onLine(mid.cooling, T), power: onLine(mid.power, T) };
    const [a, b] = L <= at.cooling ? [low, at] : [at, full];
    return trace.step(ratingBetween, { Ra: ratingOf(a), Rb: ratingOf(b), L, Qa: a.cooling, Qb: b.cooling });
  };
}

function byParabola(
  tests: StagedTests,
  mid: Intermediate,
  load: (T: number) => number,
  trace: Trace,
  quiet: Trace,
): Middle {
  const T1 = balancePoint((T) => lowAt(tests, T, quiet).cooling, load);
  const Tv = balancePoint((T) => onLine(mid.cooling, T), load);
  const T2 = balancePoint((T) => fullAt(tests, T, quiet).cooling, load);
  const R1 = ratingOf(lowAt(tests, T1, quiet));
  const Rv = onLine(mid.cooling, Tv) / onLine(mid.power, Tv);
  const R2 = ratingOf(fullAt(tests, T2, quiet));
  return (T) => {
    const rating = trace.step(ratingByParabola, { R1, Rv, R2, T, T1, Tv, T2 });
    if (rating > 0) return rating;
    throw notAvailable("inputs: the parabola through the three balance points falls to nothing: check the tests");
  };
}

interface Bin extends RatingTest {
  readonly met: string;
}

/** How one bin is met. */
function binOf(
  T: number,
  L: number,
  low: RatingTest,
  full: RatingTest,
  rules: SeasonRules,
  middle: Middle | undefined,
  trace: Trace,
): Bin {
  const cycling = ({ cooling, power }: RatingTest, C: number, met: string): Bin => ({
    cooling: L,
    power: trace.step(cyclingPower, { X: L / cooling, P0: power, C }),
    met,
  });
  if (!(low.cooling > 0 && low.power > 0 && full.cooling > low.cooling && full.power > 0))
    throw notAvailable(
      `inputs: the lines through the tests leave no capacity between least and full at ${quantityMark("temperature", T)}: check the tests`,
    );
  if (L >= full.cooling) return { ...full, met: "full" };
  const locked = rules.lockout !== undefined && T >= rules.lockout - 1e-9;
  if (L <= low.cooling && !locked) return cycling(low, rules.lowLoss, "low");
  if (locked) return cycling(full, rules.fullLoss, "full, cycling");
  if (middle !== undefined) return { cooling: L, power: L / middle(T, L, low, full), met: "between" };
  const X = trace.step(lowerShare, { Qb: full.cooling, L, Qa: low.cooling });
  return { cooling: L, power: trace.step(stagedPower, { X, Pa: low.power, Pb: full.power }), met: "between" };
}

export function stagedSeason(tests: StagedTests, rules: SeasonRules, trace: Trace, quiet: Trace): Season {
  const { full95, intermediate87 } = tests;
  const loadAt = (T: number, by: Trace): number => by.step(binLoad, { V: rules.loadFactor, T, QA: full95.cooling });
  const mid = intermediate87 && intermediateOf(tests, intermediate87, quiet);
  const middle =
    mid && (rules.parabola ? byParabola(tests, mid, (T) => loadAt(T, quiet), trace, quiet) : byLoad(mid, trace));
  let [cooling, power] = [0, 0];
  const bins = BIN_HOURS.map((hours, place) => {
    const T = binAt(place);
    const bin = trace.within(`Bin ${67 + 5 * place} °F, ${(100 * hours).toFixed(1)} % of the hours`, () =>
      binOf(T, loadAt(T, trace), lowAt(tests, T, trace), fullAt(tests, T, trace), rules, middle, trace),
    );
    cooling += hours * bin.cooling;
    power += hours * bin.power;
    return bin.met;
  });
  return { rating: trace.step(seasonalRating, { Q: cooling, E: power }), cooling, power, bins };
}

export const singleSpeedSeason = ({ cooling, power }: RatingTest, loss: number, trace: Trace): number =>
  trace.step(singleSpeedRating, { C: loss, Q: cooling, P: power });
