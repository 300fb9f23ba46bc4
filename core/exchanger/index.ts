import { catalogueOf } from "../kernel/define/catalogue";
import { area } from "./functions/area";
import { balance } from "./functions/balance";
import { coil } from "./functions/coil";
import { correction } from "./functions/correction";
import { duty } from "./functions/duty";
import { effectiveness } from "./functions/effectiveness";
import { holdHead } from "./functions/holdHead";
import { lmtd } from "./functions/lmtd";
import { ntu } from "./functions/ntu";
import { overall } from "./functions/overall";
import { ua } from "./functions/ua";
import { waterDuty } from "./functions/waterDuty";
import { waterFlow } from "./functions/waterFlow";
import { waterRise } from "./functions/waterRise";
import { zones } from "./functions/zones";

export const exchanger = catalogueOf([
  lmtd,
  correction,
  effectiveness,
  ntu,
  duty,
  ua,
  area,
  overall,
  waterRise,
  waterFlow,
  waterDuty,
  holdHead,
  zones,
  balance,
  coil,
]);
