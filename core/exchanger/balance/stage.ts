/** The machine of the balance at the stage or speed that runs: by its rating, the maker's rows, or a compressor's map. */
import { ISENTROPIC_EFFICIENCY } from "../../cycle/args";
import { checkStages, compressorMapOf, listedRows, rowAt, type Capacity } from "../../cycle/machine/description";
import { valueError } from "../../kernel/values/fault";
import type { Trace } from "../../kernel/define/steps";
import { show, type System } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import type { CoolingMachine, MachineRating } from "./compressor";
import type { BalanceEntries } from "./inputs";
import { efficiencyOfPower, machineOf } from "./machine";
import { mappedMachineOf } from "./mappedMachine";

interface Fans {
  readonly outdoorFan: number;
  readonly indoorFan: number;
}

/** A machine, and the fans that run with it, W. */
export interface RunningStage extends Fans {
  readonly machine: CoolingMachine;
}

/** A stage at the rating: net cooling, and the whole machine's power where it is known, W. */
interface RatedStage extends Fans {
  readonly cooling: number;
  readonly power: number | undefined;
  readonly evaporating: number;
  readonly condensing: number;
}

/** Compressor's efficiency: as given, or by the power of the whole machine. */
function efficiencyOf(inputs: BalanceEntries, rated: RatedStage, rating: MachineRating, trace: Trace): number {
  const { power } = rated;
  const { efficiency } = inputs;
  if (power === undefined) return efficiency;
  // An entry equal to its default counts as blank.
  if (efficiency !== ISENTROPIC_EFFICIENCY.fallback)
    throw valueError("inputs: give one of rated power and efficiency, got both");
  const fans = rated.outdoorFan + rated.indoorFan;
  if (!(fans < power))
    throw valueError(
      `inputs: both fans must take less than rated power, ${quantityMark("electric power", power)}, got ${quantityMark("electric power", fans)}`,
    );
  return efficiencyOfPower(rating, power - fans, trace);
}

/** The maker's rows at the rating, which must agree with rated cooling. */
const AGREES = 0.05;

function fullStage(inputs: BalanceEntries): RatedStage {
  const rows = listedRows(inputs, false);
  const own: Omit<RatedStage, "power"> = {
    cooling: inputs.ratedCooling,
    outdoorFan: inputs.outdoorFan,
    indoorFan: inputs.indoorFan,
    evaporating: inputs.ratedEvaporating,
    condensing: inputs.ratedCondensing,
  };
  if (rows === undefined) return { ...own, power: inputs.ratedPower };
  const row = rowAt(rows, inputs.ratedOutdoor);
  if (!(Math.abs(row.cooling / inputs.ratedCooling - 1) <= AGREES))
    throw valueError(
      `inputs: rated cooling must be within 5 % of the maker's rows at rated outdoor, ${quantityMark("heat rate", row.cooling)}, got ${quantityMark("heat rate", inputs.ratedCooling)}`,
    );
  if (inputs.ratedPower !== undefined) throw valueError("inputs: give one of rated power and table power, got both");
  return { ...own, ...row };
}

function lowCapacity(inputs: BalanceEntries): Capacity | undefined {
  const rows = listedRows(inputs, true);
  if (rows !== undefined) return rowAt(rows, inputs.ratedOutdoor);
  const { lowCooling: cooling, lowPower: power } = inputs;
  return cooling === undefined || power === undefined ? undefined : { cooling, power };
}

const lowFans = (inputs: BalanceEntries): Fans => ({
  outdoorFan: inputs.lowOutdoorFan ?? inputs.outdoorFan,
  indoorFan: inputs.lowIndoorFan ?? inputs.indoorFan,
});

/** The low stage at the rating; its differences from the air shrink with its heat, unless they are given. */
function lowStage(inputs: BalanceEntries, full: RatedStage): RatedStage {
  const capacity = lowCapacity(inputs);
  if (capacity === undefined)
    throw valueError("inputs: stage: the low stage needs low cooling and low power, or low table cooling and power");
  const { cooling, power } = capacity;
  if (!(cooling < full.cooling)) throw valueError("inputs: low cooling must be below rated cooling");
  const fans = lowFans(inputs);
  const gross = (cooling + fans.indoorFan) / (full.cooling + full.indoorFan);
  const rejected =
    full.power === undefined
      ? gross
      : (cooling + power - fans.outdoorFan) / (full.cooling + full.power - full.outdoorFan);
  const { ratedIndoorWetBulb: bulb, ratedOutdoor: air } = inputs;
  return {
    ...capacity,
    ...fans,
    evaporating: inputs.lowEvaporating ?? bulb - (bulb - full.evaporating) * gross,
    condensing: inputs.lowCondensing ?? air + (full.condensing - air) * rejected,
  };
}

/** Between least and full speed. */
function between(low: RatedStage, full: RatedStage, share: number): RatedStage {
  const mix = (key: Exclude<keyof RatedStage, "power">): number => low[key] + share * (full[key] - low[key]);
  const [a, b] = [low.power, full.power];
  return {
    cooling: mix("cooling"),
    power: a === undefined || b === undefined ? undefined : a + share * (b - a),
    outdoorFan: mix("outdoorFan"),
    indoorFan: mix("indoorFan"),
    evaporating: mix("evaporating"),
    condensing: mix("condensing"),
  };
}

function ratedStage(inputs: BalanceEntries): RatedStage {
  const full = fullStage(inputs);
  const { stage } = inputs;
  if (stage === "full" || stage === 1) return full;
  if (typeof stage === "number" && inputs.machineType !== "variable speed")
    throw valueError(
      `inputs: stage: a share needs machine type "variable speed"; else "full" or "low", got ${show(stage, "fraction", "US")}`,
    );
  const low = lowStage(inputs, full);
  return stage === "low" ? low : between(low, full, stage);
}

const ratingOf = (inputs: BalanceEntries, { cooling, indoorFan, evaporating, condensing }: RatedStage) => ({
  fluid: loadRefrigerant(inputs.refrigerant),
  superheat: inputs.superheat,
  subcooling: inputs.subcooling,
  efficiency: inputs.efficiency,
  volumetricEfficiency: inputs.volumetricEfficiency,
  cooling: cooling + indoorFan,
  evaporating,
  condensing,
  wetBulb: inputs.ratedIndoorWetBulb,
});

/** The machine of a map: its evaporator and outdoor coil are those of full capacity in each stage. */
function mappedStage(inputs: BalanceEntries, system: System): RunningStage | undefined {
  const map = compressorMapOf(inputs, false, system);
  if (map === undefined) return undefined;
  if (inputs.ratedPower !== undefined) throw valueError("inputs: give one of rated power and map power, got both");
  const machine = mappedMachineOf(ratingOf(inputs, fullStage(inputs)), map);
  if (inputs.stage === "full" || inputs.stage === 1)
    return { machine, outdoorFan: inputs.outdoorFan, indoorFan: inputs.indoorFan };
  const low = compressorMapOf(inputs, true, system);
  if (low === undefined || typeof inputs.stage === "number")
    throw valueError('inputs: stage: a mapped machine runs at "full", or at "low" by low map flow and power');
  return { machine: { ...machine, map: low }, ...lowFans(inputs) };
}

export function stageOf(inputs: BalanceEntries, system: System, trace: Trace): RunningStage {
  checkStages(inputs, inputs.ratedCooling, inputs.ratedPower);
  const mapped = mappedStage(inputs, system);
  if (mapped !== undefined) return mapped;
  const rated = ratedStage(inputs);
  const rating = ratingOf(inputs, rated);
  const machine = machineOf({ ...rating, efficiency: efficiencyOf(inputs, rated, rating, trace) });
  return { machine, outdoorFan: rated.outdoorFan, indoorFan: rated.indoorFan };
}
