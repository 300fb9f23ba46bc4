/** Arguments of the pressure functions. Pressures are gauge readings at sea level. */
import { choice, quantity } from "../kernel/define/argument";
import { us } from "../kernel/values/quantity";

const degF = (value: number): number => us("temperature", value);
const inch = (value: number): number => us("diameter", value);

export const DESIGN_SIDE = choice("PressureSide", ["low", "high air", "high water"], "side of the circuit");

export const DESIGN_RULE = choice("DesignPressureRule", ["ASHRAE 15", "EN 378"], "rule of the design pressure").default(
  "ASHRAE 15",
);

export const SUMMER_DRY_BULB = quantity("temperature", "summer dry bulb passed 1 % of the time", {
  from: degF(32),
  to: degF(140),
  usual: [degF(75), degF(120)],
});

export const LEAVING_WATER = quantity("temperature", "warmest water leaving the condenser", {
  from: degF(32),
  to: degF(160),
  usual: [degF(60), degF(120)],
});

export const OUTSIDE_DIAMETER = quantity("diameter", "outside diameter of the tube", {
  from: inch(0.1),
  to: inch(12),
  usual: [inch(0.25), inch(2.625)],
});

export const TUBE_WALL = quantity("diameter", "nominal wall of the tube", {
  from: inch(0.008),
  to: inch(1),
  usual: [inch(0.015), inch(0.1)],
});

const WHICH_GRADE = "say its grade, 1 or 2; if unknown 1, the weaker";

export const PRESSURE_MATERIAL = choice(
  "PressureTubeMaterial",
  ["copper", "titanium grade 1", "titanium grade 2", "cupronickel 90-10", "cupronickel 70-30"],
  "tube material",
  {
    "titanium 1": "titanium grade 1",
    "titanium 2": "titanium grade 2",
    "titanium Gr 1": "titanium grade 1",
    "titanium Gr 2": "titanium grade 2",
    "cupronickel 90/10": "cupronickel 90-10",
    "cupronickel 70/30": "cupronickel 70-30",
    "Cu-Ni 90/10": "cupronickel 90-10",
    "Cu-Ni 70/30": "cupronickel 70-30",
  },
  { titanium: WHICH_GRADE },
);

export const METAL_TEMPERATURE = quantity("temperature", "hottest temperature of the tube", {
  from: degF(-60),
  to: degF(400),
  usual: [degF(32), degF(300)],
});

const JOINT = quantity("fraction", "joint efficiency: 1 seamless, 0.85 welded", { from: 0.5, to: 1 });

/** The arguments behind the temperature, in their order. */
export const TUBE_OPTIONS = {
  temper: choice("TubeTemper", ["annealed", "drawn"], "temper; brazed tube is annealed", {
    soft: "annealed",
    hard: "drawn",
  }).default("annealed"),
  joint: JOINT.default(1),
  sizes: choice("TubeSizes", ["mill", "as given"], "mill: least wall and greatest diameter of the standard").default(
    "mill",
  ),
} as const;

export const VESSEL_LENGTH = quantity("length", "length of the vessel", {
  above: 0,
  usual: [us("length", 0.3), us("length", 20)],
});
