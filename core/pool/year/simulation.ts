/** The records that one run through the hours reads and writes. Nothing else is allocated while it runs. */
import { emptyLosses, type Losses } from "./lossesAt";
import type { Machine } from "./machine";
import type { PoolYear } from "./results";
import type { PoolRun, Recovery, Tank } from "./run";
import { startState, type State, type StepState } from "./state";
import { emptyTally, type Tally } from "./sums";

export interface Simulation {
  readonly run: PoolRun;
  readonly machine: Machine | undefined;
  /** Recovery by the pool: undefined where the machine has no exchanger on it. */
  readonly recovery: Recovery | undefined;
  /** Undefined where the machine has no exchanger on it. */
  readonly tank: Tank | undefined;
  readonly state: StepState;
  /** At the start of the step. */
  readonly losses: Losses;
  /** Of the month that runs. */
  readonly tally: Tally;
  /** What the run is added to. */
  readonly year: PoolYear;
}

/** A run at its start; its results go into a year's arrays. */
export function simulationOf(run: PoolRun, start: State, year: PoolYear): Simulation {
  const { machine } = run;
  return {
    run,
    machine,
    recovery: machine?.poolCurve && run.recovery,
    tank: machine?.tankCurve && run.tank,
    state: startState(start),
    losses: emptyLosses(),
    tally: emptyTally(),
    year,
  };
}
