import { catalogueOf } from "../kernel/define/catalogue";
import { lineBoiling } from "./functions/boiling";
import { lineBore } from "./functions/bore";
import { lineCharge } from "./functions/charge";
import { lineChargeBalance } from "./functions/chargeBalance";
import { lineDrop } from "./functions/drop";
import { lineHeatLoss } from "./functions/heatLoss";
import { lineRiser } from "./functions/riser";
import { lineRoomArea } from "./functions/roomArea";
import { lineRoomLimit } from "./functions/roomLimit";
import { lineTargetSuperheat } from "./functions/targetSuperheat";
import { lineTestPressure } from "./functions/testPressure";
import { lineValve } from "./functions/valve";

export const lineFunctions = catalogueOf([
  lineBore,
  lineDrop,
  lineRiser,
  lineHeatLoss,
  lineCharge,
  lineChargeBalance,
  lineTestPressure,
  lineBoiling,
  lineTargetSuperheat,
  lineRoomLimit,
  lineRoomArea,
  lineValve,
]);
