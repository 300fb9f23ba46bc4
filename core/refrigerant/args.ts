/** Arguments of the refrigerant functions. */
import { choice, normalizeKey, quantity } from "../kernel/define/argument";
import { us } from "../kernel/values/quantity";
import { REFRIGERANTS } from "./refrigerant";

/** The number alone, as on a cylinder's collar: "410A", 22; "1234ze" is the isomer E. */
const NUMBERS_ALONE = Object.fromEntries(REFRIGERANTS.map((name) => [name.replace("R-", ""), name]));

const nearestIs = (name: string): string => `the nearest is "${name}"`;

/** Names that may mean another product: refused, with the nearest name in the message. */
const OTHER_NAMES = {
  propane: nearestIs("R-290"),
  isobutane: nearestIs("R-600a"),
  co2: nearestIs("R-744"),
  carbondioxide: nearestIs("R-744"),
  ...Object.fromEntries(REFRIGERANTS.map((name) => [`freon${normalizeKey(name.slice(2))}`, nearestIs(name)])),
};

export const REFRIGERANT = choice(
  "Refrigerant",
  REFRIGERANTS,
  "refrigerant, such as R-410A",
  { ...NUMBERS_ALONE, "R-1234ze": "R-1234ze(E)", "1234ze": "R-1234ze(E)" },
  OTHER_NAMES,
);

export const SATURATION_TEMPERATURE = quantity("temperature", "saturation temperature", {
  from: us("temperature", -300),
  to: us("temperature", 500),
});

export const LINE_TEMPERATURE = quantity("temperature", "temperature of the line, clamped and insulated", {
  from: us("temperature", -150),
  to: us("temperature", 400),
  usual: [us("temperature", -40), us("temperature", 250)],
});

/** A gauge or absolute reading by `basis`. */
export const READING = quantity("pressure", "pressure, as read on the gauge or as basis says", {
  reading: true,
  to: 1e9,
});

export const CURVE = choice(
  "SaturationCurve",
  ["dew", "bubble"],
  "dew or bubble curve (the same for pure refrigerants)",
).default("dew");
