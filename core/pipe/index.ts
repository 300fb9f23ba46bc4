import { catalogueOf } from "../kernel/catalogue";
import { bore } from "./functions/bore";
import { headLoss } from "./functions/headLoss";
import { size } from "./functions/size";
import { velocity } from "./functions/velocity";

export const pipe = catalogueOf([bore, velocity, headLoss, size]);
