/** Copper tube from its dimension table. */
import { notAvailable } from "../kernel/values/fault";
import { us } from "../kernel/values/quantity";
import { silent, type Trace } from "../kernel/define/steps";
import { COPPER_TUBE, type CopperTube } from "./data/copperTube";
import { tubeBore } from "./equations";

/** How the tube is sold: annealed in coils, or drawn in straight lengths. */
export type TubeForm = "coil" | "straight";

function rowOf(size: string): CopperTube {
  const row = COPPER_TUBE.find((each) => each.size === size);
  if (!row) throw new Error(`no copper tube ${size}`);
  return row;
}

/** Coils if the size is sold in coils, else straight lengths. */
export function usualForm(size: string): TubeForm {
  return rowOf(size).coil === undefined ? "straight" : "coil";
}

/** Outside diameter and wall, m, of a nominal size in its usual form. */
export function sizesOfTube(size: string): { readonly outside: number; readonly wall: number } {
  const row = rowOf(size);
  return { outside: us("diameter", row.outside), wall: us("diameter", row[usualForm(size)] ?? 0) };
}

/** Bore in m of a nominal size of the table. */
export function boreOfTube(size: string, trace: Trace = silent, form: TubeForm = usualForm(size)): number {
  const row = rowOf(size);
  const inches = row[form];
  if (inches === undefined)
    throw notAvailable(
      form === "coil"
        ? `size: ${size} is not sold in coils: ask for form "straight"`
        : `size: no straight length of ${size} is listed: ask for form "coil"`,
    );
  const w = us("diameter", inches);
  if (trace.on)
    trace.lookup({
      table: "Copper tube, wall",
      row: `${size}, ${form === "coil" ? "annealed coil" : "drawn straight length"}`,
      result: { value: w, kind: "diameter" },
      source: "astmB280",
    });
  return trace.step(tubeBore, { Do: us("diameter", row.outside), w });
}
