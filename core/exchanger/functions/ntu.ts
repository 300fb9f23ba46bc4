import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { ARRANGEMENT, CAPACITY_RATIO } from "../args";
import { unitsOf } from "../effectiveness/effectiveness";
import { ARRANGEMENT_REMARKS } from "../remarks";

export const ntu = cellFunction({
  id: "EXCHANGER.NTU",
  topic: "exchanger",
  summary: "Number of transfer units that an effectiveness asks for.",
  finds: ["epsilon NTU", "transfer units", "UA over capacity rate"],
  remarks: [...ARRANGEMENT_REMARKS, "An effectiveness that the arrangement never reaches is refused with its limit."],
  args: {
    effectiveness: quantity("fraction", "effectiveness: heat over the most that could pass", { from: 0, below: 1 }),
    capacityRatio: CAPACITY_RATIO,
    arrangement: ARRANGEMENT,
  },
  gives: of("number", "number of transfer units"),
  heavy: true,
  sources: ["bergman2011", "mason1955"],
  cautions: [],
  checks: [
    { at: { effectiveness: 2 / 3, capacityRatio: 1 }, gives: 2, within: 1e-9, from: "bergman2011" },
    {
      at: { effectiveness: 0.732409252482, capacityRatio: 0.5, arrangement: "crossflow unmixed" },
      gives: 2,
      within: 1e-9,
      from: "exchangerRows",
    },
    {
      at: { effectiveness: 0.462670994062, capacityRatio: 1, arrangement: "shell and tube" },
      gives: 1,
      within: 1e-9,
      from: "exchangerRows",
    },
    {
      at: { effectiveness: 0.6, capacityRatio: 1, arrangement: "shell and tube" },
      gives: "#N/A",
      from: "bergman2011",
      remark: "the limit is 0.5858",
    },
  ],
  work: ({ effectiveness, capacityRatio, arrangement }, { trace }) =>
    unitsOf(arrangement, effectiveness, capacityRatio, trace),
});
