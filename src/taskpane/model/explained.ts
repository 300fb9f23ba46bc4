/** A call's explanation as plain data, as it passes between a worker and the page. */
import type { Explanation } from "../../../core";
import { outcomeOf } from "../../functions/outcome";
import type { Explained } from "../runs/job";
import { workingTree } from "./tree";

/** Lines of a working that are shown. */
const MOST_LINES = 200;

/** Everything but the pictures. */
export const explainedOf = ({ system, args, out, steps, cautions }: Explanation): Explained => ({
  system,
  args,
  outcome: outcomeOf(out),
  cautions,
  working: workingTree(steps, system, MOST_LINES),
  pictures: [],
});
