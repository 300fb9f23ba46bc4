import { catalogueOf } from "../kernel/define/catalogue";
import { properties } from "./functions/properties";

export const water = catalogueOf([properties]);
