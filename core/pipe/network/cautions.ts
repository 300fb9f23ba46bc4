/** Caution rules of the whole loop and of its pump. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

const SUCTION_LIMIT = us("velocity", 6);
const RETURN_LIMIT = us("velocity", 8);

export const fastSuction = caution({
  code: "PIPE-LOOP-FAST-SUCTION",
  severity: "Warning",
  source: "poolVelocityLimits",
  description: "Water faster than 6 ft/s in the suction lines.",
  needs: { suctionVelocity: "velocity" },
  when: ({ suctionVelocity }) => suctionVelocity > SUCTION_LIMIT,
  message: ({ suctionVelocity }, show) =>
    `Suction lines run at up to ${show(suctionVelocity, "velocity")}, above the ${show(SUCTION_LIMIT, "velocity")} of common pool standards (some editions: 8 ft/s): check which edition is law locally, use a larger pipe or less flow.`,
});

export const fastReturn = caution({
  code: "PIPE-LOOP-FAST-RETURN",
  severity: "Warning",
  source: "poolVelocityLimits",
  description: "Water faster than 8 ft/s in the return lines.",
  needs: { returnVelocity: "velocity" },
  when: ({ returnVelocity }) => returnVelocity > RETURN_LIMIT,
  message: ({ returnVelocity }, show) =>
    `Return lines run at up to ${show(returnVelocity, "velocity")}, above the ${show(RETURN_LIMIT, "velocity")} of common pool standards: check which edition is law locally, use a larger pipe or less flow.`,
});

export const drainCover = caution({
  code: "PIPE-DRAIN-COVER",
  severity: "Danger",
  standing: true,
  source: "vgbAct",
  description: "A change of pump, pipe or flow can exceed the rated flow of a drain cover: suction entrapment.",
  needs: {},
  when: () => true,
  message: () =>
    "Suction entrapment: check the flow against the rated flow of every drain and skimmer cover, with one of them blocked, whenever pump, speed, valves or pipe change. A single blockable drain needs a second means of protection. Local code and a licensed pool contractor decide.",
});

export const smallExchangerLoss = caution({
  code: "PIPE-LOOP-EXCHANGER-LOSS",
  severity: "Caution",
  source: "hydraulicsTexts",
  description: "An exchanger loses less than its ports would.",
  needs: { exchangerLoss: "head", portsLoss: "head" },
  when: ({ exchangerLoss, portsLoss }) => exchangerLoss < portsLoss,
  message: ({ exchangerLoss, portsLoss }, show) =>
    `The exchanger's ${show(exchangerLoss, "head")} is less than two 3 in ports lose (${show(portsLoss, "head")}): the bundle's only? Use the maker's drop, or EXCHANGER.COIL's "water drop".`,
});

export const coverOverrated = caution({
  code: "PIPE-COVER-RATING",
  severity: "Danger",
  source: "vgbAct",
  description: "With one cover blocked the others exceed their marked flow.",
  needs: { flowOneBlocked: "water flow", coverRating: "water flow" },
  when: ({ flowOneBlocked, coverRating }) => flowOneBlocked > coverRating,
  message: ({ flowOneBlocked, coverRating }, show) =>
    `With one cover blocked each of the others carries ${show(flowOneBlocked, "water flow")}, marked for ${show(coverRating, "water flow")}: entrapment. Reduce flow or add covers.`,
});

export const cleanFilter = caution({
  code: "PIPE-LOOP-FILTER",
  severity: "Notice",
  source: "filterNotes",
  description: "A clean filter's loss rises by 8 to 10 psi until it is cleaned.",
  needs: { cleanFilter: "yes/no" },
  when: ({ cleanFilter }) => cleanFilter,
  message: (_, show) =>
    `The filter row does not say "dirty": before cleaning it loses ${show(us("head", 18.5), "head")} to ${show(us("head", 23), "head")} more than clean. Run the loop with each: the lower flow must still suit exchanger and flow switch.`,
});

export const unstableCurve = caution({
  code: "PIPE-UNSTABLE-PUMP-CURVE",
  severity: "Warning",
  source: "hydraulicsTexts",
  description: "A pump curve that rises at first can meet the system twice.",
  needs: { otherFlow: "water flow" },
  when: () => true,
  message: ({ otherFlow }, show) =>
    `The pump curve rises at first and meets the system at ${show(otherFlow, "water flow")} too: below that flow the pump may not start moving water. The answer is the stable point at more flow.`,
});

export const endOfCurve = caution({
  code: "PIPE-END-OF-PUMP-CURVE",
  severity: "Caution",
  source: "commonPractice",
  description: "The pump works near the end of its curve.",
  needs: { placeOnCurve: "fraction", flow: "water flow" },
  when: ({ placeOnCurve }) => placeOnCurve > 0.9,
  message: ({ flow }, show) =>
    `${show(flow, "water flow")} is in the last tenth of the pump curve: required suction head is highest there and the motor may be overloaded. Check PIPE.NPSH against the maker's requirement, or throttle.`,
});

export const slowPump = caution({
  code: "PIPE-SLOW-PUMP",
  severity: "Caution",
  source: "commonPractice",
  description: "The pump runs far below full speed.",
  needs: { speed: "number", flow: "water flow" },
  when: ({ speed }) => speed < 0.5,
  message: ({ speed, flow }, show) =>
    `At ${Math.round(speed * 100)} % of the curve's speed (${show(flow, "water flow")}) check that the flow switch closes, that the exchanger has its least flow, and that the filter works. The affinity laws ignore losses of motor and drive.`,
});
