/** Input blocks of the acceptance test: the machine as planned, and what was read on it. */
import { block, quantity, type ValueOf } from "../../kernel/define/argument";
import { AIR_TEMPERATURE, POOL_WATER, WATER_FLOW } from "../../kernel/define/glossary";
import { si, us, type KindName } from "../../kernel/values/quantity";
import { CONDENSING_TEMPERATURE, EVAPORATING_TEMPERATURE } from "../../cycle/args";
import { STAGE_ENTRIES } from "../../cycle/machine/inputs";
import { CONDUCTANCE, HEAT_LOST } from "../args";
import { BALANCE_ENTRIES, GEOMETRY_ENTRIES, HOT_GAS_DROP, MACHINE_ENTRIES } from "../balance/inputs";

const kelvin = (fahrenheit: number): number => us("temperature difference", fahrenheit);
const band = (description: string, fahrenheit: number) =>
  quantity("temperature difference", `± ${description}`, { from: 0, to: kelvin(50) }).default(kelvin(fahrenheit));
const share = (description: string, usual: number) =>
  quantity("fraction", `± ${description}, as a share`, { from: 0, to: 0.5 }).default(usual);
const power = (description: string) =>
  quantity("electric power", description, { above: 0, usual: [0, si("electric power", 200)] }).optional();
const difference = (description: string) =>
  quantity("temperature difference", description, { from: kelvin(-50), to: kelvin(120) }).optional();

export const COMMISSION_INPUTS = block(
  {
    ...MACHINE_ENTRIES,
    UA: CONDUCTANCE.describedAs("conductance of the pool exchanger as planned, in place of its coil").optional(),
    leastCondensing: BALANCE_ENTRIES.leastCondensing,
    ratedPower: BALANCE_ENTRIES.ratedPower,
    indoorFan: BALANCE_ENTRIES.indoorFan,
    plannedFlow: WATER_FLOW.describedAs("water flow as planned").optional(),
    flowError: share("flow meter", 0.05),
    powerError: share("power meter", 0.03),
    riseError: band("rise of the water, sensors swapped once", 0.3),
    temperatureError: band("a temperature, and a saturation temperature by its gauge", 1.5),
    superheatError: band("superheat that is let pass", 8),
    subcoolingError: band("subcooling that is let pass", 4),
    modelError: share("heat, power and UA by the model", 0.1),
    modelTemperatureError: band("condensing and evaporating by the model", 4),
    ...GEOMETRY_ENTRIES,
    ...HEAT_LOST,
    ...STAGE_ENTRIES,
    stage: BALANCE_ENTRIES.stage,
    hotGasDrop: HOT_GAS_DROP,
  },
  "block of labels: machine at its rating, UA or coil, errors",
);

export const COMMISSION_READINGS = block(
  {
    waterFlow: WATER_FLOW.describedAs("water through the exchanger"),
    enteringWater: POOL_WATER.describedAs("pool water entering"),
    leavingWater: POOL_WATER.describedAs("pool water leaving").optional(),
    poolCondensing: CONDENSING_TEMPERATURE.describedAs("condensing dew temperature on the pool").optional(),
    poolEvaporating: EVAPORATING_TEMPERATURE.describedAs("evaporating dew temperature on the pool").optional(),
    poolPower: power("power on the pool, with the fans that the inputs count"),
    poolSuperheat: difference("superheat on the pool"),
    poolSubcooling: difference("subcooling on the pool"),
    outdoor: AIR_TEMPERATURE.describedAs("air entering the outdoor coil"),
    indoorWetBulb: BALANCE_ENTRIES.indoorWetBulb,
    outdoorCondensing: CONDENSING_TEMPERATURE.describedAs("condensing dew temperature outdoors").optional(),
    outdoorEvaporating: EVAPORATING_TEMPERATURE.describedAs("evaporating dew temperature outdoors").optional(),
    outdoorPower: power("power outdoors, with the fans that the inputs count"),
    outdoorSuperheat: difference("superheat outdoors"),
    outdoorSubcooling: difference("subcooling outdoors"),
    restSaturation: CONDENSING_TEMPERATURE.describedAs("saturation temperature of the pressure at rest").optional(),
    restTemperature: AIR_TEMPERATURE.describedAs("temperature of the condenser at rest").optional(),
  },
  "block of labels: readings in both modes, settled for 20 minutes",
);

export type CommissionInputs = ValueOf<typeof COMMISSION_INPUTS>;
export type CommissionReadings = ValueOf<typeof COMMISSION_READINGS>;

/** What a line of the result shows. */
export interface CommissionLine {
  readonly key: string;
  readonly reading: string;
  readonly kind: KindName;
  readonly measured: number | undefined;
  readonly expected: number | undefined;
  /** ±, in the unit of the difference. */
  readonly allowed: number;
  readonly method: string;
}

/** Whether a reading lies above, below or within what is expected; undefined without a reading. */
export function sideOf({ measured, expected, allowed }: CommissionLine): "high" | "low" | "agrees" | undefined {
  if (measured === undefined || expected === undefined) return undefined;
  const difference = measured - expected;
  return Math.abs(difference) <= allowed ? "agrees" : difference > 0 ? "high" : "low";
}
