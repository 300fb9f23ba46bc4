import { catalogueOf } from "../kernel/define/catalogue";
import { climateCheck } from "./functions/check";
import { climateExtraterrestrial } from "./functions/extraterrestrial";
import { climateMonths } from "./functions/months";
import { climatePlaces } from "./functions/places";

export const climateFunctions = catalogueOf([climatePlaces, climateMonths, climateCheck, climateExtraterrestrial]);
