/** A machine given by its compressor's map. */
import { notAvailable } from "../../kernel/values/fault";
import { silent } from "../../kernel/define/steps";
import { quantityMark } from "../../kernel/values/quantityMark";
import { mappedCycle, type CompressorMap } from "../../cycle/map/map";
import { bracketedRoot } from "../../numeric/root";
import { MAP_SPAN, type CoolingMachine, type MachineRating } from "./compressor";

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
  const at = (evaporating: number) => mappedCycle(map, fluid, { ...rating, evaporating }, silent);
  const coolingOf = ({ massFlow, cycle }: ReturnType<typeof at>): number => massFlow * cycle.cooling;
  let { evaporating } = rating;
  if (cooling !== undefined) {
    const [lowest, highest] = [Math.max(fluid.coldest, wetBulb - MAP_SPAN), wetBulb - 1];
    const root = bracketedRoot((Te) => coolingOf(at(Te)) - cooling, lowest, highest, { tolerance: 1e-9 });
    if (!root.found)
      throw notAvailable(
        `inputs: at ${quantityMark("temperature", rating.condensing)} condensing the map cools ${quantityMark("heat rate", coolingOf(at(evaporating)))} at ${quantityMark("temperature", evaporating)}: no evaporating temperature gives the rated cooling of ${quantityMark("heat rate", cooling)}; check order, units and rating`,
      );
    evaporating = root.x;
  }
  const found = at(evaporating);
  const { cycle } = found;
  return {
    rating: { ...rating, cooling: cooling ?? coolingOf(found), evaporating, efficiency: found.efficiency },
    rated: cycle,
    swept: found.massFlow / cycle.suction.density,
    ratedRatio: cycle.condensingPressure / cycle.evaporatingPressure,
    exponent: 1,
    map,
  };
}
