/** A pool's network as read from its rows, and as solved. */
import type { Grid, GridFlows } from "../../numeric/gradientNetwork";
import type { ReadLink, WaterInPipes } from "./gridRead";
import type { LinkRow } from "./networkArgs";

export type PadGrid = Grid<ReadLink>;

export interface Network {
  readonly nodes: readonly string[];
  /** m */
  readonly heights: readonly number[];
  readonly links: readonly ReadLink[];
  /** Rows of vacuum breakers, with their nodes. */
  readonly breakers: readonly { readonly row: LinkRow; readonly node: number }[];
  readonly grid: PadGrid;
  readonly properties: WaterInPipes;
  /** Whether zeros among the openings counted as blank cells. */
  readonly zerosAreBlank: boolean;
}

export interface SolvedNetwork extends GridFlows {
  readonly breakerStates: readonly BreakerState[];
  /** Links that run part full below an open breaker. */
  readonly partFull: ReadonlySet<number>;
}

export interface BreakerState {
  readonly open: boolean;
  /** Gauge head at the node with the loop full, m. */
  readonly fullHead: number;
}
