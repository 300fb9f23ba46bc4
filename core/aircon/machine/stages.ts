/** The stages of a machine from its description. */
import { compressorMapOf, listedRows, rowAt, type Capacity, type ListedRows } from "../../cycle/machine/description";
import type { CompressorMap } from "../../cycle/map/map";
import type { CoolingMachine } from "../../exchanger/balance/compressor";
import { mappedMachineOf } from "../../exchanger/balance/mappedMachine";
import { valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import { RATED_OUTDOOR, RATED_WET_BULB } from "../../cycle/machine/outdoorRating";
import { stageAtOutdoor } from "../stagePerformance";
import {
  curveStage,
  mapStage,
  ratingWith,
  tableStage,
  USUAL_DIFFERENCE,
  type Dews,
  type Fans,
  type MachineInputs,
  type Rating,
  type Stage,
} from "./stage";

/** Rating of a mapped machine: its cooling as given or by the map, its power by the map. */
function mappedCompressor(inputs: MachineInputs, map: CompressorMap): CoolingMachine {
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

function mappedStages(inputs: MachineInputs, map: CompressorMap): Stages {
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

const lowFans = (inputs: MachineInputs): Fans => ({
  outdoorFan: inputs.lowOutdoorFan ?? inputs.outdoorFan,
  indoorFan: inputs.lowIndoorFan ?? inputs.indoorFan,
});

/** Capacity of the low stage at 95 °F; undefined where none is given. */
function lowCapacity(inputs: MachineInputs, rows: ListedRows | undefined): Capacity | undefined {
  if (rows !== undefined) return rowAt(rows, RATED_OUTDOOR);
  const { lowCooling: cooling, lowPower: power, machineType, lowRatedOutdoor } = inputs;
  if (cooling === undefined || power === undefined) return undefined;
  const curve = machineType === "variable speed" ? "variable speed, low" : "two stage, low";
  return stageAtOutdoor(curve, { cooling, power }, RATED_OUTDOOR, RATED_WET_BULB, lowRatedOutdoor);
}

/** Dew temperatures of the low stage at the rating: both differences from the air shrink with the heat. */
function lowDews(inputs: MachineInputs, full: Rating, low: Capacity, fans: Fans): Dews {
  const gross = (low.cooling + fans.indoorFan) / (full.cooling + full.indoorFan);
  const rejected = (low.cooling + low.power - fans.outdoorFan) / (full.cooling + full.power - full.outdoorFan);
  return {
    evaporating: inputs.lowEvaporating ?? RATED_WET_BULB - (RATED_WET_BULB - full.evaporating) * gross,
    condensing: inputs.lowCondensing ?? RATED_OUTDOOR + (full.condensing - RATED_OUTDOOR) * rejected,
  };
}

function fullCapacity(inputs: MachineInputs, rows: ListedRows | undefined): Capacity | undefined {
  if (rows === undefined) {
    const { ratedCooling: cooling, ratedPower: power } = inputs;
    return cooling === undefined || power === undefined ? undefined : { cooling, power };
  }
  if (inputs.ratedCooling !== undefined || inputs.ratedPower !== undefined)
    throw valueError("inputs: give one of rated cooling with its power and the maker's rows, got both");
  return rowAt(rows, RATED_OUTDOOR);
}

/** The machine's stages; undefined where no machine is given. */
export function stagesOf(inputs: MachineInputs): Stages | undefined {
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

function ratedStages(inputs: MachineInputs): Stages | undefined {
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

/** Outdoor air of the test at the intermediate speed, K. */
const INTERMEDIATE_OUTDOOR = us("temperature", 87);

/** The intermediate speed as shares of the way from least to full at its test, 87 °F outdoors. */
export function middleOf(inputs: MachineInputs, full: Stage, low: Stage): readonly [number, number] | undefined {
  const { intermediateCooling: cooling, intermediatePower: power } = inputs;
  if (cooling === undefined || power === undefined) return undefined;
  const [least, most] = [low.outdoors(INTERMEDIATE_OUTDOOR), full.outdoors(INTERMEDIATE_OUTDOOR)];
  const shares = [
    (cooling - least.cooling) / (most.cooling - least.cooling),
    (power - least.power) / (most.power - least.power),
  ] as const;
  if (shares.every((share) => share > 0 && share < 1)) return shares;
  throw valueError(
    `inputs: intermediate cooling and power at ${quantityMark("temperature", INTERMEDIATE_OUTDOOR)} must be between those of least and full speed there: ${quantityMark("heat rate", least.cooling)} to ${quantityMark("heat rate", most.cooling)} and ${quantityMark("electric power", least.power)} to ${quantityMark("electric power", most.power)}`,
  );
}
