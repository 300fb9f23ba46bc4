/** Warming a pool: with the heat alone, or against the surface rule. */
import { mend, outside } from "../kernel/fault";
import { silent, type Trace } from "../kernel/steps";
import { told } from "../numeric/told";
import { POOL_HEAT_CAPACITY, heatToRaise, settlingTemperature, timeWithLoss, timeWithoutLoss } from "./equations";

export interface WarmUp {
  /** m³ */
  readonly volume: number;
  /** K */
  readonly from: number;
  readonly to: number;
  /** W, into the water */
  readonly heat: number;
  /** m² and K: both, or neither. */
  readonly area: number | undefined;
  readonly air: number | undefined;
  /** W/(m²·K) */
  readonly coefficient: number;
}

const checkPairs = ({ from, to, area, air }: WarmUp): void => {
  if (to <= from) throw mend(`to: must be above from, ${told("temperature", from)}, got ${told("temperature", to)}`);
  if (area !== undefined && air === undefined)
    throw mend("air: is needed with area: the surface loses heat by its difference to the air");
  if (area === undefined && air !== undefined)
    throw mend("area: is needed with air: the loss to the air is counted by the water surface");
};

/** Seconds; refused where the heat can't get the pool there, with the temperature at which it settles. */
export const warmUpTime = (pool: WarmUp, trace: Trace = silent): number => {
  checkPairs(pool);
  const { volume, from, to, heat, area, air, coefficient } = pool;
  if (area === undefined || air === undefined) {
    const Q = trace.step(heatToRaise, { V: volume, dT: to - from });
    return trace.step(timeWithoutLoss, { Q, q: heat });
  }
  const Ts = trace.step(settlingTemperature, { Ta: air, q: heat, U: coefficient, A: area });
  if (Ts <= to)
    throw outside(
      `heat: too little to reach ${told("temperature", to)} in air of ${told("temperature", air)}: the pool settles at ${told("temperature", Ts)}`,
    );
  return trace.step(timeWithLoss, { C: POOL_HEAT_CAPACITY * volume, U: coefficient, A: area, Ts, T1: from, T2: to });
};
