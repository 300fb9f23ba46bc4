import { choice, quantity, rows } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { HOURS_OF_YEAR, MONTHS, WEEKDAYS } from "../../numeric/calendar";
import { sumOf } from "../../numeric/series";
import { hourlyDemand, shiftedHours } from "../tariffCautions";
import { CHARGES, DAY_KINDS, tariffMonths } from "../tariff";

const month = (description: string, usual: number) =>
  quantity("count", description, { from: 1, to: 12, whole: true }).default(usual);
const hour = (description: string, usual: number) =>
  quantity("count", description, { from: 0, to: 24, whole: true }).default(usual);
const money = (description: string) => quantityResult("money", description);

/** An invented tariff; 1 kW all year, its weekends all off peak. */
const FLAT = {
  kWhByHour: Array.from({ length: 24 }, () => [1]),
  tariff: [
    ["energy", 0.3, 6, 9, "weekdays", 16, 21],
    ["energy", 0.1],
    ["demand", 10],
    ["fixed", 15],
  ],
} as const;

export const costTariff = cellFunction({
  id: "COST.TARIFF",
  topic: "cost",
  unitsAfter: "tariff",
  memoised: true,
  summary: "A year's electricity bill from its hours: time-of-use prices, demand charge with ratchet, fixed charge.",
  keywords: ["time of use", "TOU", "peak", "demand charge", "ratchet", "on-peak", "electricity bill", "rate schedule"],
  details: [
    "kWhByHour: 8,760 rows from midnight of 1 January, without leap day (a column of POOL.HOURS for month 0: kW through an hour are kWh), or 24 rows for a year of days alike.",
    "Tariff: charge, price, [first month], [last month], [days], [from hour], [to hour], [ratchet]. Energy in money/kWh: the first row that holds counts, and every hour needs one; put the special hours first. Demand in money for each kW of the month's highest hour in the row's hours; several rows add up. Fixed in money a month. Months may run over the new year, hours over midnight; standard time.",
    "Ratchet: the share of the highest peak of the other months that is billed at least; the year repeats. Holidays count as the day of the week that they fall on.",
    "What a change saves: the bill without less the bill with it, never the change of hours priced by itself: demand doesn't add up.",
  ],
  args: {
    kWhByHour: rows({ energy: quantity("electric energy", "kWh of the hour", { from: 0 }) }, "rows: kWh of each hour", {
      least: 24,
      most: HOURS_OF_YEAR,
    }),
    tariff: rows(
      {
        charge: choice("TariffCharge", CHARGES, "what is charged", { consumption: "energy", capacity: "demand" }),
        price: quantity(
          {
            choice: "charge",
            kinds: { energy: "price of electricity", demand: "money", fixed: "money" },
          },
          "money per kWh, per kW and month, or per month",
          { from: 0 },
        ),
        firstMonth: month("first month, 1 to 12", 1),
        lastMonth: month("last month, 1 to 12", 12),
        days: choice("TariffDays", DAY_KINDS, "days of the week", { weekday: "weekdays", weekend: "weekends" }).default(
          "all",
        ),
        fromHour: hour("begins, 0 to 24", 0),
        toHour: hour("ends, 0 to 24", 24),
        ratchet: quantity("fraction", "share of the highest past peak", { from: 0, to: 1 }).default(0),
      },
      "rows: charge, price, [first month], [last month], [days], [from hour], [to hour], [ratchet]",
      { least: 1, most: 60 },
    ),
    firstDay: choice("Weekday", WEEKDAYS, "weekday of 1 January").default("Monday"),
  },
  returns: tableResult(
    "the bill by months",
    {
      month: wordResult("month"),
      energy: quantityResult("electric energy", "energy"),
      energyCharge: money("for energy"),
      billedDemand: quantityResult("electric power", "highest billed demand; blank without a charge"),
      demandCharge: money("for demand"),
      fixedCharge: money("fixed"),
      total: money("bill"),
      meanPrice: quantityResult("number", "bill over kWh; blank without energy"),
    },
    { total: true },
  ),
  facts: { charged: "yes/no" },
  cautions: [
    { rule: hourlyDemand, raisedBy: FLAT },
    { rule: shiftedHours, raisedBy: FLAT },
  ],
  checks: [
    {
      inputs: FLAT,
      expected: { row: "Year", column: "demandCharge", value: 120 },
      tolerance: 1e-9,
      source: "identity",
      remark: "1 kW in each month, at 10",
    },
    {
      inputs: FLAT,
      expected: { row: "Year", column: "energyCharge", value: 962 },
      tolerance: 1e-9,
      source: "identity",
      remark: "8,760 kWh at 0.1, and 0.2 more in 5 hours of the 86 weekdays from June to September 2018, by a calendar",
    },
  ],
  compute({ kWhByHour, tariff, firstDay }, { trace, recordFacts }) {
    const months = tariffMonths(
      kWhByHour.map(({ energy }) => energy),
      tariff,
      firstDay,
      trace,
    );
    const charged = months.some(({ demandCharge }) => demandCharge > 0);
    recordFacts({ charged });
    const all = {
      energy: sumOf(months, ({ energy }) => energy),
      energyCharge: sumOf(months, ({ energyCharge }) => energyCharge),
      demand: charged ? Math.max(...months.map(({ demand }) => demand ?? 0)) : undefined,
      demandCharge: sumOf(months, ({ demandCharge }) => demandCharge),
      fixedCharge: sumOf(months, ({ fixedCharge }) => fixedCharge),
    };
    return [...months, all].map(({ energy, energyCharge, demand, demandCharge, fixedCharge }, place) => {
      const total = energyCharge + demandCharge + fixedCharge;
      return {
        month: MONTHS[place] ?? "Year",
        energy,
        energyCharge,
        billedDemand: demand ?? NO_VALUE,
        demandCharge,
        fixedCharge,
        total,
        meanPrice: energy > 0 ? (total * 3.6e6) / energy : NO_VALUE,
      };
    });
  },
});
