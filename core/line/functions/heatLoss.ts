import { block, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE } from "../../kernel/define/glossary";
import { listResult, quantityResult } from "../../kernel/define/result";
import { us } from "../../kernel/values/quantity";
import { EXPOSURE, FOAM, INSULATION } from "../../pipe/heat/args";
import { hotLine } from "../../pipe/heat/cautions";
import { lostToAir } from "../../pipe/heat/pipeHeat";

const INPUTS = block(
  {
    outsideDiameter: quantity("diameter", "outside diameter of the tube", { above: 0, to: 0.2 }),
    length: quantity("length", "length of the line", { above: 0 }).default(us("length", 25)),
    gas: quantity("temperature", "temperature of the gas", { from: us("temperature", 0), to: us("temperature", 300) }),
    air: AIR_TEMPERATURE,
    ...EXPOSURE,
    insulation: INSULATION,
    insulationConductivity: FOAM,
    emissivity: quantity("fraction", "emissivity: dull copper 0.6, bright 0.05, a jacket 0.9", {
      above: 0,
      to: 1,
    }).default({
      words: "0.6 bare, 0.9 insulated",
      from: ({ insulation }) => (insulation === 0 ? 0.6 : 0.9),
    }),
  },
  "input block: diameter, length, temperatures, wind, insulation",
);

const BARE = { outsideDiameter: 0.875, gas: 180, air: 75, wind: 5, length: 1 };

export const lineHeatLoss = cellFunction({
  id: "LINE.HEATLOSS",
  topic: "line",
  summary: "Heat that a hot-gas line loses to air and wind, bare or insulated, and its surface temperature.",
  keywords: ["discharge line", "insulation", "burn", "copper tube"],
  details: [
    "Film inside and the copper are neglected: a bare line is as warm as its gas. Films outside as in PIPE.HEATLOSS; the gas is taken at one temperature over the length.",
    "Printed tables for bare copper are contested: 5 % over this at a difference of 100 °F, 45 % over it at 40 °F.",
  ],
  args: { inputs: INPUTS },
  returns: listResult("heat lost", {
    loss: quantityResult("heat rate", "over the length"),
    surface: quantityResult("temperature", "surface"),
    filmCoefficient: quantityResult("film coefficient", "convection and radiation outside"),
  }),
  cautions: [{ rule: hotLine, raisedBy: { inputs: BARE } }],
  checks: [
    { inputs: { inputs: BARE }, expected: { loss: 163.85, surface: 180 }, tolerance: "0.01 %", source: "pipeLossRows" },
  ],
  compute({ inputs }, { trace }) {
    const { outsideDiameter: Do, insulation, length, gas } = inputs;
    const D = Do + 2 * insulation;
    const layer = { inside: Do, outside: D, conductivity: inputs.insulationConductivity };
    const found = lostToAir(D, gas, [layer], inputs, trace);
    return {
      loss: found.loss * length,
      surface: found.surface,
      filmCoefficient: found.convection + found.radiation,
    };
  },
});
