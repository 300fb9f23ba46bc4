/** Refuses entries of the year's block that don't go together. */
import { mend } from "../../kernel/fault";
import { us } from "../../kernel/quantity";
import { told } from "../../numeric/told";
import { checkActivity } from "../evaporation/evaporation";
import type { YearInputs } from "./inputs";
import { checkTank } from "./tankSetUp";

const LEAST_SPAN = us("temperature difference", 5);

function checkMachine(inputs: YearInputs): void {
  if (inputs.ratedCooling !== undefined && inputs.ratedPower === undefined)
    throw mend('inputs: the label "rated power" is missing or blank: it is needed with rated cooling');
  if (inputs.ratedCooling === undefined && inputs.exchangerUA !== undefined)
    throw mend('inputs: the label "rated cooling" is missing or blank: an exchanger needs an air conditioner');
}

export function checkYearInputs(inputs: YearInputs): void {
  checkActivity(inputs.evaporationMethod, inputs.activity);
  if (inputs.lossMethod === "surface rule" && inputs.cover !== "none")
    throw mend('inputs: cover: the surface rule knows no cover: use loss method "parts"');
  checkMachine(inputs);
  if (inputs.secondSink !== "none") checkTank(inputs);
  if (inputs.designOutdoor - inputs.balanceOutdoor < LEAST_SPAN - 1e-9)
    throw mend(
      `inputs: design outdoor must lie at least ${told("temperature difference", LEAST_SPAN)} above balance outdoor, got ${told("temperature", inputs.designOutdoor)} over ${told("temperature", inputs.balanceOutdoor)}`,
    );
  if (inputs.backUpSource !== "none" && inputs.highLimit < inputs.setPoint)
    throw mend(
      `inputs: high limit must be at least the set point, ${told("temperature", inputs.setPoint)}, got ${told("temperature", inputs.highLimit)}`,
    );
}
