/** Caution rules of the pool. */
import { caution } from "../kernel/caution";
import { us } from "../kernel/quantity";

const SPA_LIMIT = us("temperature", 104);
const COMFORT_LIMIT = us("temperature", 90);

export const spaLimit = caution({
  code: "POOL-SPA-LIMIT",
  severity: "Danger",
  source: "cpscSpa1979",
  about: "Water above 104 °F (40 °C): the upper limit for spas; heat stroke and drowning.",
  needs: { poolTemperature: "temperature" },
  when: ({ poolTemperature }) => poolTemperature > SPA_LIMIT + 1e-9,
  say: ({ poolTemperature }, show) =>
    `${show(poolTemperature, "temperature")} is above ${show(SPA_LIMIT, "temperature")}, the highest water temperature of spas (pregnant users and children less): provide a high limit that ends the heating, and follow the health code of the place.`,
});

export const warmPool = caution({
  code: "POOL-WARM",
  severity: "Caution",
  source: "commonPractice",
  about: "Water above 90 °F is too warm for swimming, costs more chlorine and grows microbes faster.",
  needs: { poolTemperature: "temperature" },
  when: ({ poolTemperature }) => poolTemperature > COMFORT_LIMIT && poolTemperature <= SPA_LIMIT + 1e-9,
  say: ({ poolTemperature }, show) =>
    `${show(poolTemperature, "temperature")} is warmer than swimmers like (above ${show(COMFORT_LIMIT, "temperature")}); warm water needs more sanitizer. Set a high limit and send the heat outdoors beyond it.`,
});

export const methodSpread = caution({
  code: "POOL-METHOD-SPREAD",
  severity: "Notice",
  source: "smithLofJones1994",
  about: "Published relations of evaporation stand 1.5 to 2.6 times apart at the same inputs.",
  needs: { evaporationBy: "word" },
  when: () => true,
  say: ({ evaporationBy }) =>
    `Evaporation by ${evaporationBy}. Published relations stand 1.5 to 2.6 times apart at the same inputs: name the method beside the figure, and see the others in the working.`,
});

export const estimate = caution({
  code: "POOL-ESTIMATE",
  severity: "Caution",
  source: "commonPractice",
  about: "Pool losses are an estimate: weather, wind and use move them by 30 % and more.",
  needs: { lossEstimated: "yes/no" },
  when: ({ lossEstimated }) => lossEstimated,
  say: () =>
    "An estimate: weather, wind at the water and use move a pool's loss by ±30 % and more. Show a range, not one figure.",
});

export const dew = caution({
  code: "POOL-DEW",
  severity: "Caution",
  source: "identity",
  about:
    "Negative evaporation: the air holds more vapour than the water gives, so dew settles on the pool and warms it.",
  needs: { evaporation: "mass flow" },
  when: ({ evaporation }) => evaporation < 0,
  say: ({ evaporation }, show) =>
    `Evaporation is negative, ${show(evaporation, "mass flow")}: the air's dew point is above the water, so vapour settles on it and warms it. Check humidity and water temperature; the relations were not measured there.`,
});

export const handbookFactor = caution({
  code: "POOL-HANDBOOK-ACTIVITY",
  severity: "Notice",
  source: "ashraeApplications2011",
  about: "Activity 1 of the handbook relations is a busy public pool; a residential one is 0.5.",
  needs: { handbookActivity: "number" },
  when: ({ handbookActivity }) => handbookActivity === 1,
  say: () =>
    "Activity 1 means a busy public pool with these handbook relations: 0.5 residential, 0.65 condominium, fitness or therapy, 0.8 hotel, 1.5 and more with waves or slides. Measured quiet pools gave 0.72 to 0.84 of Carrier.",
});

export const activityInUse = caution({
  code: "POOL-ACTIVITY-IN-USE",
  severity: "Notice",
  source: "smithLofJones1998",
  about: "Beside a quiet-water relation, activity is the ratio to the undisturbed surface: 1.4 to 1.7 were measured.",
  needs: { quietActivity: "number" },
  when: ({ quietActivity }) => quietActivity > 1,
  say: ({ quietActivity }) =>
    `Activity ${quietActivity} multiplies the undisturbed surface: 1.4 to 1.7 were measured in use, 1.7 with 15 to 20 swimmers per 1,000 ft². Count it for hours of use only.`,
});

export const indoorRelation = caution({
  code: "POOL-INDOOR-RELATION",
  severity: "Caution",
  source: "ashraeApplications2011",
  about: "ASHRAE indoor and VDI 2089 know no wind: they hold in still indoor air.",
  needs: { windOnIndoorRelation: "wind speed" },
  when: ({ windOnIndoorRelation }) => windOnIndoorRelation > 0.15,
  say: ({ windOnIndoorRelation }, show) =>
    `The wind of ${show(windOnIndoorRelation, "wind speed")} is not in this indoor relation (air at 10 to 30 ft/min): outdoors it reads far too low. Use Smith-Lof-Jones or Carrier.`,
});

export const lakeWind = caution({
  code: "POOL-MCMILLAN-WIND",
  severity: "Notice",
  source: "mcMillan1971",
  about: "McMillan's relation is of lakes and counts the wind at 3 m above the water.",
  needs: { windAt3m: "wind speed" },
  when: () => true,
  say: ({ windAt3m }, show) =>
    `McMillan takes ${show(windAt3m, "wind speed")} as the wind at 3 m above the water; that at the surface is lower. Its area term is stretched far below the lakes that it was fitted to.`,
});

export const coverInUse = caution({
  code: "POOL-COVER",
  severity: "Caution",
  source: "calPolyCovers2016",
  about: "Published cuts of covers hold for a whole cover in place without bathers; covers can drown.",
  needs: { coverKind: "word" },
  when: ({ coverKind }) => coverKind !== "none",
  say: ({ coverKind }) =>
    `The cut for "${coverKind}" was measured in place, whole and without bathers: gaps and forgotten hours cost most of it. Take a cover off entirely before anyone swims; only a safety cover to ASTM F1346 holds a child.`,
});

export const noCover = caution({
  code: "POOL-NO-COVER",
  severity: "Notice",
  source: "calPolyCovers2016",
  about: "An open pool: floating covers cut evaporation by 94 to 96 % while in place.",
  needs: { coverKind: "word" },
  when: ({ coverKind }) => coverKind === "none",
  say: () =>
    "No cover here: foam, bubble or solid covers cut evaporation by 94 to 96 % while in place, most of an outdoor pool's loss. Try one before sizing more heat.",
});

export const ruleHoldsAll = caution({
  code: "POOL-SURFACE-RULE",
  severity: "Notice",
  source: "ashraePools1999",
  about: "The surface rule holds evaporation, convection and radiation together, for wind of 3 to 5 mph.",
  needs: { surfaceRuleBy: "film coefficient" },
  when: () => true,
  say: ({ surfaceRuleBy }, show) =>
    `The surface rule with ${show(surfaceRuleBy, "film coefficient")} already holds evaporation, convection and radiation: add none of them. ${show(us("film coefficient", 10.5), "film coefficient")} stands for wind of 3 to 5 mph (1.3 to 2.2 m/s); US DOE sizes heater output by ${show(us("film coefficient", 12), "film coefficient")}, textbooks heater input by ${show(us("film coefficient", 15), "film coefficient")}.`,
});

export const shelterGuess = caution({
  code: "POOL-SHELTER",
  severity: "Notice",
  source: "isoTr12596",
  about: "Shelter is a guess, and evaporation follows the wind: the open and the sheltered word stand 6 times apart.",
  needs: { answer: "wind speed" },
  when: ({ answer }) => answer > 0,
  say: ({ answer }, show) =>
    `${show(answer, "wind speed")} rests on a guess of the shelter: a pool's evaporation may change by a third between two words. Where the job hangs on it, measure the wind a foot above the water.`,
});

export const lossLeftOut = caution({
  code: "POOL-LOSS-LEFT-OUT",
  severity: "Caution",
  source: "ashraePools1999",
  about: "Warm-up without area and air leaves the surface's loss out: the true time is longer.",
  needs: { lossLeftOut: "yes/no" },
  when: ({ lossLeftOut: left }) => left,
  say: () =>
    "The loss of the surface is left out: the true time is longer, and the pool may never get there. Give area and air to see it.",
});

export const slowTurnover = caution({
  code: "POOL-SLOW-TURNOVER",
  severity: "Caution",
  source: "commonPractice",
  about: "Turnover over 8 h is slower than design practice; public pools must be faster by code.",
  needs: { answer: "time" },
  when: ({ answer }) => answer > us("time", 8) * 1.001,
  say: ({ answer }, show) =>
    `One turnover takes ${show(answer, "time")}: design practice is 6 to 8 h, and codes ask public pools for 6 h or less (wading pools 1 h). Ask the code of the place, and keep a drain cover's rated flow when raising the flow.`,
});
