/** The sun of a climate beside the sun above the air at its latitude: what no unit, place or hemisphere lets pass. */
import { checkMonthlySun, extraterrestrialOfMonth, type SunCheck } from "../../air/extraterrestrial";
import { valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { DAY, MONTHS } from "../../numeric/calendar";
import type { Climate } from "./climate";
import { monthlyMeans } from "./weather";

/** Sun on a level surface by month, J/m² a day. */
export function dailySun({ monthly, columns: { sun } }: Climate): readonly number[] {
  if (sun === undefined) return [];
  return monthly ? Array.from(sun) : monthlyMeans(sun).map((mean) => mean * DAY);
}

const KWH = 3.6e6;
const MJ = 1e6;
const BTU = us("daily sun", 1);

const BTU_PER_HOUR = us("irradiance", 1);

/** Slips of the unit: the true sun over the one that was read. */
type Slips = readonly (readonly [times: number, says: string])[];

const SLIPS_OF_DAYS: Slips = [
  [KWH / BTU, "kWh/(m²·day) in a column of BTU/(ft²·day)"],
  [MJ / BTU, "MJ/(m²·day) in a column of BTU/(ft²·day)"],
  [KWH / MJ, "kWh/(m²·day) in a column of MJ/(m²·day)"],
  [MJ / KWH, "MJ/(m²·day) in a column of kWh/(m²·day)"],
];

const SLIPS_OF_HOURS: Slips = [
  [1000, "kW/m² in a column of W/m²"],
  [1 / BTU_PER_HOUR, "W/m² in a column of BTU/(h·ft²)"],
  [BTU_PER_HOUR, "BTU/(h·ft²) in a column of W/m²"],
];

/** What would explain the sun: the other hemisphere, or a slip of the unit. */
export function sunExplanation(
  { monthly }: Climate,
  latitude: number,
  daily: readonly number[],
  { otherHemisphere }: SunCheck,
): string {
  if (otherHemisphere) return `it fits latitude ${-latitude} (south is negative)`;
  const fits = (times: number): boolean => {
    const { above, unlikely } = checkMonthlySun(
      latitude,
      daily.map((sun) => times * sun),
    );
    return above.length + unlikely.length === 0;
  };
  const slip = (monthly ? SLIPS_OF_DAYS : SLIPS_OF_HOURS).find(([times]) => fits(times));
  return slip === undefined ? "check its unit and the latitude" : `perhaps ${slip[1]}`;
}

/** Refuses sun that no place below the air gets: energy is conserved. */
export function refuseImpossibleSun(climate: Climate, latitude: number | undefined): void {
  if (latitude === undefined) return;
  const daily = dailySun(climate);
  const check = checkMonthlySun(latitude, daily);
  const [month] = check.above;
  if (month === undefined) return;
  const outside = extraterrestrialOfMonth(latitude, month);
  throw valueError(
    `climate, ${MONTHS[month] ?? ""}, sun: must be at most the sun above the air at latitude ${latitude}, ${quantityMark("daily sun", outside)}, got ${quantityMark("daily sun", daily[month] ?? 0)}, ${(check.clearness[month] ?? 0).toFixed(2)} times as much: ${sunExplanation(climate, latitude, daily, check)}`,
  );
}

/** Facts of months whose sun is unlikely; none where all are likely or the latitude isn't given. */
export function oddSunFacts(climate: Climate, latitude: number | undefined) {
  if (latitude === undefined) return {};
  const daily = dailySun(climate);
  const check = checkMonthlySun(latitude, daily);
  const [first] = check.unlikely;
  if (first === undefined) return {};
  return {
    oddSunMonths: check.unlikely.map((month) => MONTHS[month]).join(", "),
    oddSun: check.clearness[first] ?? 0,
    oddSunReason: sunExplanation(climate, latitude, daily, check),
  };
}
