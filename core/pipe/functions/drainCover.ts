import { block, quantity, type ValueOf } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { listResult, NO_VALUE, quantityResult, wordResult } from "../../kernel/define/result";
import { NOMINAL_SIZE, SCHEDULE } from "../args";
import { meanVelocity } from "../equations";
import { coverOverrated, drainCover as standing, fastSuction } from "../network/cautions";
import { flowOneBlocked, openAreaVelocity } from "../network/equations";
import { boreOf } from "../straight/bore";

const INPUTS = block(
  {
    flow: WATER_FLOW.describedAs("flow of the pump"),
    covers: quantity("count", "drain covers in parallel", { from: 1, to: 20, whole: true }),
    coverRating: WATER_FLOW.describedAs("flow marked on one cover").optional(),
    openArea: quantity("area", "open area of one cover", { above: 0 }).optional(),
    branchSize: NOMINAL_SIZE.describedAs("pipe of each drain").optional(),
    suctionSize: NOMINAL_SIZE.describedAs("pipe to the pump").optional(),
    schedule: SCHEDULE,
  },
  "input block: flow, covers, pipes",
);

function findingOf({ covers, coverRating }: ValueOf<typeof INPUTS>, blocked: number): string {
  if (covers === 1) return "single drain: a second means is needed";
  if (coverRating === undefined) return "no rating given";
  return blocked > coverRating ? "above the rating of a cover" : "within the rating of a cover";
}

export const pipeDrainCover = cellFunction({
  id: "PIPE.DRAINCOVER",
  topic: "pipe",
  summary: "Flow through each drain cover with one blocked, and suction velocities.",
  keywords: ["main drain", "suction outlet", "entrapment", "VGB", "APSP-16", "cover rating"],
  details: [
    "The whole pump flow goes through the drains, as with the skimmers shut. With one of n equal covers blocked the others share it: each must be marked for Q / (n − 1), two drains each for the whole flow.",
    "The flow marked on a cover is for floor or wall and for the pipe behind it; the pipe sets a second, often lower limit: 6 ft/s between drains and tee by common pool standards, 3 ft/s in some, 1.5 ft/s through a cover in some states' public pools.",
    "For a check before adding a bigger pump or a bypass, not for a design: covers expire, and local code and a licensed pool contractor decide.",
  ],
  args: { inputs: INPUTS },
  returns: listResult("flow through the covers", {
    flowPerCover: quantityResult("water flow", "through each cover, all open"),
    flowOneBlocked: quantityResult("water flow", "through each other, one blocked"),
    ratingMargin: quantityResult("fraction", "marked flow over that, less one"),
    coverVelocity: quantityResult("velocity", "through the cover, one blocked"),
    branchVelocity: quantityResult("velocity", "in a drain's pipe, one blocked"),
    trunkVelocity: quantityResult("velocity", "in the pipe to the pump"),
    finding: wordResult("flow against the rating"),
  }),
  facts: { coverRating: "water flow", suctionVelocity: "velocity" },
  cautions: [
    { rule: standing, raisedBy: { inputs: { flow: 60, covers: 2 } } },
    { rule: coverOverrated, raisedBy: { inputs: { flow: 60, covers: 2, coverRating: 40 } } },
    { rule: fastSuction, raisedBy: { inputs: { flow: 60, covers: 2, branchSize: "1-1/2 in" } } },
  ],
  checks: [
    {
      inputs: { inputs: { flow: 61.7, covers: 2, branchSize: "2 in" } },
      expected: { branchVelocity: 6, flowOneBlocked: 61.7 },
      tolerance: 0.02,
      source: "poolVelocityLimits",
      remark: "two drains: each for the whole flow",
    },
    {
      inputs: { inputs: { flow: 40, covers: 2, openArea: "12 in²" } },
      expected: { coverVelocity: 1.07 },
      tolerance: 0.005,
      source: "hydraulicsTexts",
      remark: "0.321 × gpm/in²",
    },
  ],
  compute({ inputs }, { trace, step, recordFacts }) {
    const { flow: Q, covers: n, coverRating, openArea, branchSize, suctionSize, schedule } = inputs;
    const q = n > 1 ? step(flowOneBlocked, { Q, n }) : Q;
    const speed = (size: string | undefined, flow: number): number | "" =>
      size === undefined ? NO_VALUE : step(meanVelocity, { Q: flow, D: boreOf(size, schedule, "average", trace) });
    const [branch, trunk] = [speed(branchSize, q), speed(suctionSize, Q)];
    recordFacts({
      ...(coverRating !== undefined && { coverRating }),
      suctionVelocity: Math.max(Number(branch), Number(trunk)),
    });
    return {
      flowPerCover: Q / n,
      flowOneBlocked: n > 1 ? q : NO_VALUE,
      ratingMargin: coverRating === undefined ? NO_VALUE : coverRating / q - 1,
      coverVelocity: openArea === undefined ? NO_VALUE : step(openAreaVelocity, { q, A: openArea }),
      branchVelocity: branch,
      trunkVelocity: trunk,
      finding: findingOf(inputs, q),
    };
  },
});
