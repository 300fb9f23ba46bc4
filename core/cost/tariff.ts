/** A time-of-use tariff with demand charge on the hours of a year. Energy in J, power in W. */
import { equation, symbol } from "../kernel/define/equation";
import { silent, type Trace } from "../kernel/define/steps";
import { valueError } from "../kernel/values/fault";
import { DAYS, HOURS_OF_DAY, HOURS_OF_YEAR, MONTHS, MONTH_OF_HOUR, WEEKDAYS } from "../numeric/calendar";
import { sum } from "../numeric/series";

export const CHARGES = ["energy", "demand", "fixed"] as const;
export const DAY_KINDS = ["all", "weekdays", "weekends"] as const;

export interface TariffRow {
  readonly charge: (typeof CHARGES)[number];
  /** Money per J, per kW and month, or per month. */
  readonly price: number;
  /** 1 to 12; from a later to an earlier month it runs over the new year. */
  readonly firstMonth: number;
  readonly lastMonth: number;
  readonly days: (typeof DAY_KINDS)[number];
  /** 0 to 24; from a later to an earlier hour it runs over midnight. */
  readonly fromHour: number;
  readonly toHour: number;
  /** Share of the highest past peak that is billed at least. */
  readonly ratchet: number;
}

const P = (name: string) => symbol("electric power", name, 0, 2e5);

export const billedDemand = equation({
  name: "Billed demand",
  form: "B = max(P, r * H)",
  kind: "electric power",
  symbols: {
    P: P("peak of the month"),
    r: symbol("fraction", "ratchet", 0, 1),
    H: P("highest peak of the other months"),
  },
  source: "commonPractice",
  code: (x) => Math.max(x.P, x.r * x.H),
});

const KILOWATT = 1000;
const HOUR = 3600;

/** Whether a place from 0 lies in a span that may run over its end. */
const spans = (at: number, from: number, to: number): boolean =>
  from < to ? at >= from && at < to : at >= from || at < to;

const inMonth = ({ firstMonth, lastMonth }: TariffRow, month: number): boolean =>
  spans(month, firstMonth - 1, lastMonth % 12) || firstMonth - 1 === lastMonth % 12;

/** Whether the row holds at an hour of the day, on a weekend or not. */
const inDay = ({ days, fromHour, toHour }: TariffRow, hour: number, weekend: boolean): boolean =>
  (days === "all" || (days === "weekends") === weekend) &&
  (fromHour % 24 === toHour % 24 || spans(hour, fromHour, toHour));

/** Place of the first energy row that holds, by month, weekend and hour of the day. */
function energyRows(rows: readonly TariffRow[]): Int16Array {
  const places = new Int16Array(12 * 2 * HOURS_OF_DAY);
  for (let month = 0; month < 12; month++)
    for (const weekend of [0, 1])
      for (let hour = 0; hour < HOURS_OF_DAY; hour++) {
        const place = rows.findIndex(
          (row) => row.charge === "energy" && inMonth(row, month) && inDay(row, hour, weekend === 1),
        );
        if (place < 0)
          throw valueError(
            `tariff: no energy price for ${MONTHS[month] ?? ""}, ${weekend === 1 ? "weekends" : "weekdays"}, ${hour} to ${hour + 1} h`,
          );
        places[(2 * month + weekend) * HOURS_OF_DAY + hour] = place;
      }
  return places;
}

export interface TariffMonth {
  readonly energy: number;
  readonly energyCharge: number;
  /** Highest billed demand of the demand rows, W; undefined without any. */
  readonly demand: number | undefined;
  readonly demandCharge: number;
  readonly fixedCharge: number;
}

/** Peak of each month in the hours of a demand row, W. */
function peaksOf(row: TariffRow, energy: readonly number[], weekendAt: (hour: number) => boolean): readonly number[] {
  const peaks = Array.from({ length: 12 }, () => 0);
  energy.forEach((each, hour) => {
    const month = MONTH_OF_HOUR[hour] ?? 0;
    const power = each / HOUR;
    if (power > (peaks[month] ?? 0) && inDay(row, hour % HOURS_OF_DAY, weekendAt(hour))) peaks[month] = power;
  });
  return peaks;
}

/** A year's hours: as given, or one day for every day. */
const yearOfHours = (energy: readonly number[]): readonly number[] => {
  if (energy.length === HOURS_OF_YEAR) return energy;
  if (energy.length === HOURS_OF_DAY)
    return Array.from({ length: HOURS_OF_YEAR }, (_, hour) => energy[hour % HOURS_OF_DAY] ?? 0);
  throw valueError(`kWhByHour: expected 8,760 rows (a year) or 24 (every day alike), got ${energy.length}`);
};

/** The bill by months. `energy` in J by hour; the year repeats, so the past peaks are those of the other months. */
export function tariffMonths(
  given: readonly number[],
  rows: readonly TariffRow[],
  firstDay: (typeof WEEKDAYS)[number],
  trace: Trace = silent,
): readonly TariffMonth[] {
  const energy = yearOfHours(given);
  const begin = WEEKDAYS.indexOf(firstDay);
  const weekendAt = (hour: number): boolean => (begin + Math.floor(hour / HOURS_OF_DAY)) % 7 >= 5;
  const places = energyRows(rows);
  const used = new Float64Array(12);
  const paid = new Float64Array(12);
  energy.forEach((each, hour) => {
    const month = MONTH_OF_HOUR[hour] ?? 0;
    const place = places[(2 * month + Number(weekendAt(hour))) * HOURS_OF_DAY + (hour % HOURS_OF_DAY)] ?? 0;
    used[month] = (used[month] ?? 0) + each;
    paid[month] = (paid[month] ?? 0) + each * (rows[place]?.price ?? 0);
  });
  const demands = rows
    .filter(({ charge }) => charge === "demand")
    .map((row) => ({ row, peaks: peaksOf(row, energy, weekendAt) }));
  return DAYS.map((_, month) => {
    const billed = demands
      .filter(({ row }) => inMonth(row, month))
      .map(({ row, peaks }) => {
        const H = Math.max(...peaks.map((peak, at) => (at === month ? 0 : peak)));
        const B = trace.step(billedDemand, { P: peaks[month] ?? 0, r: row.ratchet, H }, MONTHS[month] ?? "");
        return { B, cost: (B / KILOWATT) * row.price };
      });
    return {
      energy: used[month] ?? 0,
      energyCharge: paid[month] ?? 0,
      demand: billed.length === 0 ? undefined : Math.max(...billed.map(({ B }) => B)),
      demandCharge: sum(billed.map(({ cost }) => cost)),
      fixedCharge: sum(rows.filter((row) => row.charge === "fixed" && inMonth(row, month)).map(({ price }) => price)),
    };
  });
}
