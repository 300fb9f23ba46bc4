import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { ARRANGEMENT, CAPACITY_RATIO } from "../args";
import { MOST_UNITS, effectivenessOf } from "../effectiveness/effectiveness";
import { ARRANGEMENT_REMARKS } from "../remarks";

export const effectiveness = cellFunction({
  id: "EXCHANGER.EFFECTIVENESS",
  topic: "exchanger",
  summary: "Effectiveness of an exchanger by its number of transfer units.",
  finds: ["epsilon NTU", "efficiency of an exchanger", "transfer units"],
  remarks: ARRANGEMENT_REMARKS,
  args: {
    ntu: quantity("number", "number of transfer units, UA over the smaller capacity rate", {
      from: 0,
      to: MOST_UNITS,
      usual: [0, 10],
    }),
    capacityRatio: CAPACITY_RATIO,
    arrangement: ARRANGEMENT,
  },
  gives: of("fraction", "effectiveness: heat over the most that could pass"),
  heavy: true,
  sources: ["bergman2011", "mason1955"],
  cautions: [],
  checks: [
    { at: { ntu: 2, capacityRatio: 1 }, gives: 2 / 3, within: 1e-9, from: "bergman2011", remark: "NTU/(1 + NTU)" },
    { at: { ntu: 0.5, capacityRatio: 0 }, gives: 0.393469340287, within: 1e-9, from: "exchangerRows" },
    {
      at: { ntu: 2, capacityRatio: 0.5, arrangement: "crossflow unmixed" },
      gives: 0.732409252482,
      within: 1e-9,
      from: "exchangerRows",
    },
    {
      at: { ntu: 2, capacityRatio: 0.5, arrangement: "crossflow mixed hot" },
      gives: 0.717546436149,
      within: 1e-9,
      from: "exchangerRows",
    },
    {
      at: { ntu: 2, capacityRatio: 0.5, arrangement: "crossflow mixed cold" },
      gives: 0.70201271528,
      within: 1e-9,
      from: "exchangerRows",
    },
    {
      at: { ntu: 1, capacityRatio: 1, arrangement: "shell and tube" },
      gives: 0.462670994062,
      within: 1e-9,
      from: "exchangerRows",
    },
  ],
  work: ({ ntu, capacityRatio, arrangement }, { trace }) => effectivenessOf(arrangement, ntu, capacityRatio, trace),
});
