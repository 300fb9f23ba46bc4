import { catalogueOf } from "../kernel/catalogue";
import { properties } from "./functions/properties";

export const water = catalogueOf([properties]);
