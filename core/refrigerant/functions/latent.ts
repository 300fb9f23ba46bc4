import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { READING, REFRIGERANT } from "../args";
import { latentOf } from "../equations";
import { loadRefrigerant as named } from "../refrigerant";
import { saturatedStateAtPressure } from "../saturation/saturation";
import { EQUATION_SOURCES, equationSource } from "../sources";

export const refrigLatent = cellFunction({
  id: "REFRIG.LATENT",
  topic: "refrigerant",
  summary: "Enthalpy from bubble to dew point at a pressure.",
  keywords: ["heat of condensation", "heat of vaporisation"],
  args: { refrigerant: REFRIGERANT, pressure: READING, basis: BASIS },
  returns: quantityResult("enthalpy", "latent heat"),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { refrigerant: "R-22", pressure: 497.9, basis: "absolute", units: "SI" },
      expected: 205.05,
      tolerance: 0.2,
      source: "coolprop8",
      remark: "at 0 °C",
    },
  ],
  compute({ refrigerant, pressure }, { trace, step }) {
    const fluid = named(refrigerant);
    const hd = saturatedStateAtPressure(fluid, pressure, "dew").enthalpy;
    const hb = saturatedStateAtPressure(fluid, pressure, "bubble").enthalpy;
    if (trace.on)
      for (const [property, value] of [
        ["enthalpy at the dew point", hd],
        ["enthalpy at the bubble point", hb],
      ] as const)
        trace.property({
          substance: fluid.name,
          property: `${property} (zero: IIR)`,
          inputs: { "absolute pressure": { value: pressure, kind: "pressure" } },
          result: { value, kind: "enthalpy" },
          source: equationSource(fluid),
        });
    return step(latentOf, { hd, hb });
  },
});
