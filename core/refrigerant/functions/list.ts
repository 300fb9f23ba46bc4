import { cellFunction } from "../../kernel/define/cellFunction";
import { tableResult, wordResult } from "../../kernel/define/result";
import { REFRIGERANTS } from "../refrigerant";

export const refrigList = cellFunction({
  id: "REFRIG.LIST",
  topic: "refrigerant",
  summary: "Names of the refrigerants available, for validation lists.",
  keywords: ["names", "which refrigerants"],
  args: {},
  returns: tableResult("names", { refrigerant: wordResult("designation") }),
  cautions: [],
  checks: [{ inputs: {}, expected: { row: "R-410A", column: "refrigerant", value: "R-410A" }, source: "ashrae34" }],
  compute(_args, { trace }) {
    trace.remark("Designations of ASHRAE Standard 34.");
    return REFRIGERANTS.map((refrigerant) => ({ refrigerant }));
  },
});
