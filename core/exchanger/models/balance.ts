/** Where compressor, evaporator and whatever takes the heat settle together. */
import { outside } from "../../kernel/fault";
import { bracketedRoot } from "../../numeric/root";
import { told } from "../../numeric/told";
import { coilPull, pull } from "../balanceEquations";
import { machineOf, meanCondensing, runningAt, type Machine, type Running } from "./machine";
import { waterRate } from "./zones";

/** What takes the heat: W/K between the mean condensing temperature and what enters, and that, K. */
export interface Sink {
  readonly pull: number;
  readonly temperature: number;
}

export interface Settled extends Running {
  readonly sink: Sink;
  readonly search: { readonly bracket: readonly [number, number]; readonly iterations: number; readonly residual: number };
}

/** K; the heat balance then closes to better than a millionth. */
const TOLERANCE = 2e-6;
const MOST_WIDENINGS = 12;

/**
 * Solves for the condensing temperature at which the sink takes just what the machine gives off.
 *
 * @param wetBulb indoor wet bulb, K
 * @throws where the machine would leave the refrigerant's range
 */
export const settle = (machine: Machine, sink: Sink, wetBulb: number): Settled => {
  const { fluid, evaporating } = machine.rating;
  const seen = new Map<number, Running>();
  let guess = evaporating;
  const at = (condensing: number): Running => {
    const known = seen.get(condensing) ?? runningAt(machine, condensing, wetBulb, guess);
    seen.set(condensing, known);
    guess = known.evaporating;
    return known;
  };
  const surplus = (condensing: number): number => {
    const running = at(condensing);
    return running.rejected - sink.pull * (running.meanCondensing - sink.temperature);
  };
  const lowest = Math.max(fluid.coldest, evaporating + 1);
  const highest = fluid.warmestSaturated - 0.5;
  const inside = (T: number): number => Math.min(highest, Math.max(lowest, T));
  const ratedRejection = (machine.rating.cooling * machine.rated.rejected) / machine.rated.cooling;
  // Heat hardly answers to condensing temperature, so the sink's line alone leads nearly there; then a little beyond.
  let a = inside(sink.temperature + ratedRejection / sink.pull);
  let fa = surplus(a);
  let b = a;
  for (let pass = 0; pass < MOST_WIDENINGS && fa !== 0; pass++) {
    b = inside(a + (1.1 * fa) / sink.pull + Math.sign(fa) * 1e-6);
    const fb = surplus(b);
    if (fa * fb <= 0) break;
    if (b === a) return refuse(b, highest);
    [a, fa] = [b, fb];
  }
  const root = bracketedRoot(surplus, Math.min(a, b), Math.max(a, b), { tolerance: TOLERANCE, most: 60 });
  if (fa !== 0 && !root.found) return refuse(b, highest);
  const answer = at(fa === 0 ? a : root.x);
  return { ...answer, sink, search: { bracket: root.bracket, iterations: seen.size, residual: surplus(answer.condensing) } };
};

const refuse = (reached: number, highest: number): never => {
  throw outside(
    reached >= highest
      ? `no condensing temperature up to ${told("temperature", highest)} rejects the heat: the condenser is too small or too warm for this machine`
      : `condensing would fall below ${told("temperature", reached)}, next to evaporating: the condenser is too large or too cold for this machine`,
  );
};

/** An exchanger of known conductance, W/K, on a water flow, m³/s. */
export interface GivenExchanger {
  readonly ua: number;
  readonly waterFlow: number;
}

/** The machine's outdoor coil: outdoor air at which the rating's condensing temperature was found, K. */
export interface OutdoorCoil {
  readonly ratedOutdoor: number;
}

export interface BalanceConditions {
  /** K */
  readonly enteringWater: number;
  /** Wet bulb of the indoor air, K. */
  readonly wetBulb: number;
}

export interface Balance extends Settled {
  /** Capacity rate of the water, W/K. */
  readonly capacityRate: number;
  /** K */
  readonly leavingWater: number;
}

/** What water takes per kelvin, by the transfer units of a condenser. */
export const waterSink = ({ ua, waterFlow }: GivenExchanger, enteringWater: number): Sink & { capacityRate: number } => {
  const capacityRate = waterRate(waterFlow, enteringWater);
  return { pull: pull.code({ C: capacityRate, UA: ua }), temperature: enteringWater, capacityRate };
};

/** What outdoor air takes per kelvin: the rating's heat over the rating's difference. */
export const airSink = (machine: Machine, { ratedOutdoor }: OutdoorCoil, outdoor: number): Sink => {
  const { fluid, cooling, condensing } = machine.rating;
  const Tm = meanCondensing(fluid, condensing, machine.rated.condensingPressure);
  if (!(Tm > ratedOutdoor))
    throw outside(
      `condensing at the rating: the mean of dew and bubble point (${told("temperature", Tm)}) must be above the outdoor air there (${told("temperature", ratedOutdoor)})`,
    );
  const Q = (cooling * machine.rated.rejected) / machine.rated.cooling;
  return { pull: coilPull.code({ Q, Tm, To: ratedOutdoor }), temperature: outdoor };
};

/** The machine on pool water. SI record in, SI record out. */
export const balanceOf = (machine: Machine, exchanger: GivenExchanger, conditions: BalanceConditions): Balance => {
  const sink = waterSink(exchanger, conditions.enteringWater);
  const settled = settle(machine, sink, conditions.wetBulb);
  return {
    ...settled,
    capacityRate: sink.capacityRate,
    leavingWater: conditions.enteringWater + settled.rejected / sink.capacityRate,
  };
};

/** The same machine on its outdoor coil, outdoor air and indoor wet bulb in K. */
export const outdoorBalanceOf = (machine: Machine, coil: OutdoorCoil, outdoor: number, wetBulb: number): Settled =>
  settle(machine, airSink(machine, coil, outdoor), wetBulb);

export { machineOf };
