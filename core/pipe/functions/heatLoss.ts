import { block, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, WATER_FLOW, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { NO_VALUE, listResult, quantityResult } from "../../kernel/define/result";
import { valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import { NOMINAL_SIZE, SCHEDULE, STRAIGHT_LENGTH } from "../args";
import { EXPOSURE, FOAM, INSULATION } from "../heat/args";
import { earlyGroundLoss } from "../heat/cautions";
import { coolingAlongPipe } from "../heat/heatEquations";
import { lostToAir, lostToGround } from "../heat/pipeHeat";
import { boreOf, pvcPipe } from "../straight/bore";

/** Conductivity of PVC, W/(m K). */
const PVC_CONDUCTIVITY = 0.17;

const INPUTS = block(
  {
    size: NOMINAL_SIZE,
    schedule: SCHEDULE,
    length: STRAIGHT_LENGTH.default(us("length", 100)),
    water: WATER_TEMPERATURE.default(us("temperature", 80)),
    air: AIR_TEMPERATURE.describedAs("air, or the ground's surface if buried"),
    ...EXPOSURE,
    insulation: INSULATION,
    insulationConductivity: FOAM,
    emissivity: quantity("fraction", "emissivity of the surface", { above: 0, to: 1 }).default(0.9),
    depth: quantity("depth", "depth to the pipe's centre, if buried", { above: 0 }).optional(),
    ground: quantity("conductivity", "conductivity of the ground: 0.5 dry, 1 to 1.5 moist, 2 wet W/(m·K)", {
      above: 0,
    }).default(1),
    flow: WATER_FLOW.optional(),
  },
  "input block: size, length, temperatures, wind, insulation, depth, flow",
);

const STILL = {
  size: "2 in",
  water: 90,
  air: 50,
  insulation: "13 mm",
  insulationConductivity: "0.036 W/(m·K)",
  flow: 40,
};
const BURIED = { size: "2 in", water: 80, air: 60, depth: "12 in", ground: "1 W/(m·K)" };

export const pipeHeatLoss = cellFunction({
  id: "PIPE.HEATLOSS",
  topic: "pipe",
  summary: "Heat that a PVC water pipe loses to air, wind or ground, bare or insulated.",
  keywords: ["pipe insulation", "buried pipe", "standing loss", "wind"],
  details: [
    "In air: still air (Churchill and Chu) and wind (Churchill and Bernstein) by fourth powers, radiation to surroundings at the air's temperature, wall of PVC and insulation; the film inside is neglected. Air at sea level.",
    "With a depth the pipe is buried: shape factor of one pipe alone, steady, the ground's surface at the temperature given for the air. Negative loss is a gain.",
    "Beside the duty this is small. Leaving water needs the flow.",
  ],
  args: { inputs: INPUTS },
  returns: listResult("heat lost", {
    loss: quantityResult("heat rate", "over the length"),
    surface: quantityResult("temperature", "surface, in air"),
    leavingWater: quantityResult("temperature", "water at the end"),
    filmCoefficient: quantityResult("film coefficient", "convection and radiation outside"),
  }),
  facts: { buried: "yes/no" },
  cautions: [{ rule: earlyGroundLoss, raisedBy: { inputs: BURIED } }],
  example: { inputs: STILL },
  checks: [
    {
      inputs: { inputs: { ...STILL, length: 1 } },
      expected: { loss: 10.57, surface: 58.5 },
      tolerance: "0.1 %",
      source: "pipeLossRows",
    },
    {
      inputs: { inputs: { ...BURIED, water: "80 °F", air: "60 °F", length: 1 }, units: "SI" },
      expected: { loss: 0.01803 },
      tolerance: "0.05 %",
      source: "pipeLossRows",
    },
  ],
  compute({ inputs }, { trace, step, recordFacts }) {
    const { size, schedule, length, water, air, depth, flow, insulation } = inputs;
    const outside = us("diameter", pvcPipe(size, schedule).outside);
    const D = outside + 2 * insulation;
    const layers = [
      { inside: boreOf(size, schedule, "average", trace), outside, conductivity: PVC_CONDUCTIVITY },
      { inside: outside, outside: D, conductivity: inputs.insulationConductivity },
    ];
    if (depth !== undefined && !(depth > D / 2))
      throw valueError("inputs: depth: must be more than half the pipe's diameter");
    recordFacts({ buried: depth !== undefined });
    const inAir = depth === undefined ? lostToAir(D, water, layers, inputs, trace) : undefined;
    const loss = inAir?.loss ?? lostToGround(D, water, air, layers, depth ?? 0, inputs.ground, trace);
    const W =
      flow === undefined ? 0 : flow * densityOfWater.code({ T: water }) * heatCapacityOfWater.code({ T: water });
    return {
      loss: loss * length,
      surface: inAir?.surface ?? NO_VALUE,
      leavingWater:
        flow === undefined || water === air
          ? NO_VALUE
          : step(coolingAlongPipe, { Ta: air, Ti: water, L: length, G: loss / (water - air), W }),
      filmCoefficient: inAir ? inAir.convection + inAir.radiation : NO_VALUE,
    };
  },
});
