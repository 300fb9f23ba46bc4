/** A compressor given by ten coefficients each of mass flow and power over its dew temperatures. */
import { notAvailable } from "../../kernel/values/fault";
import { KINDS, toBase, us, type System } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import type { Trace } from "../../kernel/define/steps";
import type { Fluid } from "../../refrigerant/refrigerant";
import { solveCycle, type Cycle } from "../cycle";
import { efficiencyOfMap, flowAtSuperheat, mapPolynomial, powerAtSuperheat } from "./equations";

/** Suction gas of 65 °F at every point, as some maps are measured. */
export const RETURN_GAS = "return gas 65 °F";
const RETURN_GAS_TEMPERATURE = us("temperature", 65);

export interface CompressorMap {
  /** In the standard's order; °F, lb/h and W, or °C, kg/h and W. */
  readonly flow: readonly number[];
  readonly power: readonly number[];
  readonly system: System;
  /** Superheat at which it was measured, K, or the return gas of one temperature. */
  readonly superheat: number | typeof RETURN_GAS;
}

/** What the map says at two dew temperatures, at its own superheat. */
export interface MapPoint {
  /** kg/s */
  readonly massFlow: number;
  /** W */
  readonly power: number;
}

const fromBase = (kelvin: number, system: System): number => {
  const { factor, shift } = KINDS.temperature[system];
  return kelvin / factor - shift;
};

const polynomialAt = (coefficients: readonly number[], S: number, D: number, of: string, trace: Trace): number => {
  const [C1 = 0, C2 = 0, C3 = 0, C4 = 0, C5 = 0, C6 = 0, C7 = 0, C8 = 0, C9 = 0, C10 = 0] = coefficients;
  return trace.step(mapPolynomial, { S, D, C1, C2, C3, C4, C5, C6, C7, C8, C9, C10 }, of);
};

const temperature = (T: number): string => quantityMark("temperature", T);

/** @throws where the polynomial falls to nothing: far outside what was measured, or in another order or unit */
export function mapPoint(map: CompressorMap, suction: number, discharge: number, trace: Trace): MapPoint {
  const { system } = map;
  const S = fromBase(suction, system);
  const D = fromBase(discharge, system);
  const flow = polynomialAt(map.flow, S, D, "mass flow", trace);
  const power = polynomialAt(map.power, S, D, "power", trace);
  if (!(flow > 0 && power > 0))
    throw notAvailable(
      `coefficients: mass flow and power must be above 0 at ${temperature(suction)} and ${temperature(discharge)}, got ${flow.toPrecision(4)} and ${power.toPrecision(4)}: check order, units and the maker's envelope`,
    );
  return { massFlow: toBase(flow, KINDS["mass flow"][system]), power };
}

/** The superheat at which the map holds at a suction dew temperature, K. */
export const mapSuperheatAt = ({ superheat }: CompressorMap, suction: number): number =>
  superheat === RETURN_GAS ? Math.max(0, RETURN_GAS_TEMPERATURE - suction) : superheat;

/** The isentropic rise of an ideal cycle, J/kg. */
const rise = ({ work }: Cycle): number => work;

export interface MappedCycle extends MapPoint {
  readonly cycle: Cycle;
  readonly efficiency: number;
}

/**
 * The compressor at two dew temperatures and a superheat, with its cycle.
 *
 * @throws where the map means more than a loss-free compressor
 */
export function mappedCycle(
  map: CompressorMap,
  fluid: Fluid,
  at: Readonly<Record<"evaporating" | "condensing" | "superheat" | "subcooling", number>>,
  trace: Trace,
): MappedCycle {
  const point = mapPoint(map, at.evaporating, at.condensing, trace);
  const own = mapSuperheatAt(map, at.evaporating);
  const ideal = solveCycle({ refrigerant: fluid, ...at, efficiency: 1 });
  let { massFlow, power } = point;
  if (Math.abs(own - at.superheat) > 1e-9) {
    const ideal0 = solveCycle({ refrigerant: fluid, ...at, superheat: own, efficiency: 1 });
    const { density } = ideal.suction;
    massFlow = trace.step(flowAtSuperheat, { m0: massFlow, rho: density, rho0: ideal0.suction.density });
    power = trace.step(powerAtSuperheat, {
      P0: power,
      m: massFlow,
      m0: point.massFlow,
      w: rise(ideal),
      w0: rise(ideal0),
    });
  }
  const efficiency = trace.step(efficiencyOfMap, { m: massFlow, w: rise(ideal), P: power });
  if (!(efficiency <= 1))
    throw notAvailable(
      `coefficients: at ${temperature(at.evaporating)} and ${temperature(at.condensing)} the power is less than a loss-free compressor of this flow takes (efficiency ${efficiency.toFixed(2)}): check order, units and refrigerant`,
    );
  return {
    massFlow,
    power,
    efficiency,
    cycle: solveCycle({ refrigerant: fluid, ...at, efficiency }),
  };
}
