/** A machine given by its compressor's map. */
import { notAvailable } from "../../kernel/values/fault";
import { silent } from "../../kernel/define/steps";
import { quantityMark } from "../../kernel/values/quantityMark";
import { mappedCycle, type CompressorMap } from "../../cycle/map/map";
import { bracketedRoot } from "../../numeric/root";
import { refrigerantSaturationPressure, saturatedStateAtPressure } from "../../refrigerant/saturation/saturation";
import { singlePhase } from "../../refrigerant/state/state";
import { gasAt, mappedFlow, MAP_SPAN, type CoolingMachine, type MachineRating } from "./compressor";

/**
 * The machine of a compressor's map. Where its cooling is given, it evaporates at the rating where the map cools so much at
 * the rating's condensing; else the rating's evaporating temperature holds and its cooling is the map's.
 *
 * @throws where the map can't cool so much
 */
export function mappedMachineOf(
  rating: Omit<MachineRating, "efficiency" | "cooling"> & { readonly cooling: number | undefined },
  map: CompressorMap,
): CoolingMachine {
  const { fluid, wetBulb, cooling } = rating;
  const { condensing, subcooling, superheat } = rating;
  const pressure = refrigerantSaturationPressure(fluid, condensing, "dew");
  const { temperature: bubble } = saturatedStateAtPressure(fluid, pressure, "bubble");
  const liquid = singlePhase(fluid, pressure, bubble - Math.max(subcooling, 1e-6), "liquid");
  const coolingAt = (evaporating: number): number => {
    const gas = gasAt(fluid, evaporating, superheat);
    return mappedFlow(map, fluid, gas, { evaporating, condensing }) * (gas.enthalpy - liquid.enthalpy);
  };
  let { evaporating } = rating;
  if (cooling !== undefined) {
    const [lowest, highest] = [Math.max(fluid.coldest, wetBulb - MAP_SPAN), wetBulb - 1];
    const root = bracketedRoot((Te) => coolingAt(Te) - cooling, lowest, highest, { tolerance: 1e-9 });
    if (!root.found)
      throw notAvailable(
        `inputs: at ${quantityMark("temperature", condensing)} condensing the map cools ${quantityMark("heat rate", coolingAt(evaporating))} at ${quantityMark("temperature", evaporating)}: no evaporating temperature gives the rated cooling of ${quantityMark("heat rate", cooling)}; check order, units and rating`,
      );
    evaporating = root.x;
  }
  const found = mappedCycle(map, fluid, { ...rating, evaporating }, silent);
  const { cycle } = found;
  return {
    rating: {
      ...rating,
      cooling: cooling ?? found.massFlow * cycle.cooling,
      evaporating,
      efficiency: found.efficiency,
    },
    rated: cycle,
    swept: found.massFlow / cycle.suction.density,
    ratedRatio: cycle.condensingPressure / cycle.evaporatingPressure,
    exponent: 1,
    map,
  };
}
