import { catalogueOf } from "../kernel/define/catalogue";
import { costCarbon } from "./functions/carbon";
import { costCompare } from "./functions/compare";
import { costFactor } from "./functions/factor";
import { costLifecycle } from "./functions/lifecycle";
import { costOfHeat } from "./functions/ofHeat";
import { costPayback } from "./functions/payback";
import { costSaved } from "./functions/saved";
import { costWarming } from "./functions/warming";

export const costFunctions = catalogueOf([
  costOfHeat,
  costCompare,
  costCarbon,
  costPayback,
  costFactor,
  costLifecycle,
  costSaved,
  costWarming,
]);
