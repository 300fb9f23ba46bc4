/** The record of a balance in the working. */
import type { Trace } from "../../kernel/define/steps";
import { heatOfFlow } from "../../cycle/equations";
import { mappedCycle } from "../../cycle/map/map";
import { cycleOf } from "../../cycle/working";
import { temperatureOnLine } from "../../refrigerant/saturation/working";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import {
  coilConductance,
  dischargePressure,
  conductanceOfHeat,
  evaporatorLine,
  effectiveConductance,
  pumpedFlow,
  settledHeat,
  sweptVolume,
  volumetricEfficiencyAt,
} from "./equations";
import { capacityRateOfWater, leavingWater } from "../water/equations";
import type { Balance, BalanceConditions, GivenExchanger, OperatingState, OutdoorCoil } from "./balance";
import { coilDuty, type CoilExchanger } from "./withCoil";
import { rateCoil } from "../coil/coil";
import { zonesOf } from "../zones/working";
import type { CoolingMachine } from "./compressor";
import { meanCondensing } from "./machine";

const cycleAt = (
  { rating: { fluid, superheat, subcooling } }: CoolingMachine,
  { evaporating, condensing, efficiency }: Running,
  trace: Trace,
) => cycleOf({ evaporating, condensing, superheat, subcooling, efficiency, refrigerant: fluid.name }, trace);

interface OnPool {
  readonly exchanger: GivenExchanger | CoilExchanger;
  readonly conditions: BalanceConditions;
}

interface Running {
  readonly evaporating: number;
  readonly condensing: number;
  readonly efficiency: number;
}

export const traceMachine = (machine: CoolingMachine, trace: Trace): void =>
  trace.within("Machine at its rating", () => {
    const { rating, ratedRatio, exponent, map } = machine;
    if (map !== undefined) {
      mappedCycle(map, rating.fluid, rating, trace);
      return;
    }
    const { cooling: q, suction } = cycleAt(machine, rating, trace);
    trace.step(sweptVolume, { Q: rating.cooling, e: rating.volumetricEfficiency, rho: suction.density, q });
    trace.remark(
      `Pressure ratio ${ratedRatio.toFixed(3)} at the rating; gas left in the clearance re-expands with the exponent ${exponent.toFixed(4)}.`,
    );
  });

/** The flow of the compressor, kg/s: by its map, or by its swept volume. */
function traceFlow(
  { map, rating, ratedRatio, exponent, swept }: CoolingMachine,
  { evaporating, dischargeCondensing: condensing }: OperatingState,
  { ratio, rho }: Readonly<Record<"ratio" | "rho", number>>,
  trace: Trace,
): number {
  if (map !== undefined) return mappedCycle(map, rating.fluid, { ...rating, evaporating, condensing }, trace).massFlow;
  const e = trace.step(volumetricEfficiencyAt, {
    e0: rating.volumetricEfficiency,
    r: ratio,
    r0: ratedRatio,
    n: exponent,
  });
  return trace.step(pumpedFlow, { V: swept, e, rho });
}

/** The cycle of the running machine; behind a drop, its compressor works against the pressure before it. */
function traceCycle(machine: CoolingMachine, operating: OperatingState, trace: Trace) {
  const { hotGasDrop: dp = 0, rating } = machine;
  const cycle = cycleAt(machine, operating, trace);
  if (dp === 0) return cycle;
  return trace.within("Compressor before the drop", () => {
    const Pd = trace.step(dischargePressure, { Pc: operating.condensingPressure, dp });
    const condensing = temperatureOnLine(rating.fluid.name, Pd, "dew", trace);
    const { work, condensingPressure } = cycleAt(machine, { ...operating, condensing }, trace);
    const { cooling, suction, evaporatingPressure } = cycle;
    return { suction, cooling, work, rejected: cooling + work, condensingPressure, evaporatingPressure };
  });
}

/** Recomputes the answer step by step, to show that it satisfies the balance. */
const traceEquilibrium = (machine: CoolingMachine, operating: OperatingState, wetBulb: number, trace: Trace): void => {
  const { rating } = machine;
  const { sink, search } = operating;
  if (search)
    trace.solution({
      unknown: "condensing dew temperature",
      kind: "temperature",
      solves: search.solves,
      bracket: search.bracket,
      iterations: search.iterations,
      residual: search.residual,
      answer: operating.condensing,
    });
  else trace.remark("Held at the least condensing temperature: the fan is cut or cycles.");
  const { suction, cooling, work, rejected, condensingPressure, evaporatingPressure } = traceCycle(
    machine,
    operating,
    trace,
  );
  const m = traceFlow(
    machine,
    operating,
    { ratio: condensingPressure / evaporatingPressure, rho: suction.density },
    trace,
  );
  trace.within("Cooling", () => trace.step(heatOfFlow, { m, q: cooling }));
  trace.step(evaporatorLine, {
    Qr: rating.cooling,
    Twb: wetBulb,
    Te: operating.evaporating,
    Twr: rating.wetBulb,
    Ter: rating.evaporating,
  });
  trace.within("Power of the compressor", () => trace.step(heatOfFlow, { m, q: work }));
  trace.relation(settledHeat, {
    m,
    qc: rejected,
    G: sink.conductance,
    Tm: operating.meanCondensing,
    Ts: sink.temperature,
  });
};

/** K between streams below which a coil's size has no effect: its whole margin is inside the search's last bracket. */
const TOUCHING = 1e-5;

/** The coil at the duty and temperature found, and its equivalent conductance. */
const traceCoil = (
  machine: CoolingMachine,
  exchanger: CoilExchanger,
  pool: Balance,
  Tw: number,
  trace: Trace,
): void => {
  trace.within("Coil at the duty found", () => {
    const found = zonesOf(coilDuty(machine, pool, exchanger, Tw), trace);
    rateCoil(machine.rating.fluid, found, exchanger.coil, exchanger.waterFlow, trace);
    if (found.total.least.difference < TOUCHING)
      trace.remark(
        "The streams almost touch: any cooler and they would cross, so the margin is above zero and no longer changes the answer.",
      );
  });
  if (pool.ua !== undefined)
    trace.step(conductanceOfHeat, { C: pool.capacityRate, Q: pool.rejected, Tm: pool.meanCondensing, Tw });
};

export const tracePool = (
  { exchanger, conditions }: OnPool,
  machine: CoolingMachine,
  pool: Balance,
  trace: Trace,
): void =>
  trace.within("On the pool", () => {
    const rho = trace.step(densityOfWater, { T: conditions.enteringWater });
    const cp = trace.step(heatCapacityOfWater, { T: conditions.enteringWater });
    const C = trace.step(capacityRateOfWater, { V: exchanger.waterFlow, rho, cp });
    if ("coil" in exchanger) traceCoil(machine, exchanger, pool, conditions.enteringWater, trace);
    if (pool.ua !== undefined) trace.step(effectiveConductance, { C, UA: pool.ua });
    traceEquilibrium(machine, pool, conditions.wetBulb, trace);
    trace.step(leavingWater, { Tw: conditions.enteringWater, Q: pool.rejected, C });
  });

export const traceOutdoors = (
  { coil, conditions }: { readonly coil: OutdoorCoil; readonly conditions: BalanceConditions },
  machine: CoolingMachine,
  operating: OperatingState,
  trace: Trace,
): void =>
  trace.within("On the outdoor coil", () => {
    const { fluid, cooling, condensing } = machine.rating;
    const Q = (cooling * machine.rated.rejected) / machine.rated.cooling;
    const Tm = meanCondensing(fluid, condensing, machine.rated.condensingPressure);
    trace.step(coilConductance, { Q, Tm, To: coil.ratedOutdoor });
    traceEquilibrium(machine, operating, conditions.wetBulb, trace);
  });
