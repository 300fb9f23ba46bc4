/** A described machine through the months: its time by stage and its electricity, by the spread of the days. */
import { checkStages } from "../../cycle/machine/description";
import { daySpread } from "../climate";
import type { LoadModel, MonthOfLoad } from "../fullLoadHours";
import { DAYS } from "../../numeric/calendar";
import { sumOf } from "../../numeric/series";
import { valueError } from "../../kernel/values/fault";
import { powerBetweenSpeeds, runShareFor } from "./partLoad";
import type { MachineInputs, Stage } from "./stage";
import { middleOf, stagesOf, type Stages } from "./stages";

export interface MachineRun {
  /** s */
  readonly lowStageHours: number;
  readonly higherHours: number;
  /** J */
  readonly electricity: number;
}

type Shares = Readonly<Record<"low" | "higher" | "power", number>>;

const within = ({ from, to }: Stage, T: number): number => Math.min(to, Math.max(from, T));

/** Shares of the time at low and higher capacity for a load, W, and mean power, W. */
function met(
  inputs: MachineInputs & { readonly cyclingLoss: number },
  stages: Stages,
  T: number,
  load: number,
): Shares {
  const { full, low } = stages;
  const loss = inputs.cyclingLoss;
  const most = full.outdoors(within(full, T));
  const locked = inputs.lockout !== undefined && T >= inputs.lockout;
  if (low === undefined || locked || load >= most.cooling) {
    const higher = runShareFor(load, most.cooling, loss);
    return { low: 0, higher, power: higher * most.power };
  }
  const least = low.outdoors(within(low, T));
  if (load <= least.cooling) {
    const share = runShareFor(load, least.cooling, loss);
    return { low: share, higher: 0, power: share * least.power };
  }
  if (inputs.machineType === "variable speed") {
    const middle = middleOf(inputs, full, low);
    return {
      low: 0,
      higher: 1,
      power: powerBetweenSpeeds(load, least.cooling, least.power, most.cooling, most.power, middle),
    };
  }
  const higher = (load - least.cooling) / (most.cooling - least.cooling);
  return { low: 1 - higher, higher, power: higher * most.power + (1 - higher) * least.power };
}

/** Days of a month stand for equal shares of the logistic distribution of its daily means. */
const PARTS = 200;

export function machineMonths(
  given: MachineInputs & { readonly cyclingLoss: number },
  months: readonly MonthOfLoad[],
  { balance, design, yearlySpread }: LoadModel,
): readonly MachineRun[] {
  checkStages(given, given.ratedCooling, given.ratedPower);
  const stages = stagesOf(given);
  if (stages === undefined)
    throw valueError("machine: needs rated cooling and rated power, table cooling and power, or map flow and power");
  const atDesign = stages.full.outdoors(within(stages.full, design)).cooling;
  return months.map(({ mean }, place) => {
    const days = DAYS[place] ?? 30;
    const s = daySpread.code({ T: mean, sigma: yearlySpread, N: days });
    let [low, higher, power] = [0, 0, 0];
    for (let part = 0; part < PARTS; part++) {
      const p = (part + 0.5) / PARTS;
      const T = mean + s * Math.log(p / (1 - p));
      const load = (atDesign * (Math.min(T, design) - balance)) / (design - balance);
      if (load <= 0) continue;
      const shares = met(given, stages, T, load);
      low += shares.low;
      higher += shares.higher;
      power += shares.power;
    }
    const each = (86_400 * days) / PARTS;
    return { lowStageHours: low * each, higherHours: higher * each, electricity: power * each };
  });
}

export const totalRun = (runs: readonly MachineRun[]): MachineRun => ({
  lowStageHours: sumOf(runs, (run) => run.lowStageHours),
  higherHours: sumOf(runs, (run) => run.higherHours),
  electricity: sumOf(runs, (run) => run.electricity),
});
