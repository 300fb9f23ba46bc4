import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { of } from "../../kernel/define/result";
import { READING, REFRIGERANT } from "../args";
import { glideOf } from "../equations";
import { temperatureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const glide = cellFunction({
  id: "REFRIG.GLIDE",
  topic: "refrigerant",
  summary: "Glide of a blend at a pressure: dew temperature less bubble temperature.",
  finds: ["zeotrope"],
  args: { refrigerant: REFRIGERANT, pressure: READING, basis: BASIS },
  gives: of("temperature difference", "glide"),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    { at: { refrigerant: "R-134a", pressure: 100 }, gives: 0, within: 1e-9, from: "identity" },
    {
      at: { refrigerant: "R-407C", pressure: 1541.2, basis: "absolute", units: "SI" },
      gives: 5.16,
      within: 0.1,
      from: "coolprop8",
      remark: "dew 40 °C; bubble 34.84 °C from 1,541.2 kPa",
    },
  ],
  work({ refrigerant, pressure }, { trace, step }) {
    const Td = temperatureOnLine(refrigerant, pressure, "dew", trace);
    return step(glideOf, { Td, Tb: temperatureOnLine(refrigerant, pressure, "bubble", trace) });
  },
});
