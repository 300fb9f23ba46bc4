import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { certifiedWork } from "../../refrigerant/cautions";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { trappedBursts } from "../cautions";
import {
  bothBranches,
  orderOfTests,
  testBelowDesign,
  unratedParts,
  waterSideRelief,
  weakestPart,
} from "../table/cautions";
import { PRESSURE_INPUTS } from "../table/inputs";
import { solvePressures } from "../table/table";

const fernhill = {
  refrigerant: "R-410A",
  nameplateHigh: 500,
  nameplateLow: 250,
  summerDryBulb: 101,
  leavingWater: 95,
  gasLineSize: "7/8 in",
  liquidLineSize: "1/2 in",
  coilMaterial: "titanium grade 2",
  coilDiameter: 0.625,
  coilWall: 0.035,
  coilTemperature: 200,
  coilJoint: 0.85,
  divertingValve: 650,
  checkValve: 650,
  waterShell: 50,
  pumpDeadHead: 80,
} as const;

export const pressureTable = cellFunction({
  id: "PRESSURE.TABLE",
  topic: "pressure",
  summary: "Every part of the changed circuit: rating, design, test and cut-out pressure, margin.",
  keywords: ["nitrogen test", "leak test", "strength test", "cut-out", "pool coil", "weakest part", "nameplate"],
  details: [
    "Nameplate first. The machine's own sides are held against the rule of PRESSURE.DESIGN, every other part against the greater of that and the nameplate of its side, which the machine may reach.",
    "Test: the least rating of all connected parts, which is often the nameplate's low side; with the high side shut off by service valves that of each side. Strength test: 1.1 × design with gas, of an added part alone, before it is joined.",
    "Cut-out: at most the least rating of the high side, and 90 % of a relief setting (common practice). Lines are annealed copper at their temperature; titanium and cupronickel without a stamped pressure are estimates.",
    "Pressures in the block are gauge readings at sea level. Steps, ports and valve positions are in the cautions.",
  ],
  args: { inputs: PRESSURE_INPUTS },
  returns: tableResult("pressures of the changed circuit", {
    part: wordResult("part"),
    rating: quantityResult("pressure", "what the part is good for, gauge"),
    design: quantityResult("pressure", "least design pressure, gauge"),
    test: quantityResult("pressure", "most for the leak test with all connected, gauge"),
    cutOut: quantityResult("pressure", "most for the high pressure cut-out, gauge"),
    margin: quantityResult("pressure drop", "rating less design"),
    strengthTest: quantityResult("pressure", "strength test of the part alone, gauge"),
    note: wordResult("where the rating is from"),
  }),
  facts: {
    weakestPart: "word",
    weakestMargin: "pressure drop",
    unratedParts: "word",
    highTest: "pressure",
    highDesign: "pressure",
  },
  memoised: true,
  cautions: [
    { rule: trappedBursts, raisedBy: { inputs: fernhill } },
    { rule: orderOfTests, raisedBy: { inputs: fernhill } },
    { rule: bothBranches, raisedBy: { inputs: fernhill } },
    { rule: weakestPart, raisedBy: { inputs: { ...fernhill, gasLineSize: "1-5/8 in" } } },
    { rule: testBelowDesign, raisedBy: { inputs: fernhill } },
    { rule: unratedParts, raisedBy: { inputs: fernhill } },
    { rule: waterSideRelief, raisedBy: { inputs: fernhill } },
    { rule: certifiedWork, raisedBy: { inputs: fernhill } },
  ],
  sources: ["exoticStress", "acrPressureSheet", ...EQUATION_SOURCES],
  checks: [
    {
      inputs: { inputs: { ...fernhill, gasLineTemperature: 150, liquidLineTemperature: 150 } },
      expected: { row: "added gas line", column: "rating", value: 495 },
      tolerance: 1,
      source: "acrPressureSheet",
    },
    {
      inputs: { inputs: { ...fernhill, liquidLineTemperature: 150 } },
      expected: { row: "added liquid line", column: "rating", value: 618 },
      tolerance: 1,
      source: "acrPressureSheet",
    },
    {
      inputs: { inputs: fernhill },
      expected: { row: "nameplate high side", column: "design", value: 484 },
      tolerance: 0.6,
      source: "coolprop8",
      remark: "bubble pressure at 131 °F: 30 °F over the dry bulb",
    },
  ],
  compute({ inputs }, { trace, recordFacts }) {
    const { rows, facts } = solvePressures(inputs, trace);
    recordFacts(facts);
    return rows;
  },
});
