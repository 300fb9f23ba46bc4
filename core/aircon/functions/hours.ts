import { DAYS, MONTHS } from "../../numeric/calendar";
import { standardDeviation, sum, sumOf } from "../../numeric/series";
import { quantity, rows } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { valueError } from "../../kernel/values/fault";
import { show, us } from "../../kernel/values/quantity";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { boardDrivesMachine, boardFacts } from "../../cycle/machine/cautions";
import { hoursOverstate, narrowSpan, oddMeans, singleSpeedOnly } from "../cautions";
import { MACHINE_BLOCK } from "../machine/inputs";
import { machineMonths, totalRun } from "../machine/months";
import { yearOfLoad, type MonthOfLoad } from "../fullLoadHours";

/** Monthly means of the typical year of Miami (TMY3, Miami International Airport). */
const MIAMI = [67, 69.6, 70.8, 75.4, 79.6, 81.8, 82.6, 82.3, 81.5, 79.4, 74.5, 68.5].map((mean) => ({ mean }));

/** A month without a machine. */
const NO_MACHINE = { lowStageHours: NO_VALUE, higherHours: NO_VALUE, electricity: NO_VALUE } as const;

/** The year: means over all days, hours summed. */
const total = (months: readonly MonthOfLoad[]): MonthOfLoad => {
  const overDays = (of: (month: MonthOfLoad) => number): number =>
    sum(months.map((month, place) => of(month) * (DAYS[place] ?? 30))) / 365;
  return {
    mean: overDays(({ mean }) => mean),
    load: overDays(({ load }) => load),
    time: sumOf(months, ({ time }) => time),
  };
};

const MEANS = rows(
  {
    mean: quantity("temperature", "mean temperature of the month", {
      from: us("temperature", -50),
      to: us("temperature", 110),
    }),
  },
  "twelve rows: mean temperature of each month, January first",
  { least: 12, most: 12 },
);

export const airconHours = cellFunction({
  id: "AIRCON.HOURS",
  topic: "aircon",
  memoised: true,
  summary: "Equivalent full-load cooling hours of each month from monthly mean temperatures.",
  keywords: ["EFLH", "run hours", "run time", "cooling season", "degree days", "bin method"],
  details: [
    "Load: none at or below the balance temperature, rising in a straight line to full at the design temperature, full above it; day and night alike.",
    "Daily means spread about the month's mean by the distribution of Erbs, Klein and Beckman. The swing within a day is ignored, so spring and autumn read a little low.",
    "With machine: its load is its own cooling at design, and each day of the month's spread is met by stage or speed as in POOL.YEAR, on the outdoor coil, with the cycling loss below the least.",
    "Degree-days by this method agree with ten typical US years within 10 % (San Francisco, which has hardly any, within 200 °F·days).",
  ],
  args: {
    monthlyMeans: MEANS,
    balance: quantity("temperature", "outdoor temperature below which nothing is cooled", {
      from: us("temperature", 40),
      to: us("temperature", 85),
      usual: [us("temperature", 55), us("temperature", 75)],
    }),
    design: quantity("temperature", "outdoor temperature at which the machine is fully loaded", {
      from: us("temperature", 60),
      to: us("temperature", 130),
      usual: [us("temperature", 80), us("temperature", 115)],
    }),
    yearlySpread: quantity("temperature difference", "standard deviation of the monthly means over the years' months", {
      from: 0,
      to: us("temperature difference", 40),
    }).default({
      words: "from the twelve means",
      from: ({ monthlyMeans }) =>
        standardDeviation((monthlyMeans as readonly { readonly mean: number }[]).map(({ mean }) => mean)),
    }),
    machine: MACHINE_BLOCK.describedAs(
      "block of the machine with POOL.YEAR's labels: adds its time by stage and electricity",
    ).optional(),
  },
  unitsAfter: "yearlySpread",
  returns: tableResult(
    "full-load hours by month",
    {
      month: wordResult("month; the last row is the year"),
      mean: quantityResult("temperature", "mean temperature"),
      meanLoad: quantityResult("fraction", "mean share of full load"),
      fullLoadHours: quantityResult("time", "equivalent full-load hours"),
      lowStageHours: quantityResult("time", "time at low stage or least speed; blank without a machine"),
      higherHours: quantityResult("time", "time above it, at full capacity with a single speed"),
      electricity: quantityResult("electric energy", "electricity of the machine on its outdoor coil"),
    },
    { total: true },
  ),
  cautions: [
    {
      rule: boardDrivesMachine,
      raisedBy: {
        monthlyMeans: MIAMI,
        balance: 65,
        design: 91,
        machine: { ratedCooling: 36_000, ratedPower: 3, communicating: true },
      },
    },
    {
      rule: singleSpeedOnly,
      raisedBy: {
        monthlyMeans: MIAMI,
        balance: 65,
        design: 91,
        machine: { ratedCooling: 36_000, ratedPower: 3 },
      },
    },
    {
      rule: hoursOverstate,
      raisedBy: { monthlyMeans: MONTHS.map((_, place) => ({ mean: 60 + 2 * place })), balance: 65, design: 95 },
    },
    {
      rule: narrowSpan,
      raisedBy: { monthlyMeans: MONTHS.map((_, place) => ({ mean: 60 + 2 * place })), balance: 75, design: 85 },
    },
    {
      rule: oddMeans,
      raisedBy: { monthlyMeans: MONTHS.map((_, place) => ({ mean: 10 + place })), balance: 65, design: 91 },
    },
  ],
  facts: {
    coolestMonth: "temperature",
    warmestMonth: "temperature",
    jump: "temperature difference",
    singleSpeed: "yes/no",
    boardDriven: "word",
  },
  checks: [
    {
      inputs: { monthlyMeans: MIAMI, balance: 65, design: 91 },
      expected: { row: "Jul", column: "fullLoadHours", value: 504 },
      tolerance: "3 %",
      source: "tmy3",
      remark: "303.6 K·days above 65 °F in July of the typical year of Miami, over 26 °F",
    },
    {
      inputs: { monthlyMeans: MIAMI, balance: 65, design: 91 },
      expected: { row: "Year", column: "fullLoadHours", value: 3873 },
      tolerance: "3 %",
      source: "tmy3",
      remark: "2,331 K·days above 65 °F in the year",
    },
  ],
  compute({ monthlyMeans, balance, design, yearlySpread, machine }, { trace, system, recordFacts }) {
    if (design - balance < us("temperature difference", 5) - 1e-9)
      throw valueError(
        `design: must be at least ${show(us("temperature difference", 5), "temperature difference", system)} above balance, got ${show(design, "temperature", system)} over ${show(balance, "temperature", system)}`,
      );
    const means = monthlyMeans.map(({ mean }) => mean);
    recordFacts({
      coolestMonth: Math.min(...means),
      warmestMonth: Math.max(...means),
      jump: Math.max(...means.map((mean, month) => Math.abs(mean - (means.at(month - 1) ?? mean)))),
      ...(machine && { singleSpeed: machine.machineType === "single speed", ...boardFacts(machine) }),
    });
    const months = yearOfLoad(means, { balance, design, yearlySpread }, trace);
    const runs =
      machine &&
      machineMonths({ ...machine, mapUnits: machine.mapUnits ?? system }, months, { balance, design, yearlySpread });
    return [...months, total(months)].map(({ mean, load, time }, place) => ({
      month: MONTHS[place] ?? "Year",
      mean,
      meanLoad: load,
      fullLoadHours: time,
      ...(runs ? (runs[place] ?? totalRun(runs)) : NO_MACHINE),
    }));
  },
});
