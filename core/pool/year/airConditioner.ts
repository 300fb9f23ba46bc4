/** A step of the air conditioner: where the valve sends its heat, and what the machine gives there. */
import { runShareFor, type Machine } from "./machine";
import type { Recovery } from "./run";
import type { Simulation } from "./simulation";
import type { StepState } from "./state";
import { coolingAt, powerAt } from "./waterCurve";

/** Moves the valve where it must and may. Returns whether the machine is on the pool. */
function moveValve(state: StepState, recovery: Recovery): boolean {
  const wants = state.temperature < recovery.limit - (state.onPool ? 0 : recovery.band);
  const pumpRuns = recovery.onCall || state.pumpPart >= 1;
  const next = wants && pumpRuns;
  if (next === state.onPool || (pumpRuns && state.since < recovery.leastTime)) return state.onPool;
  state.onPool = next;
  state.since = 0;
  return next;
}

function stopMachine(state: StepState): void {
  state.servesPool = false;
  state.runShare = 0;
  state.extraPumpShare = 0;
  state.rejected = 0;
  state.heatToPool = 0;
  state.unmetLoad = 0;
  state.electricity = 0;
}

/** Serves the load from pool or outdoor coil, as the valve decides at the water's temperature. */
export function runMachine({ recovery, state }: Simulation, machine: Machine, hour: number): void {
  const load = machine.load[hour] ?? 0;
  if (load <= 0) {
    if (state.rejected !== 0) stopMachine(state);
    return;
  }
  const { poolCurve } = machine;
  const onPool = poolCurve !== undefined && recovery !== undefined && moveValve(state, recovery);
  const cooling = onPool ? coolingAt(poolCurve, state.temperature) : (machine.outdoorCooling[hour] ?? 0);
  const power = onPool ? powerAt(poolCurve, state.temperature) : (machine.outdoorPower[hour] ?? 0);
  const runShare = runShareFor(load, cooling, machine.cyclingLoss);
  const met = load < cooling ? load : cooling;
  // The outdoor fan's power leaves with the air, not with the refrigerant.
  const rejected = met + runShare * (power - (onPool ? 0 : machine.outdoorFan));
  state.servesPool = onPool;
  state.runShare = runShare;
  state.extraPumpShare = onPool ? runShare * (1 - state.pumpPart) : 0;
  state.rejected = rejected;
  state.heatToPool = onPool ? Math.max(0, rejected - runShare * recovery.lost) : 0;
  state.unmetLoad = load - met;
  state.electricity = runShare * power;
}
