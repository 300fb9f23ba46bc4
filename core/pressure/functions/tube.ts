import { cellFunction } from "../../kernel/define/cellFunction";
import { STANDARD_PRESSURE } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { METAL_TEMPERATURE, OUTSIDE_DIAMETER, PRESSURE_MATERIAL, TUBE_OPTIONS, TUBE_WALL } from "../args";
import { brazingAnneals, stressFromMemory, tubeOnly } from "../cautions";
import { ratedPressure } from "../tube";

const acr = (outsideDiameter: string, wall: number) =>
  ({ outsideDiameter, wall, material: "copper", temperature: 150 }) as const;
const titanium = { outsideDiameter: 0.625, wall: 0.028, material: "titanium grade 2", temperature: 100 } as const;

export const pressureTube = cellFunction({
  id: "PRESSURE.TUBE",
  topic: "pressure",
  summary: "Pressure that a tube of copper, titanium or cupronickel is rated for.",
  keywords: ["working pressure", "burst", "ACR tube", "hoop stress", "coil"],
  details: [
    "ASME B31 wall equation with y = 0.4. Stress of copper from 100 to 400 °F by temper; brazed tube is annealed. Titanium to 200 °F and cupronickel to 100 °F are estimates from memory.",
    'Sizes "mill" take the least wall and the greatest diameter that the tube\'s standard lets pass; "as given" takes yours: measured, or nominal, which reads about a tenth too high.',
    "Burst is several times the rating; it is no limit to work to.",
  ],
  args: {
    outsideDiameter: OUTSIDE_DIAMETER,
    wall: TUBE_WALL,
    material: PRESSURE_MATERIAL,
    temperature: METAL_TEMPERATURE,
    ...TUBE_OPTIONS,
  },
  returns: quantityResult("pressure", "rated pressure, gauge", { reading: true }),
  cautions: [
    { rule: tubeOnly, raisedBy: acr("7/8 in", 0.045) },
    { rule: brazingAnneals, raisedBy: { ...acr("7/8 in", 0.045), temper: "drawn" } },
    { rule: stressFromMemory, raisedBy: titanium },
  ],
  sources: ["acrPressureSheet"],
  checks: [
    ...(
      [
        ["1/4 in", 0.03, 1195],
        ["1/2 in", 0.032, 618],
        ["7/8 in", 0.045, 495],
        ["1-1/8 in", 0.05, 420],
        ["1-5/8 in", 0.06, 347],
      ] as const
    ).map(([size, wall, expected]) => ({
      inputs: acr(size, wall),
      expected,
      tolerance: 1,
      source: "acrPressureSheet" as const,
    })),
    {
      inputs: { ...acr("5/8 in", 0.028), temperature: 100 },
      expected: 494,
      tolerance: 1,
      source: { key: "pipingCode", where: "table 3c, type M 1/2 in" },
    },
    {
      inputs: { ...acr("5/8 in", 0.028), temperature: 400 },
      expected: 247,
      tolerance: 1,
      source: { key: "pipingCode", where: "table 3c, type M 1/2 in" },
    },
    {
      inputs: { ...acr("5/8 in", 0.028), temperature: 100, temper: "drawn" },
      expected: 850,
      tolerance: 3,
      source: { key: "pipingCode", where: "table 3c, type M 1/2 in" },
    },
  ],
  compute: ({ outsideDiameter, wall, ...tube }, { trace }) =>
    STANDARD_PRESSURE + ratedPressure(outsideDiameter, wall, tube, trace),
});
