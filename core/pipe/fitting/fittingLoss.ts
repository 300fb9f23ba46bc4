/** Losses of fittings in PVC pipe. */
import { notAvailable } from "../../kernel/values/fault";
import { inchesOfSize } from "../../kernel/values/numberText";
import { us } from "../../kernel/values/quantity";
import { silent, type Trace } from "../../kernel/define/steps";
import { densityOfWater, viscosityOfWater } from "../../water/equations";
import { EQUIVALENT_LENGTHS, EQUIVALENT_SIZES, FITTINGS, type Fitting, type FittingConstants } from "../data/fittings";
import { PVC_PIPE } from "../data/pvcPipe";
import { meanVelocity, reynolds } from "../equations";
import { equivalentCoefficient, fittingHead, suddenContraction, threeConstant, twoConstant } from "./equations";
import { boreOf, type BoreRule, type Schedule } from "../straight/bore";
import { PVC_ROUGHNESS, frictionFactor } from "../straight/friction";

export const FITTING_METHODS = ["three-constant", "two-constant", "equivalent length"] as const;
export type FittingMethod = (typeof FITTING_METHODS)[number];

export interface FittingCase {
  readonly fitting: Fitting;
  readonly size: string;
  /** m³/s */
  readonly flow: number;
  readonly count: number;
  readonly schedule: Schedule;
  /** K */
  readonly water: number;
  readonly method: FittingMethod;
  readonly bore: BoreRule;
}

export interface FittingLoss {
  /** m */
  readonly head: number;
  /** m/s */
  readonly velocity: number;
  readonly coefficient: number;
}

const constantsOf = (fitting: Fitting): FittingConstants => {
  const row: FittingConstants | undefined = FITTINGS.find((each) => each.fitting === fitting);
  if (!row) throw new Error(`no fitting ${fitting}`);
  return row;
};

/** A nominal size as a length, m: "1-1/2 in" is 38.1 mm. */
export const nominalDiameter = (size: string): number => us("diameter", inchesOfSize(size));

/** Equivalent length of a PVC fitting from the table, m; undefined where the table has none. */
export const equivalentLength = (fitting: Fitting, size: string): number | undefined => {
  const feet = EQUIVALENT_LENGTHS[fitting]?.[EQUIVALENT_SIZES.indexOf(size)];
  return feet === undefined ? undefined : us("length", feet);
};

/** Water flow in a pipe, on which a fitting's coefficient depends. */
export interface PipeFlow {
  readonly re: number;
  /** m */
  readonly D: number;
  /** Darcy friction factor */
  readonly f: number;
}

const reducerCoefficient = (item: FittingCase, D: number, trace: Trace): number => {
  const sizes = PVC_PIPE.filter(({ schedule }) => schedule === item.schedule);
  const larger = sizes[sizes.findIndex(({ size }) => size === item.size) + 1];
  if (!larger) throw notAvailable(`size: the table has no pipe larger than ${item.size}`);
  return trace.step(suddenContraction, { D, Db: boreOf(larger.size, item.schedule, item.bore, trace) });
};

/** The loss coefficient by one method; undefined where the method has no constants for the fitting. */
const coefficientBy = (
  method: FittingMethod,
  item: FittingCase,
  { re, D, f }: PipeFlow,
  trace: Trace,
): number | undefined => {
  const row = constantsOf(item.fitting);
  if (method === "three-constant" && row.three) {
    const [K1, Ki, Kd] = row.three;
    return trace.step(threeConstant, { K1, Re: re, Ki, Kd, N: nominalDiameter(item.size) });
  }
  if (method === "two-constant" && row.two) {
    const [K1, Kinf] = row.two;
    return trace.step(twoConstant, { K1, Re: re, Kinf, D });
  }
  if (method !== "equivalent length") return undefined;
  const Le = equivalentLength(item.fitting, item.size);
  return Le === undefined ? undefined : trace.step(equivalentCoefficient, { f, Le, D });
};

/** A coefficient that only this table has: couplings, entrances, exits, reducers. */
const sharedCoefficient = (item: FittingCase, D: number, trace: Trace): number | undefined => {
  if (item.fitting === "reducer") return reducerCoefficient(item, D, trace);
  const { constant } = constantsOf(item.fitting);
  if (constant !== undefined && trace.on)
    trace.lookup({
      table: "Loss coefficient",
      row: item.fitting,
      result: { value: constant, kind: "number" },
      source: item.fitting === "entrance" || item.fitting === "exit" ? "craneTp410" : "perryCoupling",
    });
  return constant;
};

/** The spread of coefficients over all methods that have constants for the fitting; undefined where only one has. */
export const fittingMethodSpread = (item: FittingCase, flowing: PipeFlow, chosen: number): string | undefined => {
  const others = FITTING_METHODS.filter((each) => each !== item.method).flatMap((each) => {
    const K = coefficientBy(each, item, flowing, silent);
    return K === undefined ? [] : [K];
  });
  return others.length === 0
    ? undefined
    : `${Math.min(chosen, ...others).toFixed(2)} to ${Math.max(chosen, ...others).toFixed(2)}`;
};

/** Coefficients by the other methods, for the working. */
const traceOtherMethods = (item: FittingCase, flowing: PipeFlow, chosen: number, trace: Trace): void =>
  trace.within("The other methods", () => {
    for (const each of FITTING_METHODS) if (each !== item.method) coefficientBy(each, item, flowing, trace);
    const spread = fittingMethodSpread(item, flowing, chosen);
    if (spread !== undefined)
      trace.remark(`Coefficients range from ${spread}: published methods differ by a factor of 2 to 3.`);
  });

/** Whether all methods share a fitting's coefficient, which then needs no friction factor. */
export const isShared = (fitting: Fitting): boolean => {
  const { three, two } = constantsOf(fitting);
  return three === undefined && two === undefined;
};

/** Loss coefficient of one fitting in flowing water. */
export const coefficientOf = (item: FittingCase, flowing: PipeFlow, trace: Trace = silent): number => {
  const K = sharedCoefficient(item, flowing.D, trace) ?? coefficientBy(item.method, item, flowing, trace);
  if (K === undefined)
    throw notAvailable(
      `fitting: the ${item.method} method has no constants for a ${item.fitting} of ${item.size}; use three-constant`,
    );
  return K;
};

/** Head lost in `count` equal fittings, with the coefficient of one. */
export const fittingLoss = (item: FittingCase, trace: Trace = silent): FittingLoss => {
  const D = boreOf(item.size, item.schedule, item.bore, trace);
  const v = trace.step(meanVelocity, { Q: item.flow, D });
  const rho = trace.step(densityOfWater, { T: item.water });
  const re = trace.step(reynolds, { rho, v, D, mu: trace.step(viscosityOfWater, { T: item.water }) });
  const shared = isShared(item.fitting);
  const flowing: PipeFlow = { re, D, f: shared ? 0 : frictionFactor(re, PVC_ROUGHNESS, D) };
  const K = coefficientOf(item, flowing, trace);
  if (!shared && trace.on) traceOtherMethods(item, flowing, K, trace);
  return { head: trace.step(fittingHead, { n: item.count, K, v }), velocity: v, coefficient: K };
};
