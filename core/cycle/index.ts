import { catalogueOf } from "../kernel/define/catalogue";
import { cop } from "./functions/cop";
import { discharge } from "./functions/discharge";
import { factor } from "./functions/factor";
import { massFlow } from "./functions/massFlow";
import { split } from "./functions/split";
import { states } from "./functions/states";

export const cycle = catalogueOf([states, cop, discharge, factor, split, massFlow]);
