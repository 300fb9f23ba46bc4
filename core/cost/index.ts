import { catalogueOf } from "../kernel/define/catalogue";
import { carbon } from "./functions/carbon";
import { compare } from "./functions/compare";
import { ofHeat } from "./functions/ofHeat";
import { payback } from "./functions/payback";

export const cost = catalogueOf([ofHeat, compare, carbon, payback]);
