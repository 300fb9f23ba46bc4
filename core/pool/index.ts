import { catalogueOf } from "../kernel/define/catalogue";
import { poolArea } from "./functions/area";
import { poolCalibrate } from "./functions/calibrate";
import { poolCoolingTest } from "./functions/coolingTest";
import { poolEvaporation } from "./functions/evaporation";
import { poolHeat } from "./functions/heat";
import { poolHours } from "./functions/hours";
import { poolLosses } from "./functions/losses";
import { poolBucketTest } from "./functions/bucketTest";
import { poolSettles } from "./functions/settles";
import { poolSpread } from "./functions/spread";
import { poolSurfaceLoss } from "./functions/surfaceLoss";
import { poolTurnover } from "./functions/turnover";
import { poolUncertainty } from "./functions/uncertainty";
import { poolVolume } from "./functions/volume";
import { poolWarmUp } from "./functions/warmUp";
import { poolWindAtWater } from "./functions/windAtWater";
import { poolYear } from "./functions/year";

export const poolFunctions = catalogueOf([
  poolVolume,
  poolArea,
  poolEvaporation,
  poolWindAtWater,
  poolSurfaceLoss,
  poolHeat,
  poolLosses,
  poolWarmUp,
  poolSettles,
  poolTurnover,
  poolYear,
  poolSpread,
  poolHours,
  poolCoolingTest,
  poolBucketTest,
  poolCalibrate,
  poolUncertainty,
]);
