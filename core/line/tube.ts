/** Copper tube from its dimension table. */
import { us } from "../kernel/values/quantity";
import { silent, type Trace } from "../kernel/define/steps";
import { COPPER_TUBE } from "./data/copperTube";
import { tubeBore } from "./equations";

/** Bore in m of a nominal size of the table. */
export const boreOfTube = (size: string, trace: Trace = silent): number => {
  const row = COPPER_TUBE.find((each) => each.size === size);
  if (!row) throw new Error(`no copper tube ${size}`);
  if (trace.on)
    trace.lookup({
      table: "Copper tube, wall",
      row: `${size}, ${row.temper}`,
      result: { value: us("diameter", row.wall), kind: "diameter" },
      source: "astmB280",
    });
  return trace.step(tubeBore, { Do: us("diameter", row.outside), w: us("diameter", row.wall) });
};
