/** From the input block of the year to the pool, its pump and what heats it. */
import { DAY, HOUR } from "../../numeric/calendar";
import { FREEZING, POOL_DENSITY, POOL_HEAT_CAPACITY } from "../equations";
import { checkYearInputs } from "./checks";
import type { YearInputs } from "./inputs";
import { setUpMachine } from "./machineSetUp";
import type { BackUp, PoolRun, Pump, Recovery } from "./run";
import { powerByHour, scheduleOf } from "./schedule";
import { totalOf } from "./sums";
import { yearSurface, type YearPool } from "./surface";
import { tankOf } from "./tankSetUp";
import type { Site, Weather } from "./weather";

export const siteOf = (inputs: YearInputs): Site => ({
  latitude: inputs.latitude === undefined ? undefined : (inputs.latitude * Math.PI) / 180,
  altitude: inputs.altitude,
  shelter: inputs.shelter,
  windAtWater: inputs.windAtWater,
  mains: inputs.mainsTemperature,
});

const meanOf = (values: Float64Array): number => totalOf(values) / values.length;

function poolOf(inputs: YearInputs, weather: Weather): YearPool {
  const perArea = POOL_DENSITY / DAY / inputs.poolArea;
  const rain = (inputs.rain * POOL_DENSITY) / DAY;
  const coverHours = inputs.coverHours ?? DAY / 2;
  return {
    surface: {
      method: inputs.evaporationMethod,
      activity: inputs.activity,
      convection: inputs.convectionMethod,
      hiddenSky: inputs.hiddenSky,
    },
    area: inputs.poolArea,
    depth: inputs.waterDepth,
    rule: inputs.lossMethod === "surface rule" ? inputs.surfaceCoefficient : undefined,
    cover: {
      kind: inputs.cover,
      hours: coverHours / HOUR,
      covered: inputs.coveredShare,
      convectionCut: inputs.coverConvectionCut,
      radiationCut: inputs.coverRadiationCut,
    },
    ground: {
      coefficient: inputs.groundCoefficient,
      temperature: inputs.groundTemperature ?? meanOf(weather.air),
    },
    water: { drawn: (inputs.splash + inputs.backwash + inputs.leak) * perArea - rain, rain },
    sunShare: inputs.sunShare,
    shading: inputs.shading,
  };
}

/** Pump of several speeds: `schedule` is then its power as a share of that when the machine calls. */
function pumpBySpeed(
  { pumpStart, pumpPower, pumpHeatShare }: YearInputs,
  hours: readonly number[],
  energies: readonly number[],
): Pump {
  const speeds = hours.map((time, i) => (energies[i] ?? 0) / time);
  const power = pumpPower > 0 ? pumpPower : Math.max(...speeds);
  const mean = powerByHour(
    pumpStart,
    hours.map((time) => time / HOUR),
    energies,
  );
  return {
    schedule: mean.map((each) => (power > 0 ? Math.min(1, each / power) : 0)),
    power,
    heat: power * pumpHeatShare,
  };
}

function pumpOf(inputs: YearInputs): Pump {
  const { pumpSpeedEnergy: energies, pumpSpeedHours: hours } = inputs;
  if (energies !== undefined && hours !== undefined) return pumpBySpeed(inputs, hours, energies);
  return {
    schedule: scheduleOf(inputs.pumpStart, inputs.pumpHours / HOUR),
    power: inputs.pumpPower,
    heat: inputs.pumpPower * inputs.pumpHeatShare,
  };
}

/** Whether each month, 0 to 11, lies in the season, which may run through New Year. */
const seasonOf = ({ seasonStart, seasonEnd }: YearInputs): readonly boolean[] =>
  Array.from({ length: 12 }, (_, i) => {
    const month = i + 1;
    return seasonStart <= seasonEnd
      ? month >= seasonStart && month <= seasonEnd
      : month >= seasonStart || month <= seasonEnd;
  });

/** J/(m²·K) of the water below a square metre of surface. */
export const capacityOf = ({ waterDepth }: YearInputs): number => POOL_HEAT_CAPACITY * waterDepth;

const backUpOf = (inputs: YearInputs, months: readonly boolean[]): BackUp => ({
  set: inputs.setPoint,
  most: inputs.backUpCapacity === undefined ? Number.MAX_VALUE : inputs.backUpCapacity / inputs.poolArea,
  months,
});

const recoveryOf = (inputs: YearInputs): Recovery => ({
  limit: inputs.highLimit,
  band: inputs.deadBand,
  leastTime: inputs.leastTime,
  onCall: inputs.pumpOnCall,
  lost: inputs.lineLoss + inputs.pipeLoss,
});

/** The pool with all that may heat it, and its season. */
export interface SetUp {
  readonly season: readonly boolean[];
  readonly run: PoolRun;
}

/** Checks the block and sets up pool, machine, recovery, tank and back-up heater in a year's weather. */
export function setUpYear(inputs: YearInputs, weather: Weather): SetUp {
  checkYearInputs(inputs);
  const season = seasonOf(inputs);
  const surface = yearSurface(poolOf(inputs, weather), weather);
  const machine = setUpMachine(inputs, weather);
  const run: PoolRun = {
    surface,
    area: inputs.poolArea,
    capacity: capacityOf(inputs),
    pump: pumpOf(inputs),
    machine,
    recovery: machine?.poolCurve && recoveryOf(inputs),
    tank: tankOf(inputs),
    backUp: backUpOf(inputs, season),
    freezing: FREEZING,
  };
  return { season, run };
}
