import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { compoundGauge, deepVacuum, iceInVacuum } from "../cautions";
import { boilingTemperature } from "../boiling";

export const lineBoiling = cellFunction({
  id: "LINE.BOILING",
  topic: "line",
  summary: "Temperature at which water boils, or ice sublimes, at a vacuum.",
  keywords: ["micron", "evacuation", "dehydration", "vacuum pump", "moisture", "triple evacuation"],
  details: [
    "Absolute pressure; 760,000 micron are one atmosphere. Over ice below the triple point (4,588 micron), over liquid water above it.",
    "A vacuum dries only parts warmer than this temperature: 500 micron removes ice from any part above −12 °F.",
  ],
  args: {
    vacuum: quantity("vacuum", "absolute pressure of the vacuum gauge", {
      above: 0,
      usual: [us("vacuum", 50), us("vacuum", 760_000)],
    }),
  },
  returns: quantityResult("temperature", "temperature of boiling or sublimation"),
  facts: { overIce: "yes/no" },
  cautions: [
    { rule: deepVacuum, raisedBy: { vacuum: 500 } },
    { rule: iceInVacuum, raisedBy: { vacuum: 500 } },
    { rule: compoundGauge, raisedBy: { vacuum: "29 inHg" } },
  ],
  sources: ["iapwsR14", "iapwsSr1"],
  checks: [
    {
      inputs: { vacuum: 500 },
      expected: -12,
      tolerance: 0.5,
      source: "commonPractice",
      remark: "as printed in the trade",
    },
    {
      inputs: { vacuum: 8.94735, units: "SI" },
      expected: -43.15,
      tolerance: 0.001,
      source: "iapwsR14",
      remark: "8.947 35 Pa at 230 K, the release's check value, from memory",
    },
    { inputs: { vacuum: 760_000 }, expected: 212, tolerance: 0.06, source: "iapws95", remark: "99.974 °C at 1 atm" },
    {
      inputs: { vacuum: 611.657, units: "SI" },
      expected: 0.01,
      tolerance: 0.001,
      source: "iapwsR14",
      remark: "the triple point",
    },
  ],
  compute({ vacuum }, { trace, recordFacts }) {
    const { temperature, over } = boilingTemperature(vacuum, trace);
    recordFacts({ overIce: over === "ice" });
    return temperature;
  },
});
