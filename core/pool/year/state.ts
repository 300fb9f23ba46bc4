/** The state of one pool with its machine and tank while the hours run. */
import { emptyPartLoad, type PartLoad } from "./partLoad";

/** What a pool carries from step to step. */
export interface State {
  /** Water of the pool, K. */
  readonly temperature: number;
  /** Heat that would melt its ice, J/m². */
  readonly ice: number;
  /** Whether the valve sends the machine's heat to the pool. */
  readonly onPool: boolean;
  /** Time since the valve moved, s. */
  readonly since: number;
  /** Water of the preheat tank, K. */
  readonly tank: number;
}

/** The state carried on, and the answers of the step that runs. Rates are means over the step. */
export interface StepState {
  temperature: number;
  ice: number;
  onPool: boolean;
  since: number;
  tank: number;

  /** Part of the hour in which the pump runs by its schedule. */
  pumpPart: number;
  /** Length of the step, s. */
  duration: number;
  /** Net heat of the pool at the start of the step, W/m². */
  netHeat: number;
  /** Of the pump, W, and of the back-up heater, W/m². */
  pumpHeat: number;
  backUp: number;
  /** Mean of the pool's temperature over the step, above that at its start, K. */
  meanRise: number;
  /** Integral of the pool's temperature over the hour, K·s. */
  warmth: number;

  /** How the machine met the last load. */
  readonly partLoad: PartLoad;
  /** Whether the machine, while it runs on pool or outdoor coil, serves the pool. */
  servesPool: boolean;
  /** Share of the step in which it runs on pool or outdoor coil. */
  runShare: number;
  /** Share of the step in which the pump runs for it, beyond its schedule. */
  extraPumpShare: number;
  /** Heat rejected in all, of that to the pool, and load not met, W. */
  rejected: number;
  heatToPool: number;
  unmetLoad: number;
  /** Its electricity, W. */
  electricity: number;

  /** Heat that the tank takes from the machine, W, and share of the step in which the machine runs on it. */
  heatToTank: number;
  tankRunShare: number;
  /** Mean of the tank's temperature over the step, K. */
  tankMean: number;
  /** Heat that the draw takes out of the tank, and that it loses to the air around it, W. */
  heatDrawn: number;
  tankLoss: number;
  /** Net heat of the tank without the machine at the start of the step, W. */
  tankIdleHeat: number;
  /** What each watt through the step adds to the tank's temperature at its end, and to its mean, K/W. */
  tankGain: number;
  tankMeanGain: number;
}

export const startState = ({ temperature, ice, onPool, since, tank }: State): StepState => ({
  temperature,
  ice,
  onPool,
  since,
  tank,
  pumpPart: 0,
  duration: 0,
  netHeat: 0,
  pumpHeat: 0,
  backUp: 0,
  meanRise: 0,
  warmth: 0,
  partLoad: emptyPartLoad(),
  servesPool: false,
  runShare: 0,
  extraPumpShare: 0,
  rejected: 0,
  heatToPool: 0,
  unmetLoad: 0,
  electricity: 0,
  heatToTank: 0,
  tankRunShare: 0,
  tankMean: 0,
  heatDrawn: 0,
  tankLoss: 0,
  tankIdleHeat: 0,
  tankGain: 0,
  tankMeanGain: 0,
});

/** What goes on to the next hour, or the next year. */
export const carriedBy = ({ temperature, ice, onPool, since, tank }: StepState): State => ({
  temperature,
  ice,
  onPool,
  since,
  tank,
});
