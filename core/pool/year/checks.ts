/** Refuses entries of the year's block that don't go together. */
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

export function checkYearInputs(inputs: YearInputs): void {
  checkActivity(inputs.evaporationMethod, inputs.activity);
  if (inputs.lossMethod === "surface rule" && inputs.cover !== "none")
    throw valueError('inputs: cover: the surface rule knows no cover: use loss method "parts"');
  checkMachine(inputs);
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
