import { catalogueOf } from "../kernel/catalogue";

export const cycle = catalogueOf([]);
