/** Caution rules of refrigerant readings. */
import { caution } from "../kernel/define/caution";
import { us } from "../kernel/values/quantity";

export const noSuperheat = caution({
  code: "REFRIG-NO-SUPERHEAT",
  severity: "Danger",
  source: "commonPractice",
  description: "A superheat of zero or less: liquid may be reaching the compressor, or a reading is wrong.",
  needs: { answer: "temperature difference", dew: "temperature", lineTemperature: "temperature" },
  when: ({ answer }) => answer <= 0,
  message: ({ dew, lineTemperature }, show) =>
    `No superheat: the line is at ${show(lineTemperature, "temperature")} and the dew point at this pressure is ${show(dew, "temperature")}. Liquid may be reaching the compressor, or the gauge, the clamp, the refrigerant or the basis (gauge, absolute, altitude) is wrong. Stop and check before running on.`,
});

export const littleSuperheat = caution({
  code: "REFRIG-LITTLE-SUPERHEAT",
  severity: "Caution",
  source: "commonPractice",
  description: "A superheat within the error of gauge and clamp.",
  needs: { answer: "temperature difference" },
  when: ({ answer }) => answer > 0 && answer < us("temperature difference", 3),
  message: ({ answer }, show) =>
    `A superheat of ${show(answer, "temperature difference")} is within the error of gauge and clamp: liquid may reach the compressor. Measure again with the clamp insulated.`,
});

export const noSubcooling = caution({
  code: "REFRIG-NO-SUBCOOLING",
  severity: "Warning",
  source: "commonPractice",
  description: "A subcooling of zero or less: flash gas at the valve, or a wrong reading.",
  needs: { answer: "temperature difference", bubble: "temperature", lineTemperature: "temperature" },
  when: ({ answer }) => answer <= 0,
  message: ({ bubble, lineTemperature }, show) =>
    `No subcooling: the line is at ${show(lineTemperature, "temperature")} and the bubble point at this pressure is ${show(bubble, "temperature")}. Flash gas reaches the metering device, or the gauge, the clamp, the refrigerant or the basis is wrong.`,
});

export const certifiedWork = caution({
  code: "REFRIG-CERTIFIED-WORK",
  severity: "Notice",
  standing: true,
  source: "usRefrigerantRule",
  description: "Connecting gauges, opening, charging or recovering is for certified technicians.",
  needs: {},
  when: () => true,
  message: () =>
    "Gauges, charging and recovery are work for a certified technician (US: section 608; elsewhere F-gas rules); local codes and the equipment's manual govern.",
});

export const twoPhaseProperties = caution({
  code: "REFRIG-TWO-PHASES",
  severity: "Notice",
  source: "identity",
  description: "Inside a blend's glide liquid and vapour coexist: some rows have no meaning.",
  needs: { phase: "word", quality: "fraction" },
  when: ({ phase }) => phase === "two-phase",
  message: ({ quality }) =>
    `Liquid and vapour together, ${(100 * quality).toFixed(1)} % vapour by mass. Heat capacity, speed of sound, viscosity and conductivity have no meaning for the mixture and stay empty. Density is that of the mixture, enthalpy and entropy are means by mass.`,
});

export const supercriticalState = caution({
  code: "REFRIG-SUPERCRITICAL",
  severity: "Notice",
  source: "identity",
  description: "Above the critical point there is neither liquid nor vapour: nothing condenses.",
  needs: { phase: "word" },
  when: ({ phase }) => phase === "supercritical",
  message: () =>
    "Above the critical pressure and temperature there is neither liquid nor vapour: the gas cools without condensing, and condensing temperature, subcooling and quality don't exist here. Near the critical point properties change fast and their uncertainty grows.",
});

export const hotterThanFit = caution({
  code: "REFRIG-BEYOND-RANGE",
  severity: "Caution",
  source: "commonPractice",
  description: "Hotter than the equation of state was fitted for.",
  needs: { temperature: "temperature", hottest: "temperature" },
  when: ({ temperature, hottest }) => temperature > hottest,
  message: ({ temperature, hottest }, show) =>
    `${show(temperature, "temperature")} is hotter than the ${show(hottest, "temperature")} to which the equation of state was fitted: the values are extrapolated, and refrigerant and oil may decompose.`,
});

export const blendByMixing = caution({
  code: "REFRIG-BLEND-TRANSPORT",
  severity: "Notice",
  standing: true,
  source: "blendTransport",
  description: "Viscosity, conductivity and surface tension of blends come from mixing rules.",
  needs: { blend: "yes/no" },
  when: ({ blend }) => blend,
  message: () =>
    "Viscosity, conductivity and surface tension of this blend come from mixing rules, good to 8 to 14 % only; the working gives the figure of each.",
});

export const flammable = caution({
  code: "REFRIG-FLAMMABLE",
  severity: "Danger",
  source: "ashrae34",
  description: "A flammable refrigerant: only in equipment listed for it, never as a drop-in.",
  needs: { safetyClass: "word", refrigerant: "word" },
  when: ({ safetyClass }) => safetyClass !== "A1",
  message: ({ safetyClass, refrigerant }) =>
    `${refrigerant} is ${safetyClass === "A3" ? "highly" : "mildly"} flammable (class ${safetyClass}): a leak can burn. Only in equipment listed for it, never as a drop-in; certified technician, tools and recovery for its class, no flame or spark near it. Local codes govern.`,
});

export const rulesInMotion = caution({
  code: "REFRIG-RULES-IN-MOTION",
  severity: "Notice",
  source: "usRefrigerantRule",
  description: "Rules on warming potentials change: check which apply on the date of work.",
  needs: { warmingPotential: "number" },
  when: ({ warmingPotential }) => warmingPotential > 150,
  message: ({ warmingPotential }) =>
    `Warming potential ${Math.round(warmingPotential)}: rules that limit it (US: 700 for new residential and light commercial systems; EU: 150 or 750 by kind of machine) keep changing. Check which apply on the date of work.`,
});
