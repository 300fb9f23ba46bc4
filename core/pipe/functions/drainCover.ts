import { block, quantity, type ValueOf } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { WATER_FLOW } from "../../kernel/glossary";
import { list, NO_VALUE, of, word } from "../../kernel/result";
import { NOMINAL_SIZE, SCHEDULE } from "../args";
import { meanVelocity } from "../equations";
import { coverOverrated, drainCover as standing, fastSuction } from "../loopCautions";
import { flowOneBlocked, openAreaVelocity } from "../loopEquations";
import { boreOf } from "../models/bore";

const INPUTS = block(
  {
    flow: WATER_FLOW.saying("flow of the pump"),
    covers: quantity("count", "drain covers in parallel", { from: 1, to: 20, whole: true }),
    coverRating: WATER_FLOW.saying("flow marked on one cover").optionally(),
    openArea: quantity("area", "open area of one cover", { above: 0 }).optionally(),
    branchSize: NOMINAL_SIZE.saying("pipe of each drain").optionally(),
    suctionSize: NOMINAL_SIZE.saying("pipe to the pump").optionally(),
    schedule: SCHEDULE,
  },
  "input block: flow, covers, pipes",
);

function findingOf({ covers, coverRating }: ValueOf<typeof INPUTS>, blocked: number): string {
  if (covers === 1) return "single drain: a second means is needed";
  if (coverRating === undefined) return "no rating given";
  return blocked > coverRating ? "above the rating of a cover" : "within the rating of a cover";
}

export const drainCover = cellFunction({
  id: "PIPE.DRAINCOVER",
  topic: "pipe",
  summary: "Flow through each drain cover with one blocked, and suction velocities.",
  finds: ["main drain", "suction outlet", "entrapment", "VGB", "APSP-16", "cover rating"],
  remarks: [
    "The whole flow of the pump is taken through the drains, as with the skimmers shut. With one of n like covers blocked the others share it: each is to be marked for Q / (n − 1), two drains each for all of it.",
    "The flow marked on a cover holds for floor or wall and for the pipe behind it; the pipe is a second, often lower limit: 6 ft/s between drains and tee by common pool standards, 3 ft/s in some, 1.5 ft/s through a cover in some states' public pools.",
    "For a check before a bigger pump or a bypass goes in, not for a design: covers expire, and local code and a licensed pool contractor decide.",
  ],
  args: { inputs: INPUTS },
  gives: list("flow through the covers", {
    flowPerCover: of("water flow", "through each cover, all open"),
    flowOneBlocked: of("water flow", "through each other, one blocked"),
    ratingMargin: of("fraction", "marked flow over that, less one"),
    coverVelocity: of("velocity", "through the cover, one blocked"),
    branchVelocity: of("velocity", "in a drain's pipe, one blocked"),
    trunkVelocity: of("velocity", "in the pipe to the pump"),
    finding: word("flow beside the rating"),
  }),
  facts: { coverRating: "water flow", suctionVelocity: "velocity" },
  cautions: [
    { rule: standing, fires: { inputs: { flow: 60, covers: 2 } } },
    { rule: coverOverrated, fires: { inputs: { flow: 60, covers: 2, coverRating: 40 } } },
    { rule: fastSuction, fires: { inputs: { flow: 60, covers: 2, branchSize: "1-1/2 in" } } },
  ],
  checks: [
    {
      at: { inputs: { flow: 61.7, covers: 2, branchSize: "2 in" } },
      gives: { branchVelocity: 6, flowOneBlocked: 61.7 },
      within: 0.02,
      from: "poolVelocityLimits",
      remark: "two drains: each for the whole flow",
    },
    {
      at: { inputs: { flow: 40, covers: 2, openArea: "12 in²" } },
      gives: { coverVelocity: 1.07 },
      within: 0.005,
      from: "hydraulicsTexts",
      remark: "0.321 × gpm/in²",
    },
  ],
  work({ inputs }, { trace, step, note }) {
    const { flow: Q, covers: n, coverRating, openArea, branchSize, suctionSize, schedule } = inputs;
    const q = n > 1 ? step(flowOneBlocked, { Q, n }) : Q;
    const speed = (size: string | undefined, flow: number): number | "" =>
      size === undefined ? NO_VALUE : step(meanVelocity, { Q: flow, D: boreOf(size, schedule, "average", trace) });
    const [branch, trunk] = [speed(branchSize, q), speed(suctionSize, Q)];
    note({
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
