import { catalogueOf } from "../kernel/catalogue";
import { bore } from "./functions/bore";
import { cement } from "./functions/cement";
import { cure } from "./functions/cure";
import { drainCover } from "./functions/drainCover";
import { equivalent } from "./functions/equivalent";
import { expansion } from "./functions/expansion";
import { fitting } from "./functions/fitting";
import { headLoss } from "./functions/headLoss";
import { loop } from "./functions/loop";
import { npsh } from "./functions/npsh";
import { operating } from "./functions/operating";
import { pumpPower } from "./functions/pumpPower";
import { rating } from "./functions/rating";
import { size } from "./functions/size";
import { support } from "./functions/support";
import { velocity } from "./functions/velocity";

export const pipe = catalogueOf([
  bore,
  velocity,
  headLoss,
  fitting,
  equivalent,
  loop,
  drainCover,
  operating,
  size,
  pumpPower,
  npsh,
  rating,
  expansion,
  support,
  cure,
  cement,
]);
