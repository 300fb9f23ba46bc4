import { catalogueOf } from "../kernel/catalogue";

export const line = catalogueOf([]);
