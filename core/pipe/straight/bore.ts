/** The bore of PVC pipe from its dimension table. */
import { us } from "../../kernel/values/quantity";
import { silent, type Trace } from "../../kernel/define/steps";
import { PVC_PIPE, type PvcPipe } from "../data/pvcPipe";
import { boreByWall } from "../equations";

export type Schedule = "40" | "80";
export type BoreRule = "average" | "minimum wall";

const BY_NAME: ReadonlyMap<string, PvcPipe> = new Map(PVC_PIPE.map((each) => [`${each.size}|${each.schedule}`, each]));

/** The table's row; it lists every size in both schedules. */
export const pvcPipe = (size: string, schedule: Schedule): PvcPipe => {
  const row = BY_NAME.get(`${size}|${schedule}`);
  if (!row) throw new Error(`no PVC pipe ${size} Schedule ${schedule}`);
  return row;
};

/** Bore in m: the published average, or outside diameter less two minimum walls. */
export const boreOf = (size: string, schedule: Schedule, rule: BoreRule, trace: Trace = silent): number => {
  const row = pvcPipe(size, schedule);
  if (rule === "minimum wall") {
    const x = { Do: us("diameter", row.outside), w: us("diameter", row.wall) };
    return trace.step(boreByWall, x);
  }
  const bore = us("diameter", row.averageBore);
  if (trace.on)
    trace.lookup({
      table: "PVC pipe, average bore",
      row: `${size}, Schedule ${schedule}`,
      result: { value: bore, kind: "diameter" },
      source: "astmD1785",
    });
  return bore;
};
