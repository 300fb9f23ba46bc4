import { outOfRange } from "../kernel/values/fault";
import { quantityMark } from "../kernel/values/quantityMark";
import type { Fluid } from "../refrigerant/refrigerant";
import type { PhaseState } from "../refrigerant/helmholtz/substance";
import { saturatedStateAtPressure, refrigerantSaturationPressure } from "../refrigerant/saturation/saturation";
import type { RefrigerantState } from "../refrigerant/state/state";
import { checkRange, singlePhase } from "../refrigerant/state/state";
import { markTemperature } from "../refrigerant/marks";
import { stateOnIsobar, stateByEnthalpy, stateByEntropy } from "../refrigerant/state/stateBy";

/** A single-stage vapour-compression cycle without pressure drops. */
export interface CycleInput {
  readonly refrigerant: Fluid;
  /** Dew temperature in the evaporator, K */
  readonly evaporating: number;
  /** Dew temperature in the condenser, K */
  readonly condensing: number;
  /** Above the dew point at the compressor's inlet, K; all of it useful cooling */
  readonly superheat: number;
  /** Below the bubble point at the condensing pressure, K */
  readonly subcooling: number;
  /** Isentropic enthalpy rise over (electrical input / mass flow), above 0 to 1; the compressor's shell is adiabatic */
  readonly efficiency: number;
}

/** The cycle's states and figures, SI by mass of refrigerant. */
export interface Cycle {
  readonly input: CycleInput;
  /** Pa */
  readonly evaporatingPressure: number;
  /** Pa */
  readonly condensingPressure: number;
  readonly suction: PhaseState;
  readonly isentropicDischarge: RefrigerantState;
  readonly discharge: RefrigerantState;
  /** Saturated vapour and liquid at the condensing pressure */
  readonly dew: PhaseState;
  readonly bubble: PhaseState;
  readonly liquid: PhaseState;
  /** Cooling, compressor work, heat rejected, J/kg */
  readonly cooling: number;
  readonly work: number;
  readonly rejected: number;
  /** Cooling over compressor input, and heat rejected over compressor input */
  readonly cop: number;
  readonly heatingCop: number;
  /** Heat rejected over cooling */
  readonly rejectionFactor: number;
  /** Shares of the rejected heat: desuperheating, condensing, subcooling; they sum to one */
  readonly shares: { readonly desuperheating: number; readonly condensing: number; readonly subcooling: number };
  /** Cooling per volume of suction gas, J/m3 */
  readonly volumetricCooling: number;
  /** Heat rejected per volume of suction gas, J/m3 */
  readonly volumetricRejection: number;
}

const difference = (kelvin: number) => quantityMark("temperature difference", kelvin);

function check({ refrigerant, evaporating, condensing, superheat, subcooling, efficiency }: CycleInput): void {
  const { name } = refrigerant;
  if (!(condensing > evaporating))
    throw outOfRange({
      quantity: `${name} condensing temperature`,
      limit: `above evaporating, ${markTemperature(evaporating)}`,
      got: markTemperature(condensing),
    });
  if (!(superheat >= 0))
    throw outOfRange({ quantity: "superheat", limit: `${difference(0)} or more`, got: difference(superheat) });
  if (!(subcooling >= 0))
    throw outOfRange({ quantity: "subcooling", limit: `${difference(0)} or more`, got: difference(subcooling) });
  if (!(efficiency > 0 && efficiency <= 1))
    throw outOfRange({ quantity: "efficiency", limit: "above 0, at most 1", got: `${efficiency}` });
}

/** A state superheated or subcooled, however slightly: its phase is known without the saturation line. */
function nearSaturation(fluid: Fluid, pressure: number, temperature: number, phase: "liquid" | "vapour"): PhaseState {
  checkRange(fluid, pressure, temperature);
  return singlePhase(fluid, pressure, temperature, phase);
}

/** Compression from the suction state to the pressure of the condenser's dew point. */
function compress(fluid: Fluid, suction: PhaseState, dew: PhaseState, efficiency: number) {
  // Almost always the gas leaves superheated: then both discharge states are on the isobar above the dew point.
  const isentropicDischarge: RefrigerantState =
    suction.entropy >= dew.entropy
      ? stateOnIsobar(fluid, dew, suction.entropy, "entropy")
      : stateByEntropy(fluid, dew.pressure, suction.entropy);
  const work = (isentropicDischarge.enthalpy - suction.enthalpy) / efficiency;
  if (efficiency === 1) return { isentropicDischarge, discharge: isentropicDischarge, work };
  const enthalpy = suction.enthalpy + work;
  const discharge: RefrigerantState =
    isentropicDischarge.phase === "vapour"
      ? stateOnIsobar(fluid, isentropicDischarge, enthalpy, "enthalpy")
      : stateByEnthalpy(fluid, dew.pressure, enthalpy);
  return { isentropicDischarge, discharge, work };
}

/**
 * The cycle between two dew temperatures.
 *
 * @throws a fault where a temperature leaves the refrigerant's saturation lines (above the critical temperature
 * nothing condenses), or an argument its limits
 */
export function solveCycle(input: CycleInput): Cycle {
  check(input);
  const { refrigerant: fluid, evaporating, condensing, superheat, subcooling, efficiency } = input;
  const evaporatingPressure = refrigerantSaturationPressure(fluid, evaporating, "dew");
  const condensingPressure = refrigerantSaturationPressure(fluid, condensing, "dew");
  const suction =
    superheat > 0
      ? nearSaturation(fluid, evaporatingPressure, evaporating + superheat, "vapour")
      : saturatedStateAtPressure(fluid, evaporatingPressure, "dew");
  const dew = saturatedStateAtPressure(fluid, condensingPressure, "dew");
  const bubble = saturatedStateAtPressure(fluid, condensingPressure, "bubble");
  const { isentropicDischarge, discharge, work } = compress(fluid, suction, dew, efficiency);
  const liquid =
    subcooling > 0 ? nearSaturation(fluid, condensingPressure, bubble.temperature - subcooling, "liquid") : bubble;
  const cooling = suction.enthalpy - liquid.enthalpy;
  const rejected = discharge.enthalpy - liquid.enthalpy;
  return {
    input,
    evaporatingPressure,
    condensingPressure,
    suction,
    isentropicDischarge,
    discharge,
    dew,
    bubble,
    liquid,
    cooling,
    work,
    rejected,
    cop: cooling / work,
    heatingCop: rejected / work,
    rejectionFactor: rejected / cooling,
    shares: {
      desuperheating: (discharge.enthalpy - dew.enthalpy) / rejected,
      condensing: (dew.enthalpy - bubble.enthalpy) / rejected,
      subcooling: (bubble.enthalpy - liquid.enthalpy) / rejected,
    },
    volumetricCooling: cooling * suction.density,
    volumetricRejection: rejected * suction.density,
  };
}

/** The state after the expansion valve: the liquid's enthalpy at the evaporating pressure. */
export const afterExpansion = ({ input, evaporatingPressure, liquid }: Cycle): RefrigerantState =>
  stateByEnthalpy(input.refrigerant, evaporatingPressure, liquid.enthalpy);
