/**
 * A step of the preheat tank. Its water is mixed; within a step draw, loss and heat hold, so the step is solved exactly and
 * its heats close. The valve to the tank takes a share of the step: a tank of some hundred gallons fills and empties within
 * the hour.
 */
import { HOURS_OF_DAY } from "../../numeric/calendar";
import { meanPart } from "./exponential";
import type { Machine } from "./machine";
import { meetLoad } from "./partLoad";
import type { Tank } from "./run";
import type { Simulation } from "./simulation";
import type { StepState } from "./state";

/** What the tank does by itself: its net heat at the start, and how each watt through the step would warm it. */
function idleTank(state: StepState, tank: Tank, draw: number, mains: number): void {
  const perWatt = state.duration / tank.capacity;
  const z = (draw + tank.loss) * perWatt;
  const mean = meanPart(z);
  state.tankIdleHeat = draw * (mains - state.tank) + tank.loss * (tank.around - state.tank);
  state.tankGain = perWatt * (1 - z * mean);
  state.tankMeanGain = perWatt * mean;
}

/** What the machine would give the tank if it ran on it all the step, W, its water at T (K). */
function heatOffered(state: StepState, machine: Machine, hour: number, load: number, T: number): number {
  const { partLoad } = state;
  meetLoad(machine, load, hour, "tank", T, partLoad);
  return partLoad.rejected;
}

/** Share of the step in which the valve is on the tank: all of it, or what brings the tank to its limit. */
function tankShare(state: StepState, tank: Tank, machine: Machine, hour: number, load: number): number {
  const start = state.tank;
  const most = Math.max(0, (tank.limit - start) / state.tankGain - state.tankIdleHeat);
  if (most === 0) return 0;
  const first = Math.min(most, heatOffered(state, machine, hour, load, start));
  state.tankMean = start + (state.tankIdleHeat + first) * state.tankMeanGain;
  return Math.min(1, most / heatOffered(state, machine, hour, load, state.tankMean));
}

/** Gives the tank its share of the step's heat, and takes that share from pool or outdoor coil. */
function heatTank(state: StepState, machine: Machine, hour: number, load: number, share: number): void {
  const { partLoad } = state;
  meetLoad(machine, load, hour, "tank", state.tankMean, partLoad);
  const { met, runShare, electricity, rejected } = partLoad;
  const rest = 1 - share;
  state.runShare = rest * state.runShare;
  state.heatToPool = rest * state.heatToPool;
  state.extraPumpShare = rest * state.extraPumpShare;
  state.heatToTank = share * rejected;
  state.tankRunShare = share * runShare;
  state.rejected = rest * state.rejected + state.heatToTank;
  state.electricity = rest * state.electricity + share * electricity;
  state.unmetLoad = rest * state.unmetLoad + share * (load - met);
}

/** Carries the tank through a step: with the machine where `load` (W) is above 0. */
export function stepTank({ run, state }: Simulation, tank: Tank, machine: Machine, hour: number, load: number): void {
  const draw = tank.draw[hour % HOURS_OF_DAY] ?? 0;
  const mains = run.surface.mains[hour] ?? 0;
  const { tankCurve } = machine;
  idleTank(state, tank, draw, mains);
  state.heatToTank = 0;
  state.tankRunShare = 0;
  if (load > 0 && tankCurve !== undefined) {
    const share = tankShare(state, tank, machine, hour, load);
    if (share > 0) heatTank(state, machine, hour, load, share);
  }
  const heat = state.tankIdleHeat + state.heatToTank;
  const start = state.tank;
  const mean = start + heat * state.tankMeanGain;
  state.tankMean = mean;
  state.heatDrawn = draw * (mean - mains);
  state.tankLoss = tank.loss * (mean - tank.around);
  state.tank = start + heat * state.tankGain;
}
