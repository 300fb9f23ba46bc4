/** Arguments of the refrigerant-line functions. */
import { choice, quantity } from "../kernel/define/argument";
import { inchesOfSize } from "../kernel/values/numberText";
import { us } from "../kernel/values/quantity";
import { COPPER_TUBE } from "./data/copperTube";

const SIZES = COPPER_TUBE.map(({ size }) => size);

/** "3/8", "0.375", "9.52 mm", "9.53 mm": metric sheets truncate or round the same millimetres. */
const spellingsOf = (size: string): readonly string[] => {
  const inches = inchesOfSize(size);
  const mm = inches * 25.4;
  const hundredths = [Math.floor(mm * 100 + 1e-6), Math.ceil(mm * 100 - 1e-6)].map((each) => each / 100);
  const metric = [...hundredths, ...hundredths.map((each) => Number(each.toFixed(1)))];
  return [size.replace(" in", ""), String(inches), `${inches} in`, ...metric.map((each) => `${each} mm`)];
};

export const TUBE_SIZE = choice("TubeSize", SIZES, "outside diameter of the copper tube, such as 3/8 in", {
  ...Object.fromEntries(SIZES.flatMap((size) => spellingsOf(size).map((spelling) => [spelling, size]))),
});

export const TUBE_FORM = choice("TubeForm", ["coil", "straight"], "annealed coil or drawn straight length", {
  annealed: "coil",
  soft: "coil",
  drawn: "straight",
  hard: "straight",
});

export const ADDED_LENGTH = quantity("length", "length of the added line", { from: 0, usual: [0, us("length", 300)] });

/** Gauge pressure at sea level: the nitrogen gauge. */
export const TEST_READING = quantity("pressure", "gauge pressure when the test began", {
  reading: true,
  above: 0,
  to: us("pressure", 3000),
  usual: [us("pressure", 50), us("pressure", 700)],
});

const TRADE_NAMES = { "hot gas": "discharge" } as const;

export const SERVICE = choice("LineService", ["suction", "discharge", "liquid"], "what the line carries", TRADE_NAMES);

export const GAS_SERVICE = choice("GasLineService", ["suction", "discharge"], "what the riser carries", TRADE_NAMES);
