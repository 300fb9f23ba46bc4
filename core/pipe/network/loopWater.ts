/** The loop's water, computed once per size: rows of a loop share velocity, friction factor and coefficients. */
import { silent, traceFor, type Trace } from "../../kernel/define/steps";
import { densityOfWater, viscosityOfWater } from "../../water/equations";
import type { Fitting } from "../data/fittings";
import { meanVelocity, reynolds } from "../equations";
import { boreOf, type Schedule } from "../straight/bore";
import { coefficientOf, isShared, fittingMethodSpread, type FittingCase, type PipeFlow } from "../fitting/fittingLoss";
import { PVC_ROUGHNESS, frictionFactor } from "../straight/friction";

export interface LoopFlow {
  /** m³/s */
  readonly flow: number;
  /** K */
  readonly water: number;
  readonly schedule: Schedule;
}

/** Water in one size of pipe. */
export interface SizeFlow extends PipeFlow {
  /** m/s */
  readonly v: number;
}

export interface LoopWater {
  /** m³/s */
  readonly flow: number;
  within(size: string): SizeFlow;
  /** Loss coefficient of one fitting by the three-constant method, or its own. */
  coefficient(fitting: Fitting, size: string): number;
}

/** Makes a value once per key, so the working records it at first use only. */
const once = <K extends string, T>(make: (key: K) => T): ((key: K) => T) => {
  const made = new Map<K, T>();
  return (key) => {
    const had = made.get(key);
    if (had !== undefined) return had;
    const fresh = make(key);
    made.set(key, fresh);
    return fresh;
  };
};

/** @param runs sizes with straight pipe: the working records their friction factor */
export const loopWater = (at: LoopFlow, runs: ReadonlySet<string>, trace: Trace = silent): LoopWater => {
  const { flow, water: T, schedule } = at;
  const properties = once(() => ({
    rho: trace.step(densityOfWater, { T }),
    mu: trace.step(viscosityOfWater, { T }),
  }));
  const within = once((size: string): SizeFlow => {
    const { rho, mu } = properties("");
    const sizeTrace = traceFor(size, trace);
    const D = boreOf(size, schedule, "average", sizeTrace);
    const v = sizeTrace.step(meanVelocity, { Q: flow, D });
    const re = sizeTrace.step(reynolds, { rho, v, D, mu });
    return { D, v, re, f: frictionFactor(re, PVC_ROUGHNESS, D, runs.has(size) ? sizeTrace : silent) };
  });
  const coefficients = once((size: string) =>
    once((fitting: Fitting): number => {
      const flowing = within(size);
      const item: FittingCase = { ...at, fitting, size, count: 1, method: "three-constant", bore: "average" };
      return coefficientOf(item, flowing, trace.on ? traceFor(nameOf(item, flowing), trace) : trace);
    }),
  );
  return { flow, within, coefficient: (fitting, size) => coefficients(size)(fitting) };
};

/** "elbow 90, 2 in (published methods: 0.47 to 0.92)" */
const nameOf = (item: FittingCase, flowing: PipeFlow): string => {
  const spread = isShared(item.fitting) ? undefined : fittingMethodSpread(item, flowing, coefficientOf(item, flowing));
  const name = `${item.fitting}, ${item.size}`;
  return spread === undefined ? name : `${name} (published methods: ${spread})`;
};
