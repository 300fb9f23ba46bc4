import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { TUBE_SIZE } from "../args";
import { boreOfTube } from "../tube";

export const bore = cellFunction({
  id: "LINE.BORE",
  topic: "line",
  summary: "Bore of refrigeration copper tube by its outside diameter.",
  finds: ["inside diameter", "ACR tube"],
  args: { size: TUBE_SIZE },
  gives: of("diameter", "bore"),
  cautions: [],
  checks: [
    { at: { size: "3/8 in" }, gives: 0.311, within: 0.001, from: "astmB280", remark: "bore area 0.0760 in²" },
    { at: { size: "7/8 in" }, gives: 0.785, within: 0.001, from: "astmB280", remark: "bore area 0.484 in²" },
  ],
  work: ({ size }, { trace }) => boreOfTube(size, trace),
});
