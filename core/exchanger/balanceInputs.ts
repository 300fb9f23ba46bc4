/** The input block of a machine that settles on pool water. */
import { block, labelOf, quantity, type ValuesOf } from "../kernel/argument";
import { mend } from "../kernel/fault";
import { HEAT_RATE, AIR_TEMPERATURE, POOL_WATER, WATER_FLOW } from "../kernel/glossary";
import { si, us } from "../kernel/quantity";
import { CONDENSING, EFFICIENCY, EVAPORATING, SUBCOOLING, SUPERHEAT } from "../cycle/args";
import { REFRIGERANT } from "../refrigerant/args";
import { CONDUCTANCE, DIRECTION } from "./args";
import { COIL_ENTRIES } from "./coilInputs";

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

/** The coil of EXCHANGER.COIL, in place of the conductance. */
export const GEOMETRY_ENTRIES = {
  ...COIL_ENTRIES,
  outsideDiameter: COIL_ENTRIES.outsideDiameter.optionally(),
  wall: COIL_ENTRIES.wall.optionally(),
  tubeLength: COIL_ENTRIES.tubeLength.optionally(),
  coilDiameter: COIL_ENTRIES.coilDiameter.optionally(),
  pitch: COIL_ENTRIES.pitch.optionally(),
  shellDiameter: COIL_ENTRIES.shellDiameter.optionally(),
  direction: DIRECTION,
} as const;

export const BALANCE_INPUTS = block(
  {
    ...MACHINE_ENTRIES,
    UA: CONDUCTANCE.saying("conductance of the pool exchanger, in place of its coil").optionally(),
    waterFlow: WATER_FLOW,
    enteringWater: POOL_WATER.saying("pool water entering"),
    outdoor: AIR_TEMPERATURE.saying("outdoor air now").otherwise(degF(95)),
    indoorWetBulb: bulb("wet bulb entering the evaporator now"),
    leastCondensing: CONDENSING.saying("least condensing temperature of the machine").otherwise(degF(80)),
    greatestCondensing: CONDENSING.saying("greatest condensing temperature of the machine").otherwise(degF(130)),
    greatestLeavingWater: POOL_WATER.saying("warmest water allowed to leave").otherwise(degF(104)),
    ...GEOMETRY_ENTRIES,
    ratedPower: quantity("electric power", "power of the whole machine at the rating", {
      above: 0,
      usual: [si("electric power", 0.5), si("electric power", 200)],
    }).optionally(),
    indoorFan: quantity("electric power", "power of the indoor fan: cooling is then net", {
      from: 0,
      usual: [0, si("electric power", 5)],
    }).otherwise(0),
  },
  "input block: machine at its rating, UA or coil, water, air, limits",
);

export type BalanceEntries = ValuesOf<typeof MACHINE_ENTRIES> &
  ValuesOf<typeof GEOMETRY_ENTRIES> & {
    readonly UA?: number | undefined;
    readonly waterFlow: number;
    readonly enteringWater: number;
    readonly outdoor: number;
    readonly indoorWetBulb: number;
    readonly leastCondensing: number;
    readonly ratedPower?: number | undefined;
    readonly indoorFan: number;
  };

type GeometryKey = keyof typeof GEOMETRY_ENTRIES;
const GEOMETRY_KEYS = Object.keys(GEOMETRY_ENTRIES) as readonly GeometryKey[];
const NEEDED = GEOMETRY_KEYS.filter((key) => GEOMETRY_ENTRIES[key].presence === "optional");

const labelled = (keys: readonly string[]): string => keys.map(labelOf).join(", ");

/** Refuses a block with both conductance and coil, with neither, or with part of a coil. */
export const checkExchanger = (inputs: BalanceEntries): void => {
  // What stands at its default counts as left out.
  const given = GEOMETRY_KEYS.filter((key) => inputs[key] !== GEOMETRY_ENTRIES[key].fallback);
  if (inputs.UA !== undefined) {
    if (given.length > 0) throw mend(`inputs: give one of UA and the coil's geometry, got UA and ${labelled(given)}`);
    return;
  }
  if (given.length === 0) throw mend("inputs: give one of UA and the coil's geometry, got none");
  const lacks = NEEDED.filter((key) => inputs[key] === undefined);
  if (lacks.length > 0) throw mend(`inputs: the coil's geometry also takes ${labelled(lacks)}, which are blank`);
};
