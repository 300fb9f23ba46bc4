/** A single-speed machine: a compressor of constant swept volume between an evaporator and a heat sink. */
import { valueError, notAvailable } from "../../kernel/values/fault";
import type { Trace } from "../../kernel/define/steps";
import { bracketedRoot } from "../../numeric/root";
import { quantityMark } from "../../kernel/values/quantityMark";
import { solveCycle, type Cycle } from "../../cycle/cycle";
import type { PhaseState } from "../../refrigerant/helmholtz/substance";
import type { Fluid } from "../../refrigerant/refrigerant";
import {
  saturatedStateAtPressure,
  refrigerantSaturationPressure,
  saturationTemperature,
} from "../../refrigerant/saturation/saturation";
import { checkRange, singlePhase } from "../../refrigerant/state/state";
import { stateOnIsobar, stateByEntropy } from "../../refrigerant/state/stateBy";
import { efficiencyByPower, evaporatorLine, pumpedFlow, sweptVolume, volumetricEfficiencyAt } from "./equations";

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

/** A rated machine with the constants that many balances share. */
export interface CoolingMachine {
  readonly rating: MachineRating;
  readonly rated: Cycle;
  /** m³/s */
  readonly swept: number;
  readonly ratedRatio: number;
  readonly exponent: number;
}

/** @throws where the rating's temperatures leave the refrigerant's range */
export const machineOf = (rating: MachineRating): CoolingMachine => {
  if (!(rating.wetBulb > rating.evaporating))
    throw notAvailable(
      `evaporating at the rating: must be below the wet bulb there (${quantityMark("temperature", rating.wetBulb)}), got ${quantityMark("temperature", rating.evaporating)}`,
    );
  const rated = solveCycle({ ...rating, refrigerant: rating.fluid });
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
  throw valueError(
    `inputs: rated power doesn't fit rated cooling: the compressor's efficiency would be ${eta.toFixed(2)}, expected ${LEAST_EFFICIENCY} to ${MOST_EFFICIENCY}`,
  );
}

/** The mean of dew and bubble temperature at a pressure, K: a condensing blend as water or air sees it. */
export const meanCondensing = (fluid: Fluid, dew: number, pressure: number): number =>
  fluid.bubble === fluid.dew ? dew : (dew + saturationTemperature(fluid, pressure, "bubble")) / 2;

/** Volumetric efficiency of the compressor at two pressures, 0 or more. */
export const volumetricEfficiency = ({ rating, ratedRatio, exponent }: CoolingMachine, pressureRatio: number): number =>
  Math.max(
    0,
    volumetricEfficiencyAt.code({
      e0: rating.volumetricEfficiency,
      r: pressureRatio,
      r0: ratedRatio,
      n: exponent,
    }),
  );

const suctionAt = ({ rating: { fluid, superheat } }: CoolingMachine, evaporating: number): PhaseState => {
  const pressure = refrigerantSaturationPressure(fluid, evaporating, "dew");
  if (superheat === 0) return saturatedStateAtPressure(fluid, pressure, "dew");
  checkRange(fluid, pressure, evaporating + superheat);
  return singlePhase(fluid, pressure, evaporating + superheat, "vapour");
};

const massFlowAt = (machine: CoolingMachine, suction: PhaseState, condensingPressure: number): number =>
  pumpedFlow.code({
    V: machine.swept,
    e: volumetricEfficiency(machine, condensingPressure / suction.pressure),
    rho: suction.density,
  });

/** Common state of compressor and evaporator at a condensing temperature. */
export interface MachineState {
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

/** Relative tolerance of the cooling between compressor and evaporator. */
const CLOSED = 1e-8;

/** Evaporating temperature at which compressor and evaporator pass the same cooling, K. */
const agreed = (
  machine: CoolingMachine,
  wetBulb: number,
  pressure: number,
  liquidEnthalpy: number,
  guess: number,
): number => {
  const { fluid, cooling, evaporating, wetBulb: ratedBulb } = machine.rating;
  const surplus = (Te: number): number => {
    const suction = suctionAt(machine, Te);
    const taken = massFlowAt(machine, suction, pressure) * (suction.enthalpy - liquidEnthalpy);
    return taken - evaporatorLine.code({ Qr: cooling, Twb: wetBulb, Te, Twr: ratedBulb, Ter: evaporating });
  };
  // Secant from the last answer; the first slope is that of the rating (suction density rises by some 3 % per kelvin).
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
    throw notAvailable(
      `no evaporating temperature below the wet bulb (${quantityMark("temperature", wetBulb)}) lets this compressor and evaporator agree`,
    );
  return root.x;
};

/**
 * The machine at a condensing dew temperature, K, and a wet bulb of the indoor air, K.
 *
 * @param guess evaporating temperature to start from, K
 * @throws where a temperature leaves the refrigerant's range
 */
export const machineState = (
  machine: CoolingMachine,
  condensing: number,
  wetBulb: number,
  guess: number,
): MachineState => {
  const { fluid, subcooling, efficiency } = machine.rating;
  const pressure = refrigerantSaturationPressure(fluid, condensing, "dew");
  const dew = saturatedStateAtPressure(fluid, pressure, "dew");
  const bubble = saturatedStateAtPressure(fluid, pressure, "bubble");
  const liquid = subcooling > 0 ? liquidAt(fluid, pressure, bubble.temperature - subcooling) : bubble;
  const evaporating = agreed(machine, wetBulb, pressure, liquid.enthalpy, guess);
  if (!(evaporating < condensing))
    throw notAvailable(
      `condensing would fall to ${quantityMark("temperature", condensing)}, not above evaporating: the condenser is too cold for this machine`,
    );
  const suction = suctionAt(machine, evaporating);
  const isentropic =
    suction.entropy >= dew.entropy
      ? stateOnIsobar(fluid, dew, suction.entropy, "entropy")
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
