import { cellFunction } from "../../kernel/define/cellFunction";
import { table, word } from "../../kernel/define/result";
import { REFRIGERANTS } from "../refrigerant";

export const list = cellFunction({
  id: "REFRIG.LIST",
  topic: "refrigerant",
  summary: "The refrigerants known here, for validation lists.",
  finds: ["names", "which refrigerants"],
  args: {},
  gives: table("names", { refrigerant: word("designation") }),
  cautions: [],
  checks: [{ at: {}, gives: { row: "R-410A", column: "refrigerant", is: "R-410A" }, from: "ashrae34" }],
  work(_args, { trace }) {
    trace.remark("Designations of ASHRAE Standard 34.");
    return REFRIGERANTS.map((refrigerant) => ({ refrigerant }));
  },
});
