/**
 * One pool through the hours of a year. Within a step the losses are a straight line over the temperature, so the step is
 * solved exactly (exponential integration): never unstable, and the heat balance closes to rounding. An hour is one step,
 * but for hours in which the losses bend or a valve would move.
 */
import { HOUR, HOURS_OF_DAY, MONTH_OF_HOUR } from "../../numeric/calendar";
import { runMachine } from "./airConditioner";
import { meanPart } from "./exponential";
import { lossesAt } from "./lossesAt";
import type { Machine } from "./machine";
import { recordStep } from "./recordStep";
import { emptyYear, yearBetween, type PoolYear } from "./results";
import type { PoolRun, Tank } from "./run";
import { simulationOf, type Simulation } from "./simulation";
import { carriedBy, type State } from "./state";
import { addMonth } from "./sums";
import { stepTank } from "./tank";

const MOST_STEPS = 12;
/** Error of a step's end that is let pass, K. */
const TOLERANCE = 0.001;
/** The loss's second derivative is at most about this share of the first, 1/K: vapour pressure bends so. */
const BEND = 0.07;

/** Heat of the pool's pump in the water, W: by its schedule, and while the machine calls it. */
const pumpHeatOf = ({ run, state }: Simulation): number => run.pump.heat * (state.pumpPart + state.extraPumpShare);

/** Losses, the machine's heat and all other heat at the start of a step. */
function balanceHeat(simulation: Simulation, hour: number): void {
  const { run, machine, state, losses } = simulation;
  const { surface, extra } = run;
  if (machine !== undefined) runMachine(simulation, machine, hour);
  lossesAt(surface, hour, state.temperature, losses);
  const given = extra === undefined ? 0 : (extra[hour] ?? 0);
  const pumpHeat = pumpHeatOf(simulation);
  state.pumpHeat = pumpHeat;
  state.netHeat = (surface.sun[hour] ?? 0) + given + (state.heatToPool + pumpHeat) / run.area - losses.all;
}

/** How many steps an hour needs: one, unless the losses bend within it or the valve would move in it. */
function stepsIn({ run, recovery, state, losses }: Simulation): number {
  if (run.steps !== undefined) return run.steps;
  const rise = (state.netHeat * HOUR) / run.capacity;
  const error = (losses.allSlopes * BEND * rise * rise * HOUR) / (6 * run.capacity);
  const forBend = error > TOLERANCE ? Math.ceil(Math.sqrt(error / TOLERANCE)) : 1;
  if (recovery === undefined || !state.servesPool) return Math.min(MOST_STEPS, forBend);
  const over = state.temperature + rise - recovery.limit;
  const forValve = over > recovery.band / 4 ? Math.ceil((4 * over) / recovery.band) : 1;
  return Math.min(MOST_STEPS, Math.max(forBend, forValve));
}

/** Serves the tank; what it takes before the pool is taken from the pool's heat. */
function serveTank(simulation: Simulation, tank: Tank, machine: Machine, hour: number): void {
  const { run, state } = simulation;
  const load = tank.order === "tank first" || !state.servesPool ? (machine.load[hour] ?? 0) : 0;
  const before = state.heatToPool + run.pump.heat * state.extraPumpShare;
  stepTank(simulation, tank, machine, hour, load);
  const after = state.heatToPool + run.pump.heat * state.extraPumpShare;
  state.pumpHeat = pumpHeatOf(simulation);
  if (after !== before) state.netHeat = state.netHeat + (after - before) / run.area;
}

/** Back-up heat that brings the pool to its set point at the end of the step, W/m²; `gain` in K for each W/m². */
function backUpFor({ backUp }: PoolRun, month: number, reached: number, gain: number): number {
  if (backUp === undefined || backUp.months[month] !== true || reached >= backUp.set) return 0;
  return Math.min(backUp.most, (backUp.set - reached) / gain);
}

/** Ends a step at the temperature that its heat leads to; ice forms before water is colder than freezing. */
function warmOrFreeze({ run, state }: Simulation, reached: number): void {
  const { freezing, capacity } = run;
  if (state.ice <= 0 && reached >= freezing) {
    state.temperature = reached;
    return;
  }
  const ice = state.ice - (reached - freezing) * capacity;
  state.temperature = ice < 0 ? freezing - ice / capacity : freezing;
  state.ice = ice < 0 ? 0 : ice;
}

/** One step from the heat at its start. */
function step(simulation: Simulation, hour: number): void {
  const { run, machine, tank, state, losses, tally, year } = simulation;
  if (tank !== undefined && machine !== undefined) serveTank(simulation, tank, machine, hour);
  const month = MONTH_OF_HOUR[hour] ?? 0;
  const { duration, temperature: start } = state;
  const { capacity } = run;
  const z = (losses.allSlopes * duration) / capacity;
  const mean = meanPart(z);
  // Ice keeps the water at one temperature: the losses don't fall.
  const frozen = state.ice > 0;
  const gain = (duration / capacity) * (frozen ? 1 : 1 - z * mean);
  const alone = start + state.netHeat * gain - state.ice / capacity;
  const backUp = backUpFor(run, month, alone, gain);
  const heat = state.netHeat + backUp;
  state.backUp = backUp;
  state.meanRise = frozen ? 0 : (heat * duration * mean) / capacity;
  recordStep(simulation, hour);
  warmOrFreeze(simulation, start + heat * gain);
  state.since = state.since + duration;
  const end = state.temperature;
  if (state.ice > 0) tally.frozen += duration;
  if (end < (year.lowest[month] ?? 0)) year.lowest[month] = end;
  if (end > (year.highest[month] ?? 0)) year.highest[month] = end;
  state.warmth = state.warmth + duration * Math.max(start + state.meanRise, run.freezing);
}

/** One hour, in as many steps as it needs. Returns their number. */
function runHour(simulation: Simulation, hour: number): number {
  const { run, state, tally, year } = simulation;
  state.pumpPart = run.pump.schedule[hour % HOURS_OF_DAY] ?? 0;
  balanceHeat(simulation, hour);
  const steps = stepsIn(simulation);
  state.duration = HOUR / steps;
  state.warmth = 0;
  step(simulation, hour);
  for (let more = 1; more < steps; more++) {
    balanceHeat(simulation, hour);
    step(simulation, hour);
  }
  year.temperature[hour] = state.warmth / HOUR;
  tally.warmth += state.warmth;
  tally.sun += HOUR * (run.surface.sun[hour] ?? 0);
  return steps;
}

/** Runs from a state through the hours `from` to `to`, one after the other, adding to `into`. */
export function runPool(
  run: PoolRun,
  start: State,
  from: number,
  to: number,
  into: PoolYear = emptyYear(to, start),
): PoolYear {
  const simulation = simulationOf(run, start, into);
  let subSteps = 0;
  let month = MONTH_OF_HOUR[from] ?? 0;
  for (let hour = from; hour < to; hour++) {
    if (month !== MONTH_OF_HOUR[hour]) {
      addMonth(simulation.tally, month, into.sums);
      month = MONTH_OF_HOUR[hour] ?? 0;
    }
    subSteps += runHour(simulation, hour) - 1;
  }
  addMonth(simulation.tally, month, into.sums);
  return yearBetween(into, start, carriedBy(simulation.state), subSteps);
}
