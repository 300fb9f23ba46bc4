import { cellFunction } from "../../kernel/define/cellFunction";
import { list, of } from "../../kernel/define/result";
import { CURVE, REFRIGERANT, SATURATION_TEMPERATURE } from "../args";
import { blendByMixing } from "../cautions";
import { propertyTable } from "../propertyTable";
import { isPure, refrigerant as named } from "../refrigerant";
import { saturatedState } from "../saturation/saturation";
import { tensionOnLine } from "../transport/surfaceTensionAt";
import { PROPERTY_ROWS, ZERO_ROW } from "../propertyRows";
import { EQUATION_SOURCES, TRANSPORT_SOURCES } from "../sources";

export const saturated = cellFunction({
  id: "REFRIG.SATURATED",
  topic: "refrigerant",
  summary: "Properties of a refrigerant on its saturation line: dew (vapour) or bubble (liquid).",
  finds: ["saturated vapour", "saturated liquid", "surface tension", "density"],
  remarks: [
    "Surface tension is that between the liquid and its vapour, the same on both curves of a pure refrigerant.",
    "Enthalpy zero: IIR in SI units, saturated liquid at −40 °F in US units; the last row says which. Differences don't depend on it.",
  ],
  args: { refrigerant: REFRIGERANT, temperature: SATURATION_TEMPERATURE, curve: CURVE },
  gives: list("properties on the saturation line", {
    ...PROPERTY_ROWS,
    surfaceTension: of("surface tension", "surface tension"),
    ...ZERO_ROW,
  }),
  facts: { blend: "yes/no" },
  heavy: true,
  cautions: [{ rule: blendByMixing, fires: { refrigerant: "R-454B", temperature: 100 } }],
  sources: [...EQUATION_SOURCES, ...TRANSPORT_SOURCES],
  checks: [
    {
      at: { refrigerant: "R-134a", temperature: 26.85, curve: "bubble", units: "SI" },
      gives: { phase: "liquid", density: 1199.7, enthalpy: 237.19, heatCapacity: 1.4324, speedOfSound: 497.89 },
      within: "0.01 %",
      from: { key: "tillnerRothBaehr1994", where: "table 8" },
    },
    {
      at: { refrigerant: "R-290", temperature: 50, units: "SI" },
      gives: { phase: "vapour", density: 38.63, heatCapacity: 2.499, speedOfSound: 202.2 },
      within: "0.03 %",
      from: { key: "lemmonMcLindenWagner2009", where: "table A1" },
    },
    {
      at: { refrigerant: "R-22", temperature: -40, curve: "bubble" },
      gives: { enthalpy: 0, entropy: 0 },
      within: 1e-6,
      from: "identity",
      remark: "the US zero itself",
    },
    {
      at: { refrigerant: "R-22", temperature: 0, curve: "bubble", units: "SI" },
      gives: { enthalpy: 200, entropy: 1 },
      within: 1e-4,
      from: "identity",
      remark: "the IIR zero itself",
    },
    { at: { refrigerant: "R-744", temperature: 100 }, gives: "#N/A", from: "spanWagner1996" },
  ],
  work({ refrigerant, temperature, curve }, { trace, note, system }) {
    const fluid = named(refrigerant);
    note({ blend: !isPure(fluid) });
    const { enthalpyZero, ...table } = propertyTable(fluid, saturatedState(fluid, temperature, curve), system, trace);
    return { ...table, surfaceTension: tensionOnLine(fluid, temperature, trace), enthalpyZero };
  },
});
