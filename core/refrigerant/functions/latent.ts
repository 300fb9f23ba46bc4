import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { of } from "../../kernel/define/result";
import { READING, REFRIGERANT } from "../args";
import { latentOf } from "../equations";
import { refrigerant as named } from "../refrigerant";
import { saturatedStateAtPressure } from "../saturation/saturation";
import { EQUATION_SOURCES, equationSource } from "../sources";

export const latent = cellFunction({
  id: "REFRIG.LATENT",
  topic: "refrigerant",
  summary: "Enthalpy from bubble to dew point at a pressure.",
  finds: ["heat of condensation", "heat of vaporisation"],
  args: { refrigerant: REFRIGERANT, pressure: READING, basis: BASIS },
  gives: of("enthalpy", "latent heat"),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    {
      at: { refrigerant: "R-22", pressure: 497.9, basis: "absolute", units: "SI" },
      gives: 205.05,
      within: 0.2,
      from: "coolprop8",
      remark: "at 0 °C",
    },
  ],
  work({ refrigerant, pressure }, { trace, step }) {
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
          at: { "absolute pressure": { value: pressure, kind: "pressure" } },
          gives: { value, kind: "enthalpy" },
          source: equationSource(fluid),
        });
    return step(latentOf, { hd, hb });
  },
});
