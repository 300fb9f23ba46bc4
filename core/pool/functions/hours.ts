import { choice } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { of, table } from "../../kernel/result";
import { estimate } from "../losses/cautions";
import { admitClimate } from "../year/climate";
import { COLD_MONTHS, MIAMI_MACHINE, MIAMI_MONTHS, MIAMI_POOL } from "../data/miami";
import { MONTHS } from "../year/calendar";
import { FROZEN } from "../year/monthlyTable";
import { typicalDay } from "../year/typicalDay";
import { yearOf } from "../year/year";
import { frozen, madeHours } from "../year/cautions";
import { CLIMATE, YEAR_INPUTS } from "../year/inputs";

const MONTH = choice("Month", MONTHS, "month, 1 to 12 or its name", {
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

export const hours = cellFunction({
  id: "POOL.HOURS",
  topic: "pool",
  heavy: "slow",
  summary:
    "A month's typical day by the hour out of POOL.YEAR: temperatures, load, heat taken, back-up, electricity; for a chart.",
  finds: ["daily profile", "typical day", "chart", "diurnal", "load curve"],
  remarks: [
    "Means of all days of the month by the clock's hour (standard time), the hour by its start. Temperatures, heat taken and electricity are of the pool left to itself, back-up heat of the one held at the set point.",
  ],
  args: { inputs: YEAR_INPUTS, climate: CLIMATE, month: MONTH },
  gives: table("the typical day", {
    hour: of("count", "start of the hour"),
    air: of("temperature", "air"),
    poolWithout: of("temperature", "pool without recovery", { or: "frozen" }),
    poolWith: of("temperature", "pool with recovery", { or: "frozen" }),
    sun: of("irradiance", "sun on a level surface"),
    load: of("heat rate", "cooling load"),
    heatTaken: of("heat rate", "heat taken by the pool"),
    heatOutdoors: of("heat rate", "heat sent outdoors"),
    backUpWithout: of("heat rate", "back-up heat without recovery"),
    backUpWith: of("heat rate", "back-up heat with recovery"),
    electricityWithout: of("electric power", "cooling electricity without recovery"),
    electricityWith: of("electric power", "cooling electricity with recovery"),
    heatToTank: of("heat rate", "heat taken by the preheat tank"),
    tank: of("temperature", "water in the tank; blank without one", { or: "" }),
  }),
  facts: { lossEstimated: "yes/no", monthlyRows: "yes/no", frozenTime: "time" },
  cautions: [
    { rule: estimate, fires: at },
    { rule: madeHours, fires: at },
    { rule: frozen, fires: { ...at, climate: COLD_MONTHS, month: 1 } },
  ],
  example: { ...at, inputs: { ...MIAMI_POOL, ...MIAMI_MACHINE } },
  checks: [
    {
      at,
      gives: { row: 14, column: "air", is: 31.9 },
      within: 0.4,
      from: {
        key: "erbs1984",
        where: "shape of the day: highest at 14 to 15 h, about 0.48 of the swing above the mean",
      },
      remark: "Miami in July: mean 28.13 °C, swing 7.85 K",
    },
    { at, gives: { row: 0, column: "sun", is: 0 }, within: 0, from: "identity" },
    { at, gives: { row: 12, column: "heatTaken", is: 0 }, within: 0, from: "identity" },
  ],
  work({ inputs, climate, month }, { trace, note, system }) {
    const admitted = admitClimate(climate, system);
    const year = yearOf(inputs, admitted, undefined, trace);
    const place = MONTHS.indexOf(month);
    const ice = (of: typeof year.free.with): boolean => (of.sums.frozen[place] ?? 0) > 0;
    const [without, warm] = [ice(year.free.without), ice(year.free.with)];
    note({
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
