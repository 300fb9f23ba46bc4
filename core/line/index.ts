import { catalogueOf } from "../kernel/define/catalogue";
import { boiling } from "./functions/boiling";
import { bore } from "./functions/bore";
import { charge } from "./functions/charge";
import { chargeBalance } from "./functions/chargeBalance";
import { drop } from "./functions/drop";
import { riser } from "./functions/riser";
import { roomLimit } from "./functions/roomLimit";
import { targetSuperheat } from "./functions/targetSuperheat";
import { testPressure } from "./functions/testPressure";

export const line = catalogueOf([
  bore,
  drop,
  riser,
  charge,
  chargeBalance,
  testPressure,
  boiling,
  targetSuperheat,
  roomLimit,
]);
