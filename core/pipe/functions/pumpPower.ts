import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { densityOfWater } from "../../water/equations";
import { pumpPowerEquation as equationOfPower } from "../equations";

/** Temperature for the density, 60 °F: within 0.5 % for any pool. */
const WATER = us("temperature", 60);

export const pipePumpPower = cellFunction({
  id: "PIPE.PUMPPOWER",
  topic: "pipe",
  summary: "Power that a pump needs for a flow and a head.",
  keywords: ["horsepower", "pump energy", "wire to water"],
  details: [
    "A head given in psi or kPa counts as a column of water at 60 °F (62.37 lb/ft³): 1 psi is 2.309 ft.",
    "With the pump's efficiency alone the answer is shaft power; with wire-to-water efficiency it is electrical power. 1 hp = 0.7457 kW.",
  ],
  args: {
    flow: WATER_FLOW,
    head: quantity("head", "total head of the pump", { from: 0, usual: [us("head", 3), us("head", 150)] }),
    efficiency: quantity("fraction", "efficiency: pump alone, or wire to water", {
      above: 0,
      to: 1,
      usual: [0.2, 0.85],
    }),
  },
  returns: quantityResult("electric power", "power"),
  cautions: [],
  checks: [
    {
      inputs: { flow: 50, head: 50, efficiency: 0.6 },
      expected: 0.785,
      tolerance: 0.004,
      source: "hydraulicsTexts",
      remark: "50 × 50/(3,960 × 0.6) = 1.052 hp",
    },
  ],
  compute: ({ flow, head, efficiency }, { step }) =>
    step(equationOfPower, { rho: step(densityOfWater, { T: WATER }), Q: flow, H: head, e: efficiency }),
});
