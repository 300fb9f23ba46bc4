import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { TUBE_FORM, TUBE_SIZE } from "../args";
import { boreOfTube, usualForm } from "../tube";

export const lineBore = cellFunction({
  id: "LINE.BORE",
  topic: "line",
  summary: "Bore of refrigeration copper tube by its outside diameter.",
  keywords: ["inside diameter", "ACR tube", "temper"],
  details: [
    "Walls of ASTM B280. Annealed coils and drawn straight lengths differ up to 3/4 in; sizes not sold in coils count as straight. Thin-walled line sets exist too: measure the wall.",
  ],
  args: {
    size: TUBE_SIZE,
    form: TUBE_FORM.default({
      words: "coil, or straight where the size isn't coiled",
      from: ({ size }) => usualForm(size as string),
    }),
  },
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
    {
      inputs: { size: "3/4 in", form: "straight" },
      expected: 0.666,
      tolerance: 0.001,
      source: "astmB280",
      remark: "bore area 0.348 in²; a coil's is 0.363 in²",
    },
  ],
  compute: ({ size, form }, { trace }) => boreOfTube(size, trace, form),
});
