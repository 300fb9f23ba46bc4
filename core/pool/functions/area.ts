import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { POOL_LENGTH, POOL_WIDTH, SHAPE } from "../args";
import { areaOfShape } from "../size";

export const poolArea = cellFunction({
  id: "POOL.AREA",
  topic: "pool",
  summary: "Area of a pool's water surface by its outline.",
  keywords: ["surface", "square feet"],
  details: ['A kidney takes both its widths, as "12; 16 ft". An oval is reckoned as an ellipse.'],
  args: { shape: SHAPE, length: POOL_LENGTH, width: POOL_WIDTH },
  returns: quantityResult("area", "water surface"),
  cautions: [],
  checks: [
    { inputs: { shape: "rectangle", length: 40, width: "20 ft" }, expected: 800, tolerance: 1e-6, source: "identity" },
    {
      inputs: { shape: "kidney", length: 30, width: "12; 16 ft" },
      expected: 378,
      tolerance: 1e-6,
      source: "poolTextbook",
    },
    {
      inputs: { shape: "oval", length: 10, width: 6, units: "SI" },
      expected: 47.1239,
      tolerance: 1e-4,
      source: "identity",
    },
    { inputs: { shape: "round", length: 20, width: 18 }, expected: "#VALUE!", source: "identity" },
  ],
  compute: ({ shape, length, width }, { trace }) => areaOfShape(shape, length, width, trace),
});
