import { catalogueOf } from "../kernel/define/catalogue";
import { area } from "./functions/area";
import { evaporation } from "./functions/evaporation";
import { heat } from "./functions/heat";
import { hours } from "./functions/hours";
import { losses } from "./functions/losses";
import { settles } from "./functions/settles";
import { spread } from "./functions/spread";
import { surfaceLoss } from "./functions/surfaceLoss";
import { turnover } from "./functions/turnover";
import { volume } from "./functions/volume";
import { warmUp } from "./functions/warmUp";
import { windAtWater } from "./functions/windAtWater";
import { year } from "./functions/year";

export const pool = catalogueOf([
  volume,
  area,
  evaporation,
  windAtWater,
  surfaceLoss,
  heat,
  losses,
  warmUp,
  settles,
  turnover,
  year,
  spread,
  hours,
]);
