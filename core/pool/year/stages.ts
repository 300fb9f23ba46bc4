/** The stages of the year's machine: what each does outdoors and on water, by curves, the maker's rows, or a map. */
import { performanceAtOutdoor, RATED_OUTDOOR, RATED_WET_BULB } from "../../aircon/outdoorRating";
import { stageAtOutdoor, type StageCurve } from "../../aircon/stagePerformance";
import { compressorMapOf, listedRows, rowAt, type Capacity, type ListedRows } from "../../cycle/machine/description";
import type { CompressorMap } from "../../cycle/map/map";
import { outdoorBalanceOf } from "../../exchanger/balance/balance";
import type { CoolingMachine } from "../../exchanger/balance/compressor";
import { mappedMachineOf } from "../../exchanger/balance/mappedMachine";
import { valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { cubicAt, monotoneCubic } from "../../numeric/monotoneCubic";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import type { YearInputs } from "./inputs";
import { tableOnWater } from "./tableOnWater";
import {
  compressorOf,
  onWaterCurve,
  type ExchangerWords,
  type Rating,
  type WaterCurve,
  type WaterExchanger,
} from "./waterCurve";

/** An exchanger, the warmest water that reaches it, K, and its labels. */
export interface Exchanger extends WaterExchanger {
  readonly warmest: number;
  readonly named: ExchangerWords;
}

/** One stage, or one end of the speeds. */
export interface Stage {
  readonly rating: Rating;
  /** Outdoor temperatures that its data cover, K. */
  readonly from: number;
  readonly to: number;
  /** Net cooling and power of the whole machine at an outdoor temperature within them, W. */
  readonly outdoors: (outdoor: number) => Capacity;
  readonly onWater: (exchanger: Exchanger) => WaterCurve;
}

/** Outdoor temperatures of the published curves, K. */
export const [CURVE_FROM, CURVE_TO] = [291.483, 319.261];

/** Superheat and subcooling at the rating where they aren't given, K. */
export const USUAL_DIFFERENCE = us("temperature difference", 10);

export function checkFans(fans: number, power: number): void {
  if (!(fans < power))
    throw valueError(
      `inputs: both fans must take less than rated power, ${quantityMark("electric power", power)}, got ${quantityMark("electric power", fans)}`,
    );
}

type Fans = Readonly<Record<"outdoorFan" | "indoorFan", number>>;
type Dews = Readonly<Record<"evaporating" | "condensing", number>>;

function ratingWith(inputs: YearInputs, { cooling, power }: Capacity, fans: Fans, dews: Dews): Rating {
  checkFans(fans.outdoorFan + fans.indoorFan, power);
  return {
    cooling,
    power,
    ...fans,
    refrigerant: inputs.refrigerant,
    ...dews,
    wetBulb: inputs.indoorWetBulb,
    superheat: USUAL_DIFFERENCE,
    subcooling: USUAL_DIFFERENCE,
  };
}

/** A stage by published curves. */
function curveStage(rating: Rating, curve: StageCurve | undefined): Stage {
  let compressor: CoolingMachine | undefined;
  return {
    rating,
    from: CURVE_FROM,
    to: CURVE_TO,
    outdoors: (outdoor) =>
      curve === undefined
        ? performanceAtOutdoor(rating, outdoor, rating.wetBulb)
        : stageAtOutdoor(curve, rating, outdoor, rating.wetBulb),
    onWater: (exchanger) => {
      // Depends on the rating alone: one for pool and tank.
      compressor ??= compressorOf(rating);
      return onWaterCurve(compressor, exchanger, rating, exchanger.warmest, exchanger.named);
    },
  };
}

const tableStage = (rating: Rating, rows: ListedRows): Stage => ({
  rating,
  from: rows.outdoor[0] ?? 0,
  to: rows.outdoor.at(-1) ?? 0,
  outdoors: (outdoor) => rowAt(rows, outdoor),
  onWater: (exchanger) => tableOnWater(rows, rating, exchanger),
});

/** Balances outdoors that the curve of a mapped machine joins. */
const OUTDOOR_BALANCES = 13;

function mapStage(rating: Rating, compressor: CoolingMachine, leastCondensing: number): Stage {
  const outdoors = Array.from(
    { length: OUTDOOR_BALANCES },
    (_, i) => CURVE_FROM + (i * (CURVE_TO - CURVE_FROM)) / (OUTDOOR_BALANCES - 1),
  );
  const found = outdoors.map((T) =>
    outdoorBalanceOf(compressor, { ratedOutdoor: RATED_OUTDOOR }, T, rating.wetBulb, leastCondensing),
  );
  const curve = (of: (state: (typeof found)[number]) => number) => monotoneCubic(outdoors, found.map(of));
  const cooling = curve((state) => state.cooling - rating.indoorFan);
  const power = curve((state) => state.power + rating.outdoorFan + rating.indoorFan);
  return {
    rating,
    from: CURVE_FROM,
    to: CURVE_TO,
    outdoors: (outdoor) => ({ cooling: cubicAt(cooling, outdoor), power: cubicAt(power, outdoor) }),
    onWater: (exchanger) => onWaterCurve(compressor, exchanger, rating, exchanger.warmest, exchanger.named),
  };
}

/** Rating of a mapped machine: its cooling as given or by the map, its power by the map. */
function mappedCompressor(inputs: YearInputs, map: CompressorMap): CoolingMachine {
  if (inputs.ratedPower !== undefined) throw valueError("inputs: give one of rated power and map power, got both");
  return mappedMachineOf(
    {
      fluid: loadRefrigerant(inputs.refrigerant),
      cooling: inputs.ratedCooling === undefined ? undefined : inputs.ratedCooling + inputs.indoorFan,
      evaporating: inputs.ratedEvaporating,
      condensing: inputs.ratedCondensing,
      wetBulb: RATED_WET_BULB,
      superheat: USUAL_DIFFERENCE,
      subcooling: USUAL_DIFFERENCE,
      volumetricEfficiency: 1,
    },
    map,
  );
}

/** Net cooling and power of a mapped machine at its rating, W. */
const mappedCapacity = ({ rating, rated }: CoolingMachine, { outdoorFan, indoorFan }: Fans): Capacity => ({
  cooling: rating.cooling - indoorFan,
  power: (rating.cooling * rated.work) / rated.cooling + outdoorFan + indoorFan,
});

export interface Stages {
  readonly full: Stage;
  readonly low: Stage | undefined;
}

function mappedStages(inputs: YearInputs, map: CompressorMap): Stages {
  const fans = { outdoorFan: inputs.outdoorFan, indoorFan: inputs.indoorFan };
  const compressor = mappedCompressor(inputs, map);
  const stage = (machine: CoolingMachine, own: Fans): Stage => {
    const dews = { evaporating: machine.rating.evaporating, condensing: machine.rating.condensing };
    return mapStage(ratingWith(inputs, mappedCapacity(compressor, fans), own, dews), machine, inputs.leastCondensing);
  };
  const lowMap = compressorMapOf(inputs, true, inputs.mapUnits ?? "US");
  // The low stage works between the same evaporator and outdoor coil.
  return {
    full: stage(compressor, fans),
    low: lowMap && stage({ ...compressor, map: lowMap }, lowFans(inputs)),
  };
}

const lowFans = (inputs: YearInputs): Fans => ({
  outdoorFan: inputs.lowOutdoorFan ?? inputs.outdoorFan,
  indoorFan: inputs.lowIndoorFan ?? inputs.indoorFan,
});

/** Capacity of the low stage at 95 °F; undefined where none is given. */
function lowCapacity(inputs: YearInputs, rows: ListedRows | undefined): Capacity | undefined {
  if (rows !== undefined) return rowAt(rows, RATED_OUTDOOR);
  const { lowCooling: cooling, lowPower: power, machineType, lowRatedOutdoor } = inputs;
  if (cooling === undefined || power === undefined) return undefined;
  const curve = machineType === "variable speed" ? "variable speed, low" : "two stage, low";
  return stageAtOutdoor(curve, { cooling, power }, RATED_OUTDOOR, RATED_WET_BULB, lowRatedOutdoor);
}

/** Dew temperatures of the low stage at the rating: both differences from the air shrink with the heat. */
function lowDews(inputs: YearInputs, full: Rating, low: Capacity, fans: Fans): Dews {
  const gross = (low.cooling + fans.indoorFan) / (full.cooling + full.indoorFan);
  const rejected = (low.cooling + low.power - fans.outdoorFan) / (full.cooling + full.power - full.outdoorFan);
  return {
    evaporating: inputs.lowEvaporating ?? RATED_WET_BULB - (RATED_WET_BULB - full.evaporating) * gross,
    condensing: inputs.lowCondensing ?? RATED_OUTDOOR + (full.condensing - RATED_OUTDOOR) * rejected,
  };
}

function fullCapacity(inputs: YearInputs, rows: ListedRows | undefined): Capacity | undefined {
  if (rows === undefined) {
    const { ratedCooling: cooling, ratedPower: power } = inputs;
    return cooling === undefined || power === undefined ? undefined : { cooling, power };
  }
  if (inputs.ratedCooling !== undefined || inputs.ratedPower !== undefined)
    throw valueError("inputs: give one of rated cooling with its power and the maker's rows, got both");
  return rowAt(rows, RATED_OUTDOOR);
}

/** The machine's stages; undefined where no machine is given. */
export function stagesOf(inputs: YearInputs): Stages | undefined {
  const map = compressorMapOf(inputs, false, inputs.mapUnits ?? "US");
  const stages = map ? mappedStages(inputs, map) : ratedStages(inputs);
  if (stages === undefined || inputs.machineType === "single speed") return stages;
  if (stages.low === undefined)
    throw valueError(
      `inputs: machine type: ${inputs.machineType} needs low cooling and low power, low table cooling and power, or low map flow and power`,
    );
  const [low, full] = [stages.low.outdoors(RATED_OUTDOOR), stages.full.outdoors(RATED_OUTDOOR)];
  if (!(low.cooling < full.cooling && low.power < full.power))
    throw valueError("inputs: cooling and power of the low stage or least speed must be below those at full capacity");
  return stages;
}

function ratedStages(inputs: YearInputs): Stages | undefined {
  const rows = listedRows(inputs, false);
  const capacity = fullCapacity(inputs, rows);
  if (capacity === undefined) return undefined;
  const { machineType } = inputs;
  const full = ratingWith(
    inputs,
    capacity,
    { outdoorFan: inputs.outdoorFan, indoorFan: inputs.indoorFan },
    { evaporating: inputs.ratedEvaporating, condensing: inputs.ratedCondensing },
  );
  const lowRows = listedRows(inputs, true);
  const low = lowCapacity(inputs, lowRows);
  const fans = lowFans(inputs);
  const lowRating = low && ratingWith(inputs, low, fans, lowDews(inputs, full, low, fans));
  const stage = (rating: Rating, own: ListedRows | undefined, end: "low" | "full"): Stage =>
    own
      ? tableStage(rating, own)
      : curveStage(rating, machineType === "single speed" ? undefined : (`${machineType}, ${end}` as const));
  return { full: stage(full, rows, "full"), low: lowRating && stage(lowRating, lowRows, "low") };
}
