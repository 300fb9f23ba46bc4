import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { quantityResult } from "../../kernel/define/result";
import { NOMINAL_SIZE, SCHEDULE } from "../args";
import { hotPlastic } from "../cautions";
import { supportSpacing } from "../plastic/plastic";

export const pipeSupport = cellFunction({
  id: "PIPE.SUPPORT",
  topic: "pipe",
  summary: "Distance between hangers of PVC pipe filled with water.",
  keywords: ["hanger spacing", "supports"],
  details: ["Codes may require less: 3 ft up to 1 in, 4 ft above. Support heavy valves separately."],
  args: { size: NOMINAL_SIZE, water: WATER_TEMPERATURE, schedule: SCHEDULE },
  returns: quantityResult("length", "hanger spacing"),
  cautions: [{ rule: hotPlastic, raisedBy: { size: "2 in", water: 115 } }],
  checks: [
    { inputs: { size: "2 in", water: 60 }, expected: 6, tolerance: 0.01, source: "hangerTable" },
    { inputs: { size: "2 in", water: 100 }, expected: 5, tolerance: 0.01, source: "hangerTable" },
    { inputs: { size: "2 in", water: 140 }, expected: 3, tolerance: 0.01, source: "hangerTable" },
    { inputs: { size: "2 in", water: 100, schedule: "80" }, expected: 6, tolerance: 0.01, source: "hangerTable" },
  ],
  compute: ({ size, water, schedule }, { trace }) => supportSpacing(size, schedule, water, trace),
});
