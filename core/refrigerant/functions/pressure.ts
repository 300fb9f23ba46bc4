import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS, gaugeReading, gaugeZero } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { CURVE, REFRIGERANT, SATURATION_TEMPERATURE } from "../args";
import { pressureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const refrigPressure = cellFunction({
  id: "REFRIG.PRESSURE",
  topic: "refrigerant",
  summary: "Saturation pressure of a refrigerant at a temperature.",
  keywords: ["PT chart", "gauge", "boiling", "condensing pressure"],
  details: [
    "From Helmholtz equations of state through fitted saturation lines (error of the fit below 1e-6 of the pressure).",
    "Use the bubble curve for subcooled liquid, the dew curve for superheated vapour.",
  ],
  args: { refrigerant: REFRIGERANT, temperature: SATURATION_TEMPERATURE, curve: CURVE, basis: BASIS },
  returns: quantityResult("pressure", "saturation pressure", { reading: true }),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    { inputs: { refrigerant: "R-22", temperature: 100 }, expected: 195.9, tolerance: 0.1, source: "refpropTable" },
    { inputs: { refrigerant: "R-134a", temperature: 120 }, expected: 171.2, tolerance: 0.1, source: "refpropTable" },
    {
      inputs: { refrigerant: "R-410A", temperature: 45, curve: "bubble" },
      expected: 130.6,
      tolerance: 0.2,
      source: "refpropTable",
    },
    {
      inputs: { refrigerant: "R-410A", temperature: 120, curve: "bubble" },
      expected: 419.5,
      tolerance: 0.6,
      source: "refpropTable",
    },
    {
      inputs: { refrigerant: "R-32", temperature: 40, basis: "absolute", units: "SI" },
      expected: 2478.3,
      tolerance: 0.1,
      source: "coolprop8",
    },
    {
      inputs: { refrigerant: "R-744", temperature: 100 },
      expected: "#N/A",
      source: "spanWagner1996",
      remark: "above the critical point nothing condenses",
    },
  ],
  compute({ refrigerant, temperature, curve, basis }, { trace }) {
    const p = pressureOnLine(refrigerant, temperature, curve, trace);
    if (trace.on && basis !== "absolute") trace.step(gaugeReading, { p, p0: gaugeZero(basis) });
    return p;
  },
});
