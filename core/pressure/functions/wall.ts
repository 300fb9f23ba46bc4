import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { STANDARD_PRESSURE } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { us } from "../../kernel/values/quantity";
import { METAL_TEMPERATURE, OUTSIDE_DIAMETER, PRESSURE_MATERIAL, TUBE_OPTIONS } from "../args";
import { brazingAnneals, stressFromMemory, tubeOnly } from "../cautions";
import { wallFor } from "../tube";

const type = { outsideDiameter: 0.625, pressure: 494, material: "copper", temperature: 100 } as const;

export const pressureWall = cellFunction({
  id: "PRESSURE.WALL",
  topic: "pressure",
  summary: "Least wall of a tube for a pressure.",
  keywords: ["wall thickness", "coil", "titanium", "hoop stress"],
  details: [
    "ASME B31 wall equation with y = 0.4; stresses and tempers as in PRESSURE.TUBE.",
    "The answer is the wall at its thinnest place: order more by the mill's tolerance, about a tenth. Sizes \"mill\" take the greatest diameter that the tube's standard lets pass.",
  ],
  args: {
    outsideDiameter: OUTSIDE_DIAMETER,
    pressure: quantity("pressure", "pressure that the tube must hold, gauge", {
      reading: true,
      above: 0,
      to: us("pressure", 5000),
      usual: [us("pressure", 100), us("pressure", 1000)],
    }),
    material: PRESSURE_MATERIAL,
    temperature: METAL_TEMPERATURE,
    ...TUBE_OPTIONS,
  },
  returns: quantityResult("diameter", "least wall, at its thinnest place"),
  cautions: [
    { rule: tubeOnly, raisedBy: type },
    { rule: brazingAnneals, raisedBy: { ...type, temper: "drawn" } },
    { rule: stressFromMemory, raisedBy: { ...type, material: "titanium grade 1" } },
  ],
  sources: ["acrPressureSheet"],
  checks: [
    {
      inputs: type,
      expected: 0.025,
      tolerance: 0.0001,
      source: { key: "pipingCode", where: "table 3c, type M 1/2 in" },
      remark: "494 psi printed for 0.028 in less its tolerance of 0.003",
    },
    {
      inputs: { outsideDiameter: 1.125, pressure: 420, material: "copper", temperature: 150 },
      expected: 0.045,
      tolerance: 0.0002,
      source: "acrPressureSheet",
      remark: "420 psi printed for 0.050 in less its tolerance of 0.005",
    },
  ],
  compute: ({ outsideDiameter, pressure, ...tube }, { trace }) =>
    wallFor(outsideDiameter, pressure - STANDARD_PRESSURE, tube, trace),
});
