/** Still water that cools to its freezing point and freezes. Strict SI. */
import { silent, type Trace } from "../../kernel/define/steps";
import { frostCapacity, handbookFreezing, iceTime, trickleFlow } from "./freezeEquations";
import { layersResistance, lostToAir, type Layer, type Surroundings } from "./pipeHeat";

export const ICE_POINT = 273.15;
/** Water that leaves a trickle at 34 °F. */
const TRICKLE_END = ICE_POINT + 2 / 1.8;
const INTERVALS = 24;

export interface FrostCase {
  readonly bore: number;
  readonly outside: number;
  readonly insulation: number;
  readonly insulationConductivity: number;
  readonly wall: { readonly conductivity: number; readonly capacity: number };
  readonly waterShare: number;
  /** J/(m K) of metal inside. */
  readonly metalCapacity: number;
  readonly start: number;
  readonly length: number;
}

/** Seconds. */
export interface FrostTimes {
  readonly toFreezing: number;
  readonly tenthIce: number;
  readonly allIce: number;
  readonly insulationAlone: number | undefined;
  /** m³/s */
  readonly trickle: number | undefined;
}

/** Seconds from the start to the freezing point: Simpson's rule over ln(T - Ta), where the resistance hardly changes. */
function cooling(C: number, start: number, air: number, resistance: (T: number) => number): number {
  const from = Math.log(ICE_POINT - air);
  const width = (Math.log(start - air) - from) / INTERVALS;
  let sum = 0;
  for (let i = 0; i <= INTERVALS; i++) {
    const weight = i === 0 || i === INTERVALS ? 1 : 2 + 2 * (i % 2);
    sum += weight * resistance(air + Math.exp(from + i * width));
  }
  return (C * sum * width) / 3;
}

export function frostTimes(given: FrostCase, around: Surroundings, trace: Trace = silent): FrostTimes {
  const { bore, outside, insulation, insulationConductivity: k, wall, waterShare: s, start: Ti, length: L } = given;
  const D = outside + 2 * insulation;
  const cover: Layer = { inside: outside, outside: D, conductivity: k };
  const layers = [{ inside: bore, outside, conductivity: wall.conductivity }, cover];
  const Ta = around.air;
  const resistance = (T: number, own: Trace = silent): number => (T - Ta) / lostToAir(D, T, layers, around, own).loss;
  const m = given.metalCapacity;
  const C = trace.step(frostCapacity, { s, Di: bore, Do: outside, c: wall.capacity, m });
  const R = trace.within("Loss at the freezing point", () => resistance(ICE_POINT, trace));
  const ri = bore / 2;
  const ice = (f: number, own: Trace): number =>
    own.step(iceTime, { s, ri, f, R, j: f < 1 ? f + (1 - f) * Math.log(1 - f) : 1, Tf: ICE_POINT, Ta });
  const toFreezing = cooling(C, Ti, Ta, resistance);
  if (trace.on)
    trace.remark("Time to the freezing point: the sum of C R dT/(T − Ta), R found at 25 temperatures on the way.");
  return {
    toFreezing,
    tenthIce: ice(0.1, trace),
    allIce: ice(1, trace),
    insulationAlone:
      insulation > 0
        ? trace.step(handbookFreezing, { ri, R: layersResistance([cover]), Ti, Ta, Tf: ICE_POINT })
        : undefined,
    trickle:
      Ti > TRICKLE_END ? trace.step(trickleFlow, { L, G: 1 / resistance(Ti), Ti, To: TRICKLE_END, Ta }) : undefined,
  };
}
