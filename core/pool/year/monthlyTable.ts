/** The year as rows: twelve months and the total. */
import { DAYS, HOUR, HOURS_OF_DAY, MONTHS, firstHourOf, hoursOf } from "../../numeric/calendar";
import { NO_VALUE } from "../../kernel/define/result";
import type { YEAR_COLUMNS } from "./columns";
import type { PoolYear, Year } from "./results";
import { savingOf } from "./saving";
import { hotWaterLoad } from "./tankSetUp";
import { monthlyMeans } from "./weather";

export const FROZEN = "frozen" as const;

type Warmth = number | typeof FROZEN;
type MayFreeze = "poolWithout" | "poolWithoutLowest" | "poolWith" | "poolWithLowest";
type MayBeBlank = "moneySaved" | "tankMean";

/** Temperatures K, heats and electricity J, times s, money plain, carbon dioxide kg. */
export type YearRow = { readonly month: string } & {
  readonly [C in keyof typeof YEAR_COLUMNS]: C extends MayFreeze
    ? Warmth
    : C extends MayBeBlank
      ? number | typeof NO_VALUE
      : number;
};

const at = (values: ArrayLike<number>, month: number): number => values[month] ?? 0;

const lossOf = ({ sums }: PoolYear, month: number): number =>
  at(sums.evaporation, month) +
  at(sums.convection, month) +
  at(sums.radiation, month) +
  at(sums.ground, month) +
  at(sums.makeUp, month);

/** Days of a month whose mean temperature reaches the set point, s. */
export function warmDays({ temperature }: PoolYear, set: number, month: number): number {
  let warm = 0;
  const first = firstHourOf(month);
  for (let day = 0; day < (DAYS[month] ?? 0); day++) {
    let sum = 0;
    for (let hour = 0; hour < HOURS_OF_DAY; hour++) sum += temperature[first + HOURS_OF_DAY * day + hour] ?? 0;
    if (sum / HOURS_OF_DAY >= set - 1e-6) warm++;
  }
  return warm * HOURS_OF_DAY * HOUR;
}

interface Temperatures {
  readonly mean: Warmth;
  readonly lowest: Warmth;
  readonly highest: number;
}

const temperaturesOf = ({ sums, lowest, highest }: PoolYear, month: number): Temperatures => {
  const frozen = at(sums.frozen, month) > 0;
  return {
    mean: frozen ? FROZEN : at(sums.warmth, month) / (HOUR * hoursOf(month)),
    lowest: frozen ? FROZEN : at(lowest, month),
    highest: at(highest, month),
  };
};

/** The preheat tank's month; all 0 without one. */
const tankOfMonth = ({ inputs, weather, machine, free, held }: Year, month: number) => {
  const { sums } = free.with;
  const hasTank = machine?.tankCurve !== undefined;
  return {
    heatToTank: at(sums.toTank, month),
    timeOnTank: at(sums.tankTime, month),
    tankMean: hasTank ? at(sums.tankWarmth, month) / (HOUR * hoursOf(month)) : NO_VALUE,
    tankLoss: at(sums.tankLoss, month),
    hotWaterLoad: hasTank ? hotWaterLoad(inputs, weather.mains, month) : 0,
    hotWaterRecovered: at(sums.drawnHeat, month),
    heatToTankHeld: at(held.with.sums.toTank, month),
    hotWaterRecoveredHeld: at(held.with.sums.drawnHeat, month),
  };
};

/** What is left of a heat; nothing where rounding is all that is left. */
const restOf = (all: number, used: number): number => (all - used > 1e-9 * all ? all - used : 0);

const monthRow = (year: Year, month: number, air: number, inSeason: boolean): YearRow => {
  const { inputs, free, held, balance } = year;
  const { poolArea: area, setPoint } = inputs;
  const [without, recovered] = [free.without, free.with];
  const { sums } = recovered;
  const [cold, warm] = [temperaturesOf(without, month), temperaturesOf(recovered, month)];
  const length = HOUR * hoursOf(month);
  const heat = (values: Float64Array): number => area * at(values, month);
  const { money, carbon } = savingOf(year, month);
  const taken = heat(sums.taken);
  return {
    month: MONTHS[month] ?? "",
    air,
    poolWithout: cold.mean,
    poolWithoutLowest: cold.lowest,
    poolWithoutHighest: cold.highest,
    poolWith: warm.mean,
    poolWithLowest: warm.lowest,
    poolWithHighest: warm.highest,
    warmDaysWithout: inSeason ? warmDays(without, setPoint, month) : 0,
    warmDaysWith: inSeason ? warmDays(recovered, setPoint, month) : 0,
    evaporation: heat(sums.evaporation),
    convection: heat(sums.convection),
    radiation: heat(sums.radiation),
    ground: heat(sums.ground),
    makeUp: heat(sums.makeUp),
    lossWithout: area * lossOf(without, month),
    lossWith: area * lossOf(recovered, month),
    sun: heat(sums.sun),
    pumpHeat: heat(sums.pumpHeat),
    heatRejected: at(sums.rejected, month),
    heatTaken: taken,
    heatOutdoors: restOf(at(sums.rejected, month), taken + at(sums.toTank, month)),
    timeOnPool: at(sums.poolTime, month),
    timeOutdoors: at(sums.outdoorTime, month),
    timeIdle: length - at(sums.poolTime, month) - at(sums.outdoorTime, month) - at(sums.tankTime, month),
    backUpWithout: heat(held.without.sums.backUp),
    backUpWith: heat(held.with.sums.backUp),
    backUpByMonth: inSeason ? area * Math.max(0, at(balance.balance, month) - at(without.sums.pumpHeat, month)) : 0,
    heatTakenHeld: heat(held.with.sums.taken),
    electricityWithout: at(without.sums.electricity, month),
    electricityWith: at(sums.electricity, month),
    electricityHeld: at(held.with.sums.electricity, month),
    extraPump: at(sums.extraPump, month),
    extraPumpHeld: at(held.with.sums.extraPump, month),
    coolingNotMet: at(sums.unmet, month),
    moneySaved: money,
    carbonSaved: carbon,
    ...tankOfMonth(year, month),
  };
};

const summed = (rows: readonly YearRow[], key: keyof YearRow): number =>
  rows.reduce((sum, row) => sum + (typeof row[key] === "number" ? row[key] : 0), 0);

const frozenOr = (rows: readonly YearRow[], key: keyof YearRow, of: (values: readonly number[]) => number): Warmth => {
  const values = rows.map((row) => row[key]);
  return values.includes(FROZEN) ? FROZEN : of(values as number[]);
};

const overDays = (values: readonly number[]): number =>
  values.reduce((sum, value, month) => sum + value * (DAYS[month] ?? 0), 0) / 365;

const lowestOf = (values: readonly number[]): number => Math.min(...values);
const highestOf = (rows: readonly YearRow[], key: "poolWithoutHighest" | "poolWithHighest"): number =>
  Math.max(...rows.map((row) => row[key]));

/** Sums of the months; temperatures are the year's mean, lowest and highest. */
const totalRow = (rows: readonly YearRow[]): YearRow => {
  const [first] = rows;
  const keys = Object.keys(first ?? {}) as (keyof YearRow)[];
  const sums = Object.fromEntries(keys.map((key) => [key, summed(rows, key)])) as unknown as YearRow;
  return {
    ...sums,
    month: "Year",
    air: overDays(rows.map((row) => row.air)),
    poolWithout: frozenOr(rows, "poolWithout", overDays),
    poolWithoutLowest: frozenOr(rows, "poolWithoutLowest", lowestOf),
    poolWithoutHighest: highestOf(rows, "poolWithoutHighest"),
    poolWith: frozenOr(rows, "poolWith", overDays),
    poolWithLowest: frozenOr(rows, "poolWithLowest", lowestOf),
    poolWithHighest: highestOf(rows, "poolWithHighest"),
    moneySaved: rows.some((row) => row.moneySaved === NO_VALUE) ? NO_VALUE : sums.moneySaved,
    tankMean: rows.some((row) => row.tankMean === NO_VALUE)
      ? NO_VALUE
      : overDays(rows.map((row) => Number(row.tankMean))),
  };
};

const monthRows = (year: Year): readonly YearRow[] =>
  monthlyMeans(year.weather.air).map((mean, month) => monthRow(year, month, mean, year.season[month] ?? false));

/** Twelve months and the year. */
export const yearRows = (year: Year): readonly YearRow[] => {
  const rows = monthRows(year);
  return [...rows, totalRow(rows)];
};

/** The year alone. */
export const totalOfYear = (year: Year): YearRow => totalRow(monthRows(year));
