/** Caution rules of the water's balance. */
import { caution } from "../kernel/define/caution";
import { us } from "../kernel/values/quantity";

export const scalingFilm = caution({
  code: "WATER-SCALING",
  severity: "Caution",
  source: "siteTable",
  description: "The index at the water or at the warm film is above +0.5: scale.",
  needs: { worstIndex: "number" },
  when: ({ worstIndex }) => worstIndex > 0.5,
  message: ({ worstIndex }) =>
    `The index reaches ${worstIndex.toFixed(2)}: scale grows on the warm film and costs heat. Lower pH or alkalinity, more water flow, a larger exchanger.`,
});

export const attackingWater = caution({
  code: "WATER-ATTACKING",
  severity: "Caution",
  source: "siteTable",
  description: "The index is below −0.5: the water dissolves plaster and attacks metal.",
  needs: { index: "number" },
  when: ({ index }) => index < -0.5,
  message: ({ index }) =>
    `The index is ${index.toFixed(2)}: the water dissolves plaster and grout and attacks metal. Raise hardness, alkalinity or pH.`,
});

export const indexUncertain = caution({
  code: "WATER-INDEX-UNCERTAIN",
  severity: "Notice",
  source: "saturationRows",
  description: "At high pH and hardness ion pairs count, and the index reads too high.",
  needs: { pHAndHardness: "yes/no" },
  when: ({ pHAndHardness }) => pHAndHardness,
  message: () => "At this pH and hardness ion pairs count: the index may read 0.2 too high, at the film 0.4.",
});

/** Most chloride, mg/L, at 50, 75 and 100 °F; 0: not recommended at any. */
const CHLORIDE_LIMITS: Readonly<Record<string, readonly [number, number, number]>> = {
  copper: [20, 0, 0],
  cupronickel: [150, 0, 0],
  "stainless 304": [400, 250, 150],
  "stainless 316": [1000, 550, 375],
};

function chlorideLimit(material: string, T: number): number {
  const [cold, mild, warm] = CHLORIDE_LIMITS[material] ?? [1e9, 1e9, 1e9];
  return T < us("temperature", 75) ? cold : T < us("temperature", 100) ? mild : warm;
}

export const attackedByChloride = caution({
  code: "WATER-CHLORIDE",
  severity: "Warning",
  source: "waterQualityTable",
  description: "Chloride or temperature beyond what water-quality tables allow a metal.",
  needs: { material: "word", chloride: "number", water: "temperature" },
  when: ({ material, chloride, water }) => chloride >= chlorideLimit(material, water),
  message: ({ material, chloride, water }, show) =>
    `${material} at ${show(water, "temperature")} with ${chloride.toFixed(0)} mg/L of chloride: water-quality tables ${chlorideLimit(material, water) === 0 ? "don't recommend it at any chloride" : `allow ${chlorideLimit(material, water)} mg/L`}. Titanium has no limit there; keep stagnant and scaled spots away from hot gas.`,
});

export const attackedByChlorine = caution({
  code: "WATER-CHLORINE",
  severity: "Warning",
  source: "heatExchangerNotes",
  description: "Free chlorine attacks copper alloys.",
  needs: { material: "word", freeChlorine: "number" },
  when: ({ material, freeChlorine }) => /^cu|^copper/.test(material) && freeChlorine >= 1,
  message: ({ material, freeChlorine }) =>
    `${freeChlorine} mg/L of free chlorine on ${material}: below 1 is good, 1 to 5 doubtful, above 5 poor. Titanium bears it.`,
});
