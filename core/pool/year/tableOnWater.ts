/**
 * The maker's rows on water: each row's outdoor temperature means a condensing temperature, at which the machine does the
 * same on water without its outdoor fan.
 */
import type { Rating } from "../../aircon/machine/stage";
import { RATED_OUTDOOR } from "../../cycle/machine/outdoorRating";
import { rowAt, type ListedRows } from "../../cycle/machine/description";
import { effectiveConductance } from "../../exchanger/balance/equations";
import { meanCondensing } from "../../exchanger/balance/machine";
import { waterRate } from "../../exchanger/zones/zones";
import { monotoneCubic } from "../../numeric/monotoneCubic";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import { refrigerantSaturationPressure } from "../../refrigerant/saturation/saturation";
import { evenlySpaced, tooSmall, type ExchangerWords, type WaterCurve, type WaterExchanger } from "./waterCurve";

const POINTS = 13;

/** Condensing lies above the outdoor air by the rating's difference, in proportion to the heat rejected. */
function pointAt(rows: ListedRows, rating: Rating, outdoor: number) {
  const rejectedAt = (T: number): number => {
    const { cooling, power } = rowAt(rows, T);
    return cooling + power - rating.outdoorFan;
  };
  const { cooling, power } = rowAt(rows, outdoor);
  const rejected = rejectedAt(outdoor);
  const split = (rating.condensing - RATED_OUTDOOR) * (rejected / rejectedAt(RATED_OUTDOOR));
  return { condensing: outdoor + split, cooling, power: power - rating.outdoorFan, rejected };
}

export function tableOnWater(
  rows: ListedRows,
  rating: Rating,
  exchanger: WaterExchanger & { readonly warmest: number; readonly named: ExchangerWords },
): WaterCurve {
  const { warmest, named } = exchanger;
  const C = waterRate(exchanger.waterFlow, 300);
  const conductance = effectiveConductance.code({ C, UA: exchanger.ua });
  const fluid = loadRefrigerant(rating.refrigerant);
  const [from = 0, to = 0] = [rows.outdoor[0], rows.outdoor.at(-1)];
  const found = Array.from({ length: POINTS }, (_, i) => {
    const point = pointAt(rows, rating, from + ((to - from) * i) / (POINTS - 1));
    const mean = meanCondensing(fluid, point.condensing, refrigerantSaturationPressure(fluid, point.condensing, "dew"));
    return { ...point, water: mean - point.rejected / conductance };
  }).filter(({ condensing }) => condensing >= exchanger.leastCondensing);
  const last = found.at(-1);
  if (found.length < 2 || last === undefined || last.water < warmest)
    throw tooSmall(named, last?.condensing ?? rating.condensing, "at the end of the maker's rows");
  const water = found.map((each) => each.water);
  const condensing = found.map((each) => each.condensing);
  const curve = (of: (point: (typeof found)[number]) => number) => monotoneCubic(water, found.map(of));
  return evenlySpaced(
    curve((point) => point.cooling),
    curve((point) => point.power),
    { water, condensing, capacityRate: C },
    warmest,
  );
}
