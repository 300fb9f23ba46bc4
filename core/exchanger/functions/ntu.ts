import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { ARRANGEMENT, CAPACITY_RATIO } from "../args";
import { unitsOf } from "../effectiveness/effectiveness";
import { ARRANGEMENT_REMARKS } from "../remarks";

export const exchangerNtu = cellFunction({
  id: "EXCHANGER.NTU",
  topic: "exchanger",
  summary: "Number of transfer units for an effectiveness.",
  keywords: ["epsilon NTU", "transfer units", "UA over capacity rate"],
  details: [...ARRANGEMENT_REMARKS, "An effectiveness that the arrangement can't reach is refused with its limit."],
  args: {
    effectiveness: quantity("fraction", "effectiveness: heat over the most possible", { from: 0, below: 1 }),
    capacityRatio: CAPACITY_RATIO,
    arrangement: ARRANGEMENT,
  },
  returns: quantityResult("number", "number of transfer units"),
  memoised: true,
  sources: ["bergman2011", "mason1955"],
  cautions: [],
  checks: [
    { inputs: { effectiveness: 2 / 3, capacityRatio: 1 }, expected: 2, tolerance: 1e-9, source: "bergman2011" },
    {
      inputs: { effectiveness: 0.732409252482, capacityRatio: 0.5, arrangement: "crossflow unmixed" },
      expected: 2,
      tolerance: 1e-9,
      source: "exchangerRows",
    },
    {
      inputs: { effectiveness: 0.462670994062, capacityRatio: 1, arrangement: "shell and tube" },
      expected: 1,
      tolerance: 1e-9,
      source: "exchangerRows",
    },
    {
      inputs: { effectiveness: 0.6, capacityRatio: 1, arrangement: "shell and tube" },
      expected: "#N/A",
      source: "bergman2011",
      remark: "the limit is 0.5858",
    },
  ],
  compute: ({ effectiveness, capacityRatio, arrangement }, { trace }) =>
    unitsOf(arrangement, effectiveness, capacityRatio, trace),
});
