/** A compressor of constant swept volume, or of a map, between two dew temperatures. */
import { flowAtSuperheat, powerAtSuperheat } from "../../cycle/map/equations";
import { mapPoint, mapSuperheatAt, type CompressorMap } from "../../cycle/map/map";
import type { Cycle } from "../../cycle/cycle";
import { silent } from "../../kernel/define/steps";
import type { PhaseState } from "../../refrigerant/helmholtz/substance";
import type { Fluid } from "../../refrigerant/refrigerant";
import { refrigerantSaturationPressure, saturatedStateAtPressure } from "../../refrigerant/saturation/saturation";
import { checkRange, singlePhase } from "../../refrigerant/state/state";
import { stateOnIsobar, stateByEntropy } from "../../refrigerant/state/stateBy";
import { pumpedFlow, volumetricEfficiencyAt } from "./equations";

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
  /** Takes the place of the swept volume and the efficiency. */
  readonly map?: CompressorMap;
  /** Pressure lost between compressor and condenser, Pa. */
  readonly hotGasDrop?: number;
}

/** Dew temperatures, K, and pressure, Pa, between which the compressor works. */
export interface Between {
  readonly evaporating: number;
  readonly condensing: number;
  readonly pressure: number;
}

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

export const gasAt = (fluid: Fluid, evaporating: number, superheat: number): PhaseState => {
  const pressure = refrigerantSaturationPressure(fluid, evaporating, "dew");
  if (superheat === 0) return saturatedStateAtPressure(fluid, pressure, "dew");
  checkRange(fluid, pressure, evaporating + superheat);
  return singlePhase(fluid, pressure, evaporating + superheat, "vapour");
};

/** Evaporating is looked for so far below the wet bulb on a map, K. */
export const MAP_SPAN = 30;

export const suctionAt = ({ rating: { fluid, superheat } }: CoolingMachine, evaporating: number): PhaseState =>
  gasAt(fluid, evaporating, superheat);

/** Suction gas at the map's own superheat. */
const mapSuction = (map: CompressorMap, fluid: Fluid, evaporating: number): PhaseState =>
  gasAt(fluid, evaporating, mapSuperheatAt(map, evaporating));

/** Flow of a mapped compressor, kg/s. */
export const mappedFlow = (
  map: CompressorMap,
  fluid: Fluid,
  suction: PhaseState,
  { evaporating, condensing }: Omit<Between, "pressure">,
): number =>
  flowAtSuperheat.code({
    m0: mapPoint(map, evaporating, condensing, silent).massFlow,
    rho: suction.density,
    rho0: mapSuction(map, fluid, evaporating).density,
  });

export function massFlowAt(machine: CoolingMachine, suction: PhaseState, at: Between): number {
  const { map, rating } = machine;
  if (map !== undefined) return mappedFlow(map, rating.fluid, suction, at);
  return pumpedFlow.code({
    V: machine.swept,
    e: volumetricEfficiency(machine, at.pressure / suction.pressure),
    rho: suction.density,
  });
}

/** Isentropic rise from suction gas to the condensing pressure, J/kg. */
function isentropicRise(fluid: Fluid, suction: PhaseState, dew: PhaseState): number {
  const end =
    suction.entropy >= dew.entropy
      ? stateOnIsobar(fluid, dew, suction.entropy, "entropy")
      : stateByEntropy(fluid, dew.pressure, suction.entropy);
  return end.enthalpy - suction.enthalpy;
}

/** Power of the compressor, W, at a flow, kg/s, and the isentropic efficiency that it means. */
export function powerOf(
  machine: CoolingMachine,
  suction: PhaseState,
  dew: PhaseState,
  at: Between,
  massFlow: number,
): Readonly<Record<"power" | "efficiency", number>> {
  const { map, rating } = machine;
  const rise = isentropicRise(rating.fluid, suction, dew);
  if (map === undefined) return { power: (massFlow * rise) / rating.efficiency, efficiency: rating.efficiency };
  const point = mapPoint(map, at.evaporating, at.condensing, silent);
  const power = powerAtSuperheat.code({
    P0: point.power,
    m: massFlow,
    m0: point.massFlow,
    w: rise,
    w0: isentropicRise(rating.fluid, mapSuction(map, rating.fluid, at.evaporating), dew),
  });
  return { power, efficiency: (massFlow * rise) / power };
}
