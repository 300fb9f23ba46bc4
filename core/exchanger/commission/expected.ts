/** What the models expect at the measured water, flow and outdoor air, beside each reading. Strict SI. */
import { RATED_WET_BULB, performanceAtOutdoor } from "../../cycle/machine/outdoorRating";
import { silent, type Trace } from "../../kernel/define/steps";
import { us, type System } from "../../kernel/values/quantity";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import { refrigerantSaturationPressure } from "../../refrigerant/saturation/saturation";
import { conductanceOfHeat } from "../balance/equations";
import { balanceInputOf } from "../balance/fromBlock";
import { meanCondensing } from "../balance/machine";
import { bothSides } from "../balance/bothSides";
import { capacityRateOfWater, dutyOfWater } from "../water/equations";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import type { CommissionInputs, CommissionLine, CommissionReadings } from "./inputs";

/** Outdoor air and wet bulb for which the published curves of AIRCON.ATOUTDOOR hold. */
const holds = (outdoor: number, wetBulb: number): boolean =>
  outdoor >= us("temperature", 65) &&
  outdoor <= us("temperature", 115) &&
  Math.abs(wetBulb - RATED_WET_BULB) <= us("temperature difference", 10);

/** The machine and exchanger as planned, in the units of the call's own rows. */
interface Plan {
  readonly inputs: CommissionInputs;
  readonly system: System;
}

/** The models at given conditions. */
function modelled({ inputs, system }: Plan, readings: CommissionReadings, trace: Trace = silent) {
  const { pool, outdoors, power, powerOutdoors } = bothSides(
    { ...balanceInputOf({ ...inputs, ...readings }, system, trace), hotGasDrop: inputs.hotGasDrop },
    trace,
  );
  const curves =
    inputs.ratedPower !== undefined &&
    inputs.machineType === "single speed" &&
    holds(readings.outdoor, readings.indoorWetBulb);
  const rating = { cooling: inputs.ratedCooling, power: inputs.ratedPower ?? 0, outdoorFan: inputs.outdoorFan };
  const byCurves = curves
    ? trace.within("On the outdoor coil by the published curves", () =>
        performanceAtOutdoor(rating, readings.outdoor, readings.indoorWetBulb, trace),
      )
    : undefined;
  return {
    condensing: pool.condensing,
    evaporating: pool.evaporating,
    rise: pool.leavingWater - readings.enteringWater,
    heat: pool.rejected,
    power,
    conductance: pool.ua,
    outdoorCondensing: outdoors.condensing,
    outdoorEvaporating: outdoors.evaporating,
    outdoorPower: byCurves?.power ?? powerOutdoors,
    byCurves: byCurves !== undefined,
  };
}

type Modelled = ReturnType<typeof modelled>;

/** ± of a modelled value through the measured conditions that it is worked at. */
function conditionErrors(plan: Plan, readings: CommissionReadings, at: Modelled) {
  const { temperatureError, flowError } = plan.inputs;
  const nearby = [
    modelled(plan, { ...readings, enteringWater: readings.enteringWater + temperatureError }),
    modelled(plan, { ...readings, waterFlow: readings.waterFlow * (1 + flowError) }),
    modelled(plan, { ...readings, outdoor: readings.outdoor + temperatureError }),
    modelled(plan, { ...readings, indoorWetBulb: readings.indoorWetBulb + temperatureError }),
  ];
  return (key: Exclude<keyof Modelled, "byCurves">): number =>
    Math.hypot(...nearby.map((each) => (each[key] ?? 0) - (at[key] ?? 0)));
}

/** Heat into the water and conductance by the readings; undefined where one is missing. */
function measuredOf(inputs: CommissionInputs, readings: CommissionReadings, trace: Trace) {
  const { enteringWater, leavingWater, waterFlow, poolCondensing } = readings;
  if (leavingWater === undefined) return {};
  const T = (enteringWater + leavingWater) / 2;
  const rho = trace.step(densityOfWater, { T });
  const C = trace.step(capacityRateOfWater, { V: waterFlow, rho, cp: trace.step(heatCapacityOfWater, { T }) });
  const rise = leavingWater - enteringWater;
  const heat = trace.step(dutyOfWater, { C, dT: rise });
  if (poolCondensing === undefined) return { rise, heat };
  const fluid = loadRefrigerant(inputs.refrigerant);
  const Tm = meanCondensing(fluid, poolCondensing, refrigerantSaturationPressure(fluid, poolCondensing, "dew"));
  const reaches = rise > 0 && Tm > leavingWater;
  const conductance = reaches ? trace.step(conductanceOfHeat, { C, Q: heat, Tm, Tw: enteringWater }) : undefined;
  return { rise, heat, conductance };
}

/** What the lines of both modes are made with. */
interface Frame {
  readonly inputs: CommissionInputs;
  readonly readings: CommissionReadings;
  readonly at: Modelled;
  readonly through: ReturnType<typeof conditionErrors>;
  readonly found: ReturnType<typeof measuredOf>;
}

const BALANCE = "EXCHANGER.BALANCE";

const line = (
  key: string,
  reading: string,
  kind: CommissionLine["kind"],
  measured: number | undefined,
  expected: number | undefined,
  errors: readonly number[],
  method = BALANCE,
): CommissionLine => ({ key, reading, kind, measured, expected, allowed: Math.hypot(...errors), method });

const shares = (value: number, ...parts: readonly number[]): readonly number[] => parts.map((part) => part * value);

const difference = (key: string, name: string, measured: number | undefined, wanted: number, allowed: number) =>
  line(key, name, "temperature difference", measured, wanted, [allowed], "as wanted");

type SaturationKey = "condensing" | "evaporating" | "outdoorCondensing" | "outdoorEvaporating";

const saturation = ({ inputs, at, through }: Frame, key: SaturationKey, name: string, measured: number | undefined) =>
  line(key, name, "temperature", measured, at[key], [
    inputs.temperatureError,
    inputs.modelTemperatureError,
    through(key),
  ]);

function poolLines(frame: Frame): readonly CommissionLine[] {
  const { inputs, readings, at, through, found } = frame;
  const { flowError, powerError, riseError, temperatureError, modelError, plannedFlow } = inputs;
  const rise = found.rise ?? at.rise;
  const heatError = Math.hypot(flowError, riseError / Math.max(Math.abs(rise), riseError));
  const apart = Math.max(1, at.condensing - readings.enteringWater - at.rise);
  const planned = shares(plannedFlow ?? 0, flowError, 0.05);
  return [
    line("flow", "pool: water flow", "water flow", readings.waterFlow, plannedFlow, planned, "as planned"),
    saturation(frame, "condensing", "pool: condensing", readings.poolCondensing),
    saturation(frame, "evaporating", "pool: evaporating", readings.poolEvaporating),
    line("rise", "pool: rise of the water", "temperature difference", found.rise, at.rise, [
      riseError,
      at.rise * modelError,
      through("rise"),
    ]),
    line("heat", "pool: heat into the water", "heat rate", found.heat, at.heat, [
      ...shares(at.heat, heatError, modelError),
      through("heat"),
    ]),
    line("power", "pool: power", "electric power", readings.poolPower, at.power, [
      ...shares(at.power, powerError, modelError),
      through("power"),
    ]),
    line(
      "conductance",
      "pool: UA",
      "heat conductance",
      found.conductance,
      at.conductance,
      shares(at.conductance ?? 0, heatError, modelError, temperatureError / apart),
    ),
    difference("superheat", "pool: superheat", readings.poolSuperheat, inputs.superheat, inputs.superheatError),
    difference("subcooling", "pool: subcooling", readings.poolSubcooling, inputs.subcooling, inputs.subcoolingError),
  ];
}

function outdoorLines(frame: Frame): readonly CommissionLine[] {
  const { inputs, readings, at, through } = frame;
  const { powerError, temperatureError, modelError, superheatError, subcoolingError } = inputs;
  const powers = [...shares(at.outdoorPower, powerError, modelError), through("outdoorPower")];
  const rest = readings.restSaturation === undefined ? undefined : readings.restTemperature;
  const method = at.byCurves ? "AIRCON.ATOUTDOOR" : BALANCE;
  const errors = [temperatureError, temperatureError];
  return [
    saturation(frame, "outdoorCondensing", "outdoor: condensing", readings.outdoorCondensing),
    saturation(frame, "outdoorEvaporating", "outdoor: evaporating", readings.outdoorEvaporating),
    line("outdoorPower", "outdoor: power", "electric power", readings.outdoorPower, at.outdoorPower, powers, method),
    difference("outdoorSuperheat", "outdoor: superheat", readings.outdoorSuperheat, inputs.superheat, superheatError),
    difference(
      "outdoorSubcooling",
      "outdoor: subcooling",
      readings.outdoorSubcooling,
      inputs.subcooling,
      subcoolingError,
    ),
    line("rest", "at rest: saturation", "temperature", readings.restSaturation, rest, errors, "as the condenser"),
  ];
}

/** Every reading beside what is expected, pool mode first. */
export function commissionLines(
  plan: Plan,
  readings: CommissionReadings,
  trace: Trace = silent,
): readonly CommissionLine[] {
  const { inputs } = plan;
  const at = modelled(plan, readings, trace);
  const through = conditionErrors(plan, readings, at);
  const found = trace.within("By the readings", () => measuredOf(inputs, readings, trace));
  const frame = { inputs, readings, at, through, found };
  return [...poolLines(frame), ...outdoorLines(frame)];
}
