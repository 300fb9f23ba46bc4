import { catalogueOf } from "../kernel/define/catalogue";
import { waterBalance } from "./functions/balance";
import { waterProperties } from "./functions/properties";

export const waterFunctions = catalogueOf([waterProperties, waterBalance]);
