import { catalogueOf } from "../kernel/catalogue";

export const refrigerant = catalogueOf([]);
