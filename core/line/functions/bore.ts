import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { TUBE_SIZE } from "../args";
import { boreOfTube } from "../tube";

export const lineBore = cellFunction({
  id: "LINE.BORE",
  topic: "line",
  summary: "Bore of refrigeration copper tube by its outside diameter.",
  keywords: ["inside diameter", "ACR tube"],
  args: { size: TUBE_SIZE },
  returns: quantityResult("diameter", "bore"),
  cautions: [],
  checks: [
    {
      inputs: { size: "3/8 in" },
      expected: 0.311,
      tolerance: 0.001,
      source: "astmB280",
      remark: "bore area 0.0760 in²",
    },
    {
      inputs: { size: "7/8 in" },
      expected: 0.785,
      tolerance: 0.001,
      source: "astmB280",
      remark: "bore area 0.484 in²",
    },
  ],
  compute: ({ size }, { trace }) => boreOfTube(size, trace),
});
