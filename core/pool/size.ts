/** Area and volume of a pool by its outline. */
import { mend } from "../kernel/fault";
import { silent, type Trace } from "../kernel/steps";
import { told } from "../numeric/told";
import { kidneyArea, ovalArea, rectangleArea } from "./equations";

export type PoolShape = "rectangle" | "oval" | "round" | "kidney";

/** Water surface, m². `widths`: one, for a kidney two (m); for a round pool the diameter once more. */
export const areaOfShape = (
  shape: PoolShape,
  length: number,
  widths: readonly number[],
  trace: Trace = silent,
): number => {
  const [first = 0, second] = widths;
  if (shape === "kidney") {
    if (second === undefined) throw mend('width: a kidney needs both its widths, as "12; 16 ft", got one');
    return trace.step(kidneyArea, { W1: first, W2: second, L: length });
  }
  if (second !== undefined) throw mend(`width: expected one value for shape "${shape}", got 2: only a kidney has two`);
  if (shape === "rectangle") return trace.step(rectangleArea, { L: length, W: first });
  if (shape === "round" && Math.abs(first - length) > 1e-6 * length)
    throw mend(
      `width: must equal length for shape "round" (both are the diameter, ${told("length", length)}), got ${told("length", first)}: use "oval"`,
    );
  return trace.step(ovalArea, { L: length, W: first });
};
