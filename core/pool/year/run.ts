/** What is given for the run of one pool through the hours: the pool, its machine, and what takes or gives heat. */
import type { Machine } from "./machine";
import type { YearSurface } from "./surface";

/** How the machine's heat is let into the pool. */
export interface Recovery {
  /** The pool gets no more heat above this, K, and again this far below, K. */
  readonly limit: number;
  readonly band: number;
  /** Least time between two moves of the valve, s. */
  readonly leastTime: number;
  /** Whether the machine may start the pump outside its hours. */
  readonly onCall: boolean;
  /** Heat that pipes lose while the machine runs on the pool, W. */
  readonly lost: number;
}

export interface Pump {
  /** Part of each hour of the day in which the pump runs by its schedule; of several speeds, its share of full power. */
  readonly schedule: Float64Array;
  /** W, and what of it warms the water, W. */
  readonly power: number;
  readonly heat: number;
}

/** Back-up heat that keeps the pool from falling below `set` (K), at most `most` (W/m²), in some months. */
export interface BackUp {
  readonly set: number;
  readonly most: number;
  readonly months: readonly boolean[];
}

export type TankOrder = "pool first" | "tank first";

/** A mixed preheat tank that takes the machine's heat beside the pool. */
export interface Tank {
  /** Which of pool and tank is served first. */
  readonly order: TankOrder;
  /** J/K */
  readonly capacity: number;
  /** W/K to the air around it, K. */
  readonly loss: number;
  readonly around: number;
  /** It gets no heat above this, K. */
  readonly limit: number;
  /** Heat capacity rate of the water drawn, W/K, by the hour of the day. */
  readonly draw: Float64Array;
  /** Its circulating pump, W, while it takes heat. */
  readonly pump: number;
}

export interface PoolRun {
  readonly surface: YearSurface;
  /** m² */
  readonly area: number;
  /** J/(m²·K) of the water below a square metre of surface. */
  readonly capacity: number;
  readonly pump: Pump;
  readonly machine: Machine | undefined;
  readonly recovery: Recovery | undefined;
  readonly tank?: Tank | undefined;
  readonly backUp: BackUp | undefined;
  /** Heat from elsewhere, W/m² by hour. */
  readonly extra?: Float64Array;
  /** Freezing point, K. Set lower to switch ice off when comparing with models that ignore it. */
  readonly freezing: number;
  /** Steps in an hour; left out: as many as the hour needs. */
  readonly steps?: number;
}
