/** The input block of a tube coil in a shell. */
import { block, quantity } from "../../kernel/define/argument";
import { us } from "../../kernel/values/quantity";
import { FOULING, TUBE_MATERIAL } from "../args";
import { DUTY_ENTRIES } from "../zones/inputs";

const size = (about: string, usual: readonly [number, number]) =>
  quantity("diameter", about, { above: 0, to: 5, usual: [us("diameter", usual[0]), us("diameter", usual[1])] });

/** The coil of the examples, in US units. */
export const EXAMPLE_COIL = {
  outsideDiameter: 0.625,
  wall: 0.028,
  tubes: 4,
  tubeLength: 60,
  coilDiameter: 10,
  pitch: 1,
  shellDiameter: 12,
  coreDiameter: 8,
  outsideFouling: 0.0005,
} as const;

/** Tube, coil, shell, fouling. */
export const COIL_ENTRIES = {
  outsideDiameter: size("outside diameter of the tube", [0.25, 1.5]),
  wall: size("wall thickness of the tube", [0.015, 0.12]),
  material: TUBE_MATERIAL.default("titanium"),
  tubes: quantity("count", "tubes in parallel, wound into each other", { from: 1, to: 100, whole: true }).default(1),
  tubeLength: quantity("length", "length of one tube in the shell", {
    above: 0,
    to: 1000,
    usual: [us("length", 5), us("length", 300)],
  }),
  coilDiameter: size("coil diameter, centre to centre of the tube", [3, 40]),
  pitch: size("pitch between neighbouring turns, centre to centre", [0.3, 4]),
  shellDiameter: size("inside diameter of the shell", [4, 48]),
  coreDiameter: quantity("diameter", "closed body inside the coil, 0 for an open core", { from: 0, to: 5 }).default(0),
  insideFouling: FOULING.describedAs("fouling resistance inside, on the inside area"),
  outsideFouling: FOULING.describedAs("fouling resistance outside, on the outside area"),
} as const;

export const COIL_INPUTS = block(
  {
    ...DUTY_ENTRIES,
    ...COIL_ENTRIES,
    portBore: size("bore of the shell's two water ports", [0.5, 6]).optional(),
  },
  "input block: duty as for ZONES, tube, coil, shell, fouling",
);
