/** Caution rules of hot water, space heat and refrigeration racks. */
import { caution } from "../kernel/define/caution";
import { us } from "../kernel/values/quantity";

const degF = (value: number): number => us("temperature", value);
const GROWTH_FROM = degF(77);
const STORE = degF(140);
const DELIVER = degF(120);
const FLOOR_LIMIT = degF(84.2);

export const legionella = caution({
  code: "SINK-LEGIONELLA",
  severity: "Danger",
  source: "cdcLegionella",
  description: "A preheat tank is in the range in which Legionella grows.",
  needs: { preheat: "temperature" },
  when: ({ preheat }) => preheat >= GROWTH_FROM && preheat < STORE,
  message: ({ preheat }, show) =>
    `A preheat tank at ${show(preheat, "temperature")} is where Legionella grows or survives (best ${show(GROWTH_FROM, "temperature")} to ${show(degF(113), "temperature")}): pass all of it through a main heater that stores at ${show(STORE, "temperature")}, keep circulating water above ${show(DELIVER, "temperature")}, and follow the building's water management plan.`,
});

export const coolStorage = caution({
  code: "SINK-STORE-BELOW-140",
  severity: "Warning",
  source: "ashrae12",
  description: "Hot water stored below 140 °F.",
  needs: { hot: "temperature" },
  when: ({ hot }) => hot < STORE - 1e-6,
  message: ({ hot }, show) =>
    `Stored at ${show(hot, "temperature")}, below the ${show(STORE, "temperature")} that guidelines require against Legionella.`,
});

export const scald = caution({
  code: "SINK-SCALD",
  severity: "Danger",
  source: "scaldTimes",
  description: "Water above 120 °F scalds: mixing valves near the fixtures.",
  needs: { hot: "temperature" },
  when: ({ hot }) => hot > DELIVER + 1e-6,
  message: ({ hot }, show) =>
    `Water stored at ${show(hot, "temperature")} scalds (about 5 s at ${show(STORE, "temperature")}, 5 to 10 min at ${show(DELIVER, "temperature")}): deliver at most ${show(DELIVER, "temperature")} through mixing valves near the fixtures. A licensed plumber's work.`,
});

export const DOUBLE_WALL =
  "Refrigerant has a higher pressure than drinking water: plumbing codes require a double-wall exchanger with its gap vented to the air, and backflow protection. A single wall is for the pool only.";

export const doubleWall = caution({
  code: "SINK-DOUBLE-WALL",
  severity: "Danger",
  standing: true,
  source: "doubleWallCodes",
  description: "Refrigerant next to drinking water needs a vented double wall.",
  needs: {},
  when: () => true,
  message: () => DOUBLE_WALL,
});

export const unreachablePreheat = caution({
  code: "SINK-PREHEAT-TEMPERATURE",
  severity: "Caution",
  source: "desuperheaterNotes",
  description: "Recovered heat often can't hold 140 °F: preheat ahead of the main heater.",
  needs: { preheat: "temperature" },
  when: ({ preheat }) => preheat > degF(110) + 1e-6,
  message: ({ preheat }, show) =>
    `${show(preheat, "temperature")} is more than full condensing reaches (about ${show(degF(95), "temperature")} to ${show(degF(105), "temperature")}): only the desuperheating share, 10 to 25 % of the heat, reaches it, and not in every hour.`,
});

export const heatWhenCooling = caution({
  code: "SINK-HEAT-WHEN-COOLING",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "An air conditioner's heat comes when rooms need none.",
  needs: {},
  when: () => true,
  message: () =>
    "Heat is available only during cooling: reheat, another building part, or a refrigeration rack can use it; rooms of the same building seldom. Keep a heater for the rest.",
});

export const warmFloor = caution({
  code: "SINK-WARM-FLOOR",
  severity: "Warning",
  source: "en1264",
  description: "A floor surface above 84 °F where people stay.",
  needs: { floorSurface: "temperature" },
  when: ({ floorSurface }) => floorSurface > FLOOR_LIMIT,
  message: ({ floorSurface }, show) =>
    `The floor surface would reach ${show(floorSurface, "temperature")}, above the ${show(FLOOR_LIMIT, "temperature")} allowed where people stay: use less water, cooler water, or more floor.`,
});

export const hotSupply = caution({
  code: "SINK-HOT-SUPPLY",
  severity: "Caution",
  source: "commonPractice",
  description: "Full condensing gives water of about 95 to 105 °F; hotter water costs compressor energy.",
  needs: { supplyWater: "temperature" },
  when: ({ supplyWater }) => supplyWater > degF(105) + 1e-6,
  message: ({ supplyWater }, show) =>
    `Water at ${show(supplyWater, "temperature")} needs a condensing temperature above it: full condensing gives about ${show(degF(95), "temperature")} to ${show(degF(105), "temperature")} without holding the head up.`,
});

export const holdingHeadUp = caution({
  code: "SINK-HOLDING-HEAD-UP",
  severity: "Caution",
  source: "ornlReclaim2011",
  description: "Raising the head pressure for heat is disputed: it usually costs more than it yields.",
  needs: { extraPower: "electric power", extraPowerLeast: "electric power", extraPowerMost: "electric power" },
  when: ({ extraPower }) => extraPower > 0,
  message: ({ extraPower, extraPowerLeast, extraPowerMost }, show) =>
    `Disputed: holding the head up takes ${show(extraPower, "electric power")} more by the table, ${show(extraPowerLeast, "electric power")} to ${show(extraPowerMost, "electric power")} by rules of 0.5 to 2 % per °F. A national laboratory's study found that it usually costs more than it yields (run the lowest head and use the heat available); a supplier argues that it pays.`,
});

export const datedFactors = caution({
  code: "SINK-REJECTION-TABLE",
  severity: "Notice",
  standing: true,
  source: "heatRejectionFactors",
  description: "Rejection factors are of the R-12/R-22 era and not for carbon dioxide.",
  needs: {},
  when: () => true,
  message: () =>
    "The rejection factors are of the R-12/R-22 era: use the compressor maker's data if available. Not for carbon dioxide above its critical point, nor for two-stage or cascade racks. Loads must be of the same hour, not design loads.",
});

export const belowTable = caution({
  code: "SINK-REJECTION-BELOW-TABLE",
  severity: "Caution",
  source: "heatRejectionFactors",
  description: "Below −4 °F evaporating only one column of the table is published.",
  needs: { coldest: "temperature" },
  when: ({ coldest }) => coldest < degF(-4) - 1e-6,
  message: ({ coldest }, show) =>
    `At ${show(coldest, "temperature")} evaporating only the factor at ${show(degF(86), "temperature")} condensing is published; its rise follows the ${show(degF(-4), "temperature")} row (an I-P table's example agrees within 1 %). Single-stage compressors may not reach it.`,
});
