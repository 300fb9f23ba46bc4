/** The year as rows: twelve months and the total. */
import { DAYS } from "../../aircon/models/fullLoadHours";
import { carbonOfHeat, checkEfficiency, costOfHeat } from "../../cost/models/heat";
import { sourceNamed } from "../../cost/data/heatSources";
import { NO_VALUE } from "../../kernel/result";
import { FIRST_DAY } from "./yearSun";
import type { Year } from "./year";
import type { PoolYear } from "./yearPool";
import { seasonOf } from "./yearSetUp";
import { monthlyMeans } from "./yearWeather";

export const FROZEN = "frozen" as const;
export const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

type Warmth = number | typeof FROZEN;

/** Temperatures K, heats and electricity J, times s, money plain, carbon dioxide kg. */
export interface YearRow {
  readonly month: string;
  readonly air: number;
  readonly poolWithout: Warmth;
  readonly poolWithoutLowest: Warmth;
  readonly poolWithoutHighest: number;
  readonly poolWith: Warmth;
  readonly poolWithLowest: Warmth;
  readonly poolWithHighest: number;
  readonly warmDaysWithout: number;
  readonly warmDaysWith: number;
  readonly evaporation: number;
  readonly convection: number;
  readonly radiation: number;
  readonly ground: number;
  readonly makeUp: number;
  readonly lossWithout: number;
  readonly lossWith: number;
  readonly sun: number;
  readonly pumpHeat: number;
  readonly heatRejected: number;
  readonly heatTaken: number;
  readonly heatOutdoors: number;
  readonly timeOnPool: number;
  readonly timeOutdoors: number;
  readonly timeIdle: number;
  readonly backUpWithout: number;
  readonly backUpWith: number;
  readonly backUpByMonth: number;
  readonly heatTakenHeld: number;
  readonly electricityWithout: number;
  readonly electricityWith: number;
  readonly electricityHeld: number;
  readonly extraPump: number;
  readonly extraPumpHeld: number;
  readonly coolingNotMet: number;
  readonly moneySaved: number | typeof NO_VALUE;
  readonly carbonSaved: number;
}

const HOUR = 3600;
const DAY = 24;
const at = (values: ArrayLike<number>, month: number): number => values[month] ?? 0;

const lossOf = ({ sums }: PoolYear, month: number): number =>
  at(sums.evaporation, month) +
  at(sums.convection, month) +
  at(sums.radiation, month) +
  at(sums.ground, month) +
  at(sums.makeUp, month);

/** Days of a month whose mean temperature reaches the set point, s. */
const warmDays = ({ temperature }: PoolYear, set: number, month: number): number => {
  let warm = 0;
  const first = DAY * (FIRST_DAY[month] ?? 0);
  for (let day = 0; day < (DAYS[month] ?? 0); day++) {
    let sum = 0;
    for (let hour = 0; hour < DAY; hour++) sum += temperature[first + DAY * day + hour] ?? 0;
    if (sum / DAY >= set - 1e-6) warm++;
  }
  return warm * DAY * HOUR;
};

interface Temperatures {
  readonly mean: Warmth;
  readonly lowest: Warmth;
  readonly highest: number;
}

const temperaturesOf = ({ sums, lowest, highest }: PoolYear, month: number): Temperatures => {
  const frozen = at(sums.frozen, month) > 0;
  return {
    mean: frozen ? FROZEN : at(sums.warmth, month) / (HOUR * DAY * (DAYS[month] ?? 1)),
    lowest: frozen ? FROZEN : at(lowest, month),
    highest: at(highest, month),
  };
};

/** What recovery saves in a month by the pair that counts: held by the back-up heater where there is one. */
const savingOf = ({ inputs, free, held }: Year, month: number): { money: number | ""; carbon: number } => {
  const { backUpSource, backUpPrice, electricityPrice } = inputs;
  const pair = backUpSource === "none" ? free : held;
  const electric = (year: PoolYear): number => at(year.sums.electricity, month) + at(year.sums.extraPump, month);
  const power = electric(pair.without) - electric(pair.with);
  const grid = carbonOfHeat("electric resistance", 1, 1);
  const money = electricityPrice === undefined ? undefined : power * electricityPrice;
  if (backUpSource === "none") return { money: money ?? NO_VALUE, carbon: power * grid };
  const efficiency = inputs.backUpEfficiency ?? sourceNamed(backUpSource).typical;
  checkEfficiency(backUpSource, efficiency, "inputs: back up efficiency");
  const heat = (at(held.without.sums.backUp, month) - at(held.with.sums.backUp, month)) * inputs.poolArea;
  const carbon = power * grid + carbonOfHeat(backUpSource, heat, efficiency);
  const saved = backUpPrice === undefined ? undefined : costOfHeat(backUpSource, heat, backUpPrice, efficiency);
  return { money: money === undefined || saved === undefined ? NO_VALUE : money + saved, carbon };
};

const monthRow = (year: Year, month: number, air: number, inSeason: boolean): YearRow => {
  const { inputs, free, held, balance } = year;
  const { poolArea: area, setPoint } = inputs;
  const [without, recovered] = [free.without, free.with];
  const { sums } = recovered;
  const [cold, warm] = [temperaturesOf(without, month), temperaturesOf(recovered, month)];
  const length = HOUR * DAY * (DAYS[month] ?? 0);
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
    heatOutdoors: at(sums.rejected, month) - taken,
    timeOnPool: at(sums.poolTime, month),
    timeOutdoors: at(sums.outdoorTime, month),
    timeIdle: length - at(sums.poolTime, month) - at(sums.outdoorTime, month),
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
  };
};

const monthRows = (year: Year): readonly YearRow[] => {
  const season = seasonOf(year.inputs);
  return monthlyMeans(year.weather.air).map((mean, month) => monthRow(year, month, mean, season[month] ?? false));
};

/** Twelve months and the year. */
export const yearRows = (year: Year): readonly YearRow[] => {
  const rows = monthRows(year);
  return [...rows, totalRow(rows)];
};

/** The year alone. */
export const totalOfYear = (year: Year): YearRow => totalRow(monthRows(year));
