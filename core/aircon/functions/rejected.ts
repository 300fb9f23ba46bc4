import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { COOLING, MACHINE_POWER, OUTDOOR_FAN, checkFan } from "../args";
import { missingFanPower, unlikelyEfficiency } from "../cautions";
import { rejectedHeat } from "../../cycle/machine/equations";

export const airconRejected = cellFunction({
  id: "AIRCON.REJECTED",
  topic: "aircon",
  summary: "Heat rejected at the condenser: net cooling plus the machine's power less its outdoor fan's.",
  keywords: ["heat rejection", "total heat of rejection", "THR", "waste heat", "condenser heat"],
  details: [
    "Enter net cooling as rated (the indoor fan's heat already subtracted) and the whole machine's power at the same condition.",
    "An energy balance: subtract the heat that shell and lines lose on the way to the pool.",
  ],
  args: { cooling: COOLING, power: MACHINE_POWER, outdoorFan: OUTDOOR_FAN },
  returns: quantityResult("heat rate", "heat rejected at the condenser"),
  facts: { COP: "COP" },
  cautions: [
    { rule: unlikelyEfficiency, raisedBy: { cooling: 36000, power: 36 } },
    { rule: missingFanPower, raisedBy: { cooling: 36000, power: 3 } },
  ],
  checks: [
    {
      inputs: { cooling: 36000, power: 3 },
      expected: 46239,
      tolerance: 3,
      source: "condenserSelection",
      remark: "the source uses 3,413 BTU per kWh",
    },
    {
      inputs: { cooling: 36000, power: 2.982799 },
      expected: 46180,
      tolerance: 3,
      source: "condenserSelection",
      remark: "4 brake horsepower, in the source 2,545 BTU/h each",
    },
    {
      inputs: { cooling: 10, power: 2.5, units: "SI" },
      expected: 12.5,
      tolerance: 1e-9,
      source: "identity",
      remark: "COP 4",
    },
  ],
  compute({ cooling, power, outdoorFan }, { step, recordFacts, system }) {
    checkFan(outdoorFan, power, "power", system);
    recordFacts({ COP: cooling / power });
    return step(rejectedHeat, { Q: cooling, P: power, Pf: outdoorFan });
  },
});
