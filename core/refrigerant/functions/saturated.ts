import { cellFunction } from "../../kernel/define/cellFunction";
import { listResult, quantityResult } from "../../kernel/define/result";
import { CURVE, REFRIGERANT, SATURATION_TEMPERATURE } from "../args";
import { blendByMixing } from "../cautions";
import { propertyTable } from "../propertyTable";
import { isPure, loadRefrigerant as named } from "../refrigerant";
import { saturatedState } from "../saturation/saturation";
import { tensionOnLine } from "../transport/surfaceTensionAt";
import { PROPERTY_ROWS, ZERO_ROW } from "../propertyRows";
import { EQUATION_SOURCES, TRANSPORT_SOURCES } from "../sources";

export const refrigSaturated = cellFunction({
  id: "REFRIG.SATURATED",
  topic: "refrigerant",
  summary: "Properties of a refrigerant on its saturation line: dew (vapour) or bubble (liquid).",
  keywords: ["saturated vapour", "saturated liquid", "surface tension", "density"],
  details: [
    "Surface tension acts between the liquid and its vapour; a pure refrigerant has the same on both curves.",
    "Enthalpy zero: IIR in SI units, saturated liquid at −40 °F in US units; the last row says which. Differences don't depend on it.",
  ],
  args: { refrigerant: REFRIGERANT, temperature: SATURATION_TEMPERATURE, curve: CURVE },
  returns: listResult("properties on the saturation line", {
    ...PROPERTY_ROWS,
    surfaceTension: quantityResult("surface tension", "surface tension"),
    ...ZERO_ROW,
  }),
  facts: { blend: "yes/no" },
  memoised: true,
  cautions: [{ rule: blendByMixing, raisedBy: { refrigerant: "R-454B", temperature: 100 } }],
  sources: [...EQUATION_SOURCES, ...TRANSPORT_SOURCES],
  checks: [
    {
      inputs: { refrigerant: "R-134a", temperature: 26.85, curve: "bubble", units: "SI" },
      expected: { phase: "liquid", density: 1199.7, enthalpy: 237.19, heatCapacity: 1.4324, speedOfSound: 497.89 },
      tolerance: "0.01 %",
      source: { key: "tillnerRothBaehr1994", where: "table 8" },
    },
    {
      inputs: { refrigerant: "R-290", temperature: 50, units: "SI" },
      expected: { phase: "vapour", density: 38.63, heatCapacity: 2.499, speedOfSound: 202.2 },
      tolerance: "0.03 %",
      source: { key: "lemmonMcLindenWagner2009", where: "table A1" },
    },
    {
      inputs: { refrigerant: "R-22", temperature: -40, curve: "bubble" },
      expected: { enthalpy: 0, entropy: 0 },
      tolerance: 1e-6,
      source: "identity",
      remark: "the US zero itself",
    },
    {
      inputs: { refrigerant: "R-22", temperature: 0, curve: "bubble", units: "SI" },
      expected: { enthalpy: 200, entropy: 1 },
      tolerance: 1e-4,
      source: "identity",
      remark: "the IIR zero itself",
    },
    { inputs: { refrigerant: "R-744", temperature: 100 }, expected: "#N/A", source: "spanWagner1996" },
  ],
  compute({ refrigerant, temperature, curve }, { trace, recordFacts, system }) {
    const fluid = named(refrigerant);
    recordFacts({ blend: !isPure(fluid) });
    const { enthalpyZero, ...table } = propertyTable(fluid, saturatedState(fluid, temperature, curve), system, trace);
    return { ...table, surfaceTension: tensionOnLine(fluid, temperature, trace), enthalpyZero };
  },
});
