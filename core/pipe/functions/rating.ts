import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { NOMINAL_SIZE, SCHEDULE } from "../args";
import { hotPlastic, plasticTest } from "../cautions";
import { deratedPressure } from "../equations";
import { deratingAt, ratingAt73 } from "../plastic/plastic";

export const pipeRating = cellFunction({
  id: "PIPE.RATING",
  topic: "pipe",
  summary: "Pressure rating of PVC pipe at a water temperature.",
  keywords: ["derating", "pressure class", "burst"],
  details: [
    "Plain ends. Threading halves the rating; never thread Schedule 40; no threaded joints above 110 °F. Above 140 °F PVC is not rated.",
  ],
  args: { size: NOMINAL_SIZE, water: WATER_TEMPERATURE, schedule: SCHEDULE },
  returns: quantityResult("pressure drop", "pressure rating (gauge)"),
  cautions: [
    { rule: hotPlastic, raisedBy: { size: "2 in", water: 115 } },
    { rule: plasticTest, raisedBy: { size: "2 in", water: 80 } },
  ],
  checks: [
    { inputs: { size: "2 in", water: 73 }, expected: 280, tolerance: 5, source: "astmD1785" },
    { inputs: { size: "1 in", water: 100 }, expected: 279, tolerance: 0.1, source: "plasticsManual" },
    { inputs: { size: "2 in", water: 80 }, expected: 246.4, tolerance: 1.7, source: "machinerysHandbook" },
    { inputs: { size: "2 in", water: 141 }, expected: "#N/A", source: "machinerysHandbook" },
  ],
  compute({ size, water, schedule }, { trace, step }) {
    const s = deratingAt(water, trace);
    return step(deratedPressure, { p73: ratingAt73(size, schedule, trace), s });
  },
});
