import { quantity } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { us } from "../../kernel/quantity";
import { of } from "../../kernel/result";
import { COOLING, OUTDOOR_FAN, checkFan } from "../args";
import { fanNotGiven, mayBeSeer } from "../cautions";
import { powerByRating, rejectedHeat } from "../equations";

export const rejectedByRating = cellFunction({
  id: "AIRCON.REJECTEDBYRATING",
  topic: "aircon",
  summary: "Heat that reaches the condenser, from net cooling and EER, EER2 or COP at the rating condition.",
  finds: ["heat rejection", "EER", "EER2", "COP", "waste heat", "total heat of rejection"],
  remarks: [
    "US: EER or EER2 in BTU/(W·h). SI: COP in W/W. EER2 is the EER at a higher duct resistance, about 0.95 of it.",
    "A SEER is not an efficiency at one condition: with it the heat rejected comes out too low. The least SEER sold in the US is 13, the least SEER2 13.4; single-speed machines of SEER 13 have an EER of 11.2, two-stage ones of 16 to 21 an EER of 0.79 to 0.82 of it.",
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
  gives: of("heat rate", "heat rejected at the condenser"),
  cautions: [
    { rule: mayBeSeer, fires: { cooling: 36000, rating: 13.4 } },
    { rule: fanNotGiven, fires: { cooling: 36000, rating: 12 } },
  ],
  checks: [
    { at: { cooling: 36000, rating: 12 }, gives: 46239, within: 5, from: "condenserSelection", remark: "3 kW" },
    {
      at: { cooling: 100_000, rating: 12 },
      gives: 128_430,
      within: 50,
      from: "identity",
      remark: "heat rejection factor 1 + 3.412/12 = 1.2843",
    },
    { at: { cooling: 10, rating: 4, units: "SI" }, gives: 12.5, within: 1e-9, from: "identity", remark: "1 + 1/COP" },
  ],
  work({ cooling, rating, outdoorFan }, { step, system }) {
    const power = step(powerByRating, { Q: cooling, rating });
    checkFan(outdoorFan, power, "the power by the rating", system);
    return step(rejectedHeat, { Q: cooling, P: power, Pf: outdoorFan });
  },
});
