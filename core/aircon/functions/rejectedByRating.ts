import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { COOLING, OUTDOOR_FAN, checkFan } from "../args";
import { missingFanPower, likelySeer } from "../cautions";
import { powerByRating, rejectedHeat } from "../../cycle/machine/equations";

export const airconRejectedByRating = cellFunction({
  id: "AIRCON.REJECTEDBYRATING",
  topic: "aircon",
  summary: "Heat rejected at the condenser, from net cooling and EER, EER2 or COP at the rating condition.",
  keywords: ["heat rejection", "EER", "EER2", "COP", "waste heat", "total heat of rejection"],
  details: [
    "US: EER or EER2 in BTU/(W·h). SI: COP in W/W. EER2 is the EER at a higher duct resistance, about 0.95 of it.",
    "A SEER is not an efficiency at one condition: it makes the heat rejected too low. The least SEER sold in the US is 13, the least SEER2 13.4; single-speed machines of SEER 13 have an EER of 11.2, two-stage ones of 16 to 21 an EER of 0.79 to 0.82 of it.",
  ],
  args: {
    cooling: COOLING,
    rating: quantity("cooling rating", "EER or EER2 (SI: COP) at the rating condition, not SEER", {
      above: us("cooling rating", 1),
      to: us("cooling rating", 40),
      usual: [us("cooling rating", 6), us("cooling rating", 20)],
    }),
    outdoorFan: OUTDOOR_FAN,
  },
  returns: quantityResult("heat rate", "heat rejected at the condenser"),
  cautions: [
    { rule: likelySeer, raisedBy: { cooling: 36000, rating: 13.4 } },
    { rule: missingFanPower, raisedBy: { cooling: 36000, rating: 12 } },
  ],
  checks: [
    {
      inputs: { cooling: 36000, rating: 12 },
      expected: 46239,
      tolerance: 5,
      source: "condenserSelection",
      remark: "3 kW",
    },
    {
      inputs: { cooling: 100_000, rating: 12 },
      expected: 128_430,
      tolerance: 50,
      source: "identity",
      remark: "heat rejection factor 1 + 3.412/12 = 1.2843",
    },
    {
      inputs: { cooling: 10, rating: 4, units: "SI" },
      expected: 12.5,
      tolerance: 1e-9,
      source: "identity",
      remark: "1 + 1/COP",
    },
  ],
  compute({ cooling, rating, outdoorFan }, { step, system }) {
    const power = step(powerByRating, { Q: cooling, rating });
    checkFan(outdoorFan, power, "the power by the rating", system);
    return step(rejectedHeat, { Q: cooling, P: power, Pf: outdoorFan });
  },
});
