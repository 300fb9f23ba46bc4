import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { READING, REFRIGERANT } from "../args";
import { glideOf } from "../equations";
import { temperatureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const refrigGlide = cellFunction({
  id: "REFRIG.GLIDE",
  topic: "refrigerant",
  summary: "Glide of a blend at a pressure: dew temperature less bubble temperature.",
  keywords: ["zeotrope"],
  args: { refrigerant: REFRIGERANT, pressure: READING, basis: BASIS },
  returns: quantityResult("temperature difference", "glide"),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    { inputs: { refrigerant: "R-134a", pressure: 100 }, expected: 0, tolerance: 1e-9, source: "identity" },
    {
      inputs: { refrigerant: "R-407C", pressure: 1541.2, basis: "absolute", units: "SI" },
      expected: 5.16,
      tolerance: 0.1,
      source: "coolprop8",
      remark: "dew 40 °C; bubble 34.84 °C from 1,541.2 kPa",
    },
  ],
  compute({ refrigerant, pressure }, { trace, step }) {
    const Td = temperatureOnLine(refrigerant, pressure, "dew", trace);
    return step(glideOf, { Td, Tb: temperatureOnLine(refrigerant, pressure, "bubble", trace) });
  },
});
