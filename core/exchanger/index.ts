import { catalogueOf } from "../kernel/define/catalogue";
import { exchangerArea } from "./functions/area";
import { exchangerBalance } from "./functions/balance";
import { exchangerCoil } from "./functions/coil";
import { exchangerCommission } from "./functions/commission";
import { exchangerCorrection } from "./functions/correction";
import { exchangerDuty } from "./functions/duty";
import { exchangerEffectiveness } from "./functions/effectiveness";
import { exchangerFlowStop } from "./functions/flowStop";
import { exchangerHoldHead } from "./functions/holdHead";
import { exchangerLmtd } from "./functions/lmtd";
import { exchangerNtu } from "./functions/ntu";
import { exchangerOverall } from "./functions/overall";
import { exchangerUa } from "./functions/ua";
import { exchangerWaterDuty } from "./functions/waterDuty";
import { exchangerWaterFlow } from "./functions/waterFlow";
import { exchangerWaterRise } from "./functions/waterRise";
import { exchangerWilson } from "./functions/wilson";
import { exchangerZones } from "./functions/zones";

export const exchangerFunctions = catalogueOf([
  exchangerLmtd,
  exchangerCorrection,
  exchangerEffectiveness,
  exchangerNtu,
  exchangerDuty,
  exchangerUa,
  exchangerArea,
  exchangerOverall,
  exchangerWaterRise,
  exchangerWaterFlow,
  exchangerWaterDuty,
  exchangerHoldHead,
  exchangerFlowStop,
  exchangerZones,
  exchangerBalance,
  exchangerCoil,
  exchangerWilson,
  exchangerCommission,
]);
