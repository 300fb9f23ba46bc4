import { catalogueOf } from "../kernel/catalogue";

export const aircon = catalogueOf([]);
