import { references } from "./entry";

export const pool = references({});
