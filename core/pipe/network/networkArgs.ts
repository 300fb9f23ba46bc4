/** Arguments of the network functions. */
import { block, choice, quantity, rows, text, yesNo, type ValueOf } from "../../kernel/define/argument";
import { ALTITUDE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { CURVE_COLUMNS, EXPONENT, LINEAR_SHARE } from "./partCurve";
import { LOOP_WATER, NOMINAL_SIZE, SCHEDULE } from "../args";

export const LINK_COLUMNS = {
  from: text("node where it begins", 40),
  to: text("node where it ends", 40),
  element: text('"pipe", a valve, "check valve", a pump of the pumps, "vacuum breaker", or any part', 80),
  size: NOMINAL_SIZE.optional(),
  schedule: SCHEDULE,
  length: quantity("length", "length of pipe", { above: 0 }).optional(),
  K: text('loss coefficient, or fittings: "3 elbow 90; 1 union"', 200).optional(),
  flowCoefficient: quantity("flow coefficient", "Cv (US) or Kv (SI) of a valve, fully open", { above: 0 }).optional(),
  opening: quantity("fraction", "opening, from 0 (shut) to 1 (open, where blank)", { from: 0, to: 1 }).optional(),
  characteristic: choice("ValveCharacteristic", ["linear", "equal percentage", "quick opening"], "valve").default(
    "linear",
  ),
  rangeability: quantity("number", "rangeability of equal percentage", { above: 1, to: 1000 }).default(50),
  loss: quantity("head", "head lost at the known flow", { above: 0 }).optional(),
  knownFlow: quantity("water flow", "flow at which the loss is known", { above: 0 }).optional(),
  exponent: EXPONENT,
  linearShare: LINEAR_SHARE,
  shut: yesNo("whether it is shut, whatever its opening").default(false),
};

export const NETWORK_ROWS = rows(
  { ...LINK_COLUMNS, ...CURVE_COLUMNS },
  "rows: from, to, element, size, schedule, length, K, flow coefficient, opening … (see the help)",
  { least: 1, most: 200 },
);

export const PUMP_COLUMNS = {
  name: text("the pump's name among the elements", 80),
  speed: quantity("number", "speed as a share of the curve's; 0 is off", { from: 0, to: 2 }).default(1),
  flow: quantity("water flow", "flow of a point", { from: 0 }).optional(),
  head: quantity("head", "head of that point", { from: 0 }).optional(),
  H0: quantity("head", "head at no flow", { above: 0 }).optional(),
  b: quantity("pump slope", "b of H = H0 + b Q − c Q²", {}).default(0),
  c: quantity("system curve", "c of H = H0 + b Q − c Q²", { above: 0 }).optional(),
};

export const PUMP_ROWS_NEEDED = rows(PUMP_COLUMNS, "rows: name, speed, and a point (flow, head) a row, or H0, b, c", {
  least: 1,
  most: 200,
});

export const NODE_ROWS_NEEDED = rows(
  {
    node: text("name of the node", 40),
    height: quantity("head", "height", { from: -100, to: 1000 }).default(0),
    waterLevel: quantity("head", "level of a free surface", { from: -100, to: 1000 }).optional(),
    demand: quantity("water flow", "flow taken away there (fed in: negative)", {}).default(0),
  },
  'rows: node, [height], [water level], [demand]; "pool" has level 0 of itself',
  { least: 1, most: 200 },
);

const NONE = { words: "none", from: () => [] };

export const PUMP_ROWS = PUMP_ROWS_NEEDED.default(NONE);
export const NODE_ROWS = NODE_ROWS_NEEDED.default(NONE);

export const NETWORK_INPUTS_DEFAULT = {
  water: us("temperature", 80),
  altitude: 0,
  method: "Darcy-Weisbach" as const,
  neededSuctionHead: undefined,
};

export const NETWORK_INPUTS = block(
  {
    water: LOOP_WATER,
    altitude: ALTITUDE.default(0),
    method: choice("FrictionMethod", ["Darcy-Weisbach", "Hazen-Williams"], "friction formula").default(
      "Darcy-Weisbach",
    ),
    neededSuctionHead: quantity("head", "net positive suction head that the pumps need", { above: 0 }).optional(),
  },
  "input block: water, altitude, method, needed suction head",
).default({ words: "defaults of its labels", from: () => NETWORK_INPUTS_DEFAULT });

export type LinkRow = ValueOf<typeof NETWORK_ROWS>[number];
export type PumpRow = ValueOf<typeof PUMP_ROWS>[number];
export type NodeRow = ValueOf<typeof NODE_ROWS>[number];
export type NetworkInputs = ValueOf<typeof NETWORK_INPUTS>;
