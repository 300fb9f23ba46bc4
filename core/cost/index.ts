import { catalogueOf } from "../kernel/define/catalogue";
import { costCarbon } from "./functions/carbon";
import { costCompare } from "./functions/compare";
import { costOfHeat } from "./functions/ofHeat";
import { costPayback } from "./functions/payback";

export const costFunctions = catalogueOf([costOfHeat, costCompare, costCarbon, costPayback]);
