import { catalogueOf } from "../kernel/define/catalogue";
import { cycleCop } from "./functions/cop";
import { cycleDischarge } from "./functions/discharge";
import { cycleFactor } from "./functions/factor";
import { cycleGasCooler } from "./functions/gasCooler";
import { cycleMap } from "./functions/map";
import { cycleMassFlow } from "./functions/massFlow";
import { cycleSplit } from "./functions/split";
import { cycleStates } from "./functions/states";

export const cycleFunctions = catalogueOf([
  cycleStates,
  cycleCop,
  cycleDischarge,
  cycleFactor,
  cycleSplit,
  cycleMassFlow,
  cycleGasCooler,
  cycleMap,
]);
