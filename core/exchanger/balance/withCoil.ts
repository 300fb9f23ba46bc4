/** Equilibrium of a machine on a coil of known geometry: the area needed equals the area of the coil. */
import type { Direction } from "../args";
import { conductanceOfHeat, effectiveConductance } from "./equations";
import { coilArea, marginOfArea } from "../coil/geometryEquations";
import { solveEquilibrium, waterSink, type Balance, type BalanceConditions } from "./balance";
import { CROSSED, searchByBracket, settleByRatings } from "./coilSearch";
import { rateCoil, type CoilRating } from "../coil/coil";
import { checkGeometry, type CoilGeometry } from "../coil/shell";
import type { CoolingMachine } from "./compressor";
import { condensingRange, machineState, type MachineState } from "./machine";
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

/** Usual coefficient of common titanium coils in water, W/(m²·K): only starts the search. */
const USUAL_COEFFICIENT = 800;

/** The duty of EXCHANGER.COIL for the running machine, entering water in K. */
export const coilDuty = (
  { rating: { fluid, superheat, subcooling }, hotGasDrop }: CoolingMachine,
  { massFlow, evaporating, condensing, efficiency, inletEnthalpy }: MachineState,
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
  ...(hotGasDrop && { inletEnthalpy }),
});

/** W/K of the coil at the usual coefficient. */
const usualConductance = ({ outsideDiameter, tubeLength, tubes }: CoilGeometry): number =>
  USUAL_COEFFICIENT * coilArea.code({ Do: outsideDiameter, L: tubeLength, N: tubes });

/**
 * W/K against the mean condensing temperature; undefined where water leaves warmer than that.
 *
 * @param C capacity rate of the water, W/K
 */
const conductanceOf = ({ rejected: Q, meanCondensing: Tm }: MachineState, C: number, Tw: number): number | undefined =>
  Q < C * (Tm - Tw) ? conductanceOfHeat.code({ C, Q, Tm, Tw }) : undefined;

/** Condensing temperature at which a usual coil of this size would pass the rated heat, K. */
const roughStart = ({ rating, rated }: CoolingMachine, coil: CoilGeometry, C: number, Tw: number): number =>
  Tw + (rating.cooling * rated.rejected) / rated.cooling / effectiveConductance.code({ C, UA: usualConductance(coil) });

/** What the machine and its coil do at a condensing temperature; every state and rating is kept. */
function trials(machine: CoolingMachine, exchanger: CoilExchanger, { enteringWater, wetBulb }: BalanceConditions) {
  const { fluid, evaporating } = machine.rating;
  let guess = evaporating;
  let iterations = 0;
  // Return the very state whose streams were found apart: rounding could make nearly touching streams cross.
  const states = new Map<number, MachineState>();
  const ratings = new Map<number, CoilRating>();
  const stateAt = (condensing: number): MachineState => {
    const running = states.get(condensing) ?? machineState(machine, condensing, wetBulb, guess);
    states.set(condensing, running);
    guess = running.evaporating;
    return running;
  };
  const margin = (condensing: number): number => {
    iterations++;
    const duty = coilDuty(machine, stateAt(condensing), exchanger, enteringWater);
    const found = tryMatchStreams(zonesInputOf(duty));
    if (found === undefined) return CROSSED;
    const coiled = rateCoil(fluid, found, exchanger.coil, exchanger.waterFlow);
    ratings.set(condensing, coiled);
    return coiled.margin;
  };
  return { stateAt, margin, ratings, iterations: () => iterations };
}

/**
 * Solves for the condensing temperature at which the coil has exactly the area that the machine's heat needs. Zones,
 * films and wall are those of the coil's rating; the conductance returned gives the same answer with all heat
 * at the mean condensing temperature.
 *
 * @throws if the coil doesn't fit its shell, or no condensing temperature in the refrigerant's range solves the balance
 */
export function coilBalanceOf(
  machine: CoolingMachine,
  exchanger: CoilExchanger,
  conditions: BalanceConditions,
): CoilBalance {
  const { coil, waterFlow } = exchanger;
  const { enteringWater, wetBulb } = conditions;
  checkGeometry(coil);
  const C = waterRate(waterFlow, enteringWater);
  const { stateAt, margin, ratings, iterations } = trials(machine, exchanger, conditions);
  const settledWith = (ua: number): number =>
    solveEquilibrium(machine, waterSink({ ua, waterFlow }, enteringWater), wetBulb).condensing;
  const withSpare = (condensing: number, spare: number): number | undefined => {
    const needed = conductanceOf(stateAt(condensing), C, enteringWater);
    return needed === undefined ? undefined : settledWith(needed * (1 + spare));
  };
  const { condensing, bracket } =
    settleByRatings(margin, () => settledWith(usualConductance(coil)), withSpare) ??
    searchByBracket(margin, ratings, roughStart(machine, coil, C, enteringWater), condensingRange(machine));
  const rating = ratings.get(condensing);
  if (rating === undefined) throw new Error(`no rating at ${condensing} K`);
  const operating = stateAt(condensing);
  const { rejected, meanCondensing } = operating;
  return {
    ...operating,
    sink: { conductance: rejected / (meanCondensing - enteringWater), temperature: enteringWater },
    search: { bracket, iterations: iterations(), residual: rating.margin, solves: marginOfArea.name },
    capacityRate: C,
    leavingWater: enteringWater + rejected / C,
    ua: conductanceOf(operating, C, enteringWater),
    rating,
  };
}
