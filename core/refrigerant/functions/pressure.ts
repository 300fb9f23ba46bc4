import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS, gaugeReading, gaugeZero } from "../../kernel/define/pressureBasis";
import { of } from "../../kernel/define/result";
import { CURVE, REFRIGERANT, SATURATION_TEMPERATURE } from "../args";
import { pressureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const pressure = cellFunction({
  id: "REFRIG.PRESSURE",
  topic: "refrigerant",
  summary: "Saturation pressure of a refrigerant at a temperature.",
  finds: ["PT chart", "gauge", "boiling", "condensing pressure"],
  remarks: [
    "From Helmholtz equations of state through fitted saturation lines (error of the fit below 1e-6 of the pressure).",
    "Use the bubble curve for subcooled liquid, the dew curve for superheated vapour.",
  ],
  args: { refrigerant: REFRIGERANT, temperature: SATURATION_TEMPERATURE, curve: CURVE, basis: BASIS },
  gives: of("pressure", "saturation pressure", { reading: true }),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    { at: { refrigerant: "R-22", temperature: 100 }, gives: 195.9, within: 0.1, from: "refpropTable" },
    { at: { refrigerant: "R-134a", temperature: 120 }, gives: 171.2, within: 0.1, from: "refpropTable" },
    {
      at: { refrigerant: "R-410A", temperature: 45, curve: "bubble" },
      gives: 130.6,
      within: 0.2,
      from: "refpropTable",
    },
    {
      at: { refrigerant: "R-410A", temperature: 120, curve: "bubble" },
      gives: 419.5,
      within: 0.6,
      from: "refpropTable",
    },
    {
      at: { refrigerant: "R-32", temperature: 40, basis: "absolute", units: "SI" },
      gives: 2478.3,
      within: 0.1,
      from: "coolprop8",
    },
    {
      at: { refrigerant: "R-744", temperature: 100 },
      gives: "#N/A",
      from: "spanWagner1996",
      remark: "above the critical point nothing condenses",
    },
  ],
  work({ refrigerant, temperature, curve, basis }, { trace }) {
    const p = pressureOnLine(refrigerant, temperature, curve, trace);
    if (trace.on && basis !== "absolute") trace.step(gaugeReading, { p, p0: gaugeZero(basis) });
    return p;
  },
});
