/** Cautions of the year about its inputs: sun, design load, and limits that its machine passes. */
import { caution } from "../../kernel/define/caution";
import { GREATEST_CONDENSING_ON_WATER, WARMEST_LEAVING_WATER } from "./extremes";

const LAST_MINUTE = 24 * 60 - 1;

/** A part of the day as a clock shows it, "8:00", and as the block's entry, 8. */
function timeOf(part: number): { readonly shown: string; readonly entry: number } {
  const minutes = Math.min(LAST_MINUTE, Math.round(24 * 60 * part));
  const shown = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  return { shown, entry: Number((minutes / 60).toPrecision(4)) };
}

export const hotYearCondensing = caution({
  code: "POOL-YEAR-HOT",
  severity: "Warning",
  source: "commonPractice",
  description: "Condenses above 130 °F on the water in some hours.",
  needs: { hotTime: "time", hottest: "temperature", hottestHour: "word" },
  when: ({ hotTime }) => hotTime > 0,
  message: ({ hotTime, hottest, hottestHour }, show) =>
    `In ${show(hotTime, "time")} of the year it condenses above ${show(GREATEST_CONDENSING_ON_WATER, "temperature")} on the water, at worst at ${show(hottest, "temperature")} (${hottestHour}): the high-pressure switch may open. More conductance, more water or a lower limit.`,
});

export const hotPoolReturn = caution({
  code: "POOL-YEAR-HOT-WATER",
  severity: "Warning",
  source: "commonPractice",
  description: "Water returns to the pool above 104 °F in some hours.",
  needs: { hotWaterTime: "time", leavingWater: "temperature", leavingWaterHour: "word" },
  when: ({ hotWaterTime }) => hotWaterTime > 0,
  message: ({ hotWaterTime, leavingWater, leavingWaterHour }, show) =>
    `In ${show(hotWaterTime, "time")} of the year water returns to the pool above ${show(WARMEST_LEAVING_WATER, "temperature")}, at worst at ${show(leavingWater, "temperature")} (${leavingWaterHour}). Take more flow or a lower limit.`,
});

export const limitPassed = caution({
  code: "POOL-YEAR-OVER-LIMIT",
  severity: "Notice",
  source: "identity",
  description: "Sun warms the pool beyond its high limit: by how much, and when.",
  needs: {
    poolTemperature: "temperature",
    limit: "temperature",
    overLimitTime: "time",
    firstOver: "word",
    warmestHour: "word",
  },
  when: ({ overLimitTime }) => overLimitTime > 0,
  message: ({ poolTemperature, limit, overLimitTime, firstOver, warmestHour }, show) =>
    `The pool passes its high limit of ${show(limit, "temperature")} by up to ${show(poolTemperature - limit, "temperature difference")}: for ${show(overLimitTime, "time")}, first on ${firstOver}, warmest on ${warmestHour}. The machine's heat goes outdoors then: sun and warm air do it. Shade, no cover by day, or a lower limit.`,
});

export const unlikelySun = caution({
  code: "POOL-YEAR-SUN",
  severity: "Caution",
  source: { key: "duffieBeckman2013", where: "chapter 2, clearness of months" },
  description: "A month's sun is under 0.2 or over 0.8 of that above the air.",
  needs: { oddSunMonths: "word", oddSun: "fraction", oddSunReason: "word" },
  when: () => true,
  message: ({ oddSunMonths, oddSun, oddSunReason }) =>
    `Sun: ${oddSun.toPrecision(2)} of the sun above the air at this latitude in the first of ${oddSunMonths}; 0.2 to 0.8 is likely: ${oddSunReason}.`,
});

export const oddWeather = caution({
  code: "POOL-YEAR-WEATHER",
  severity: "Caution",
  source: "tmy3",
  description: "A check of the weather lies outside what 22 US stations show (CLIMATE.CHECK has them all).",
  needs: { oddWeather: "word" },
  when: () => true,
  message: ({ oddWeather }) => `Unlikely weather: ${oddWeather}. Look at source and units.`,
});

export const timeOfDay = caution({
  code: "POOL-YEAR-CLOCK",
  severity: "Caution",
  source: "commonPractice",
  description: "A clock hour between 0 and 1, as a cell holds a time of day.",
  needs: { clockLabel: "word", clock: "number" },
  when: () => true,
  message: ({ clockLabel, clock }) => {
    const { shown, entry } = timeOf(clock);
    return `${clockLabel} is ${Number(clock.toPrecision(3))}, soon after midnight. A cell holds a time of day as a part of the day: if ${shown} was meant, enter ${entry}.`;
  },
});

export const assumedDesignLoad = caution({
  code: "POOL-YEAR-DESIGN-LOAD",
  severity: "Caution",
  source: "commonPractice",
  description: "No design load: the machine's whole cooling is taken.",
  needs: { assumedLoad: "heat rate" },
  when: () => true,
  message: ({ assumedLoad }, show) =>
    `No design load given: the machine's whole cooling at design, ${show(assumedLoad, "heat rate")}, is taken. Most machines are larger than their load, often by 15 to 50 %: heat taken and saving then fall about as the load does. Enter the calculated load.`,
});
