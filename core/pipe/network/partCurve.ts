/** The curve of a part's loss by flow, from one published point or two, clean or dirty. Strict SI. */
import { quantity } from "../../kernel/define/argument";
import { silent, type Trace } from "../../kernel/define/steps";
import { exponentOfTwo } from "./gridEquations";

export const EXPONENT = quantity("number", "exponent of the flow", { from: 1, to: 3 }).default(2);
export const LINEAR_SHARE = quantity("fraction", "share of the loss that rises straight with flow", {
  from: 0,
  to: 1,
}).default(0);

/** The last columns of the tables of parts. */
export const CURVE_COLUMNS = {
  secondLoss: quantity("head", "loss at a second flow: gives the exponent", { above: 0 }).optional(),
  secondFlow: quantity("water flow", "flow of the second loss", { above: 0 }).optional(),
  dirtyRise: quantity("head", "what dirt adds at the known flow; rises straight with flow", { from: 0 }).default(0),
};

/** The curve's columns left blank. */
export const BLANK_CURVE = {
  exponent: 2,
  linearShare: 0,
  secondLoss: undefined,
  secondFlow: undefined,
  dirtyRise: 0,
} as const;

export interface PartCurve {
  readonly loss: number | undefined;
  readonly knownFlow: number | undefined;
  readonly exponent: number;
  readonly linearShare: number;
  readonly secondLoss: number | undefined;
  readonly secondFlow: number | undefined;
  readonly dirtyRise: number;
}

function exponentOf(curve: PartCurve, refuse: (why: string) => Error, trace: Trace): number {
  const { loss: h1, knownFlow: Q1, secondLoss: h2, secondFlow: Q2, linearShare, exponent } = curve;
  if (h2 === undefined && Q2 === undefined) return exponent;
  if (h1 === undefined || Q1 === undefined || h2 === undefined || Q2 === undefined || Q1 === Q2)
    throw refuse("second loss: needs a loss and known flow, and a second flow that differs");
  if (linearShare !== 0 || exponent !== 2)
    throw refuse("second loss: gives the exponent: leave exponent and linear share blank");
  const n = trace.step(exponentOfTwo, { h1, Q1, h2, Q2 });
  if (!(n >= 1 && n <= 3))
    throw refuse(`second loss: the two points rise by an exponent of ${n.toFixed(2)}, must be from 1 to 3`);
  return n;
}

/** The same curve as one point, its exponent and linear share; dirt adds to the linear part. */
export function onePoint<T extends PartCurve>(curve: T, refuse: (why: string) => Error, trace: Trace = silent): T {
  const exponent = exponentOf(curve, refuse, trace);
  const { loss, linearShare: s, dirtyRise } = curve;
  if (loss === undefined && dirtyRise > 0) throw refuse("dirty rise: needs the clean loss and its known flow");
  if (loss === undefined || (exponent === curve.exponent && dirtyRise === 0)) return curve;
  const all = loss + dirtyRise;
  return { ...curve, exponent, loss: all, linearShare: dirtyRise === 0 ? s : (s * loss + dirtyRise) / all };
}
