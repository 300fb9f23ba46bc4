import { catalogueOf } from "../kernel/catalogue";

export const air = catalogueOf([]);
