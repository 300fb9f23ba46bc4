/** Caution rules of pressures that hold. */
import { caution } from "../kernel/define/caution";
import { isEstimate } from "./tube";

export const nameplateGoverns = caution({
  code: "PRESSURE-NAMEPLATE",
  severity: "Warning",
  source: "commonPractice",
  description: "A least design pressure by rule: nameplates and the code in force govern.",
  needs: { designTemperature: "temperature" },
  when: () => true,
  message: ({ designTemperature }, show) =>
    `Saturation at ${show(designTemperature, "temperature")}, the least that a rule asks, partly from memory: the pressures on the nameplates and the code in force govern, and a part must hold at least the nameplate pressure of the side that it joins. With the water stopped a pool coil meets the full head of the air coil.`,
});

export const trappedBursts = caution({
  code: "PRESSURE-TRAPPED",
  severity: "Danger",
  source: "commonPractice",
  description: "Liquid shut in between valves bursts its section when it warms.",
  needs: {},
  when: () => true,
  message: () =>
    "Liquid that fills a section between two closed valves bursts it when it warms by a few degrees: people are hit by parts and refrigerant. Valve pairs that can trap it: diverting valve and check valve around the idle pool coil first, king valve and solenoid, any two ball valves, a solenoid behind a check valve. Leave each such section a way out (bleed, relief valve, valve that opens backwards) and never close it full. A licensed designer and the local code govern.",
});

export const tubeOnly = caution({
  code: "PRESSURE-TUBE-ONLY",
  severity: "Caution",
  source: "pipingCode",
  description: "Pressure inside plain tube only: no corrosion, bends, threads or fittings.",
  needs: {},
  when: () => true,
  message: () =>
    "This holds for plain tube with the pressure inside: fittings, valves and bends are rated by their makers, corrosion and threads need more wall, and pressure from outside (a vacuum in a full shell) isn't covered. The stamped or marked pressure of a part governs, and the weakest connected part sets every test.",
});

export const brazingAnneals = caution({
  code: "PRESSURE-BRAZED",
  severity: "Warning",
  source: "pipingCode",
  description: "Brazing anneals drawn tube: count it as annealed.",
  needs: { temper: "word" },
  when: ({ temper }) => temper === "drawn",
  message: () =>
    "Brazing and welding anneal drawn copper: at any brazed joint the tube holds only the pressure of annealed tube. Count drawn temper only for tube joined without heat.",
});

export const stressFromMemory = caution({
  code: "PRESSURE-ESTIMATE",
  severity: "Caution",
  source: "exoticStress",
  description: "Stresses of titanium and cupronickel are from memory: an estimate.",
  needs: { material: "word" },
  when: ({ material }) => isEstimate(material),
  message: ({ material }) =>
    `The stress of ${material} and its least wall (0.9 of nominal) are from memory: an estimate only. The pressure stamped on the coil governs, not this figure; a coil without one isn't fit for refrigerant.`,
});

export const reliefByCode = caution({
  code: "PRESSURE-RELIEF",
  severity: "Warning",
  source: "reliefTable",
  description: "Which vessels need relief, its setting and its vent line are the code's.",
  needs: {},
  when: () => true,
  message: () =>
    "Capacity of one vessel only; add up vessels that share a device. Set it not above the vessel's design pressure, vent it outdoors, no valve shut between. Common practice: vessels above 6 in of bore need relief, a coil of smaller tube counts as piping, and its receiver, accumulator and water shell are looked at apart. Licensed designer and local code govern.",
});

export const cascadeOnly = caution({
  code: "PRESSURE-RELIEF-CASCADE",
  severity: "Caution",
  source: "reliefTable",
  description: "The factor of R-744 is for the low side of a cascade.",
  needs: { refrigerant: "word" },
  when: ({ refrigerant }) => refrigerant === "R-744",
  message: () =>
    "The factor of R-744 is printed for the low side of a cascade only: a transcritical system needs its own design.",
});
