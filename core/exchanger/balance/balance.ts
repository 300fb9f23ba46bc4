/** Equilibrium of compressor, evaporator and heat sink. */
import { notAvailable } from "../../kernel/values/fault";
import { bracketedRoot } from "../../numeric/root";
import { quantityMark } from "../../kernel/values/quantityMark";
import { coilConductance, effectiveConductance, settledHeat } from "./equations";
import type { CoolingMachine } from "./compressor";
import { condensingRange, meanCondensing, machineState, type MachineState } from "./machine";
import { waterRate } from "../zones/zones";

/** The fluid that takes the heat: its entering temperature, K, and W/K from the mean condensing temperature to that. */
export interface Sink {
  readonly conductance: number;
  readonly temperature: number;
}

export interface Search {
  readonly bracket: readonly [number, number];
  readonly iterations: number;
  readonly residual: number;
  /** Name of the relation that holds at the answer. */
  readonly solves: string;
}

/** A machine and its heat sink; without a search if the condensing temperature is fixed. */
export interface OperatingState extends MachineState {
  readonly sink: Sink;
  readonly search?: Search;
}

export interface Equilibrium extends OperatingState {
  readonly search: Search;
}

/** Width of the last bracket, K: the heat balance then closes to better than a millionth. */
const TOLERANCE = 4e-6;
const MOST_STEPS = 16;

/** Factor on the sink's W/K: the rejected heat also falls a little as condensing warms. */
const STEEPER = 1.05;

/** Two temperatures around the root, as close as the secant gets. Ends inside `limits`; undefined without a change of sign. */
const bracketNear = (
  surplus: (T: number) => number,
  start: number,
  pull: number,
  [lowest, highest]: readonly [number, number],
): { readonly ends: readonly [number, number]; readonly changes: boolean } => {
  const inside = (T: number): number => Math.min(highest, Math.max(lowest, T));
  let a = inside(start);
  let fa = surplus(a);
  let slope = -STEEPER * pull;
  for (let pass = 0; pass < MOST_STEPS && fa !== 0; pass++) {
    const step = -fa / slope;
    // Close to the root, a step slightly past it closes the bracket.
    const b = inside(Math.abs(step) < TOLERANCE / 2 ? a + Math.sign(step) * TOLERANCE : a + step);
    if (b === a) return { ends: [a, a], changes: false };
    const fb = surplus(b);
    if (fa * fb <= 0 && Math.abs(b - a) <= TOLERANCE * 1.001)
      return { ends: [Math.min(a, b), Math.max(a, b)], changes: true };
    const secant = (fb - fa) / (b - a);
    slope = secant < 0 ? secant : -STEEPER * pull;
    [a, fa] = [b, fb];
  }
  return { ends: [a, a], changes: fa === 0 };
};

/**
 * Solves for the condensing temperature at which the sink takes exactly the heat that the machine rejects.
 *
 * @param wetBulb indoor wet bulb, K
 * @throws if the machine would leave the refrigerant's range
 */
export const solveEquilibrium = (machine: CoolingMachine, sink: Sink, wetBulb: number): Equilibrium => {
  const { fluid, evaporating } = machine.rating;
  const limits = condensingRange(machine);
  const seen = new Map<number, MachineState>();
  let guess = evaporating;
  const at = (condensing: number): MachineState => {
    const known = seen.get(condensing) ?? machineState(machine, condensing, wetBulb, guess);
    seen.set(condensing, known);
    guess = known.evaporating;
    return known;
  };
  const surplus = (condensing: number): number => {
    const running = at(condensing);
    return running.rejected - sink.conductance * (running.meanCondensing - sink.temperature);
  };
  const ratedRejection = (machine.rating.cooling * machine.rated.rejected) / machine.rated.cooling;
  const { condensing: ratedDew } = machine.rating;
  const glideAbove = ratedDew - meanCondensing(fluid, ratedDew, machine.rated.condensingPressure);
  const start = sink.temperature + ratedRejection / sink.conductance + glideAbove;
  const { ends, changes } = bracketNear(surplus, start, sink.conductance, limits);
  // If the secant failed, search the whole range.
  const bracket = changes ? ends : limits;
  const root = bracketedRoot(surplus, bracket[0], bracket[1], { tolerance: TOLERANCE, most: 80 });
  if (!root.found) return noEquilibrium(surplus(limits[1]) > 0 ? limits[1] : limits[0], limits[1]);
  const answer = at(root.x);
  return {
    ...answer,
    sink,
    search: { bracket, iterations: seen.size, residual: surplus(root.x), solves: settledHeat.name },
  };
};

/** The fault for no temperature inside the limits: none up to `highest`, or down to `reached`, K. */
export const noEquilibrium = (reached: number, highest: number): never => {
  throw notAvailable(
    reached >= highest
      ? `no condensing temperature up to ${quantityMark("temperature", highest)} rejects the heat: the condenser is too small or too warm for this machine`
      : `condensing would fall below ${quantityMark("temperature", reached)}, next to evaporating: the condenser is too large or too cold for this machine`,
  );
};

/** An exchanger of known conductance, W/K, on a water flow, m³/s. */
export interface GivenExchanger {
  readonly ua: number;
  readonly waterFlow: number;
}

/** The machine's outdoor coil: outdoor air at the rating's condensing temperature, K. */
export interface OutdoorCoil {
  readonly ratedOutdoor: number;
}

export interface BalanceConditions {
  /** K */
  readonly enteringWater: number;
  /** Wet bulb of the indoor air, K. */
  readonly wetBulb: number;
}

export interface Balance extends Equilibrium {
  /** Capacity rate of the water, W/K. */
  readonly capacityRate: number;
  /** K */
  readonly leavingWater: number;
  /** W/K against the mean condensing temperature; undefined where water leaves warmer than that. */
  readonly ua: number | undefined;
}

/** Heat into the water per kelvin, by the transfer units of a condenser. */
export const waterSink = (
  { ua, waterFlow }: GivenExchanger,
  enteringWater: number,
): Sink & { capacityRate: number } => {
  const capacityRate = waterRate(waterFlow, enteringWater);
  return {
    conductance: effectiveConductance.code({ C: capacityRate, UA: ua }),
    temperature: enteringWater,
    capacityRate,
  };
};

/** Heat into the outdoor air per kelvin: the rating's heat over the rating's difference. */
export const airSink = (machine: CoolingMachine, { ratedOutdoor }: OutdoorCoil, outdoor: number): Sink => {
  const { fluid, cooling, condensing } = machine.rating;
  const Tm = meanCondensing(fluid, condensing, machine.rated.condensingPressure);
  if (!(Tm > ratedOutdoor))
    throw notAvailable(
      `condensing at the rating: the mean of dew and bubble point (${quantityMark("temperature", Tm)}) must be above the outdoor air there (${quantityMark("temperature", ratedOutdoor)})`,
    );
  const Q = (cooling * machine.rated.rejected) / machine.rated.cooling;
  return { conductance: coilConductance.code({ Q, Tm, To: ratedOutdoor }), temperature: outdoor };
};

/** The machine on pool water. SI record in, SI record out. */
export const balanceOf = (
  machine: CoolingMachine,
  exchanger: GivenExchanger,
  conditions: BalanceConditions,
): Balance => {
  const sink = waterSink(exchanger, conditions.enteringWater);
  const operating = solveEquilibrium(machine, sink, conditions.wetBulb);
  return {
    ...operating,
    capacityRate: sink.capacityRate,
    leavingWater: conditions.enteringWater + operating.rejected / sink.capacityRate,
    ua: exchanger.ua,
  };
};

/** The machine at the condensing temperature `least`, K, if the sink alone would settle below it; otherwise undefined. */
function heldAt(machine: CoolingMachine, sink: Sink, least: number, wetBulb: number): OperatingState | undefined {
  const { evaporating } = machine.rating;
  if (least <= evaporating + 1) return undefined;
  const running = machineState(machine, least, wetBulb, evaporating);
  const over = running.meanCondensing - sink.temperature;
  if (sink.conductance * over <= running.rejected) return undefined;
  return { ...running, sink: { ...sink, conductance: running.rejected / over } };
}

/** The same machine on its outdoor coil, never condensing below `least`; outdoor air and indoor wet bulb in K. */
export function outdoorBalanceOf(
  machine: CoolingMachine,
  coil: OutdoorCoil,
  outdoor: number,
  wetBulb: number,
  least = 0,
): OperatingState {
  const sink = airSink(machine, coil, outdoor);
  return heldAt(machine, sink, least, wetBulb) ?? solveEquilibrium(machine, sink, wetBulb);
}
