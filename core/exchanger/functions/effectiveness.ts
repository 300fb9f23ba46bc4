import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { ARRANGEMENT, CAPACITY_RATIO } from "../args";
import { MOST_UNITS, effectivenessOf } from "../effectiveness/effectiveness";
import { ARRANGEMENT_REMARKS } from "../remarks";

export const exchangerEffectiveness = cellFunction({
  id: "EXCHANGER.EFFECTIVENESS",
  topic: "exchanger",
  summary: "Effectiveness of an exchanger by its number of transfer units.",
  keywords: ["epsilon NTU", "efficiency of an exchanger", "transfer units"],
  details: ARRANGEMENT_REMARKS,
  args: {
    ntu: quantity("number", "number of transfer units, UA over the smaller capacity rate", {
      from: 0,
      to: MOST_UNITS,
      usual: [0, 10],
    }),
    capacityRatio: CAPACITY_RATIO,
    arrangement: ARRANGEMENT,
  },
  returns: quantityResult("fraction", "effectiveness: heat over the most that could pass"),
  memoised: true,
  sources: ["bergman2011", "mason1955"],
  cautions: [],
  checks: [
    {
      inputs: { ntu: 2, capacityRatio: 1 },
      expected: 2 / 3,
      tolerance: 1e-9,
      source: "bergman2011",
      remark: "NTU/(1 + NTU)",
    },
    { inputs: { ntu: 0.5, capacityRatio: 0 }, expected: 0.393469340287, tolerance: 1e-9, source: "exchangerRows" },
    {
      inputs: { ntu: 2, capacityRatio: 0.5, arrangement: "crossflow unmixed" },
      expected: 0.732409252482,
      tolerance: 1e-9,
      source: "exchangerRows",
    },
    {
      inputs: { ntu: 2, capacityRatio: 0.5, arrangement: "crossflow mixed hot" },
      expected: 0.717546436149,
      tolerance: 1e-9,
      source: "exchangerRows",
    },
    {
      inputs: { ntu: 2, capacityRatio: 0.5, arrangement: "crossflow mixed cold" },
      expected: 0.70201271528,
      tolerance: 1e-9,
      source: "exchangerRows",
    },
    {
      inputs: { ntu: 1, capacityRatio: 1, arrangement: "shell and tube" },
      expected: 0.462670994062,
      tolerance: 1e-9,
      source: "exchangerRows",
    },
  ],
  compute: ({ ntu, capacityRatio, arrangement }, { trace }) => effectivenessOf(arrangement, ntu, capacityRatio, trace),
});
