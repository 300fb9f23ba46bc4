import { catalogueOf } from "../kernel/define/catalogue";
import { pressureDesign } from "./functions/design";
import { pressureRelief } from "./functions/relief";
import { pressureTable } from "./functions/table";
import { pressureTrapped } from "./functions/trapped";
import { pressureTube } from "./functions/tube";
import { pressureWall } from "./functions/wall";

export const pressureFunctions = catalogueOf([
  pressureDesign,
  pressureTube,
  pressureWall,
  pressureRelief,
  pressureTrapped,
  pressureTable,
]);
