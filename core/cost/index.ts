import { catalogueOf } from "../kernel/catalogue";

export const cost = catalogueOf([]);
