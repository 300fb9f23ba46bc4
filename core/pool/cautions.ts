/** Caution rules of warm water, warm-up and turnover. */
import { caution } from "../kernel/define/caution";
import { us } from "../kernel/values/quantity";

const SPA_LIMIT = us("temperature", 104);
const COMFORT_LIMIT = us("temperature", 90);

export const spaLimitPassed = caution({
  code: "POOL-SPA-LIMIT",
  severity: "Danger",
  source: "cpscSpa1979",
  description: "Water above 104 °F (40 °C): the upper limit for spas; heat stroke and drowning.",
  needs: { poolTemperature: "temperature" },
  when: ({ poolTemperature }) => poolTemperature > SPA_LIMIT + 1e-9,
  message: ({ poolTemperature }, show) =>
    `${show(poolTemperature, "temperature")} is above ${show(SPA_LIMIT, "temperature")}, the highest water temperature of spas (pregnant users and children less): provide a high limit that ends the heating, and follow the health code of the place.`,
});

export const warmPool = caution({
  code: "POOL-WARM",
  severity: "Caution",
  source: "commonPractice",
  description: "Water above 90 °F is too warm for swimming, costs more chlorine and grows microbes faster.",
  needs: { poolTemperature: "temperature" },
  when: ({ poolTemperature }) => poolTemperature > COMFORT_LIMIT && poolTemperature <= SPA_LIMIT + 1e-9,
  message: ({ poolTemperature }, show) =>
    `${show(poolTemperature, "temperature")} is warmer than swimmers like (above ${show(COMFORT_LIMIT, "temperature")}); warm water needs more sanitizer. No heater or air conditioner should warm it further: their high limit belongs at ${show(COMFORT_LIMIT, "temperature")} or below.`,
});

export const lossLeftOut = caution({
  code: "POOL-LOSS-LEFT-OUT",
  severity: "Caution",
  source: "ashraePools1999",
  description: "Warm-up without area and air leaves the surface's loss out: the true time is longer.",
  needs: { lossLeftOut: "yes/no" },
  when: ({ lossLeftOut: left }) => left,
  message: () =>
    "The loss of the surface is left out: the true time is longer, and the pool may never get there. Give area and air to see it.",
});

export const slowTurnover = caution({
  code: "POOL-SLOW-TURNOVER",
  severity: "Caution",
  source: "commonPractice",
  description: "Turnover over 8 h is slower than design practice; public pools must be faster by code.",
  needs: { answer: "time" },
  when: ({ answer }) => answer > us("time", 8) * 1.001,
  message: ({ answer }, show) =>
    `One turnover takes ${show(answer, "time")}: design practice is 6 to 8 h, and codes ask public pools for 6 h or less (wading pools 1 h). Ask the code of the place, and keep a drain cover's rated flow when raising the flow.`,
});
