import { cellFunction } from "../../kernel/cellFunction";
import { of } from "../../kernel/result";
import { POOL_LENGTH, POOL_WIDTH, SHAPE } from "../args";
import { areaOfShape } from "../size";

export const area = cellFunction({
  id: "POOL.AREA",
  topic: "pool",
  summary: "Area of a pool's water surface by its outline.",
  finds: ["surface", "square feet"],
  remarks: ['A kidney takes both its widths, as "12; 16 ft". An oval is reckoned as an ellipse.'],
  args: { shape: SHAPE, length: POOL_LENGTH, width: POOL_WIDTH },
  gives: of("area", "water surface"),
  cautions: [],
  checks: [
    { at: { shape: "rectangle", length: 40, width: "20 ft" }, gives: 800, within: 1e-6, from: "identity" },
    { at: { shape: "kidney", length: 30, width: "12; 16 ft" }, gives: 378, within: 1e-6, from: "poolTextbook" },
    { at: { shape: "oval", length: 10, width: 6, units: "SI" }, gives: 47.1239, within: 1e-4, from: "identity" },
    { at: { shape: "round", length: 20, width: 18 }, gives: "#VALUE!", from: "identity" },
  ],
  work: ({ shape, length, width }, { trace }) => areaOfShape(shape, length, width, trace),
});
