import { catalogueOf } from "../kernel/catalogue";

export const pool = catalogueOf([]);
