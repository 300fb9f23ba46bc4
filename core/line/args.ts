/** Arguments of the refrigerant-line functions. */
import { choice, quantity } from "../kernel/argument";
import { us } from "../kernel/quantity";
import { COPPER_TUBE } from "./data/copperTube";

const SIZES = COPPER_TUBE.map(({ size }) => size);

export const TUBE_SIZE = choice("TubeSize", SIZES, "outside diameter of the copper tube, such as 3/8 in", {
  ...Object.fromEntries(SIZES.map((size) => [size.replace(" in", ""), size])),
});

export const ADDED_LENGTH = quantity("length", "length of the added line", { from: 0, usual: [0, us("length", 300)] });

/** A gauge reading over sea level: the nitrogen gauge. */
export const TEST_READING = quantity("pressure", "gauge pressure when the test began", {
  reading: true,
  above: 0,
  to: us("pressure", 3000),
  usual: [us("pressure", 50), us("pressure", 700)],
});

export const SERVICE = choice("LineService", ["suction", "discharge", "liquid"], "what the line carries");

export const GAS_SERVICE = choice("GasLineService", ["suction", "discharge"], "what the riser carries");
