/** A stage of the year's machine on water. */
import type { Stage } from "../../aircon/machine/stage";
import { tableOnWater } from "./tableOnWater";
import { compressorOf, onWaterCurve, type ExchangerWords, type WaterCurve, type WaterExchanger } from "./waterCurve";

/** An exchanger, the warmest water that reaches it, K, and its labels. */
export interface Exchanger extends WaterExchanger {
  readonly warmest: number;
  readonly named: ExchangerWords;
}

/** The curve on an exchanger's water, by the compressor of the rating or of the map, or by the maker's rows. */
export function stageOnWater({ rating, rows, compressor }: Stage): (exchanger: Exchanger) => WaterCurve {
  if (rows !== undefined) return (exchanger) => tableOnWater(rows, rating, exchanger);
  let own = compressor;
  return (exchanger) => {
    // Depends on the rating alone: one for pool and tank.
    own ??= compressorOf(rating);
    return onWaterCurve(own, exchanger, rating, exchanger.warmest, exchanger.named);
  };
}
