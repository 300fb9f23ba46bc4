import { catalogueOf } from "../kernel/catalogue";

export const sink = catalogueOf([]);
