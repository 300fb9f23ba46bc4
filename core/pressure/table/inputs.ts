/** The input block of the changed circuit's pressures. Pressures are gauge readings at sea level. */
import { block, quantity, yesNo, type ValueOf } from "../../kernel/define/argument";
import { us } from "../../kernel/values/quantity";
import { TUBE_SIZE } from "../../line/args";
import { REFRIGERANT } from "../../refrigerant/args";
import {
  DESIGN_RULE,
  LEAVING_WATER,
  METAL_TEMPERATURE,
  OUTSIDE_DIAMETER,
  PRESSURE_MATERIAL,
  SUMMER_DRY_BULB,
  TUBE_OPTIONS,
  TUBE_WALL,
} from "../args";

const psi = (value: number): number => us("pressure", value);
const gauge = (about: string) =>
  quantity("pressure", about, { reading: true, above: 0, to: psi(5000), usual: [psi(100), psi(1000)] });
const marked = (part: string) => gauge(`mark of the ${part}`).optional();

export const PRESSURE_INPUTS = block(
  {
    refrigerant: REFRIGERANT,
    nameplateHigh: gauge("high side on the nameplate"),
    nameplateLow: gauge("low side on the nameplate"),
    summerDryBulb: SUMMER_DRY_BULB,
    leavingWater: LEAVING_WATER,
    rule: DESIGN_RULE,
    compressorShell: marked("compressor shell"),
    gasLineSize: TUBE_SIZE.describedAs("added hot gas line, such as 7/8 in").optional(),
    gasLineTemperature: METAL_TEMPERATURE.describedAs("hottest discharge gas").default(us("temperature", 250)),
    liquidLineSize: TUBE_SIZE.describedAs("added liquid line, such as 1/2 in").optional(),
    liquidLineTemperature: METAL_TEMPERATURE.describedAs("hottest liquid line").default(us("temperature", 150)),
    coilStamped: marked("pool coil"),
    coilMaterial: PRESSURE_MATERIAL.describedAs("tube of the pool coil").optional(),
    coilDiameter: OUTSIDE_DIAMETER.describedAs("outside diameter of the coil's tube").optional(),
    coilWall: TUBE_WALL.describedAs("nominal wall of the coil's tube").optional(),
    coilTemperature: METAL_TEMPERATURE.describedAs("hottest metal of the coil, water stopped").optional(),
    coilJoint: TUBE_OPTIONS.joint,
    divertingValve: marked("diverting valve"),
    checkValve: marked("check valve"),
    receiver: marked("receiver or accumulator"),
    reliefSetting: gauge("setting of a relief valve").optional(),
    waterShell: quantity("pressure", "mark of the coil's water side", {
      reading: true,
      above: 0,
      to: psi(500),
      usual: [psi(10), psi(150)],
    }).optional(),
    pumpDeadHead: quantity("head", "head of the pool pump at no flow", {
      from: 0,
      to: us("head", 500),
      usual: [us("head", 20), us("head", 150)],
    }).optional(),
    highSideShutOff: yesNo("service valves shut the high side off").default(false),
  },
  "input block: nameplate, temperatures, parts",
);

export type PressureInputs = ValueOf<typeof PRESSURE_INPUTS>;
