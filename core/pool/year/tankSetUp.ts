/** From the input block of the year to its preheat tank. */
import { HOUR, HOURS_OF_DAY, firstHourOf, hoursOf } from "../../numeric/calendar";
import { valueError } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import { HOT_WATER, TANK_RESISTANCE, tankSurface } from "../../sink/equations";
import type { YearInputs } from "./inputs";
import type { Tank } from "./run";
import { scheduleOf } from "./schedule";
import { totalOf } from "./sums";

const TANK_LABELS = { tankUA: "tank UA", tankVolume: "tank volume", hotWaterDraw: "hot water draw" } as const;

/** An entry that a preheat tank can't do without. */
export function needed(inputs: YearInputs, key: keyof typeof TANK_LABELS): number {
  const value = inputs[key];
  if (value === undefined)
    throw valueError(
      `inputs: the label "${TANK_LABELS[key]}" is missing, blank or zero: it is needed with a preheat tank`,
    );
  return value;
}

/** Whether an air conditioner is given: by its rating, the maker's rows or a map. */
export const hasMachine = ({ ratedCooling, tableCooling, mapFlow }: YearInputs): boolean =>
  (ratedCooling ?? tableCooling ?? mapFlow) !== undefined;

/** Refuses entries of the tank that don't go together. */
export function checkTank(inputs: YearInputs): void {
  if (!hasMachine(inputs))
    throw valueError('inputs: the label "rated cooling" is missing or blank: a preheat tank needs an air conditioner');
  if (inputs.tankLimit > inputs.hotWater)
    throw valueError(
      `inputs: tank limit must be at most the hot water's ${quantityMark("temperature", inputs.hotWater)}, got ${quantityMark("temperature", inputs.tankLimit)}`,
    );
}

/** Height of the tank that is taken for its surface, in diameters. */
const SLENDER = 2;

/** The preheat tank; with insulation of the least resistance asked of storage tanks where its loss isn't given. */
export function tankOf(inputs: YearInputs): Tank | undefined {
  if (inputs.secondSink === "none") return undefined;
  const volume = needed(inputs, "tankVolume");
  const perDay = needed(inputs, "hotWaterDraw") * HOT_WATER;
  const parts = scheduleOf(inputs.drawStart, inputs.drawHours / HOUR);
  const hours = totalOf(parts);
  return {
    order: inputs.sinkOrder,
    capacity: volume * HOT_WATER,
    loss: inputs.tankLoss ?? tankSurface.code({ V: volume, k: SLENDER }) / TANK_RESISTANCE,
    around: inputs.tankSurroundings,
    limit: inputs.tankLimit,
    draw: parts.map((part) => (perDay * part) / (hours * HOUR)),
    pump: inputs.tankPumpPower,
  };
}

/** Heat of a month's hot water from mains to what is delivered, J. */
export function hotWaterLoad(inputs: YearInputs, mains: Float64Array, month: number): number {
  let mean = 0;
  const first = firstHourOf(month);
  const hours = hoursOf(month);
  for (let hour = first; hour < first + hours; hour++) mean += (mains[hour] ?? 0) / hours;
  const days = hours / HOURS_OF_DAY;
  return needed(inputs, "hotWaterDraw") * days * HOT_WATER * Math.max(0, inputs.hotWater - mean);
}
