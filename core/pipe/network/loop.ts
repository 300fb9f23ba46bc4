/** The head loss of a loop, row by row. */
import { sumOf } from "../../numeric/series";
import { normalizeKey } from "../../kernel/define/argument";
import { valueError } from "../../kernel/values/fault";
import { nearest } from "../../kernel/call/nearest";
import { NO_VALUE } from "../../kernel/define/result";
import { silent, traceFor, type Trace } from "../../kernel/define/steps";
import { FITTING_WORDS } from "../args";
import { FITTINGS, type Fitting } from "../data/fittings";
import { darcyWeisbach } from "../equations";
import { fittingHead } from "../fitting/equations";
import { partLoss } from "./gridEquations";
import { onePoint, type PartCurve } from "./partCurve";
import { curveCoefficient, flowCoefficientLoss, knownLoss, lossCoefficientOf, sidesAddUp } from "./equations";
import { isShared } from "../fitting/fittingLoss";
import { loopWater, type LoopFlow, type LoopWater } from "./loopWater";

export type Side = "suction" | "return";

export interface LoopItem extends PartCurve {
  readonly what: string;
  readonly size: string | undefined;
  /** m of pipe, or a number of pieces. */
  readonly lengthOrCount: number | undefined;
  readonly side: Side;
  /** Cv: gpm at 1 psi. */
  readonly flowCoefficient: number | undefined;
}

export interface LoopLine {
  readonly what: string;
  readonly size: string;
  readonly side: string;
  /** m */
  readonly head: number;
  /** m/s */
  readonly velocity: number | "";
  readonly lossCoefficient: number | "";
  readonly method: string;
  /** s²/m⁵ */
  readonly systemCurve: number;
}

/** The word for a run of pipe, in any case and spacing: its number is a length. */
export const PIPE_WORD = "pipe";

interface Loss {
  readonly head: number;
  readonly velocity: number | "";
  readonly coefficient: number | "";
  readonly method: string;
}

const isPipe = ({ what }: LoopItem): boolean => normalizeKey(what) === PIPE_WORD;

const sizeOf = ({ what, size }: LoopItem): string => {
  if (size === undefined) throw valueError(`items, ${what}: size: is blank: a pipe or fitting needs its nominal size`);
  return size;
};

/** Sizes with straight pipe: only these need the friction factor in the working. */
const runsOf = (items: readonly LoopItem[]): ReadonlySet<string> =>
  new Set(items.flatMap((item) => (isPipe(item) && item.size !== undefined ? [item.size] : [])));

const countOf = ({ what, lengthOrCount }: LoopItem): number => {
  const count = lengthOrCount ?? 1;
  if (Math.abs(count - Math.round(count)) > 1e-9)
    throw valueError(`items, ${what}: length or count: must be a whole number of pieces, got ${count}`);
  return count;
};

const pipeLoss = (item: LoopItem, water: LoopWater, trace: Trace): Loss => {
  if (item.lengthOrCount === undefined)
    throw valueError(`items, ${item.what}: length or count: is blank: a pipe needs its length`);
  const { D, v, f } = water.within(sizeOf(item));
  const head = trace.step(darcyWeisbach, { f, L: item.lengthOrCount, D, v });
  const coefficient = trace.step(lossCoefficientOf, { h: head, v });
  return { head, velocity: v, coefficient, method: "Darcy-Weisbach" };
};

const fittingRow = (item: LoopItem, fitting: Fitting, water: LoopWater, trace: Trace): Loss => {
  const n = countOf(item);
  const size = sizeOf(item);
  const { v } = water.within(size);
  const K = water.coefficient(fitting, size);
  const head = trace.step(fittingHead, { n, K, v });
  return { head, velocity: v, coefficient: K, method: isShared(fitting) ? "loss coefficient" : "three-constant" };
};

/** A part by its loss at one flow, or a valve by its flow coefficient; undefined if neither is given. */
const componentLoss = (given: LoopItem, water: LoopWater, trace: Trace): Loss | undefined => {
  const item = onePoint(given, (why) => valueError(`items, ${given.what}: ${why}`), trace);
  const { loss, knownFlow, flowCoefficient, what } = item;
  if (loss === undefined && flowCoefficient === undefined) return undefined;
  if (isPipe(item))
    throw valueError(
      `items, ${what}: a pipe's loss follows from its length: put a known loss or flow coefficient in its own row`,
    );
  if (loss !== undefined && flowCoefficient !== undefined)
    throw valueError(`items, ${what}: give the loss at a known flow or the flow coefficient, not both`);
  if (loss !== undefined && knownFlow === undefined)
    throw valueError(`items, ${what}: known flow: is blank: a known loss needs the flow at which it is known`);
  const n = countOf(item);
  const { flow } = water;
  const Qk = knownFlow ?? flow;
  const squareLaw = item.exponent === 2 && item.linearShare === 0;
  const head =
    flowCoefficient === undefined
      ? squareLaw
        ? trace.step(knownLoss, { n, hk: loss ?? 0, Q: flow, Qk })
        : trace.step(partLoss, { hk: n * (loss ?? 0), s: item.linearShare, Q: flow, Qk, n: item.exponent })
      : trace.step(flowCoefficientLoss, { n, Q: flow, Cv: flowCoefficient });
  const method =
    flowCoefficient === undefined
      ? `known loss, by ${squareLaw ? "the flow squared" : "its own curve"}`
      : "flow coefficient";
  if (item.size === undefined) return { head, velocity: NO_VALUE, coefficient: NO_VALUE, method };
  return { head, velocity: water.within(item.size).v, coefficient: NO_VALUE, method };
};

const lossOf = (item: LoopItem, water: LoopWater, trace: Trace): Loss => {
  const component = componentLoss(item, water, trace);
  if (component) return component;
  if (isPipe(item)) return pipeLoss(item, water, trace);
  const word = normalizeKey(item.what);
  const fitting = FITTING_WORDS.get(word);
  if (fitting) return fittingRow(item, fitting, water, trace);
  const near = nearest(item.what, ["pipe", ...FITTINGS.map((each) => each.fitting)]);
  throw valueError(
    `items, ${item.what}: is neither pipe nor a known fitting (nearest: "${near}"); any other part needs its loss at a known flow, or a flow coefficient`,
  );
};

const fastest = (lines: readonly LoopLine[]): number | "" => {
  const known = lines.flatMap(({ velocity }) => (velocity === "" ? [] : [velocity]));
  return known.length === 0 ? NO_VALUE : Math.max(...known);
};

const summed = (what: string, side: string, lines: readonly LoopLine[], flow: number, trace: Trace): LoopLine => {
  const head = sumOf(lines, (line) => line.head);
  if (trace.on && lines.length > 0)
    trace.series({ title: what, of: "rows", kind: "head", total: "sum", values: lines.map((line) => line.head) });
  return {
    what,
    size: NO_VALUE,
    side,
    head,
    velocity: fastest(lines),
    lossCoefficient: NO_VALUE,
    method: NO_VALUE,
    systemCurve: trace.step(curveCoefficient, { h: head, Q: flow }, what),
  };
};

const rowLine = (item: LoopItem, place: number, water: LoopWater, trace: Trace): LoopLine => {
  const { what, side, size = NO_VALUE } = item;
  const name = `row ${place + 1}, ${what}${size === "" ? "" : `, ${size}`}`;
  const { head, velocity, coefficient, method } = lossOf(item, water, trace.on ? traceFor(name, trace) : trace);
  const systemCurve = curveCoefficient.code({ h: head, Q: water.flow });
  return { what, size, side, head, velocity, lossCoefficient: coefficient, method, systemCurve };
};

/** Every row, then the subtotals of suction and return and the total. Velocities of the sums are their rows' highest. */
export const loopLines = (items: readonly LoopItem[], at: LoopFlow, trace: Trace = silent): readonly LoopLine[] => {
  const water = loopWater(at, runsOf(items), trace);
  const lines = trace.within("Rows", () => items.map((item, place) => rowLine(item, place, water, trace)));
  const of = (side: Side): readonly LoopLine[] => lines.filter((line) => line.side === side);
  return trace.within("Sums; a row's share of the system curve is its head over the flow squared", () => {
    const suction = summed("subtotal suction", "suction", of("suction"), at.flow, trace);
    const back = summed("subtotal return", "return", of("return"), at.flow, trace);
    const total = summed("total", NO_VALUE, lines, at.flow, trace);
    trace.relation(sidesAddUp, { H: total.head, hs: suction.head, hr: back.head });
    return [...lines, suction, back, total];
  });
};
