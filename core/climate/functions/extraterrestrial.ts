import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { extraterrestrialOfDay } from "../../air/extraterrestrial";
import { LATITUDE } from "../args";
import { aboveTheAir } from "../cautions";

export const climateExtraterrestrial = cellFunction({
  id: "CLIMATE.EXTRATERRESTRIAL",
  topic: "climate",
  summary: "Sun on a level surface above the air in a day: the upper bound of any reading.",
  keywords: ["solar", "radiation", "clearness", "top of atmosphere", "H0", "irradiation", "declination"],
  details: [
    "Spencer's series for distance and declination, 1,361 W/m² at the mean distance, integrated from sunrise to sunset; 0 in the polar night. Within 0.001 MJ/m² of the same equations integrated numerically.",
    "Textbook values with 1,367 W/m² and the short declination formula lie 0.4 % higher over the year, and up to 5 % off in single months at 48° north, 20 % at 65°.",
  ],
  args: {
    latitude: LATITUDE,
    day: quantity("count", "day of the year, 1 to 365, no leap day", { from: 1, to: 365, whole: true }),
  },
  returns: quantityResult("daily sun", "sun of the day on a level surface"),
  cautions: [{ rule: aboveTheAir, raisedBy: { latitude: 40, day: 172 } }],
  checks: [
    {
      inputs: { latitude: -20, day: 246, units: "SI" },
      expected: 8.944,
      tolerance: "2 %",
      source: "fao56",
      remark: "32.2 MJ/m²; that series takes 1,367 W/m²",
    },
    {
      inputs: { latitude: 43, day: 105, units: "SI" },
      expected: 9.389,
      tolerance: "2 %",
      source: "duffieBeckman2013",
      remark: "example 1.10.1, 33.8 MJ/m², from memory",
    },
    { inputs: { latitude: -70, day: 172, units: "SI" }, expected: 0, tolerance: 1e-9, source: "identity" },
  ],
  compute({ latitude, day }, { trace }) {
    return extraterrestrialOfDay(latitude, day, trace);
  },
});
