/** The losses as rows of a table: kind, W, share. */
import { NO_VALUE } from "../../kernel/result";
import type { PoolLosses } from "./losses";

export interface LossRow {
  readonly loss: string;
  readonly heatRate: number | typeof NO_VALUE;
  readonly share: number | typeof NO_VALUE;
}

/** Shares are of the sum of all losses, before sun and cover; none where nothing is lost. */
export const lossRows = (found: PoolLosses): readonly LossRow[] => {
  const entries = [
    ["evaporation", found.evaporation],
    ["convection", found.convection],
    ["sky radiation", found.radiation],
    ["ground", found.ground],
    ["make-up water", found.makeUp],
    ["sun gained", found.sun],
    ["cover effect", found.cover],
    ["surface rule", found.surfaceRule],
    ["net", found.net],
  ] as const;
  const losing = [found.evaporation, found.convection, found.radiation, found.surfaceRule, found.ground, found.makeUp];
  const lost = losing.reduce<number>((sum, heat) => sum + Math.max(heat ?? 0, 0), 0);
  return entries.map(([loss, heat]) => ({
    loss,
    heatRate: heat ?? NO_VALUE,
    share: heat === undefined || !(lost > 0) ? NO_VALUE : heat / lost,
  }));
};
