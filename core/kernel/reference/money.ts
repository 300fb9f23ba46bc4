import { references } from "./entry";

export const money = references({});
