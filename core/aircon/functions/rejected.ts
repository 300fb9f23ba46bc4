import { cellFunction } from "../../kernel/cellFunction";
import { of } from "../../kernel/result";
import { COOLING, MACHINE_POWER, OUTDOOR_FAN, checkFan } from "../args";
import { fanNotGiven, unlikelyEfficiency } from "../cautions";
import { rejectedHeat } from "../equations";

export const rejected = cellFunction({
  id: "AIRCON.REJECTED",
  topic: "aircon",
  summary: "Heat that reaches the condenser: net cooling plus the machine's power less its outdoor fan.",
  finds: ["heat rejection", "total heat of rejection", "THR", "waste heat", "condenser heat"],
  remarks: [
    "Net cooling as rated (the indoor fan's heat already taken off) and all power of the machine at the same condition.",
    "An energy balance: heat lost from shell and lines on the way to the pool comes off it.",
  ],
  args: { cooling: COOLING, power: MACHINE_POWER, outdoorFan: OUTDOOR_FAN },
  gives: of("heat rate", "heat rejected at the condenser"),
  facts: { COP: "COP" },
  cautions: [
    { rule: unlikelyEfficiency, fires: { cooling: 36000, power: 36 } },
    { rule: fanNotGiven, fires: { cooling: 36000, power: 3 } },
  ],
  checks: [
    {
      at: { cooling: 36000, power: 3 },
      gives: 46239,
      within: 3,
      from: "condenserSelection",
      remark: "worked there with 3,413 BTU for each kWh",
    },
    {
      at: { cooling: 36000, power: 2.982799 },
      gives: 46180,
      within: 3,
      from: "condenserSelection",
      remark: "4 brake horsepower, there 2,545 BTU/h each",
    },
    { at: { cooling: 10, power: 2.5, units: "SI" }, gives: 12.5, within: 1e-9, from: "identity", remark: "COP 4" },
  ],
  work({ cooling, power, outdoorFan }, { step, note, system }) {
    checkFan(outdoorFan, power, "power", system);
    note({ COP: cooling / power });
    return step(rejectedHeat, { Q: cooling, P: power, Pf: outdoorFan });
  },
});
