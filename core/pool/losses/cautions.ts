/** Caution rules of a pool's losses. */
import { caution } from "../../kernel/define/caution";
import { us } from "../../kernel/values/quantity";

export const poolEstimate = caution({
  code: "POOL-ESTIMATE",
  severity: "Caution",
  standing: true,
  source: "commonPractice",
  description: "Pool losses are an estimate: weather, wind and use move them by 30 % and more.",
  needs: { lossEstimated: "yes/no" },
  when: ({ lossEstimated }) => lossEstimated,
  message: () =>
    "An estimate: weather, wind at the water and use move a pool's loss by ±30 % and more. Show a range, not one figure.",
});

export const coverInUse = caution({
  code: "POOL-COVER",
  severity: "Caution",
  standing: true,
  source: "calPolyCovers2016",
  description: "Published cuts of covers hold for a whole cover in place without bathers; covers can drown.",
  needs: { coverKind: "word" },
  when: ({ coverKind }) => coverKind !== "none",
  message: ({ coverKind }) =>
    `The cut for "${coverKind}" was measured in place, whole and without bathers: gaps and forgotten hours cost most of it. Take a cover off entirely before anyone swims; only a safety cover to ASTM F1346 holds a child.`,
});

export const noCover = caution({
  code: "POOL-NO-COVER",
  severity: "Notice",
  source: "calPolyCovers2016",
  description: "An open pool: floating covers cut evaporation by 94 to 96 % while in place.",
  needs: { coverKind: "word" },
  when: ({ coverKind }) => coverKind === "none",
  message: () =>
    "No cover here: foam, bubble or solid covers cut evaporation by 94 to 96 % while in place, most of an outdoor pool's loss. Try one before sizing more heat.",
});

export const ruleHoldsAll = caution({
  code: "POOL-SURFACE-RULE",
  severity: "Notice",
  standing: true,
  source: "ashraePools1999",
  description: "The surface rule holds evaporation, convection and radiation together, for wind of 3 to 5 mph.",
  needs: { surfaceRuleBy: "film coefficient" },
  when: () => true,
  message: ({ surfaceRuleBy }, show) =>
    `The surface rule with ${show(surfaceRuleBy, "film coefficient")} already holds evaporation, convection and radiation: add none of them. ${show(us("film coefficient", 10.5), "film coefficient")} stands for wind of 3 to 5 mph (1.3 to 2.2 m/s); US DOE sizes heater output by ${show(us("film coefficient", 12), "film coefficient")}, textbooks heater input by ${show(us("film coefficient", 15), "film coefficient")}.`,
});

export const shelterGuess = caution({
  code: "POOL-SHELTER",
  severity: "Notice",
  source: "isoTr12596",
  description:
    "Shelter is a guess, and evaporation follows the wind: the open and the sheltered word stand 6 times apart.",
  needs: { answer: "wind speed" },
  when: ({ answer }) => answer > 0,
  message: ({ answer }, show) =>
    `${show(answer, "wind speed")} rests on a guess of the shelter: a pool's evaporation may change by a third between two words. Where the job hangs on it, measure the wind a foot above the water.`,
});

/** Most sun above the air of a month at any latitude between the polar circles: 44.3 MJ/m² a day, December at 42° south. */
export const MOST_OUTSIDE = 44.3e6;
const CLEAREST = 0.8;
/** Less than a winter's day has at 60° of latitude. */
const HARDLY_ANY_SUN = us("daily sun", 10);
const KWH_PER_BTU = 3.6e6 / us("daily sun", 1);

export const oddSun = caution({
  code: "POOL-SUN",
  severity: "Caution",
  source: { key: "duffieBeckman2013", where: "chapter 2, clearness and sun above the air" },
  description: "Sun of a day that no place gets, or hardly any: another unit?",
  needs: { sunOnWater: "daily sun" },
  when: ({ sunOnWater }) => sunOnWater > CLEAREST * MOST_OUTSIDE || (sunOnWater > 0 && sunOnWater < HARDLY_ANY_SUN),
  message: ({ sunOnWater }, show) =>
    sunOnWater < HARDLY_ANY_SUN
      ? `${show(sunOnWater, "daily sun")} of sun is hardly any; as kWh/(m²·day) the same number is ${show(sunOnWater * KWH_PER_BTU, "daily sun")}.`
      : `${show(sunOnWater, "daily sun")} of sun is ${(sunOnWater / MOST_OUTSIDE).toFixed(2)} of ${show(MOST_OUTSIDE, "daily sun")}, the most above the air in any month at any latitude between the polar circles; clear days have up to ${CLEAREST} of what their own latitude has: check its unit.`,
});
