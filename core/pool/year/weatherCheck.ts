/** The rules of CLIMATE.CHECK on the weather of a year: what no place has is refused, what is unlikely raises a caution. */
import { valueError } from "../../kernel/values/fault";
import type { System } from "../../kernel/values/quantity";
import type { Climate } from "./climate";
import { findingOf, type Test } from "./finding";
import { HUMIDITY, WIND, commonTests, findingsOf, moistureTests } from "./plausibility";
import { dailySun } from "./sunCheck";
import { CLEARNESS, seasonTests } from "./sunTests";
import { monthlyMeans } from "./weather";

/** Beyond it no place has less sun in its summer half than in its winter half: the rains of the tropics end before. */
const BEYOND_RAINS = 35;

/** Tests whose failing in this direction no place explains: calm air and days without a swing may be meant. */
function refusing(climate: Climate, latitude: number | undefined): readonly Test[] {
  const { monthly, columns } = climate;
  const by = (values: Float64Array = new Float64Array(12)): readonly number[] =>
    monthly ? Array.from(values) : monthlyMeans(values);
  const air = by(columns.air);
  const common = commonTests(climate, air, by(columns.windAt10m))
    .filter(({ check }) => check === WIND || check === HUMIDITY)
    .map((test) => (test.check === WIND ? { ...test, possible: [0, test.possible[1]] as const } : test));
  if (latitude === undefined || Math.abs(latitude) < BEYOND_RAINS) return [...common, ...moistureTests(climate, air)];
  const [season] = seasonTests(climate, latitude, dailySun(climate), air);
  return [...common, ...moistureTests(climate, air), ...(season && columns.sun ? [season] : [])];
}

/** Refuses weather that no place has; sun above the air is refused by `refuseImpossibleSun`. */
export function refuseImpossibleWeather(climate: Climate, latitude: number | undefined, system: System): void {
  for (const test of refusing(climate, latitude)) {
    if (test.values.every(Number.isNaN)) continue;
    const { check, where, found, expected, verdict, meaning } = findingOf(test, system);
    if (verdict === "impossible")
      throw valueError(
        `climate, ${where}, ${check}: must be as some place has it, ${expected}, got ${found}: ${meaning}`,
      );
  }
}

/** Facts of what is unlikely or impossible in the weather of a year; its sun's clearness has a caution of its own. */
export function oddWeatherFacts(climate: Climate, latitude: number | undefined, system: System) {
  const odd = findingsOf(climate, latitude ?? 0, system).filter(
    ({ check, verdict }) =>
      verdict !== "fine" && check !== CLEARNESS && (latitude !== undefined || !check.startsWith("season")),
  );
  return odd.length === 0
    ? {}
    : {
        oddWeather: odd
          .map(({ check, where, found, meaning }) => `${check} ${found} (${where}): ${meaning}`)
          .join("; "),
      };
}
