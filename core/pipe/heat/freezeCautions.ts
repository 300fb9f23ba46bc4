/** Caution rules of water that freezes. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

export const drainDown = caution({
  code: "PIPE-FREEZE-DRAIN",
  severity: "Danger",
  standing: true,
  source: "gordon1996",
  description: "Water shut in by ice bursts pipe, coil and shell: drain them.",
  needs: {},
  when: () => true,
  message: () =>
    "Before frost drain pipes, pump, filter and exchanger by their plugs and blow out the coil, which keeps water below its ports. Water shut in by ice can pass 3,000 psi; plastic shatters. Insulation only delays. The makers' instructions govern.",
});

export const coldNight = caution({
  code: "PIPE-FREEZE-NIGHT",
  severity: "Warning",
  source: "commonPractice",
  description: "Ice begins within a night of 14 hours without flow.",
  needs: { untilFreezing: "time" },
  when: ({ untilFreezing }) => untilFreezing < us("time", 14),
  message: ({ untilFreezing }, show) =>
    `Standing water begins to freeze after ${show(untilFreezing, "time")}, within a night without power: drain it.`,
});

export const trickleNeedsPower = caution({
  code: "PIPE-FREEZE-TRICKLE",
  severity: "Caution",
  source: "commonPractice",
  description: "A trickle protects only while it flows through every branch.",
  needs: { trickle: "water flow" },
  when: () => true,
  message: ({ trickle }, show) =>
    `A flow of ${show(trickle, "water flow")} protects only where it runs, so through every branch, and ends with the power. Start it by the outdoor air, above freezing.`,
});

export const stillAirOnly = caution({
  code: "PIPE-FREEZE-WIND",
  severity: "Notice",
  source: "freezeRows",
  description: "Wind shortens the time of a bare pipe to about a third.",
  needs: { wind: "wind speed", insulation: "diameter" },
  when: ({ wind, insulation }) => wind === 0 && insulation === 0,
  message: (_, show) =>
    `Still air: in a wind of ${show(us("wind speed", 15), "wind speed")} it takes about a third of the time.`,
});
