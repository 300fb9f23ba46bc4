/** Caution rules of a network. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

export const backwardsFlow = caution({
  code: "PIPE-NETWORK-BACKWARDS",
  severity: "Warning",
  source: "commonPractice",
  description: "Water runs against the direction in which a row was drawn.",
  needs: { backwards: "word" },
  when: () => true,
  message: ({ backwards }) =>
    `"${backwards}" runs backwards: a filter or heater must never; a raised spa drains. If it is not drawn the wrong way round, it needs a check valve.`,
});

export const cavitatingPump = caution({
  code: "PIPE-NETWORK-SUCTION",
  severity: "Warning",
  source: "hydraulicsTexts",
  description: "A pump lacks suction head: it cavitates, and the flow is not real.",
  needs: { leastSuctionHead: "head", neededHead: "head" },
  when: ({ leastSuctionHead, neededHead }) => leastSuctionHead < neededHead + us("head", 2),
  message: ({ leastSuctionHead, neededHead }, show) =>
    `A pump has ${show(leastSuctionHead, "head")} of suction head, needs ${show(neededHead, "head")} (assumed if not given) and a margin of ${show(us("head", 2), "head")}: it would cavitate, and this flow is not real. Larger suction pipe, less lift or less speed.`,
});

export const openBreaker = caution({
  code: "PIPE-NETWORK-BREAKER",
  severity: "Warning",
  source: "networkRows",
  description: "A roof loop can't stay full: its vacuum breaker opens.",
  needs: { breakerAt: "word" },
  when: () => true,
  message: ({ breakerAt }) =>
    `The loop over "${breakerAt}" can't stay full at this speed: its vacuum breaker opens, air enters, and the pump lifts against the whole height. More speed, or a throttle in the downcomer, keeps it full.`,
});

export const vacuumAtNode = caution({
  code: "PIPE-NETWORK-VACUUM",
  severity: "Caution",
  source: "commonPractice",
  description: "A node lies far below the air's pressure.",
  needs: { lowestPressure: "pressure drop" },
  when: ({ lowestPressure }) => lowestPressure < us("pressure drop", -7),
  message: ({ lowestPressure }, show) =>
    `A node lies at ${show(lowestPressure, "pressure drop")} gauge: strainer lids and unions draw air, a siphon's crest may boil.`,
});

export const pumpHeldShut = caution({
  code: "PIPE-NETWORK-NO-FLOW",
  severity: "Warning",
  source: "hydraulicsTexts",
  description: "A pump turns without flow: its head is below the lift.",
  needs: { pumpWithoutFlow: "word" },
  when: () => true,
  message: ({ pumpWithoutFlow }) =>
    `"${pumpWithoutFlow}" turns without flow: its head doesn't reach the height. The water in it heats.`,
});

export const beyondPumpCurve = caution({
  code: "PIPE-NETWORK-BEYOND-CURVE",
  severity: "Caution",
  source: "hydraulicsTexts",
  description: "A pump runs at more flow than its curve shows.",
  needs: { beyondCurve: "word" },
  when: () => true,
  message: ({ beyondCurve: name }) =>
    `"${name}" runs beyond its curve, which is drawn on in a straight line: get more points.`,
});

export const risingCurve = caution({
  code: "PIPE-NETWORK-RISING-CURVE",
  severity: "Caution",
  source: "hydraulicsTexts",
  description: "A pump curve rises at first.",
  needs: { risingCurve: "word" },
  when: () => true,
  message: ({ risingCurve: name }) =>
    `The curve of "${name}" rises at first: there may be a second flow below this one, at which the pump hunts.`,
});

export const transitionInNetwork = caution({
  code: "PIPE-NETWORK-TRANSITION",
  severity: "Notice",
  source: "epanet22",
  description: "A pipe runs between laminar and turbulent flow.",
  needs: { between: "word" },
  when: () => true,
  message: ({ between }) =>
    `"${between}" runs between Reynolds numbers 2,000 and 4,000: its friction may be off by a third, and differs from PIPE.LOOP's.`,
});

export const blankOpenings = caution({
  code: "PIPE-NETWORK-BLANK-OPENING",
  severity: "Notice",
  source: "identity",
  description: "Openings of 0 counted as blank cells.",
  needs: { zerosAreBlank: "yes/no" },
  when: () => true,
  message: () =>
    "Openings of 0 count as blank cells, so as open, since the pump rows (or all rows) have one too. TRUE in the column shut shuts a valve.",
});

export const coarseSetting = caution({
  code: "PIPE-VALVE-COARSE",
  severity: "Caution",
  source: "valveTexts",
  description: "A valve nearly shut controls badly.",
  needs: { opening: "fraction" },
  when: ({ opening }) => opening < 0.1,
  message: ({ opening }) =>
    `The valve is only ${(100 * opening).toFixed(0)} % open: it controls badly there and wears. A smaller one opens further.`,
});

export const flowBelowNeed = caution({
  code: "PIPE-SPEEDS-LOW-FLOW",
  severity: "Warning",
  source: "flowSwitchNotes",
  description: "A speed gives less than the least flow.",
  needs: { shortFlow: "water flow", neededFlow: "water flow" },
  when: () => true,
  message: ({ shortFlow, neededFlow }, show) =>
    `A speed gives ${show(shortFlow, "water flow")}, its least flow is ${show(neededFlow, "water flow")}: what needs it stops or feeds into standing water. Leave a margin for a dirty filter and an open bypass.`,
});

const TURNOVER_LIMIT = us("time", 6);

export const slowestTurnoverAtSpeed = caution({
  code: "PIPE-SPEEDS-TURNOVER",
  severity: "Notice",
  source: "commonPractice",
  description: "A turnover takes more than the 6 hours of public pools.",
  needs: { slowestTurnover: "time" },
  when: ({ slowestTurnover }) => slowestTurnover > TURNOVER_LIMIT,
  message: ({ slowestTurnover }, show) =>
    `The slowest speed turns the pool over in ${show(slowestTurnover, "time")}; public pools commonly need ${show(TURNOVER_LIMIT, "time")}. The health code decides.`,
});

export const speedLosses = caution({
  code: "PIPE-SPEEDS-EFFICIENCY",
  severity: "Notice",
  source: "sarbuBorza",
  description: "Power at low speed is an estimate.",
  needs: { lowestSpeed: "number" },
  when: ({ lowestSpeed }) => lowestSpeed < 0.6,
  message: () =>
    "Power at low speed is an estimate: losses of motor, seal and drive fall less than the affinity laws say. Use measured watts if there are any.",
});
