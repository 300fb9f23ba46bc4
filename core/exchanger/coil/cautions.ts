/** Caution rules of a coil rated by its geometry. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

const PLASTIC = us("temperature", 140);
const FAST_TITANIUM = 10;
const FAST_OTHERS = us("velocity", 6);
const LARGE_DROP = us("temperature difference", 2);

export const hotFilm = caution({
  code: "EXCHANGER-HOT-FILM",
  severity: "Warning",
  source: "commonPractice",
  description: "Water film over 140 °F at the tube next to plastic: scale, and the limit of PVC.",
  needs: { hottestFilm: "temperature" },
  when: ({ hottestFilm }) => hottestFilm > PLASTIC,
  message: ({ hottestFilm }, show) =>
    `The surface that water touches reaches ${show(hottestFilm, "temperature")} where the gas enters: above ${show(PLASTIC, "temperature")} lime precipitates and PVC is past its limit. Keep plastic away from the tube, let the gas enter where water moves, or desuperheat it first.`,
});

export const shortArea = caution({
  code: "EXCHANGER-SHORT-AREA",
  severity: "Warning",
  source: "commonPractice",
  description: "The coil has less area than the duty needs.",
  needs: { margin: "fraction", areaNeeded: "area", areaGiven: "area" },
  when: ({ margin }) => margin < 0,
  message: ({ areaNeeded, areaGiven }, show) =>
    `${show(areaGiven, "area")} given, ${show(areaNeeded, "area")} needed: the machine will condense higher than asked. Film relations are uncertain by some 20 to 30 %; have the supplier confirm the duty.`,
});

export const filmsUncertain = caution({
  code: "EXCHANGER-FILM-SPREAD",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "Uncertainty of the film relations.",
  needs: { margin: "fraction" },
  when: () => true,
  message: ({ margin }) =>
    `Margin ${(100 * margin).toFixed(0)} %. Condensing by a straight-tube relation (data within some 15 to 25 %), water by single-cylinder relations (20 to 30 %) with neighbours and bypass past the coil left out: keep a margin of 20 to 30 % and have the supplier confirm the duty.`,
});

export const outsideCondensingData = caution({
  code: "EXCHANGER-CONDENSING-DATA",
  severity: "Caution",
  source: "shah2009",
  description: "Condensing outside the data behind its relation.",
  needs: { outsideData: "word" },
  when: ({ outsideData }) => outsideData !== "",
  message: ({ outsideData }) => `The condensing relation leaves its data: ${outsideData}. Treat the film as a guess.`,
});

export const fastCoilWater = caution({
  code: "EXCHANGER-FAST-WATER",
  severity: "Caution",
  source: "titaniumSheet",
  description: "Water too fast for the tube: 10 m/s for titanium, 6 ft/s for other metals.",
  needs: { waterVelocity: "velocity", fastest: "velocity" },
  when: ({ waterVelocity, fastest }) => waterVelocity > fastest,
  message: ({ waterVelocity, fastest }, show) =>
    `Water passes the coil at ${show(waterVelocity, "velocity")}, above ${show(fastest, "velocity")} for this tube: erosion, vibration and pump power. Use a wider shell or bypass part of the water.`,
});

/** The highest velocity for a tube material, m/s. */
export const fastestFor = (material: string | number): number =>
  material === "titanium" ? FAST_TITANIUM : FAST_OTHERS;

export const largeDrop = caution({
  code: "EXCHANGER-REFRIGERANT-DROP",
  severity: "Caution",
  source: "commonPractice",
  description: "A refrigerant pressure drop worth more than 2 °F of condensing temperature.",
  needs: { saturationDrop: "temperature difference", refrigerantDrop: "pressure drop" },
  when: ({ saturationDrop }) => saturationDrop > LARGE_DROP,
  message: ({ saturationDrop, refrigerantDrop }, show) =>
    `The refrigerant loses ${show(refrigerantDrop, "pressure drop")}, worth ${show(saturationDrop, "temperature difference")} of condensing temperature, which the zones ignore: use more tubes in parallel or a larger bore.`,
});

export const portsLeftOut = caution({
  code: "EXCHANGER-BUNDLE-DROP",
  severity: "Caution",
  source: "hydraulicsTexts",
  description: "Without port bore the water drop covers the bundle only.",
  needs: { portsKnown: "yes/no" },
  when: ({ portsKnown }) => !portsKnown,
  message: (_, show) =>
    `"bundle drop" leaves out the ports: two 1-1/2 in ports lose ${show(us("head", 1), "head")} at ${show(us("water flow", 40), "water flow")}. Give port bore.`,
});

export const bonding = caution({
  code: "EXCHANGER-BONDING",
  severity: "Danger",
  standing: true,
  source: "necBonding",
  description: "Metal that touches pool water joins the bonding grid.",
  needs: { coiled: "yes/no" },
  when: ({ coiled }) => coiled,
  message: () =>
    "Bond tube and metal shell to the pool's equipotential grid (solid copper, 8 AWG or larger): electric shock in water. A licensed electrician decides.",
});

// Depends only on there being a coil, not on its rating.

export const poolChemistry = caution({
  code: "EXCHANGER-CHEMISTRY",
  severity: "Caution",
  standing: true,
  source: "poolChemistryTexts",
  description: "Water chemistry decides the life of the tube.",
  needs: { coiled: "yes/no" },
  when: ({ coiled }) => coiled,
  message: () =>
    "Keep pH at 7.2 to 7.8 and feed chlorine and acid downstream of the exchanger, never upstream: strong doses attack metals. Warm film scales sooner in hard water. Trained operator; follow the health code.",
});

export const freezingShell = caution({
  code: "EXCHANGER-FREEZE",
  severity: "Warning",
  standing: true,
  source: "commonPractice",
  description: "A shell full of water freezes in winter, and when its refrigerant is pumped down.",
  needs: { coiled: "yes/no" },
  when: ({ coiled }) => coiled,
  message: () =>
    "Drain the shell before frost, and never evacuate or pump down the refrigerant side with still water in it: it freezes and bursts, and refrigerant and water mix.",
});

export const singleWall = caution({
  code: "EXCHANGER-SINGLE-WALL",
  severity: "Danger",
  standing: true,
  source: "doubleWallCodes",
  description: "A single wall between refrigerant and water: not for potable water.",
  needs: { coiled: "yes/no" },
  when: ({ coiled }) => coiled,
  message: () =>
    "A single wall separates refrigerant from water, and refrigerant has the higher pressure: a leak enters the water. Not for potable water, which needs a vented double wall by most plumbing codes; a pool's fill line needs backflow protection. Local code and a licensed plumber decide.",
});
