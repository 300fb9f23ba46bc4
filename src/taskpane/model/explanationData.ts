/** A call's explanation as plain data, as it passes between a worker and the page. */
import type { Explanation } from "../../../core";
import { outcomeOf } from "../../functions/outcome";
import type { ExplainedCall } from "../jobs/job";
import { workingTree } from "./workingTree";

/** Lines of a working that are shown. */
const MOST_LINES = 200;

/** Everything but the pictures. */
export const explainedOf = ({ system, args, out, steps, cautions }: Explanation): ExplainedCall => ({
  system,
  args,
  outcome: outcomeOf(out),
  cautions,
  working: workingTree(steps, system, MOST_LINES),
  pictures: [],
});
