import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { valueError } from "../../kernel/values/fault";
import { BASIS } from "../../kernel/define/pressureBasis";
import { show, showNumber } from "../../kernel/values/quantity";
import { quantityResult, tableResult } from "../../kernel/define/result";
import { REFRIGERANT, SATURATION_TEMPERATURE } from "../args";
import { loadRefrigerant as named } from "../refrigerant";
import { refrigerantSaturationPressure } from "../saturation/saturation";
import { EQUATION_SOURCES, equationSource } from "../sources";

const MOST_ROWS = 500;

export const refrigChart = cellFunction({
  id: "REFRIG.CHART",
  topic: "refrigerant",
  summary: "Pressure chart of a refrigerant: temperature, bubble pressure, dew pressure.",
  keywords: ["PT chart", "pressure temperature table"],
  args: {
    refrigerant: REFRIGERANT,
    from: SATURATION_TEMPERATURE.describedAs("first temperature"),
    to: SATURATION_TEMPERATURE.describedAs("last temperature"),
    step: quantity("temperature difference", "step between rows", { above: 0 }),
    basis: BASIS,
  },
  returns: tableResult("pressure chart", {
    temperature: quantityResult("temperature", "saturation temperature"),
    bubblePressure: quantityResult("pressure", "bubble pressure", { reading: true }),
    dewPressure: quantityResult("pressure", "dew pressure", { reading: true }),
  }),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { refrigerant: "R-22", from: 40, to: 50, step: 5 },
      expected: { row: 50, column: "dewPressure", value: 84.1 },
      tolerance: 0.1,
      source: "refpropTable",
    },
    {
      inputs: { refrigerant: "R-410A", from: 40, to: 50, step: 5 },
      expected: { row: 40, column: "bubblePressure", value: 118.8 },
      tolerance: 0.2,
      source: "refpropTable",
    },
  ],
  compute({ refrigerant, from, to, step: width }, { trace, system }) {
    if (to < from)
      throw valueError(
        `to: must be at least from (${show(from, "temperature", system)}), got ${show(to, "temperature", system)}`,
      );
    const count = Math.floor((to - from) / width + 1e-9) + 1;
    if (count > MOST_ROWS) throw valueError(`step: must give at most ${MOST_ROWS} rows, got ${showNumber(count)}`);
    const fluid = named(refrigerant);
    // The ends first: a fault then tells one of them, not a row between.
    for (const end of [from, from + (count - 1) * width]) refrigerantSaturationPressure(fluid, end, "dew");
    const rows = Array.from({ length: count }, (_, place) => {
      const temperature = from + place * width;
      return {
        temperature,
        bubblePressure: refrigerantSaturationPressure(fluid, temperature, "bubble"),
        dewPressure: refrigerantSaturationPressure(fluid, temperature, "dew"),
      };
    });
    if (trace.on)
      trace.property({
        substance: fluid.name,
        property: "bubble and dew pressures, row by row; the last dew pressure",
        inputs: { from: { value: from, kind: "temperature" }, to: { value: to, kind: "temperature" } },
        result: { value: rows.at(-1)?.dewPressure ?? 0, kind: "pressure" },
        source: equationSource(fluid),
      });
    return rows;
  },
});
