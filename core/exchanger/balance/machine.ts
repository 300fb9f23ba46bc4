/** A single-speed machine: a compressor of constant swept volume between an evaporator and a heat sink. */
import { valueError, notAvailable } from "../../kernel/values/fault";
import type { Trace } from "../../kernel/define/steps";
import { bracketedRoot } from "../../numeric/root";
import { quantityMark } from "../../kernel/values/quantityMark";
import { solveCycle } from "../../cycle/cycle";
import type { PhaseState } from "../../refrigerant/helmholtz/substance";
import type { Fluid } from "../../refrigerant/refrigerant";
import {
  saturatedStateAtPressure,
  refrigerantSaturationPressure,
  saturationTemperature,
} from "../../refrigerant/saturation/saturation";
import { checkRange, singlePhase } from "../../refrigerant/state/state";
import {
  MAP_SPAN,
  massFlowAt,
  powerOf,
  suctionAt,
  type Between,
  type CoolingMachine,
  type MachineRating,
} from "./compressor";
import { efficiencyByPower, evaporatorLine, sweptVolume } from "./equations";

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

/** Common state of compressor and evaporator at a condensing temperature. */
export interface MachineState {
  readonly evaporating: number;
  readonly condensing: number;
  readonly condensingPressure: number;
  /** Dew temperature of the pressure that leaves the compressor: above condensing where a drop is between. */
  readonly dischargeCondensing: number;
  readonly dischargePressure: number;
  /** Enthalpy of the gas that enters the condenser, J/kg. */
  readonly inletEnthalpy: number;
  readonly meanCondensing: number;
  /** kg/s */
  readonly massFlow: number;
  /** Isentropic efficiency of the compressor. */
  readonly efficiency: number;
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
  { condensing, pressure }: Omit<Between, "evaporating">,
  liquidEnthalpy: number,
  guess: number,
): number => {
  const { fluid, cooling, evaporating, wetBulb: ratedBulb } = machine.rating;
  const surplus = (Te: number): number => {
    const suction = suctionAt(machine, Te);
    const taken =
      massFlowAt(machine, suction, { evaporating: Te, condensing, pressure }) * (suction.enthalpy - liquidEnthalpy);
    return taken - evaporatorLine.code({ Qr: cooling, Twb: wetBulb, Te, Twr: ratedBulb, Ter: evaporating });
  };
  // A cubic must not be asked far outside what it was fitted to.
  const lowest = machine.map ? Math.max(fluid.coldest, wetBulb - MAP_SPAN) : fluid.coldest;
  // Secant from the last answer; the first slope is that of the rating (suction density rises by some 3 % per kelvin).
  let [a, fa] = [guess, surplus(guess)];
  if (Math.abs(fa) < CLOSED * cooling) return a;
  let slope = cooling * (0.033 + 1 / (ratedBulb - evaporating));
  for (let pass = 0; pass < 8; pass++) {
    const b = a - fa / slope;
    if (!(b > lowest && b < wetBulb)) break;
    const fb = surplus(b);
    if (fb === fa) return b;
    slope = (fb - fa) / (b - a);
    [a, fa] = [b, fb];
    if (!(slope > 0)) break;
    if (Math.abs(fa) < CLOSED * cooling) return a;
  }
  const root = bracketedRoot(surplus, lowest, wetBulb, { tolerance: 1e-10 });
  if (!root.found)
    throw notAvailable(
      `no evaporating temperature below the wet bulb (${quantityMark("temperature", wetBulb)}) lets this compressor and evaporator agree`,
    );
  return root.x;
};

/** Saturation at the compressor's discharge, the drop above condensing. */
function dischargeOf({ rating, hotGasDrop = 0 }: CoolingMachine, condensing: number, dew: PhaseState) {
  if (hotGasDrop === 0) return { condensing, pressure: dew.pressure, dew };
  const higher = saturatedStateAtPressure(rating.fluid, dew.pressure + hotGasDrop, "dew");
  return { condensing: higher.temperature, pressure: higher.pressure, dew: higher };
}

/** Below the critical point, K. */
const BELOW_CRITICAL = 0.5;

/** Condensing temperatures between which the machine can settle, K. */
export function condensingRange({ rating, hotGasDrop = 0 }: CoolingMachine): readonly [number, number] {
  const { fluid, evaporating } = rating;
  const lowest = Math.max(fluid.coldest, evaporating + 1);
  const highest = fluid.warmestSaturated - BELOW_CRITICAL;
  if (hotGasDrop === 0) return [lowest, highest];
  const most = refrigerantSaturationPressure(fluid, highest, "dew");
  return [lowest, saturationTemperature(fluid, most - hotGasDrop, "dew")];
}

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
  const { fluid, subcooling } = machine.rating;
  const pressure = refrigerantSaturationPressure(fluid, condensing, "dew");
  const dew = saturatedStateAtPressure(fluid, pressure, "dew");
  const bubble = saturatedStateAtPressure(fluid, pressure, "bubble");
  const liquid = subcooling > 0 ? liquidAt(fluid, pressure, bubble.temperature - subcooling) : bubble;
  const end = dischargeOf(machine, condensing, dew);
  const evaporating = agreed(machine, wetBulb, end, liquid.enthalpy, guess);
  if (!(evaporating < condensing))
    throw notAvailable(
      `condensing would fall to ${quantityMark("temperature", condensing)}, not above evaporating: the condenser is too cold for this machine`,
    );
  const suction = suctionAt(machine, evaporating);
  const at = { evaporating, ...end };
  const massFlow = massFlowAt(machine, suction, at);
  const cooling = massFlow * (suction.enthalpy - liquid.enthalpy);
  const { power, efficiency } = powerOf(machine, suction, end.dew, at, massFlow);
  return {
    evaporating,
    condensing,
    condensingPressure: pressure,
    dischargeCondensing: end.condensing,
    dischargePressure: end.pressure,
    inletEnthalpy: suction.enthalpy + power / massFlow,
    meanCondensing: fluid.bubble === fluid.dew ? condensing : (dew.temperature + bubble.temperature) / 2,
    massFlow,
    efficiency,
    cooling,
    power,
    rejected: cooling + power,
  };
};

const liquidAt = (fluid: Fluid, pressure: number, temperature: number): PhaseState => {
  checkRange(fluid, pressure, temperature);
  return singlePhase(fluid, pressure, temperature, "liquid");
};
