/** The head that a loop takes, row by row. */
import { folded } from "../../kernel/argument";
import { mend } from "../../kernel/fault";
import { nearest } from "../../kernel/nearest";
import { NO_VALUE } from "../../kernel/result";
import { silent, type Trace } from "../../kernel/steps";
import { FITTINGS, type Fitting } from "../data/fittings";
import { meanVelocity } from "../equations";
import { curveCoefficient, flowCoefficientLoss, knownLoss, lossCoefficientOf } from "../loopEquations";
import { boreOf, type Schedule } from "./bore";
import { fittingLoss } from "./fitting";
import { headLossOf } from "./headLoss";

export type Side = "suction" | "return";

export interface LoopItem {
  readonly what: string;
  readonly size: string | undefined;
  /** m of pipe, or a number of pieces. */
  readonly lengthOrCount: number | undefined;
  /** m, at `knownFlow` */
  readonly loss: number | undefined;
  /** m³/s */
  readonly knownFlow: number | undefined;
  readonly side: Side;
  /** Cv: gpm at 1 psi. */
  readonly flowCoefficient: number | undefined;
}

export interface LoopFlow {
  /** m³/s */
  readonly flow: number;
  /** K */
  readonly water: number;
  readonly schedule: Schedule;
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

/** The ways in which "pipe" may be written: the length's unit hangs on them. */
export const PIPE_WORDS = ["pipe", "Pipe", "PIPE"] as const;

const FITTING_WORDS: ReadonlyMap<string, Fitting> = new Map(
  FITTINGS.map(({ fitting }) => [folded(fitting), fitting] as const),
);

interface Loss {
  readonly head: number;
  readonly velocity: number | "";
  readonly coefficient: number | "";
  readonly method: string;
}

const isPipe = ({ what }: LoopItem): boolean => PIPE_WORDS.some((word) => word === what.trim());

const sizeOf = ({ what, size }: LoopItem): string => {
  if (size === undefined) throw mend(`items, ${what}: size: is blank: a pipe or fitting needs its nominal size`);
  return size;
};

const countOf = ({ what, lengthOrCount }: LoopItem): number => {
  const count = lengthOrCount ?? 1;
  if (Math.abs(count - Math.round(count)) > 1e-9)
    throw mend(`items, ${what}: length or count: must be a whole number of pieces, got ${count}`);
  return count;
};

const pipeLoss = (item: LoopItem, { flow, water, schedule }: LoopFlow, trace: Trace): Loss => {
  if (item.lengthOrCount === undefined)
    throw mend(`items, ${item.what}: length or count: is blank: the length of the pipe is needed`);
  const { head, velocity } = headLossOf(
    {
      flow,
      size: sizeOf(item),
      length: item.lengthOrCount,
      schedule,
      water,
      method: "Darcy-Weisbach",
      bore: "average",
    },
    trace,
  );
  const coefficient = trace.step(lossCoefficientOf, { h: head, v: velocity });
  return { head, velocity, coefficient, method: "Darcy-Weisbach" };
};

const fittingRow = (item: LoopItem, fitting: Fitting, { flow, water, schedule }: LoopFlow, trace: Trace): Loss => {
  const { head, velocity, coefficient } = fittingLoss(
    {
      fitting,
      size: sizeOf(item),
      flow,
      count: countOf(item),
      schedule,
      water,
      method: "three-constant",
      bore: "average",
    },
    trace,
  );
  const constant = FITTINGS.some((each) => each.fitting === fitting && !("three" in each));
  return { head, velocity, coefficient, method: constant ? "loss coefficient" : "three-constant" };
};

/** A part known by the loss at one flow, or a valve by its flow coefficient; undefined where neither is given. */
const componentLoss = (item: LoopItem, { flow, schedule }: LoopFlow, trace: Trace): Loss | undefined => {
  const { loss, knownFlow, flowCoefficient, what } = item;
  if (loss === undefined && flowCoefficient === undefined) return undefined;
  if (loss !== undefined && flowCoefficient !== undefined)
    throw mend(`items, ${what}: give the loss at a known flow or the flow coefficient, not both`);
  if (loss !== undefined && knownFlow === undefined)
    throw mend(`items, ${what}: known flow: is blank: a known loss needs the flow at which it is known`);
  const n = countOf(item);
  const head =
    flowCoefficient === undefined
      ? trace.step(knownLoss, { n, hk: loss ?? 0, Q: flow, Qk: knownFlow ?? flow })
      : trace.step(flowCoefficientLoss, { n, Q: flow, Cv: flowCoefficient });
  const method = flowCoefficient === undefined ? "known loss, by the flow squared" : "flow coefficient";
  if (item.size === undefined) return { head, velocity: NO_VALUE, coefficient: NO_VALUE, method };
  const velocity = trace.step(meanVelocity, { Q: flow, D: boreOf(item.size, schedule, "average", trace) });
  return { head, velocity, coefficient: NO_VALUE, method };
};

const lossOf = (item: LoopItem, at: LoopFlow, trace: Trace): Loss => {
  const component = componentLoss(item, at, trace);
  if (component) return component;
  if (isPipe(item)) return pipeLoss(item, at, trace);
  const word = folded(item.what);
  if (word === "pipe") throw mend(`items, ${item.what}: what: write it "pipe"`);
  const fitting = FITTING_WORDS.get(word);
  if (fitting) return fittingRow(item, fitting, at, trace);
  const near = nearest(item.what, ["pipe", ...FITTINGS.map((each) => each.fitting)]);
  throw mend(
    `items, ${item.what}: is neither pipe nor a known fitting (nearest: "${near}"); any other part needs its loss at a known flow, or a flow coefficient`,
  );
};

const fastest = (lines: readonly LoopLine[]): number | "" => {
  const known = lines.flatMap(({ velocity }) => (velocity === "" ? [] : [velocity]));
  return known.length === 0 ? NO_VALUE : Math.max(...known);
};

const summed = (what: string, side: string, lines: readonly LoopLine[], flow: number, trace: Trace): LoopLine => {
  const head = lines.reduce((sum, line) => sum + line.head, 0);
  return {
    what,
    size: NO_VALUE,
    side,
    head,
    velocity: fastest(lines),
    lossCoefficient: NO_VALUE,
    method: NO_VALUE,
    systemCurve: trace.step(curveCoefficient, { h: head, Q: flow }),
  };
};

/** Every row, then the subtotals of suction and return and the total. Velocities of the sums are their rows' highest. */
export const loopLines = (items: readonly LoopItem[], at: LoopFlow, trace: Trace = silent): readonly LoopLine[] => {
  const lines = items.map((item) =>
    trace.within(item.what, (): LoopLine => {
      const { head, velocity, coefficient, method } = lossOf(item, at, trace);
      const { what, side, size = NO_VALUE } = item;
      const systemCurve = trace.step(curveCoefficient, { h: head, Q: at.flow });
      return { what, size, side, head, velocity, lossCoefficient: coefficient, method, systemCurve };
    }),
  );
  const of = (side: Side): readonly LoopLine[] => lines.filter((line) => line.side === side);
  return [
    ...lines,
    summed("subtotal suction", "suction", of("suction"), at.flow, trace),
    summed("subtotal return", "return", of("return"), at.flow, trace),
    summed("total", NO_VALUE, lines, at.flow, trace),
  ];
};
