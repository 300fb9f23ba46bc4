/** Caution rules of an exchanger whose water has stopped. */
import { caution } from "../../kernel/define/caution";

export const flowProof = caution({
  code: "EXCHANGER-STOP-FLOW-PROOF",
  severity: "Danger",
  source: "commonPractice",
  description:
    "Standing water reaches the plastic's limit in less than a minute or two: flow must be proven, not temperature.",
  needs: { secondsToLimit: "seconds" },
  when: () => true,
  message: ({ secondsToLimit }, show) =>
    `Standing water reaches the plastic's limit in ${show(secondsToLimit, "seconds")}: scald and burst. A flow switch must stop the hot gas at once; a temperature sensor or a valve of 30 s is the second line only. The gas-inlet spot is hotter than this mean.`,
});

export const cutOutTooLate = caution({
  code: "EXCHANGER-STOP-CUT-OUT",
  severity: "Danger",
  source: "stopFlowRows",
  description: "The high-pressure cut-out trips only after the water has passed the plastic's limit.",
  needs: { waterAtCutOut: "temperature", limit: "temperature" },
  when: ({ waterAtCutOut, limit }) => waterAtCutOut >= limit,
  message: ({ waterAtCutOut, limit }, show) =>
    `The cut-out trips with the water at ${show(waterAtCutOut, "temperature")}, past the plastic's ${show(limit, "temperature")}: it guards the machine, not the pipe. A lower cut-out, or a leaving-water limit that acts fast enough.`,
});

export const shutIn = caution({
  code: "EXCHANGER-STOP-SHUT-IN",
  severity: "Danger",
  standing: true,
  source: "commonPractice",
  description: "Water between two shut valves bursts the exchanger as it warms.",
  needs: {},
  when: () => true,
  message: () =>
    "Never two shut valves around the exchanger without relief: shut-in water gains about 50 psi per °F in a rigid shell. Water heater codes and the maker's manual decide on stubs and relief; a licensed mechanic does the work.",
});
