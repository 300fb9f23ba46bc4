import { cellFunction } from "../../kernel/define/cellFunction";
import { gaugeReading, STANDARD_PRESSURE } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { REFRIGERANT } from "../../refrigerant/args";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { DESIGN_RULE, DESIGN_SIDE, LEAVING_WATER, SUMMER_DRY_BULB } from "../args";
import { nameplateGoverns } from "../cautions";
import { designPressure } from "../design";

const hot = { refrigerant: "R-410A", side: "high air", summerDryBulb: 101 } as const;

export const pressureDesign = cellFunction({
  id: "PRESSURE.DESIGN",
  topic: "pressure",
  summary: "Least design pressure of a side of the circuit.",
  keywords: ["PS", "maximum allowable pressure", "working pressure", "nameplate", "high side", "low side"],
  details: [
    "ASHRAE 15: bubble pressure, at least 15 psig (103 kPa), at 80 °F (26.7 °C) on the low side; on an air-cooled high side at 30 °F (16.7 K) over the summer dry bulb, at least 122 °F (50 °C); on a water-cooled one at 15 °F (8.3 K) over the leaving water, at least 104 °F (40 °C). Its term of the wet bulb is for evaporative condensers and left out.",
    "EN 378: at 55, 59, 63 or 67 °C air-cooled and at the ambient on a low side outdoors, for ambients up to 32, 38, 43 and 55 °C; 8 K over the leaving water.",
    "A temperature that the side needs is asked for, never assumed. A pool coil condenses cooler than the air coil; it must hold the pressure of the whole side nevertheless.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    side: DESIGN_SIDE,
    summerDryBulb: SUMMER_DRY_BULB.optional(),
    leavingWater: LEAVING_WATER.optional(),
    rule: DESIGN_RULE,
  },
  returns: quantityResult("pressure", "least design pressure, gauge", { reading: true }),
  facts: { designTemperature: "temperature" },
  cautions: [{ rule: nameplateGoverns, raisedBy: hot }],
  sources: ["ashrae15Pressure", ...EQUATION_SOURCES],
  checks: [
    {
      inputs: hot,
      expected: 484,
      tolerance: 0.6,
      source: "coolprop8",
      remark: "bubble pressure at 131 °F: 30 °F over the dry bulb",
    },
    {
      inputs: { refrigerant: "R-22", side: "high air", summerDryBulb: 101 },
      expected: 301,
      tolerance: 0.6,
      source: "coolprop8",
      remark: "bubble pressure at 131 °F",
    },
    {
      inputs: { refrigerant: "R-454B", side: "high air", summerDryBulb: 104, rule: "EN 378" },
      expected: 549,
      tolerance: 0.6,
      source: "en378Pressure",
      remark: "43 °C ambient: bubble pressure at 63 °C by CoolProp 8.0.0",
    },
    {
      inputs: { refrigerant: "R-32", side: "high water", leavingWater: 40, rule: "EN 378", units: "SI" },
      expected: 2895,
      tolerance: 4,
      source: "en378Pressure",
      remark: "420 psi at 48 °C by CoolProp 8.0.0",
    },
    { inputs: { refrigerant: "R-410A", side: "high air" }, expected: "#VALUE!", source: "identity" },
  ],
  compute(inputs, { trace, recordFacts }) {
    const { temperature, pressure } = designPressure(inputs, trace);
    recordFacts({ designTemperature: temperature });
    if (trace.on) trace.step(gaugeReading, { p: pressure, p0: STANDARD_PRESSURE });
    return pressure;
  },
});
