import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { of } from "../../kernel/define/result";
import { LINE_TEMPERATURE, READING, REFRIGERANT } from "../args";
import { certifiedWork, noSubcooling } from "../cautions";
import { subcoolingOf } from "../equations";
import { temperatureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const subcooling = cellFunction({
  id: "REFRIG.SUBCOOLING",
  topic: "refrigerant",
  summary: "Subcooling: bubble temperature at the pressure read less line temperature.",
  finds: ["liquid line", "charging", "commissioning"],
  args: { refrigerant: REFRIGERANT, pressure: READING, lineTemperature: LINE_TEMPERATURE, basis: BASIS },
  gives: of("temperature difference", "subcooling"),
  facts: { bubble: "temperature" },
  cautions: [
    { rule: noSubcooling, fires: { refrigerant: "R-22", pressure: 195.9, lineTemperature: 101 } },
    { rule: certifiedWork, fires: { refrigerant: "R-22", pressure: 195.9, lineTemperature: 90 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    { at: { refrigerant: "R-22", pressure: 195.9, lineTemperature: 90 }, gives: 10, within: 0.1, from: "refpropTable" },
    {
      at: { refrigerant: "R-410A", pressure: 366.5, lineTemperature: 98 },
      gives: 12,
      within: 0.15,
      from: "refpropTable",
    },
  ],
  work({ refrigerant, pressure, lineTemperature }, { trace, step, note }) {
    const bubble = temperatureOnLine(refrigerant, pressure, "bubble", trace);
    note({ bubble });
    return step(subcoolingOf, { Tb: bubble, Tl: lineTemperature });
  },
});
