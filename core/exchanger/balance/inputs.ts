/** The input block of a machine that settles on pool water. */
import { block, choice, either, labelOf, quantity, type ValuesOf } from "../../kernel/define/argument";
import { valueError } from "../../kernel/values/fault";
import { HEAT_RATE, AIR_TEMPERATURE, POOL_WATER, WATER_FLOW } from "../../kernel/define/glossary";
import { si, us } from "../../kernel/values/quantity";
import {
  CONDENSING_TEMPERATURE,
  ISENTROPIC_EFFICIENCY,
  EVAPORATING_TEMPERATURE,
  SUBCOOLING,
  SUPERHEAT,
} from "../../cycle/args";
import type { StageInputs } from "../../cycle/machine/description";
import { STAGE_ENTRIES } from "../../cycle/machine/inputs";
import { REFRIGERANT } from "../../refrigerant/args";
import { CONDUCTANCE, DIRECTION, HEAT_LOST } from "../args";
import { COIL_ENTRIES } from "../coil/inputs";

const degF = (value: number): number => us("temperature", value);
const bulb = (about: string) =>
  quantity("temperature", about, { from: degF(35), to: degF(95), usual: [degF(55), degF(77)] }).default(degF(67));

export const MACHINE_ENTRIES = {
  refrigerant: REFRIGERANT,
  ratedCooling: HEAT_RATE.describedAs("cooling of the evaporator at the rating"),
  ratedEvaporating: EVAPORATING_TEMPERATURE.describedAs("evaporating dew temperature at the rating").default(degF(45)),
  ratedCondensing: CONDENSING_TEMPERATURE.describedAs("condensing dew temperature at the rating").default(degF(115)),
  ratedOutdoor: AIR_TEMPERATURE.describedAs("outdoor air at the rating").default(degF(95)),
  ratedIndoorWetBulb: bulb("wet bulb entering the evaporator at the rating"),
  superheat: SUPERHEAT,
  subcooling: SUBCOOLING,
  efficiency: ISENTROPIC_EFFICIENCY,
  volumetricEfficiency: quantity("fraction", "suction volume moved per volume swept at the rating", {
    from: 0.4,
    to: 1,
    usual: [0.7, 1],
  }).default(0.95),
  outdoorFan: quantity("electric power", "power of the outdoor fan, off in pool mode", {
    from: 0,
    usual: [0, si("electric power", 5)],
  }).default(0),
} as const;

/** Lost by the gas on its way to the exchanger. */
export const HOT_GAS_DROP = quantity(
  "pressure drop",
  "pressure lost between compressor and exchanger, by hot-gas line and valve",
  { from: 0, usual: [0, us("pressure drop", 25)] },
).default(0);

/** The coil of EXCHANGER.COIL, in place of the conductance. */
export const GEOMETRY_ENTRIES = {
  ...COIL_ENTRIES,
  outsideDiameter: COIL_ENTRIES.outsideDiameter.optional(),
  wall: COIL_ENTRIES.wall.optional(),
  tubeLength: COIL_ENTRIES.tubeLength.optional(),
  coilDiameter: COIL_ENTRIES.coilDiameter.optional(),
  pitch: COIL_ENTRIES.pitch.optional(),
  shellDiameter: COIL_ENTRIES.shellDiameter.optional(),
  direction: DIRECTION,
} as const;

export const BALANCE_ENTRIES = {
  ...MACHINE_ENTRIES,
  UA: CONDUCTANCE.describedAs("conductance of the pool exchanger, in place of its coil").optional(),
  waterFlow: WATER_FLOW,
  enteringWater: POOL_WATER.describedAs("pool water entering"),
  outdoor: AIR_TEMPERATURE.describedAs("outdoor air now").default(degF(95)),
  indoorWetBulb: bulb("wet bulb entering the evaporator now"),
  leastCondensing: CONDENSING_TEMPERATURE.describedAs("least condensing temperature of the machine").default(degF(80)),
  greatestCondensing: CONDENSING_TEMPERATURE.describedAs("greatest condensing temperature of the machine").default(
    degF(130),
  ),
  greatestLeavingWater: POOL_WATER.describedAs("warmest water allowed to leave").default(degF(104)),
  ...GEOMETRY_ENTRIES,
  ratedPower: quantity("electric power", "power of the whole machine at the rating", {
    above: 0,
    usual: [si("electric power", 0.5), si("electric power", 200)],
  }).optional(),
  indoorFan: quantity("electric power", "power of the indoor fan: cooling is then net", {
    from: 0,
    usual: [0, si("electric power", 5)],
  }).default(0),
  ...HEAT_LOST,
  ...STAGE_ENTRIES,
  stage: either(
    choice("Stage", ["full", "low"], "full capacity, or low stage"),
    quantity("fraction", "share of the way from least to full speed", { from: 0, to: 1 }),
    "stage that runs, or a speed by its share of the way from least to full",
  ).default("full"),
} as const;

export const BALANCE_INPUTS = block(
  BALANCE_ENTRIES,
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
    readonly stage: "full" | "low" | number;
  } & StageInputs;

type GeometryKey = keyof typeof GEOMETRY_ENTRIES;
const GEOMETRY_KEYS = Object.keys(GEOMETRY_ENTRIES) as readonly GeometryKey[];
const NEEDED = GEOMETRY_KEYS.filter((key) => GEOMETRY_ENTRIES[key].presence === "optional");

const labelled = (keys: readonly string[]): string => keys.map(labelOf).join(", ");

/** Refuses a block with both conductance and coil, with neither, or with part of a coil. */
export const checkExchanger = (inputs: BalanceEntries): void => {
  // An entry equal to its default counts as blank.
  const given = GEOMETRY_KEYS.filter((key) => inputs[key] !== GEOMETRY_ENTRIES[key].fallback);
  if (inputs.UA !== undefined) {
    if (given.length > 0)
      throw valueError(`inputs: give one of UA and the coil's geometry, got UA and ${labelled(given)}`);
    return;
  }
  if (given.length === 0) throw valueError("inputs: give one of UA and the coil's geometry, got none");
  const lacks = NEEDED.filter((key) => inputs[key] === undefined);
  if (lacks.length > 0) throw valueError(`inputs: the coil's geometry also needs ${labelled(lacks)}, which are blank`);
};
