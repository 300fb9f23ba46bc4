/** Refuses entries of the year's block that don't go together. */
import { DAY } from "../../numeric/calendar";
import { sumOf } from "../../numeric/series";
import { valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { checkActivity } from "../evaporation/evaporation";
import type { YearInputs } from "./inputs";
import { checkTank, hasMachine } from "./tankSetUp";

const LEAST_SPAN = us("temperature difference", 5);

function checkMachine(inputs: YearInputs): void {
  if (inputs.ratedCooling !== undefined && inputs.ratedPower === undefined && inputs.mapFlow === undefined)
    throw valueError('inputs: the label "rated power" is missing or blank: it is needed with rated cooling');
  if (!hasMachine(inputs) && inputs.exchangerUA !== undefined)
    throw valueError('inputs: the label "rated cooling" is missing or blank: an exchanger needs an air conditioner');
}

function checkSpeeds({ pumpSpeedEnergy: energies, pumpSpeedHours: hours, pumpPower }: YearInputs): void {
  if (energies === undefined && hours === undefined) return;
  if (energies?.length !== hours?.length)
    throw valueError("inputs: pump speed energy and pump speed hours need one value for each speed");
  const all = sumOf(hours ?? [], (each) => each);
  if (all > DAY * (1 + 1e-9))
    throw valueError(
      `inputs: pump speed hours must make at most ${quantityMark("time", DAY)}, got ${quantityMark("time", all)}`,
    );
  const most = Math.max(...(energies ?? []).map((energy, i) => energy / (hours?.[i] ?? 1)));
  if (pumpPower > 0 && pumpPower < most * (1 - 1e-9))
    throw valueError(
      `inputs: pump power, on call, must be at least that of every speed, ${quantityMark("electric power", most)}, got ${quantityMark("electric power", pumpPower)}; left out it is the greatest`,
    );
}

export function checkYearInputs(inputs: YearInputs): void {
  checkActivity(inputs.evaporationMethod, inputs.activity);
  if (inputs.lossMethod === "surface rule" && inputs.cover !== "none")
    throw valueError('inputs: cover: the surface rule knows no cover: use loss method "parts"');
  checkMachine(inputs);
  checkSpeeds(inputs);
  if (inputs.secondSink !== "none") checkTank(inputs);
  if (inputs.designOutdoor - inputs.balanceOutdoor < LEAST_SPAN - 1e-9)
    throw valueError(
      `inputs: design outdoor must lie at least ${quantityMark("temperature difference", LEAST_SPAN)} above balance outdoor, got ${quantityMark("temperature", inputs.designOutdoor)} over ${quantityMark("temperature", inputs.balanceOutdoor)}`,
    );
  if (inputs.backUpSource !== "none" && inputs.highLimit < inputs.setPoint)
    throw valueError(
      `inputs: high limit must be at least the set point, ${quantityMark("temperature", inputs.setPoint)}, got ${quantityMark("temperature", inputs.highLimit)}`,
    );
}
