/** Caution rules of the exchanger. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

const DESUPERHEATING = us("temperature difference", 20);
const WATER_RISE = us("temperature difference", 15);
const LEAST_RISE = us("temperature difference", 3);

export const hiddenCondensing = caution({
  code: "EXCHANGER-CONDENSING-BETWEEN",
  severity: "Warning",
  source: "commonPractice",
  description: "If a refrigerant condenses between the ends, the log mean of the ends is wrong.",
  needs: { hotIn: "temperature", hotOut: "temperature", coldIn: "temperature", coldOut: "temperature" },
  when: ({ hotIn, hotOut, coldIn, coldOut }) =>
    hotIn - hotOut > DESUPERHEATING * (1 + 1e-9) && coldOut - coldIn < WATER_RISE * (1 - 1e-9),
  message: ({ hotIn, hotOut, coldIn, coldOut }, show) =>
    `The hot stream falls by ${show(hotIn - hotOut, "temperature difference")} against a rise of ${show(coldOut - coldIn, "temperature difference")}: if a refrigerant condenses between the ends, this mean is wrong (up to 40 % of the area). Use the condensing temperature for both hotIn and hotOut, or EXCHANGER.ZONES.`,
});

export const lowCorrection = caution({
  code: "EXCHANGER-LOW-CORRECTION",
  severity: "Caution",
  source: "commonPractice",
  description: "A correction factor below 0.75 to 0.8 falls steeply: small temperature changes cost much area.",
  needs: { answer: "fraction" },
  when: ({ answer }) => answer < 0.75,
  message: ({ answer }) =>
    `F is ${answer.toFixed(3)}. Below about 0.75 it falls steeply with temperature: choose more shells in series or counterflow.`,
});

export const cleanCoil = caution({
  code: "EXCHANGER-CLEAN-COIL",
  severity: "Caution",
  source: "foulingTable",
  description: "Clean coil, no allowance: both fouling resistances are zero.",
  needs: { coiled: "yes/no", insideFouling: "fouling resistance", outsideFouling: "fouling resistance" },
  when: ({ coiled, insideFouling, outsideFouling }) => coiled && insideFouling === 0 && outsideFouling === 0,
  message: (_, show) =>
    `Clean coil, no allowance: both fouling resistances are zero. Tables give ${show(us("fouling resistance", 0.001), "fouling resistance")} for city water; none is tabulated for pool water; half of that to all of it is usual.`,
});

export const attackedMetal = caution({
  code: "EXCHANGER-ATTACKED-METAL",
  severity: "Warning",
  source: "poolChemistryTexts",
  description: "Attacked by chlorinated or salt pool water: materials other than titanium.",
  needs: { tubeMaterial: "word" },
  when: ({ tubeMaterial }) => tubeMaterial !== "titanium",
  message: ({ tubeMaterial }) =>
    `${tubeMaterial}: attacked by chlorinated or salt pool water; low pH and high chlorine dissolve it, and copper stains the pool. Titanium resists both. Keep pH at 7.2 to 7.8; water treatment is for trained people.`,
});

export const contestedTitanium = caution({
  code: "EXCHANGER-TITANIUM-CONDUCTIVITY",
  severity: "Notice",
  standing: true,
  source: "titaniumSheet",
  description: "Published conductivities of titanium differ from 16 to 21.6 W/(m·K).",
  needs: { tubeMaterial: "word" },
  when: ({ tubeMaterial }) => tubeMaterial === "titanium",
  message: (_, show) =>
    `Sources give ${show(16, "conductivity")} to ${show(21.6, "conductivity")} for commercially pure titanium; this uses the lowest. Enter the supplier's conductivity in place of the word if known.`,
});

export const smallRise = caution({
  code: "EXCHANGER-SMALL-RISE",
  severity: "Caution",
  source: "commonPractice",
  description: "A water rise under 3 °F is hard to measure: sensor errors weigh heavily.",
  needs: { waterRise: "temperature difference" },
  when: ({ waterRise }) => waterRise < LEAST_RISE * (1 - 1e-9),
  message: ({ waterRise }, show) => {
    const error = us("temperature difference", 0.5);
    const share = waterRise > 0 ? `${Math.round((100 * error) / waterRise)} %` : "all";
    return `The water rises by only ${show(waterRise, "temperature difference")}: a sensor error of ${show(error, "temperature difference")} is ${share} of the duty. Use matched sensors, swap them, or measure at less flow.`;
  },
});

export const bypassLimits = caution({
  code: "EXCHANGER-CUT-FLOW",
  severity: "Warning",
  source: "commonPractice",
  description: "The cut flow must still satisfy the flow switch and the film limit.",
  needs: { flowThroughExchanger: "water flow", held: "yes/no" },
  when: ({ held }) => held,
  message: ({ flowThroughExchanger }, show) =>
    `${show(flowThroughExchanger, "water flow")} through the exchanger must still satisfy its flow switch and the limit for the water film at the tube; otherwise bypass less and hold the head by other means.`,
});

/** Condensing temperature near the high-pressure cut-outs of common air conditioners. */
const NEAR_CUT_OUT = us("temperature", 140);

export const hotCondensing = caution({
  code: "EXCHANGER-HOT-CONDENSING",
  severity: "Warning",
  source: "commonPractice",
  description: "Condensing above 140 °F: near or past the high-pressure cut-out of most air conditioners.",
  needs: { condensingAtFullFlow: "temperature" },
  when: ({ condensingAtFullFlow }) => condensingAtFullFlow > NEAR_CUT_OUT,
  message: ({ condensingAtFullFlow }, show) =>
    `Even at full flow the machine would condense at ${show(condensingAtFullFlow, "temperature")}: above ${show(NEAR_CUT_OUT, "temperature")} most air conditioners trip on high pressure. The exchanger is too small for this heat or the water too warm: check the UA and its unit, and leave the heat to the outdoor coil.`,
});

export const coldPoolOrifice = caution({
  code: "EXCHANGER-COLD-POOL-ORIFICE",
  severity: "Caution",
  source: "commonPractice",
  description: "Fixed orifice and cold pool: prefer the outdoor coil.",
  needs: { held: "yes/no", condensingAtFullFlow: "temperature" },
  when: ({ held }) => held,
  message: ({ condensingAtFullFlow }, show) =>
    `At full flow the machine would condense at ${show(condensingAtFullFlow, "temperature")}, below the least. With a fixed orifice and a cold pool prefer the outdoor coil: too little pressure starves the evaporator. Changes to a listed machine need its maker's consent and a licensed contractor.`,
});
