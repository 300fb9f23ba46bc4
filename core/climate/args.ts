/** Arguments of the climate functions. */
import { quantity } from "../kernel/define/argument";

export const LATITUDE = quantity("number", "latitude in degrees, south negative", { from: -90, to: 90 });

export const LONGITUDE = quantity("number", "longitude in degrees, west negative", { from: -180, to: 180 });
