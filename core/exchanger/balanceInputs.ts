/** The input block of a machine that settles on pool water. */
import { block, quantity } from "../kernel/argument";
import { HEAT_RATE, AIR_TEMPERATURE, POOL_WATER, WATER_FLOW } from "../kernel/glossary";
import { si, us } from "../kernel/quantity";
import { CONDENSING, EFFICIENCY, EVAPORATING, SUBCOOLING, SUPERHEAT } from "../cycle/args";
import { REFRIGERANT } from "../refrigerant/args";
import { CONDUCTANCE } from "./args";

const degF = (value: number): number => us("temperature", value);
const bulb = (about: string) =>
  quantity("temperature", about, { from: degF(35), to: degF(95), usual: [degF(55), degF(77)] }).otherwise(degF(67));

export const MACHINE_ENTRIES = {
  refrigerant: REFRIGERANT,
  ratedCooling: HEAT_RATE.saying("cooling of the evaporator at the rating"),
  ratedEvaporating: EVAPORATING.saying("evaporating dew temperature at the rating").otherwise(degF(45)),
  ratedCondensing: CONDENSING.saying("condensing dew temperature at the rating").otherwise(degF(115)),
  ratedOutdoor: AIR_TEMPERATURE.saying("outdoor air at the rating").otherwise(degF(95)),
  ratedIndoorWetBulb: bulb("wet bulb entering the evaporator at the rating"),
  superheat: SUPERHEAT,
  subcooling: SUBCOOLING,
  efficiency: EFFICIENCY,
  volumetricEfficiency: quantity("fraction", "suction volume moved per volume swept at the rating", {
    from: 0.4,
    to: 1,
    usual: [0.7, 1],
  }).otherwise(0.95),
  outdoorFan: quantity("electric power", "power of the outdoor fan, which rests on the pool", {
    from: 0,
    usual: [0, si("electric power", 5)],
  }).otherwise(0),
} as const;

export const BALANCE_INPUTS = block(
  {
    ...MACHINE_ENTRIES,
    UA: CONDUCTANCE.saying("conductance of the pool exchanger"),
    waterFlow: WATER_FLOW,
    enteringWater: POOL_WATER.saying("pool water entering"),
    outdoor: AIR_TEMPERATURE.saying("outdoor air now").otherwise(degF(95)),
    indoorWetBulb: bulb("wet bulb entering the evaporator now"),
    leastCondensing: CONDENSING.saying("least condensing temperature of the machine").otherwise(degF(80)),
    greatestCondensing: CONDENSING.saying("greatest condensing temperature of the machine").otherwise(degF(130)),
    greatestLeavingWater: POOL_WATER.saying("warmest water allowed to leave").otherwise(degF(104)),
  },
  "input block: machine at its rating, exchanger, water, air, limits",
);
