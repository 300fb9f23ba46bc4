import { cellFunction } from "../../kernel/cellFunction";
import { of } from "../../kernel/result";
import { TUBE_FORM, TUBE_SIZE } from "../args";
import { boreOfTube, usualForm } from "../models/tube";

export const bore = cellFunction({
  id: "LINE.BORE",
  topic: "line",
  summary: "Bore of refrigeration copper tube by its outside diameter.",
  finds: ["inside diameter", "ACR tube", "temper"],
  remarks: [
    "Walls of ASTM B280. Annealed coils and drawn straight lengths differ up to 3/4 in; sizes that aren't coiled are taken as straight. Thin-walled line sets are sold too: measure the wall.",
  ],
  args: {
    size: TUBE_SIZE,
    form: TUBE_FORM.otherwise({
      says: "coil, or straight where the size isn't coiled",
      from: ({ size }) => usualForm(size as string),
    }),
  },
  gives: of("diameter", "bore"),
  cautions: [],
  checks: [
    { at: { size: "3/8 in" }, gives: 0.311, within: 0.001, from: "astmB280", remark: "bore area 0.0760 in²" },
    { at: { size: "7/8 in" }, gives: 0.785, within: 0.001, from: "astmB280", remark: "bore area 0.484 in²" },
    {
      at: { size: "3/4 in", form: "straight" },
      gives: 0.666,
      within: 0.001,
      from: "astmB280",
      remark: "bore area 0.348 in²; a coil's is 0.363 in²",
    },
  ],
  work: ({ size, form }, { trace }) => boreOfTube(size, trace, form),
});
