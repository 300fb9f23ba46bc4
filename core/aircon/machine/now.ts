/** A described machine at one outdoor temperature and stage. */
import type { StageInputs } from "../../cycle/machine/description";
import { checkStages } from "../../cycle/machine/description";
import type { Trace } from "../../kernel/define/steps";
import { notAvailable, valueError } from "../../kernel/values/fault";
import type { KindName, System } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { checkFan } from "../args";
import { coefficientOfPerformance, rejectedHeat } from "../../cycle/machine/equations";
import { RATED_OUTDOOR, type OutdoorPerformance } from "../../cycle/machine/outdoorRating";
import { powerBetweenSpeeds } from "./partLoad";
import type { MachineInputs, Stage } from "./stage";
import { middleOf, stagesOf, type Stages } from "./stages";

export interface MachineNow {
  readonly ratedCooling: number;
  readonly ratedPower: number;
  readonly outdoor: number;
  readonly indoorWetBulb: number;
  readonly outdoorFan: number;
  readonly stage: "full" | "low" | number;
  readonly machine: StageInputs &
    Pick<MachineInputs, "indoorFan" | "refrigerant" | "ratedEvaporating" | "ratedCondensing" | "leastCondensing">;
}

/** Share by which a rating may differ from the maker's rows, and from a map. */
const [ROWS_AGREE, MAP_AGREES] = [0.05, 0.1];

function checkAgrees(named: string, kind: KindName, given: number, own: number, most: number): void {
  if (!(Math.abs(own / given - 1) <= most))
    throw valueError(
      `${named}: must be within ${100 * most} % of what the machine's rows or map give at its rating, ${quantityMark(kind, own)}, got ${quantityMark(kind, given)}`,
    );
}

function checkedStages(now: MachineNow, inputs: MachineInputs): Stages {
  const stages = stagesOf(inputs);
  if (stages === undefined) throw valueError("machine: describes no machine");
  const { full } = stages;
  if (full.rows !== undefined || full.compressor !== undefined) {
    const most = full.rows ? ROWS_AGREE : MAP_AGREES;
    const own = full.outdoors(RATED_OUTDOOR);
    checkAgrees("ratedCooling", "heat rate", now.ratedCooling, own.cooling, most);
    checkAgrees("ratedPower", "electric power", now.ratedPower, own.power, most);
  }
  return stages;
}

function at(stage: Stage, outdoor: number) {
  const shown = (T: number): string => quantityMark("temperature", T);
  if (outdoor < stage.from - 1e-3 || outdoor > stage.to + 1e-3)
    throw notAvailable(
      `outdoor: the machine's data hold from ${shown(stage.from)} to ${shown(stage.to)}, got ${shown(outdoor)}`,
    );
  const { outdoorFan } = stage.rating;
  return { ...stage.outdoors(outdoor), outdoorFan };
}

/** Between least and full speed the COP is straight over the load, through the intermediate speed where it is given. */
function running(inputs: MachineInputs, { full, low }: Stages, outdoor: number, stage: "full" | "low" | number) {
  const most = at(full, outdoor);
  if (stage === "full" || stage === 1) return most;
  if (low === undefined) throw valueError("stage: the block has no low stage");
  const least = at(low, outdoor);
  if (stage === "low" || stage === 0) return least;
  if (inputs.machineType !== "variable speed")
    throw valueError('stage: a share needs machine type "variable speed"; else "full" or "low"');
  const cooling = least.cooling + stage * (most.cooling - least.cooling);
  return {
    cooling,
    power: powerBetweenSpeeds(
      cooling,
      least.cooling,
      least.power,
      most.cooling,
      most.power,
      middleOf(inputs, full, low),
    ),
    outdoorFan: least.outdoorFan + stage * (most.outdoorFan - least.outdoorFan),
  };
}

export function stageNow(now: MachineNow, system: System, trace: Trace): OutdoorPerformance {
  const { ratedCooling, ratedPower, outdoorFan, indoorWetBulb, machine } = now;
  checkFan(outdoorFan, ratedPower, "ratedPower", system);
  checkStages(machine, ratedCooling, ratedPower);
  const byRows = machine.tableCooling !== undefined;
  const inputs: MachineInputs = {
    ...machine,
    outdoorFan,
    indoorWetBulb,
    mapUnits: machine.mapUnits ?? system,
    // The maker's rows have their own rating; a map has its own power.
    ratedCooling: byRows ? undefined : ratedCooling,
    ratedPower: byRows || machine.mapFlow !== undefined ? undefined : ratedPower,
  };
  const { cooling, power, outdoorFan: fan } = running(inputs, checkedStages(now, inputs), now.outdoor, now.stage);
  return {
    cooling,
    power,
    rejected: trace.step(rejectedHeat, { Q: cooling, P: power, Pf: fan }),
    COP: trace.step(coefficientOfPerformance, { Q: cooling, P: power }),
  };
}
