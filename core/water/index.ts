import { catalogueOf } from "../kernel/define/catalogue";
import { waterProperties } from "./functions/properties";

export const waterFunctions = catalogueOf([waterProperties]);
