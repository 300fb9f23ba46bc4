import { catalogueOf } from "../kernel/catalogue";

export const exchanger = catalogueOf([]);
