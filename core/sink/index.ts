import { catalogueOf } from "../kernel/catalogue";
import { rack } from "./functions/rack";
import { space } from "./functions/space";
import { tank } from "./functions/tank";

export const sink = catalogueOf([tank, space, rack]);
