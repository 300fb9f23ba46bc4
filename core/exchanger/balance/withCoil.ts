/** Equilibrium of a machine on a coil of known geometry: the area needed equals the area of the coil. */
import { bracketedRoot } from "../../numeric/root";
import type { Direction } from "../args";
import { conductanceOfHeat } from "./equations";
import { marginOfArea } from "../coil/geometryEquations";
import { noEquilibrium, type Balance, type BalanceConditions } from "./balance";
import { rateCoil, type CoilRating } from "../coil/coil";
import { checkGeometry, type CoilGeometry } from "../coil/shell";
import { machineState, type CoolingMachine, type MachineState } from "./machine";
import { tryMatchStreams, waterRate } from "../zones/zones";
import { zonesInputOf, type DutyInputs } from "../zones/working";

/** A tube coil in its shell on a water flow, m³/s. */
export interface CoilExchanger {
  readonly coil: CoilGeometry;
  readonly waterFlow: number;
  readonly direction: Direction;
}

export interface CoilBalance extends Balance {
  /** The coil at the equilibrium. */
  readonly rating: CoilRating;
}

/** Width of the last bracket, K: the margin is steep when a large coil brings the streams close together. */
const TOLERANCE = 1e-7;
const MOST_STEPS = 60;

/** First width of the bracket, K; it doubles until the margin changes sign. */
const FIRST_WIDTH = 4;

/** Margin when the streams cross: no area is enough. */
const CROSSED = -1;

/** Usual coefficient of common titanium coils in water, W/(m²·K): only starts the search. */
const USUAL_COEFFICIENT = 800;

/** The duty of EXCHANGER.COIL for the running machine, entering water in K. */
export const coilDuty = (
  { rating: { fluid, superheat, subcooling, efficiency } }: CoolingMachine,
  { massFlow, evaporating, condensing }: MachineState,
  { waterFlow, direction }: CoilExchanger,
  enteringWater: number,
): DutyInputs => ({
  refrigerant: fluid.name,
  heatRejected: undefined,
  massFlow,
  dischargeTemperature: undefined,
  evaporating,
  condensing,
  superheat,
  subcooling,
  efficiency,
  waterFlow,
  enteringWater,
  direction,
});

/** A bracket around the root of a rising margin, widened from `start` inside the limits, K. */
const bracketFrom = (
  margin: (T: number) => number,
  start: number,
  [lowest, highest]: readonly [number, number],
): readonly [number, number] => {
  const inside = (T: number): number => Math.min(highest, Math.max(lowest, T));
  let near = inside(start);
  const up = margin(near) < 0;
  for (let width = FIRST_WIDTH; ; width *= 2) {
    const far = inside(near + (up ? width : -width));
    if (far === near) return noEquilibrium(near, highest);
    if (margin(far) < 0 !== up) return up ? [near, far] : [far, near];
    near = far;
  }
};

/** The known point nearest to `x` and its value. */
const nearestTo = <T>(x: number, known: ReadonlyMap<number, T>): readonly [number, T] | undefined =>
  [...known].reduce<readonly [number, T] | undefined>(
    (best, each) => (best === undefined || Math.abs(each[0] - x) < Math.abs(best[0] - x) ? each : best),
    undefined,
  );

/** W/K between entering water and the mean condensing temperature at which the coil would pass the rated heat. */
const roughPull = (coil: CoilGeometry, capacityRate: number): number => {
  const area = Math.PI * coil.outsideDiameter * coil.tubeLength * coil.tubes;
  return capacityRate * -Math.expm1((-USUAL_COEFFICIENT * area) / capacityRate);
};

/**
 * Solves for the condensing temperature at which the coil has exactly the area that the machine's heat needs. Zones,
 * films and wall are those of the coil's rating; the conductance returned gives the same answer with all heat
 * at the mean condensing temperature.
 *
 * @throws if the coil doesn't fit its shell, or no condensing temperature in the refrigerant's range solves the balance
 */
export const coilBalanceOf = (
  machine: CoolingMachine,
  exchanger: CoilExchanger,
  conditions: BalanceConditions,
): CoilBalance => {
  const { coil, waterFlow } = exchanger;
  const { enteringWater, wetBulb } = conditions;
  checkGeometry(coil);
  const { rating, rated } = machine;
  const { fluid } = rating;
  const capacityRate = waterRate(waterFlow, enteringWater);
  let guess = rating.evaporating;
  let iterations = 0;
  // Return the very state whose streams were found apart: rounding could make nearly touching streams cross.
  const seen = new Map<number, MachineState>();
  const ratings = new Map<number, CoilRating>();
  const at = (condensing: number): MachineState => {
    const running = seen.get(condensing) ?? machineState(machine, condensing, wetBulb, guess);
    seen.set(condensing, running);
    guess = running.evaporating;
    return running;
  };
  const margin = (condensing: number): number => {
    iterations++;
    const found = tryMatchStreams(zonesInputOf(coilDuty(machine, at(condensing), exchanger, enteringWater)));
    if (found === undefined) return CROSSED;
    const coiled = rateCoil(fluid, found, coil, waterFlow);
    ratings.set(condensing, coiled);
    return coiled.margin;
  };
  const limits = [Math.max(fluid.coldest, rating.evaporating + 1), fluid.warmestSaturated - 0.5] as const;
  const start = enteringWater + (rating.cooling * rated.rejected) / rated.cooling / roughPull(coil, capacityRate);
  const bracket = bracketFrom(margin, start, limits);
  const root = bracketedRoot(margin, bracket[0], bracket[1], { tolerance: TOLERANCE, most: MOST_STEPS });
  // On a large coil the margin jumps from crossed streams to spare area inside the last bracket: take the end with streams apart.
  const nearest = root.found ? nearestTo(root.x, ratings) : undefined;
  if (nearest === undefined) return noEquilibrium(bracket[0], limits[1]);
  const [condensing, coiled] = nearest;
  const operating = at(condensing);
  const { rejected, meanCondensing } = operating;
  const over = meanCondensing - enteringWater;
  return {
    ...operating,
    sink: { conductance: rejected / over, temperature: enteringWater },
    search: { bracket, iterations, residual: coiled.margin, solves: marginOfArea.name },
    capacityRate,
    leavingWater: enteringWater + rejected / capacityRate,
    ua:
      rejected < capacityRate * over
        ? conductanceOfHeat.code({ C: capacityRate, Q: rejected, Tm: meanCondensing, Tw: enteringWater })
        : undefined,
    rating: coiled,
  };
};
