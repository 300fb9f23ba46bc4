import { catalogueOf } from "../kernel/define/catalogue";
import { rack } from "./functions/rack";
import { space } from "./functions/space";
import { tank } from "./functions/tank";

export const sink = catalogueOf([tank, space, rack]);
