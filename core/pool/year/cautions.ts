/** Caution rules of the pool's year. */
import { caution } from "../../kernel/define/caution";
import { DOUBLE_WALL } from "../../sink/cautions";

const percent = (share: number): string => `${Math.round(100 * share)} %`;

export const atLimit = caution({
  code: "POOL-YEAR-AT-LIMIT",
  severity: "Caution",
  source: "commonPractice",
  description: "In high summer the pool reaches its limit and the heat goes outdoors: it can't be kept for spring.",
  needs: { sentOutdoors: "fraction", timeAtLimit: "time", limit: "temperature", warms: "word" },
  when: ({ sentOutdoors }) => sentOutdoors > 0.02,
  message: ({ sentOutdoors, timeAtLimit, limit, warms }, show) =>
    `${percent(sentOutdoors)} of the rejected heat goes outdoors (${show(timeAtLimit, "time")} of running time): the pool is at its limit of ${show(limit, "temperature")} or the pump rests${warms === "pool and tank" ? ", and the tank is at its own" : ""}. A pool keeps heat for days, not for months: no summer heat reaches spring.`,
});

export const littleInSpring = caution({
  code: "POOL-YEAR-COINCIDENCE",
  severity: "Caution",
  source: "commonPractice",
  description: "Need and heat don't coincide: much of the heat comes in summer, most of the need in spring and autumn.",
  needs: { usefulOfNeed: "fraction", usefulOfTaken: "fraction" },
  when: ({ usefulOfNeed }) => usefulOfNeed < 0.6,
  message: ({ usefulOfNeed, usefulOfTaken }) =>
    `Recovery covers ${percent(usefulOfNeed)} of the need for back-up heat, and ${percent(usefulOfTaken)} of the heat that the held pool takes replaces any: the air conditioner runs little in spring, when heat is most wanted.`,
});

export const keepHeater = caution({
  code: "POOL-YEAR-KEEP-HEATER",
  severity: "Notice",
  source: "commonPractice",
  description: "Back-up heat is still needed to hold the set point with recovery: keep the heater.",
  needs: { stillNeeded: "heat" },
  when: ({ stillNeeded }) => stillNeeded > 0,
  message: ({ stillNeeded }, show) =>
    `Holding the set point still takes ${show(stillNeeded, "heat")} of back-up heat a year: keep the heater, or a shorter season.`,
});

export const frozen = caution({
  code: "POOL-YEAR-FROZEN",
  severity: "Warning",
  source: "identity",
  description: "The pool left to itself freezes: temperatures of such months are not numbers.",
  needs: { frozenTime: "time" },
  when: ({ frozenTime }) => frozenTime > 0,
  message: ({ frozenTime }, show) =>
    `The pool left to itself is at freezing for ${show(frozenTime, "time")}; ice and snow are not counted. Set the season, close or drain the pool, and protect pipes, pump and exchanger from frost.`,
});

export const noRecovery = caution({
  code: "POOL-YEAR-NO-RECOVERY",
  severity: "Notice",
  source: "identity",
  description: "Without an exchanger UA nothing is recovered: both pools are equal.",
  needs: { recovers: "yes/no" },
  when: ({ recovers }) => !recovers,
  message: () =>
    "No recovery here: the labels rated cooling, rated power and exchanger UA make the air conditioner heat the pool.",
});

export const madeHours = caution({
  code: "POOL-YEAR-MADE-HOURS",
  severity: "Notice",
  standing: true,
  source: { key: "duffieBeckman2013", where: "days and hours of sun" },
  description: "Twelve rows: the hours are made from monthly means; hourly rows of a weather file are better.",
  needs: { monthlyRows: "yes/no" },
  when: ({ monthlyRows }) => monthlyRows,
  message: () =>
    "The hours are made from monthly means: published shapes of the day's temperature, wind and sun, days spread about the month. The year's need agrees with hourly weather within 5 % in four US cities; single months less well.",
});

export const beyondCurve = caution({
  code: "POOL-YEAR-BEYOND-CURVE",
  severity: "Caution",
  source: "cutler2013",
  description: "The machine's outdoor data end, published curves at 65 and 115 °F: beyond, the end's value is taken.",
  needs: { beyondCurveTime: "time", coversFrom: "temperature", coversTo: "temperature" },
  when: ({ beyondCurveTime }) => beyondCurveTime > 0,
  message: ({ beyondCurveTime, coversFrom, coversTo }, show) =>
    `For ${show(beyondCurveTime, "time")} there is a load outside ${show(coversFrom, "temperature")} to ${show(coversTo, "temperature")}: capacity and power on the outdoor coil are then those of the end of the machine's curve or rows.`,
});

export const notMet = caution({
  code: "POOL-YEAR-NOT-MET",
  severity: "Caution",
  source: "identity",
  description: "The cooling load is more than the machine gives in some hours.",
  needs: { notMetShare: "fraction" },
  when: ({ notMetShare }) => notMetShare > 0.01,
  message: ({ notMetShare }) =>
    `${percent(notMetShare)} of the year's cooling load is beyond the machine: check design load, balance and sun let in.`,
});

export const dearPump = caution({
  code: "POOL-YEAR-PUMP",
  severity: "Notice",
  source: "identity",
  description: "The pump runs beyond its hours for the air conditioner: its electricity is taken off the saving.",
  needs: { pumpBeyond: "electric energy", electricitySaved: "electric energy" },
  when: ({ pumpBeyond, electricitySaved }) => pumpBeyond > 0 && pumpBeyond > 0.25 * electricitySaved,
  message: ({ pumpBeyond, electricitySaved }, show) =>
    `The pump's extra hours take ${show(pumpBeyond, "electric energy")} a year beside ${show(Math.abs(electricitySaved), "electric energy")} of cooling electricity ${electricitySaved < 0 ? "added" : "saved"}: shift its hours into the afternoon, or run it slower.`,
});

export const morePower = caution({
  code: "POOL-YEAR-MORE-POWER",
  severity: "Caution",
  source: "commonPractice",
  description:
    "The machine takes more electricity on the water than outdoors: exchanger small, water warm, or air mild.",
  needs: { electricitySaved: "electric energy", warms: "word" },
  when: ({ electricitySaved }) => electricitySaved < 0,
  message: ({ electricitySaved, warms }, show) =>
    `Cooling takes ${show(-electricitySaved, "electric energy")} MORE electricity a year on ${warms} than outdoors: the exchanger is small, the water warm beside mild air. Try a larger UA, more water, a lower limit.`,
});

export const tankWall = caution({
  code: "POOL-YEAR-TANK-DOUBLE-WALL",
  severity: "Danger",
  standing: true,
  source: "doubleWallCodes",
  description: "Refrigerant beside drinking water in the preheat tank needs a vented double wall.",
  needs: { preheat: "temperature" },
  when: () => true,
  message: () => DOUBLE_WALL,
});

export const tankUnpriced = caution({
  code: "POOL-YEAR-HOT-WATER-UNPRICED",
  severity: "Notice",
  source: "identity",
  description: "A preheat tank without a main heater's source: its heat counts nothing in money and carbon.",
  needs: { hotWaterUnpriced: "yes/no" },
  when: ({ hotWaterUnpriced }) => hotWaterUnpriced,
  message: () =>
    "The tank's heat counts nothing in money saved and carbon saved: the label hot water source is none. Name the main heater's source, and its price.",
});

export const singleSpeedYear = caution({
  code: "POOL-YEAR-SINGLE-SPEED",
  severity: "Caution",
  standing: true,
  source: "cutler2013",
  description: "The machine is taken as one of a single speed: it runs at full capacity or not at all.",
  needs: { singleSpeed: "yes/no" },
  when: ({ singleSpeed }) => singleSpeed,
  message: () =>
    "A single-speed machine: it runs at full capacity or not at all. Two-stage and variable-speed machines run longer with less heat at a time and save less on the pool: choose the machine type and enter its low stage.",
});
