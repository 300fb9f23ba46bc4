import { catalogueOf } from "../kernel/catalogue";

export const water = catalogueOf([]);
