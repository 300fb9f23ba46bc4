import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { STANDARD_PRESSURE, gaugeReading } from "../../kernel/define/pressureBasis";
import { us } from "../../kernel/values/quantity";
import { quantityResult } from "../../kernel/define/result";
import { TEST_READING } from "../args";
import { nitrogenTest } from "../cautions";
import { gasPressure } from "../equations";

const gasTemperature = (about: string) =>
  quantity("temperature", about, {
    from: us("temperature", -60),
    to: us("temperature", 200),
    usual: [us("temperature", 0), us("temperature", 130)],
  });

export const lineTestPressure = cellFunction({
  id: "LINE.TESTPRESSURE",
  topic: "line",
  summary: "Nitrogen gauge reading after a change of temperature: a correction only, no test pressure.",
  keywords: ["nitrogen test", "leak test", "standing pressure"],
  details: [
    "A correction of the reading for temperature only: PRESSURE.TABLE says what to test at and how both branches are reached.",
    "Ideal gas in a closed system; gauge pressures over 101.325 kPa (14.696 psi).",
  ],
  args: {
    pressure: TEST_READING,
    then: gasTemperature("gas temperature when the test began"),
    now: gasTemperature("gas temperature now"),
  },
  returns: quantityResult("pressure", "gauge reading to expect now", { reading: true }),
  cautions: [{ rule: nitrogenTest, raisedBy: { pressure: 150, then: 95, now: 75 } }],
  checks: [
    {
      inputs: { pressure: 150, then: 95, now: 75 },
      expected: 144,
      tolerance: 0.3,
      source: "commonPractice",
      remark: "trade worked example",
    },
    {
      inputs: { pressure: 150, then: 80, now: 70 },
      expected: 147,
      tolerance: 0.1,
      source: "ufgs15652",
      remark: "0.3 psi per °F",
    },
  ],
  compute({ pressure, then, now }, { step }) {
    const p = step(gasPressure, { p1: pressure, T1: then, T2: now });
    step(gaugeReading, { p, p0: STANDARD_PRESSURE });
    return p;
  },
});
