import { references } from "./entry";

export const refrigeration = references({});
