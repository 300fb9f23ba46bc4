import { MONTHS } from "../../numeric/calendar";
import { choice } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { sum } from "../../numeric/series";
import { quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { poolEstimate } from "../losses/cautions";
import { COLD_MONTHS, MIAMI_MACHINE, MIAMI_MONTHS, MIAMI_POOL } from "../data/miami";
import { FROZEN } from "../year/monthlyTable";
import { allHours, typicalDay } from "../year/typicalDay";
import { sharedYear } from "../year/sharedYear";
import { frozen, madeHours } from "../year/cautions";
import { CLIMATE, YEAR_INPUTS } from "../year/inputs";

/** The word for all 8,760 hours in place of a month. */
const ALL_HOURS = "all hours";

const MONTH = choice("Month", [...MONTHS, ALL_HOURS], "month, 1 to 12 or its name; 0 for all hours of the year", {
  "0": ALL_HOURS,
  ...Object.fromEntries(MONTHS.map((name, place) => [String(place + 1), name])),
  January: "Jan",
  February: "Feb",
  March: "Mar",
  April: "Apr",
  June: "Jun",
  July: "Jul",
  August: "Aug",
  September: "Sep",
  October: "Oct",
  November: "Nov",
  December: "Dec",
});

const at = { inputs: MIAMI_POOL, climate: MIAMI_MONTHS, month: "Jul", units: "SI" } as const;

export const poolHours = cellFunction({
  id: "POOL.HOURS",
  topic: "pool",
  memoised: true,
  slow: true,
  summary:
    "A month's typical day by the hour out of POOL.YEAR, or all 8,760 hours: temperatures, load, heat, electricity.",
  keywords: ["daily profile", "typical day", "chart", "diurnal", "load curve"],
  details: [
    "Means of all days of the month by the clock's hour (standard time), the hour by its start. Temperatures, heat taken and electricity are of the pool left to itself, back-up heat of the one held at the set point.",
    "Month 0 gives the 8,760 hours of the year in the same columns, for COST.TARIFF; 1 January is a Monday there. Days of the week mean nothing in a typical year: they only spread tariffs.",
  ],
  args: { inputs: YEAR_INPUTS, climate: CLIMATE, month: MONTH },
  returns: tableResult("the typical day", {
    hour: quantityResult("count", "start of the hour"),
    air: quantityResult("temperature", "air"),
    poolWithout: quantityResult("temperature", "pool without recovery", { or: "frozen" }),
    poolWith: quantityResult("temperature", "pool with recovery", { or: "frozen" }),
    sun: quantityResult("irradiance", "sun on a level surface"),
    load: quantityResult("heat rate", "cooling load"),
    heatTaken: quantityResult("heat rate", "heat taken by the pool"),
    heatOutdoors: quantityResult("heat rate", "heat sent outdoors"),
    backUpWithout: quantityResult("heat rate", "back-up heat without recovery"),
    backUpWith: quantityResult("heat rate", "back-up heat with recovery"),
    electricityWithout: quantityResult("electric power", "cooling electricity without recovery"),
    electricityWith: quantityResult("electric power", "cooling electricity with recovery"),
    heatToTank: quantityResult("heat rate", "heat taken by the preheat tank"),
    tank: quantityResult("temperature", "water in the tank; blank without one", { or: "" }),
    electricityHeldWithout: quantityResult("electric power", "cooling electricity without recovery, pool held"),
    electricityHeldWith: quantityResult("electric power", "cooling electricity with recovery, pool held"),
    weekday: wordResult("day of the week; blank in a typical day"),
  }),
  facts: { lossEstimated: "yes/no", monthlyRows: "yes/no", frozenTime: "time" },
  cautions: [
    { rule: poolEstimate, raisedBy: at },
    { rule: madeHours, raisedBy: at },
    { rule: frozen, raisedBy: { ...at, climate: COLD_MONTHS, month: 1 } },
  ],
  example: { ...at, inputs: { ...MIAMI_POOL, ...MIAMI_MACHINE } },
  checks: [
    {
      inputs: at,
      expected: { row: 14, column: "air", value: 31.9 },
      tolerance: 0.4,
      source: {
        key: "erbs1984",
        where: "shape of the day: highest at 14 to 15 h, about 0.48 of the swing above the mean",
      },
      remark: "Miami in July: mean 28.13 °C, swing 7.85 K",
    },
    { inputs: at, expected: { row: 0, column: "sun", value: 0 }, tolerance: 0, source: "identity" },
    { inputs: at, expected: { row: 12, column: "heatTaken", value: 0 }, tolerance: 0, source: "identity" },
  ],
  compute({ inputs, climate, month }, { trace, recordFacts, system }) {
    const { year, climate: admitted } = sharedYear(inputs, climate, system, trace);
    if (month === ALL_HOURS) {
      recordFacts({
        lossEstimated: true,
        monthlyRows: admitted.monthly,
        frozenTime: sum(year.free.with.sums.frozen),
      });
      return allHours(year);
    }
    const place = MONTHS.indexOf(month);
    const ice = (of: typeof year.free.with): boolean => (of.sums.frozen[place] ?? 0) > 0;
    const [without, warm] = [ice(year.free.without), ice(year.free.with)];
    recordFacts({
      lossEstimated: true,
      monthlyRows: admitted.monthly,
      frozenTime: year.free.with.sums.frozen[place] ?? 0,
    });
    return typicalDay(year, place).map((hour) => ({
      ...hour,
      poolWithout: without ? FROZEN : hour.poolWithout,
      poolWith: warm ? FROZEN : hour.poolWith,
    }));
  },
});
