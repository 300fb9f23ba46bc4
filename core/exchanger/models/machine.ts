/** A single-speed machine: a compressor of constant swept volume between an evaporator and whatever takes its heat. */
import { mend, outside } from "../../kernel/fault";
import type { Trace } from "../../kernel/steps";
import { bracketedRoot } from "../../numeric/root";
import { told } from "../../numeric/told";
import { cycle, type Cycle } from "../../cycle/models/cycle";
import type { PhaseState } from "../../refrigerant/helmholtz/substance";
import type { Fluid } from "../../refrigerant/models/refrigerant";
import {
  saturatedStateAtPressure,
  saturationPressure,
  saturationTemperature,
} from "../../refrigerant/models/saturation";
import { checkRange, singlePhase } from "../../refrigerant/models/state";
import { alongIsobar, stateByEntropy } from "../../refrigerant/models/stateBy";
import {
  efficiencyByPower,
  evaporatorLine,
  pumpedFlow,
  sweptVolume,
  volumetricEfficiencyAt,
} from "../balanceEquations";

export interface MachineRating {
  readonly fluid: Fluid;
  /** Cooling of the evaporator at the rating, W. */
  readonly cooling: number;
  /** Dew temperatures at the rating, K. */
  readonly evaporating: number;
  readonly condensing: number;
  /** Wet bulb of the air entering the evaporator at the rating, K. */
  readonly wetBulb: number;
  /** K */
  readonly superheat: number;
  readonly subcooling: number;
  /** Isentropic enthalpy rise over electrical input per mass. */
  readonly efficiency: number;
  /** Suction volume moved over volume swept, at the rating. */
  readonly volumetricEfficiency: number;
}

/** A rated machine, made ready once for many balances. */
export interface Machine {
  readonly rating: MachineRating;
  readonly rated: Cycle;
  /** m³/s */
  readonly swept: number;
  readonly ratedRatio: number;
  readonly exponent: number;
}

/** @throws where the rating's temperatures leave the refrigerant's range */
export const machineOf = (rating: MachineRating): Machine => {
  if (!(rating.wetBulb > rating.evaporating))
    throw outside(
      `evaporating at the rating: must be below the wet bulb there (${told("temperature", rating.wetBulb)}), got ${told("temperature", rating.evaporating)}`,
    );
  const rated = cycle({ ...rating, refrigerant: rating.fluid });
  const ratedRatio = rated.condensingPressure / rated.evaporatingPressure;
  return {
    rating,
    rated,
    swept: sweptVolume.code({
      Q: rating.cooling,
      e: rating.volumetricEfficiency,
      rho: rated.suction.density,
      q: rated.cooling,
    }),
    ratedRatio,
    exponent: Math.log(ratedRatio) / Math.log(rated.isentropicDischarge.density / rated.suction.density),
  };
};

const [LEAST_EFFICIENCY, MOST_EFFICIENCY] = [0.3, 0.95];

/** The efficiency at which the compressor draws `power`, W, at its rating. */
export function efficiencyOfPower(rating: MachineRating, power: number, trace: Trace): number {
  const eta = trace.step(efficiencyByPower, {
    Q: rating.cooling,
    c: machineOf({ ...rating, efficiency: 1 }).rated.cop,
    P: power,
  });
  if (eta >= LEAST_EFFICIENCY && eta <= MOST_EFFICIENCY) return eta;
  throw mend(
    `inputs: rated power doesn't fit rated cooling: the compressor's efficiency would be ${eta.toFixed(2)}, expected ${LEAST_EFFICIENCY} to ${MOST_EFFICIENCY}`,
  );
}

/** The mean of dew and bubble temperature at a pressure: what water or air sees of a blend that condenses, K. */
export const meanCondensing = (fluid: Fluid, dew: number, pressure: number): number =>
  fluid.bubble === fluid.dew ? dew : (dew + saturationTemperature(fluid, pressure, "bubble")) / 2;

/** Efficiency of the compressor's volume at two pressures, from 0. */
export const volumetricEfficiency = ({ rating, ratedRatio, exponent }: Machine, pressureRatio: number): number =>
  Math.max(
    0,
    volumetricEfficiencyAt.code({
      e0: rating.volumetricEfficiency,
      r: pressureRatio,
      r0: ratedRatio,
      n: exponent,
    }),
  );

const suctionAt = ({ rating: { fluid, superheat } }: Machine, evaporating: number): PhaseState => {
  const pressure = saturationPressure(fluid, evaporating, "dew");
  if (superheat === 0) return saturatedStateAtPressure(fluid, pressure, "dew");
  checkRange(fluid, pressure, evaporating + superheat);
  return singlePhase(fluid, pressure, evaporating + superheat, "vapour");
};

const massFlowAt = (machine: Machine, suction: PhaseState, condensingPressure: number): number =>
  pumpedFlow.code({
    V: machine.swept,
    e: volumetricEfficiency(machine, condensingPressure / suction.pressure),
    rho: suction.density,
  });

/** What the compressor and the evaporator agree on at a condensing temperature. */
export interface Running {
  readonly evaporating: number;
  readonly condensing: number;
  readonly condensingPressure: number;
  readonly meanCondensing: number;
  /** kg/s */
  readonly massFlow: number;
  /** W */
  readonly cooling: number;
  readonly power: number;
  readonly rejected: number;
}

/** Share of the cooling to which compressor and evaporator agree. */
const CLOSED = 1e-8;

/** Evaporating temperature at which compressor and evaporator pass the same cooling, K. */
const agreed = (machine: Machine, wetBulb: number, pressure: number, liquidEnthalpy: number, guess: number): number => {
  const { fluid, cooling, evaporating, wetBulb: ratedBulb } = machine.rating;
  const surplus = (Te: number): number => {
    const suction = suctionAt(machine, Te);
    const taken = massFlowAt(machine, suction, pressure) * (suction.enthalpy - liquidEnthalpy);
    return taken - evaporatorLine.code({ Qr: cooling, Twb: wetBulb, Te, Twr: ratedBulb, Ter: evaporating });
  };
  // Secant from the last answer; the slope at first as of the rating (suction density rises by some 3 % per kelvin).
  let [a, fa] = [guess, surplus(guess)];
  if (Math.abs(fa) < CLOSED * cooling) return a;
  let slope = cooling * (0.033 + 1 / (ratedBulb - evaporating));
  for (let pass = 0; pass < 8; pass++) {
    const b = a - fa / slope;
    if (!(b > fluid.coldest && b < wetBulb)) break;
    const fb = surplus(b);
    if (fb === fa) return b;
    slope = (fb - fa) / (b - a);
    [a, fa] = [b, fb];
    if (!(slope > 0)) break;
    if (Math.abs(fa) < CLOSED * cooling) return a;
  }
  const root = bracketedRoot(surplus, fluid.coldest, wetBulb, { tolerance: 1e-10 });
  if (!root.found)
    throw outside(
      `no evaporating temperature below the wet bulb (${told("temperature", wetBulb)}) lets this compressor and evaporator agree`,
    );
  return root.x;
};

/**
 * The machine at a condensing dew temperature, K, and a wet bulb of the indoor air, K.
 *
 * @param guess evaporating temperature to start from, K
 * @throws where a temperature leaves the refrigerant's range
 */
export const runningAt = (machine: Machine, condensing: number, wetBulb: number, guess: number): Running => {
  const { fluid, subcooling, efficiency } = machine.rating;
  const pressure = saturationPressure(fluid, condensing, "dew");
  const dew = saturatedStateAtPressure(fluid, pressure, "dew");
  const bubble = saturatedStateAtPressure(fluid, pressure, "bubble");
  const liquid = subcooling > 0 ? liquidAt(fluid, pressure, bubble.temperature - subcooling) : bubble;
  const evaporating = agreed(machine, wetBulb, pressure, liquid.enthalpy, guess);
  if (!(evaporating < condensing))
    throw outside(
      `condensing would fall to ${told("temperature", condensing)}, not above evaporating: the condenser is too cold for this machine`,
    );
  const suction = suctionAt(machine, evaporating);
  const isentropic =
    suction.entropy >= dew.entropy
      ? alongIsobar(fluid, dew, suction.entropy, "entropy")
      : stateByEntropy(fluid, pressure, suction.entropy);
  const massFlow = massFlowAt(machine, suction, pressure);
  const cooling = massFlow * (suction.enthalpy - liquid.enthalpy);
  const power = (massFlow * (isentropic.enthalpy - suction.enthalpy)) / efficiency;
  return {
    evaporating,
    condensing,
    condensingPressure: pressure,
    meanCondensing: fluid.bubble === fluid.dew ? condensing : (dew.temperature + bubble.temperature) / 2,
    massFlow,
    cooling,
    power,
    rejected: cooling + power,
  };
};

const liquidAt = (fluid: Fluid, pressure: number, temperature: number): PhaseState => {
  checkRange(fluid, pressure, temperature);
  return singlePhase(fluid, pressure, temperature, "liquid");
};
