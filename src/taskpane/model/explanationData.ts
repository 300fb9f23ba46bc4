/** A call's explanation as plain data, for the way from worker to page. */
import type { Explanation } from "../../../core";
import { outcomeOf } from "../../functions/outcome";
import type { ExplainedCall } from "../jobs/job";
import { workingTree } from "./workingTree";

/** The most lines of a working that the panel shows. */
const MOST_LINES = 200;

/** Everything except the pictures. */
export const explainedOf = ({ system, args, out, steps, cautions }: Explanation): ExplainedCall => ({
  system,
  args,
  outcome: outcomeOf(out),
  cautions,
  working: workingTree(steps, system, MOST_LINES),
  pictures: [],
});
