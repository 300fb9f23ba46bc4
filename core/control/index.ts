import { catalogueOf } from "../kernel/catalogue";

export const control = catalogueOf([]);
