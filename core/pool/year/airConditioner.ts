/** A step of the air conditioner: where the valve sends its heat, and what the machine gives there. */
import type { Machine } from "./machine";
import { meetLoad } from "./partLoad";
import type { Recovery } from "./run";
import type { Simulation } from "./simulation";
import type { StepState } from "./state";

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
  const onPool = recovery !== undefined && moveValve(state, recovery);
  const { partLoad } = state;
  meetLoad(machine, load, hour, onPool ? "pool" : "outdoors", state.temperature, partLoad);
  const { met, runShare, electricity, rejected } = partLoad;
  state.servesPool = onPool;
  state.runShare = runShare;
  state.extraPumpShare = onPool ? runShare * (1 - state.pumpPart) : 0;
  state.rejected = rejected;
  state.heatToPool = onPool ? Math.max(0, rejected - runShare * recovery.lost) : 0;
  state.unmetLoad = load - met;
  state.electricity = electricity;
}
