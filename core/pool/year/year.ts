/**
 * The year of a pool: left to itself and held by a back-up heater, each without and with the air conditioner's heat. Four
 * pools in the same weather, hour by hour, each begun so that its year repeats.
 */
import { FREEZING } from "../equations";
import type { Climate } from "./climate";
import type { YearInputs } from "./inputs";
import { heldExactly } from "./lossesAt";
import { repeatingYear } from "./repeat";
import type { Pair, Year } from "./results";
import type { BackUp, PoolRun } from "./run";
import { setUpYear, siteOf } from "./setUp";
import { totalOf } from "./sums";
import { refuseImpossibleSun } from "./sunCheck";
import type { Untouched } from "./touched";
import { weatherOf, type Weather } from "./weather";

/** Ends of an earlier year, to begin near: free without and with, held without and with, K. */
export type Begin = readonly [number, number, number, number];

export const beginOf = ({ free, held }: Year): Begin => [
  free.without.end.temperature,
  free.with.end.temperature,
  held.without.end.temperature,
  held.with.end.temperature,
];

const beginFrom = (inputs: YearInputs, weather: Weather): Begin => {
  const air = Math.max(FREEZING + 1, totalOf(weather.air) / weather.hours);
  return [air, air, inputs.setPoint, inputs.setPoint];
};

/** The run with another back-up, and without recovery where asked. One literal: objects of one shape keep the compiled loop valid. */
export const variantOf = (run: PoolRun, backUp: BackUp | undefined, recovers: boolean): PoolRun => ({
  surface: run.surface,
  area: run.area,
  capacity: run.capacity,
  pump: run.pump,
  machine: run.machine,
  recovery: recovers ? run.recovery : undefined,
  tank: recovers ? run.tank : undefined,
  backUp,
  freezing: run.freezing,
});

/** A pool without and with recovery, and where each begins, K. */
function pairOf(
  run: PoolRun,
  backUp: BackUp | undefined,
  without: number,
  recovering: number,
  kept: Partial<Pair> = {},
): Pair {
  const recovers = run.recovery !== undefined || run.tank !== undefined;
  // The run that uses most comes first: compiled for it, the hour loop needs no second compilation.
  const recovered = recovers ? (kept.with ?? repeatingYear(variantOf(run, backUp, true), recovering)) : undefined;
  const alone = kept.without ?? repeatingYear(variantOf(run, backUp, false), without);
  return { without: alone, with: recovered ?? alone };
}

/** The hours at the pool's place. */
export function weatherAt(inputs: YearInputs, climate: Climate): Weather {
  refuseImpossibleSun(climate, inputs.latitude);
  return weatherOf(climate, siteOf(inputs));
}

/** @param begin where the pools begin; else from the air and the set point */
export const yearOf = (inputs: YearInputs, climate: Climate, begin?: Begin): Year =>
  yearIn(inputs, weatherAt(inputs, climate), begin);

/**
 * The year in the weather of its hours.
 *
 * @param kept runs of another year that these inputs don't touch
 */
export function yearIn(inputs: YearInputs, weather: Weather, begin?: Begin, kept?: Untouched): Year {
  const { season, run } = setUpYear(inputs, weather);
  const [freeWithout, freeWith, heldWithout, heldWith] = begin ?? beginFrom(inputs, weather);
  const held = pairOf(run, run.backUp, heldWithout, heldWith, kept?.held);
  const free = pairOf(run, undefined, freeWithout, freeWith, kept?.free);
  const { surface, machine } = run;
  const balance = heldExactly(surface, inputs.setPoint);
  return { inputs, weather, surface, machine, season, free, held, balance };
}
