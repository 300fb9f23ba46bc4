import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { of } from "../../kernel/define/result";
import { compoundGauge, deepVacuum, iceInVacuum } from "../cautions";
import { boilingTemperature } from "../boiling";

export const boiling = cellFunction({
  id: "LINE.BOILING",
  topic: "line",
  summary: "Temperature at which water boils, or ice gives off vapour, at a vacuum.",
  finds: ["micron", "evacuation", "dehydration", "vacuum pump", "moisture", "triple evacuation"],
  remarks: [
    "Absolute pressure; 760,000 micron are one atmosphere. Over ice below the triple point (4,588 micron), over liquid water above it.",
    "A vacuum dries only what is warmer than this temperature: 500 micron reach ice in any part above −12 °F.",
  ],
  args: {
    vacuum: quantity("vacuum", "absolute pressure of the vacuum gauge", {
      above: 0,
      usual: [us("vacuum", 50), us("vacuum", 760_000)],
    }),
  },
  gives: of("temperature", "temperature of boiling or sublimation"),
  facts: { overIce: "yes/no" },
  cautions: [
    { rule: deepVacuum, fires: { vacuum: 500 } },
    { rule: iceInVacuum, fires: { vacuum: 500 } },
    { rule: compoundGauge, fires: { vacuum: "29 inHg" } },
  ],
  sources: ["iapwsR14", "iapwsSr1"],
  checks: [
    { at: { vacuum: 500 }, gives: -12, within: 0.5, from: "commonPractice", remark: "as printed in the trade" },
    {
      at: { vacuum: 8.94735, units: "SI" },
      gives: -43.15,
      within: 0.001,
      from: "iapwsR14",
      remark: "8.947 35 Pa at 230 K, the release's check value, from memory",
    },
    { at: { vacuum: 760_000 }, gives: 212, within: 0.06, from: "iapws95", remark: "99.974 °C at 1 atm" },
    { at: { vacuum: 611.657, units: "SI" }, gives: 0.01, within: 0.001, from: "iapwsR14", remark: "the triple point" },
  ],
  work({ vacuum }, { trace, note }) {
    const { temperature, over } = boilingTemperature(vacuum, trace);
    note({ overIce: over === "ice" });
    return temperature;
  },
});
