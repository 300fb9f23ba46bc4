import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { of } from "../../kernel/define/result";
import { NOMINAL_SIZE, SCHEDULE } from "../args";
import { hotPlastic } from "../cautions";
import { supportSpacing } from "../plastic/plastic";

export const support = cellFunction({
  id: "PIPE.SUPPORT",
  topic: "pipe",
  summary: "Distance between hangers of PVC pipe filled with water.",
  finds: ["hanger spacing", "supports"],
  remarks: ["Codes may ask closer: 3 ft up to 1 in, 4 ft above. Heavy valves get supports of their own."],
  args: { size: NOMINAL_SIZE, water: WATER_TEMPERATURE, schedule: SCHEDULE },
  gives: of("length", "hanger spacing"),
  cautions: [{ rule: hotPlastic, fires: { size: "2 in", water: 115 } }],
  checks: [
    { at: { size: "2 in", water: 60 }, gives: 6, within: 0.01, from: "hangerTable" },
    { at: { size: "2 in", water: 100 }, gives: 5, within: 0.01, from: "hangerTable" },
    { at: { size: "2 in", water: 140 }, gives: 3, within: 0.01, from: "hangerTable" },
    { at: { size: "2 in", water: 100, schedule: "80" }, gives: 6, within: 0.01, from: "hangerTable" },
  ],
  work: ({ size, water, schedule }, { trace }) => supportSpacing(size, schedule, water, trace),
});
