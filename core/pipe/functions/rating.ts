import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { of } from "../../kernel/define/result";
import { NOMINAL_SIZE, SCHEDULE } from "../args";
import { hotPlastic, plasticTest } from "../cautions";
import { deratedPressure } from "../equations";
import { deratingAt, ratingAt73 } from "../plastic/plastic";

export const rating = cellFunction({
  id: "PIPE.RATING",
  topic: "pipe",
  summary: "Pressure rating of PVC pipe at a water temperature.",
  finds: ["derating", "pressure class", "burst"],
  remarks: [
    "Plain ends. Threading halves the rating; never thread Schedule 40; no threaded joints above 110 °F. Above 140 °F PVC is not rated.",
  ],
  args: { size: NOMINAL_SIZE, water: WATER_TEMPERATURE, schedule: SCHEDULE },
  gives: of("pressure drop", "pressure rating (gauge)"),
  cautions: [
    { rule: hotPlastic, fires: { size: "2 in", water: 115 } },
    { rule: plasticTest, fires: { size: "2 in", water: 80 } },
  ],
  checks: [
    { at: { size: "2 in", water: 73 }, gives: 280, within: 5, from: "astmD1785" },
    { at: { size: "1 in", water: 100 }, gives: 279, within: 0.1, from: "plasticsManual" },
    { at: { size: "2 in", water: 80 }, gives: 246.4, within: 1.7, from: "machinerysHandbook" },
    { at: { size: "2 in", water: 141 }, gives: "#N/A", from: "machinerysHandbook" },
  ],
  work({ size, water, schedule }, { trace, step }) {
    const s = deratingAt(water, trace);
    return step(deratedPressure, { p73: ratingAt73(size, schedule, trace), s });
  },
});
