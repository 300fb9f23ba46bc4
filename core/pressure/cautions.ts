/** Caution rules of pressures that hold. */
import { caution } from "../kernel/define/caution";
import { isEstimate } from "./tube";

export const nameplateGoverns = caution({
  code: "PRESSURE-NAMEPLATE",
  severity: "Warning",
  standing: true,
  source: "commonPractice",
  description: "A least pressure by rule: nameplates and code govern.",
  needs: { designTemperature: "temperature" },
  when: () => true,
  message: ({ designTemperature }, show) =>
    `Saturation at ${show(designTemperature, "temperature")}, partly from memory: nameplates and the code in force govern. A part must hold at least the nameplate pressure of the side that it joins; a pool coil whose water stops meets full head.`,
});

export const trappedBursts = caution({
  code: "PRESSURE-TRAPPED",
  severity: "Danger",
  standing: true,
  source: "commonPractice",
  description: "Liquid shut in between valves bursts its section when it warms.",
  needs: {},
  when: () => true,
  message: () =>
    "Liquid that fills a section between two closed valves bursts it within a few degrees of warming. Look first at the idle pool coil between diverting valve and check valve, then at king valve and solenoid and at every pair of ball valves. Give each a way out (bleed, relief); never shut it in full. A licensed designer and the local code govern.",
});

export const tubeOnly = caution({
  code: "PRESSURE-TUBE-ONLY",
  severity: "Caution",
  standing: true,
  source: "pipingCode",
  description: "Pressure inside plain tube only.",
  needs: {},
  when: () => true,
  message: () =>
    "Plain tube, pressure inside: fittings, valves and bends have their makers' ratings, corrosion and threads need more wall. Marks and stamps govern, and the weakest connected part sets the test.",
});

export const brazingAnneals = caution({
  code: "PRESSURE-BRAZED",
  severity: "Warning",
  source: "pipingCode",
  description: "Brazing anneals drawn tube.",
  needs: { temper: "word" },
  when: ({ temper }) => temper === "drawn",
  message: () => "Brazing anneals drawn copper: count it as annealed unless it is joined without heat.",
});

export const stressFromMemory = caution({
  code: "PRESSURE-ESTIMATE",
  severity: "Caution",
  source: "exoticStress",
  description: "Stresses of titanium and cupronickel are from memory.",
  needs: { material: "word" },
  when: ({ material }) => isEstimate(material),
  message: ({ material }) =>
    `Stress and least wall of ${material} are from memory, an estimate: the pressure stamped on the coil governs.`,
});

export const reliefByCode = caution({
  code: "PRESSURE-RELIEF",
  severity: "Warning",
  standing: true,
  source: "reliefTable",
  description: "The code decides which vessels need relief, its setting and vent.",
  needs: {},
  when: () => true,
  message: () =>
    "One vessel only: add up those that share a device. Set it not above the vessel's design pressure, vent it outdoors, no valve between. Common practice: vessels above 6 in of bore need relief, coils of smaller tube are piping. Licensed designer and local code govern.",
});

export const cascadeOnly = caution({
  code: "PRESSURE-RELIEF-CASCADE",
  severity: "Caution",
  source: "reliefTable",
  description: "The factor of R-744 is for the low side of a cascade.",
  needs: { refrigerant: "word" },
  when: ({ refrigerant }) => refrigerant === "R-744",
  message: () => "The factor of R-744 holds for the low side of a cascade only.",
});
