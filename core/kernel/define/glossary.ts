/** Arguments that several topics share, in one wording. */
import { quantity } from "./argument";
import { us } from "../values/quantity";

const degF = (value: number): number => us("temperature", value);

export const WATER_FLOW = quantity("water flow", "water flow", {
  above: 0,
  usual: [us("water flow", 2), us("water flow", 1000)],
});

export const WATER_TEMPERATURE = quantity("temperature", "water temperature", {
  from: degF(32),
  to: degF(212),
  usual: [degF(40), degF(110)],
});

export const POOL_WATER = quantity("temperature", "temperature of the pool water", {
  from: degF(32),
  to: degF(120),
  usual: [degF(45), degF(104)],
});

export const AIR_TEMPERATURE = quantity("temperature", "air temperature (dry bulb)", {
  from: degF(-60),
  to: degF(150),
  usual: [degF(-20), degF(120)],
});

export const HUMIDITY = quantity("relative humidity", "relative humidity of the air, as a fraction", {
  from: 0,
  to: 1,
});

export const HEAT_RATE = quantity("heat rate", "heat per hour", {
  above: 0,
  usual: [us("heat rate", 1000), us("heat rate", 5_000_000)],
});

export const ALTITUDE = quantity("altitude", "altitude above sea level", { from: -500, to: 5000 });
