/** Caution rules of two condensers on one charge. */
import { caution } from "../../kernel/define/caution";

export const checkValves = caution({
  code: "LINE-CHARGE-CHECK-VALVES",
  severity: "Warning",
  source: "commonPractice",
  description: "Two condensers on one charge: a check valve at each outlet, the idle one bled to suction.",
  needs: { worstShortage: "mass" },
  when: () => true,
  message: ({ worstShortage }, show) =>
    `Fit a check valve at each condenser's outlet and bleed the idle condenser to the suction line: without them refrigerant gathers in the colder, idle one, up to ${show(worstShortage, "mass")} more than it holds as vapour, and the running circuit starves.`,
});

export const idleHoldsWholeCharge = caution({
  code: "LINE-CHARGE-ALL-IDLE",
  severity: "Warning",
  source: "commonPractice",
  description: "An idle condenser has room for the whole charge.",
  needs: { fullOutdoorCoil: "mass", fullPoolExchanger: "mass", newCharge: "mass" },
  when: ({ fullOutdoorCoil, fullPoolExchanger, newCharge }) => Math.max(fullOutdoorCoil, fullPoolExchanger) > newCharge,
  message: ({ fullOutdoorCoil, fullPoolExchanger, newCharge }, show) =>
    `An idle condenser has room for ${show(Math.max(fullOutdoorCoil, fullPoolExchanger), "mass")} of liquid: without a bleed it may take the whole charge of ${show(newCharge, "mass")}. Check volumes and nameplate.`,
});

export const trappedLiquid = caution({
  code: "LINE-CHARGE-TRAPPED",
  severity: "Danger",
  standing: true,
  source: "commonPractice",
  description: "No section that can be shut off at both ends may trap liquid without relief.",
  needs: {},
  when: () => true,
  message: () =>
    "Between valves, solenoids and check valves no section may trap liquid without a relief: trapped liquid that warms bursts pipe and valve within minutes. Draw the circuit in every position of the diverting valve and look for such sections; a licensed designer and the local code govern.",
});

export const bothModes = caution({
  code: "LINE-CHARGE-BOTH-MODES",
  severity: "Caution",
  standing: true,
  source: "commonPractice",
  description: "The nameplate charge changes, and the charge must be verified in both modes.",
  needs: { difference: "mass" },
  when: () => true,
  message: ({ difference }, show) =>
    `Pool mode needs ${show(Math.abs(difference), "mass")} ${difference >= 0 ? "more" : "less"} than outdoor mode: verify superheat and subcooling in BOTH modes, in warm and in mild weather. The nameplate charge changes: put a new label with the total on the machine, check it against the compressor maker's charge limit (accumulator, crankcase heater) and, for class 2L, the room's limit.`,
});

export const holdUpEstimated = caution({
  code: "LINE-CHARGE-ESTIMATE",
  severity: "Notice",
  standing: true,
  source: "zivi1964",
  description: "Hold-up of a condenser by void fraction and assumed shares is an estimate.",
  needs: { gasShare: "fraction", liquidShare: "fraction" },
  when: () => true,
  message: ({ gasShare, liquidShare }) =>
    `Hold-up from a void fraction and assumed shares (${(100 * gasShare).toFixed(0)} % gas, ${(100 * liquidShare).toFixed(0)} % liquid): good to about 30 %. The maker's charge table, or charging by subcooling, overrides it.`,
});
