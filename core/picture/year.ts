/** The pictures of a pool's year: temperatures, heat by month, and the usual day of a month. */
import { FIRST_DAY, HOUR, HOURS_OF_DAY, MONTHS, firstHourOf, hoursOf } from "../index";
import type { System } from "../kernel/values/quantity";
import type { PoolYear, Year } from "../pool/year/results";
import { DAY_NAMES } from "./days";
import {
  inUnit,
  roundedForTable,
  type PictureCurve,
  type Picture,
  type PictureChoice,
  type PicturePoint,
  type ShownPicture,
  type Tone,
} from "./picture";

const HOURS = Array.from({ length: HOURS_OF_DAY }, (_, hour) => hour);
const HOUR_TICKS = [0, 6, 12, 18, 23].map((at) => ({ at, text: String(at) }));

type Hourly = Float64Array;

const meanOf = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

const ofMonth = (hourly: Hourly, month: number): readonly number[] =>
  Array.from(hourly.subarray(firstHourOf(month), firstHourOf(month) + hoursOf(month)));

const sumOf = (hourly: Hourly, month: number): number => ofMonth(hourly, month).reduce((sum, each) => sum + each, 0);

/** Means of the days of the year. */
const daily = (hourly: Hourly): readonly number[] =>
  Array.from({ length: Math.floor(hourly.length / HOURS_OF_DAY) }, (_, day) =>
    meanOf(Array.from(hourly.subarray(HOURS_OF_DAY * day, HOURS_OF_DAY * (day + 1)))),
  );

/** Means of a month's hours of the day. */
const usualDay = (hourly: Hourly, month: number): readonly number[] => {
  const values = ofMonth(hourly, month);
  return HOURS.map((hour) => meanOf(values.filter((_, at) => at % HOURS_OF_DAY === hour)));
};

const points = (values: readonly number[], of: (base: number) => number): readonly PicturePoint[] =>
  values.map((value, at): PicturePoint => [at, of(value)]);

/** Daily means of the pool left to itself, with set point and high limit. */
export const temperaturePicture = ({ inputs, free, machine }: Year, system: System): Picture => {
  const temperature = inUnit("temperature", system);
  const line = (name: string, pool: PoolYear, look: Pick<PictureCurve, "tone" | "dashed">): PictureCurve => ({
    name,
    ...look,
    points: points(daily(pool.temperature), temperature.of),
  });
  const means = (pool: PoolYear): readonly number[] =>
    MONTHS.map((_, month) => roundedForTable(temperature.of(meanOf(ofMonth(pool.temperature, month)))));
  const without = ["without recovery", free.without] as const;
  const all = machine === undefined ? [without] : [without, ["with recovery", free.with] as const];
  const columns = all.map(([name, pool]) => [name, means(pool)] as const);
  const span = columns.map(
    ([name, each]) => `${name} ${String(Math.min(...each))} to ${String(Math.max(...each))} ${temperature.unit}`,
  );
  const shown = (base: number): string => `${String(roundedForTable(temperature.of(base)))} ${temperature.unit}`;
  const set = shown(inputs.setPoint);
  const limit = machine === undefined ? "" : `, high limit ${shown(inputs.highLimit)}`;
  return {
    title: "Pool temperature through the year, left to itself",
    description: `Daily means of the pool's temperature through the year; monthly means ${span.join(", ")}; set point ${set}${limit}.`,
    x: {
      label: "month",
      ticks: MONTHS.map((name, month) => ({ at: FIRST_DAY[month] ?? 0, text: name.slice(0, 1) })),
      pointNames: DAY_NAMES,
    },
    y: { label: `temperature, ${temperature.unit}` },
    curves: [
      line("without recovery", free.without, { tone: "second", dashed: true }),
      ...(machine === undefined ? [] : [line("with recovery", free.with, { tone: "first" })]),
    ],
    levels: [
      { at: temperature.of(inputs.setPoint), label: "set point" },
      ...(machine === undefined ? [] : [{ at: temperature.of(inputs.highLimit), label: "high limit" }]),
    ],
    head: ["month", ...columns.map(([name]) => `${name}, mean, ${temperature.unit}`)],
    rows: MONTHS.map((name, month) => [name, ...columns.map(([, each]) => each[month] ?? 0)]),
  };
};

/** A heat through the months or the hours, with a long and a short name. */
interface Share {
  readonly name: string;
  readonly short: string;
  readonly tone: Tone;
  readonly values: readonly number[];
}

/** Heat of the pool with recovery, held at the set point by back-up heat. */
export const monthsPicture = ({ machine, held: { with: pool } }: Year, system: System): Picture => {
  const heat = inUnit("heat", system);
  const months = (hourly: Hourly): readonly number[] => MONTHS.map((_, month) => heat.of(sumOf(hourly, month) * HOUR));
  const tank: Share = { name: "taken by the tank", short: "tank", tone: "fourth", values: months(pool.toTank) };
  const shares: readonly Share[] = [
    { name: "taken by the pool", short: "taken", tone: "first", values: months(pool.taken) },
    { name: "back-up heat", short: "back-up", tone: "third", values: months(pool.backUp) },
    ...(machine?.tankCurve ? [tank] : []),
    { name: "sent outdoors", short: "outdoors", tone: "second", values: months(pool.outdoors) },
  ];
  const total = ({ name, values }: Share): string =>
    `${roundedForTable(values.reduce((sum, each) => sum + each, 0)).toLocaleString("en-US")} ${heat.unit} ${name}`;
  const highest = Math.max(
    ...MONTHS.map((_, month) => shares.reduce((sum, { values }) => sum + (values[month] ?? 0), 0)),
  );
  // There is no room for so many digits beside the picture.
  const scale = highest >= 1e6 ? { by: 1e6, word: "million " } : { by: 1, word: "" };
  return {
    title: "Heat by month, pool held at the set point",
    description: `Heat of each month with recovery, stacked; in the year ${shares.map(total).join(", ")}.`,
    x: { label: "month", names: MONTHS.map((name) => name) },
    y: { label: `heat, ${scale.word}${heat.unit}` },
    curves: [],
    stacks: shares.map(({ name, tone, values }) => ({ name, tone, values: values.map((each) => each / scale.by) })),
    head: ["month", ...shares.map(({ short }) => `${short}, ${heat.unit}`)],
    rows: MONTHS.map((name, month) => [name, ...shares.map(({ values }) => roundedForTable(values[month] ?? 0))]),
  };
};

const sentenceOfDay = (name: string, taken: readonly number[], system: System): string => {
  const rate = inUnit("heat rate", system);
  const highest = Math.max(...taken);
  if (!(highest > 0)) return `Means of the hours of ${name}: the pool takes no heat.`;
  const highestRate = `${String(roundedForTable(rate.of(highest)))} ${rate.unit}`;
  return `Means of the hours of ${name}: the pool takes most, ${highestRate}, at ${String(taken.indexOf(highest))} h.`;
};

/** The usual day of a month, 0 for January. */
export const dayPicture = (
  { weather, machine, free: { with: pool } }: Year,
  month: number,
  system: System,
): Picture => {
  const rate = inUnit("heat rate", system);
  const temperature = inUnit("temperature", system);
  const name = MONTHS[month] ?? "";
  const day = (hourly: Hourly): readonly number[] => usualDay(hourly, month);
  const taken = day(pool.taken);
  const tank: Share = { name: "taken by the tank", short: "tank", tone: "fourth", values: day(pool.toTank) };
  const shares: readonly Share[] = [
    { name: "taken by the pool", short: "taken", tone: "first", values: taken },
    ...(machine?.tankCurve ? [tank] : []),
    { name: "sent outdoors", short: "outdoors", tone: "second", values: day(pool.outdoors) },
  ];
  const waters = [
    ["air", day(weather.air)],
    ["pool", day(pool.temperature)],
    ...(machine?.tankCurve ? [["tank", day(pool.tank)] as const] : []),
  ] as const;
  return {
    title: `The usual day of ${name}, pool left to itself`,
    description: sentenceOfDay(name, taken, system),
    x: { label: "hour of the day", ticks: HOUR_TICKS, pointNames: HOURS.map((hour) => `${String(hour)} h`) },
    y: { label: `heat, ${rate.unit}` },
    curves: shares.map(({ name: of, tone, values }) => ({
      name: of,
      tone,
      points: points(values, rate.of),
      ...(tone === "first" ? {} : { dashed: true as const }),
    })),
    head: [
      "hour",
      ...shares.map(({ short }) => `${short}, ${rate.unit}`),
      ...waters.map(([of]) => `${of}, ${temperature.unit}`),
    ],
    rows: HOURS.map((hour) => [
      hour,
      ...shares.map(({ values }) => roundedForTable(rate.of(values[hour] ?? 0))),
      ...waters.map(([, values]) => roundedForTable(temperature.of(values[hour] ?? 0))),
    ]),
  };
};

/**
 * The usual days of all months, starting with the month in which pool and tank take most heat; undefined if they take
 * none in the whole year. All share one scale, so that the reader can compare months.
 */
export const dayPictures = (year: Year, system: System): PictureChoice | undefined => {
  const { taken, toTank } = year.free.with;
  const sums = MONTHS.map((_, month) => sumOf(taken, month) + sumOf(toTank, month));
  const most = Math.max(...sums);
  if (!(most > 0)) return undefined;
  const days = MONTHS.map((_, month) => dayPicture(year, month, system));
  const heights = days.flatMap(({ curves }) => curves.flatMap(({ points: all }) => all.map(([, height]) => height)));
  const span: readonly [number, number] = [Math.min(0, ...heights), Math.max(...heights)];
  return {
    label: "month",
    first: sums.indexOf(most),
    options: days.map((picture, month) => ({
      name: MONTHS[month] ?? "",
      picture: { ...picture, y: { ...picture.y, span } },
    })),
  };
};

export const yearPictures = (year: Year, system: System): readonly ShownPicture[] => {
  const days = dayPictures(year, system);
  return [temperaturePicture(year, system), monthsPicture(year, system), ...(days === undefined ? [] : [days])];
};
