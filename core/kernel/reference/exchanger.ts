import { references } from "./entry";

export const exchanger = references({});
