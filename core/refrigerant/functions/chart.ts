import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { mend } from "../../kernel/values/fault";
import { BASIS } from "../../kernel/define/pressureBasis";
import { show } from "../../kernel/values/quantity";
import { of, table } from "../../kernel/define/result";
import { REFRIGERANT, SATURATION_TEMPERATURE } from "../args";
import { refrigerant as named } from "../refrigerant";
import { saturationPressure } from "../saturation/saturation";
import { EQUATION_SOURCES, equationSource } from "../sources";

const MOST_ROWS = 500;

export const chart = cellFunction({
  id: "REFRIG.CHART",
  topic: "refrigerant",
  summary: "Pressure chart of a refrigerant: temperature, bubble pressure, dew pressure.",
  finds: ["PT chart", "pressure temperature table"],
  args: {
    refrigerant: REFRIGERANT,
    from: SATURATION_TEMPERATURE.saying("first temperature"),
    to: SATURATION_TEMPERATURE.saying("last temperature"),
    step: quantity("temperature difference", "step between rows", { above: 0 }),
    basis: BASIS,
  },
  gives: table("pressure chart", {
    temperature: of("temperature", "saturation temperature"),
    bubblePressure: of("pressure", "bubble pressure", { reading: true }),
    dewPressure: of("pressure", "dew pressure", { reading: true }),
  }),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    {
      at: { refrigerant: "R-22", from: 40, to: 50, step: 5 },
      gives: { row: 50, column: "dewPressure", is: 84.1 },
      within: 0.1,
      from: "refpropTable",
    },
    {
      at: { refrigerant: "R-410A", from: 40, to: 50, step: 5 },
      gives: { row: 40, column: "bubblePressure", is: 118.8 },
      within: 0.2,
      from: "refpropTable",
    },
  ],
  work({ refrigerant, from, to, step: width }, { trace, system }) {
    if (to < from)
      throw mend(
        `to: must be at least from (${show(from, "temperature", system)}), got ${show(to, "temperature", system)}`,
      );
    const count = Math.floor((to - from) / width + 1e-9) + 1;
    if (count > MOST_ROWS) throw mend(`step: must give at most ${MOST_ROWS} rows, got ${count}`);
    const fluid = named(refrigerant);
    const rows = Array.from({ length: count }, (_, place) => {
      const temperature = from + place * width;
      return {
        temperature,
        bubblePressure: saturationPressure(fluid, temperature, "bubble"),
        dewPressure: saturationPressure(fluid, temperature, "dew"),
      };
    });
    if (trace.on)
      trace.property({
        substance: fluid.name,
        property: "bubble and dew pressures, row by row; the last dew pressure",
        at: { from: { value: from, kind: "temperature" }, to: { value: to, kind: "temperature" } },
        gives: { value: rows.at(-1)?.dewPressure ?? 0, kind: "pressure" },
        source: equationSource(fluid),
      });
    return rows;
  },
});
