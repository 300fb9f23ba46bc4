import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { LINE_TEMPERATURE, READING, REFRIGERANT } from "../args";
import { certifiedWork, noSubcooling } from "../cautions";
import { subcoolingOf } from "../equations";
import { temperatureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const refrigSubcooling = cellFunction({
  id: "REFRIG.SUBCOOLING",
  topic: "refrigerant",
  summary: "Subcooling: bubble temperature at the pressure read less line temperature.",
  keywords: ["liquid line", "charging", "commissioning"],
  args: { refrigerant: REFRIGERANT, pressure: READING, lineTemperature: LINE_TEMPERATURE, basis: BASIS },
  returns: quantityResult("temperature difference", "subcooling"),
  facts: { bubble: "temperature" },
  cautions: [
    { rule: noSubcooling, raisedBy: { refrigerant: "R-22", pressure: 195.9, lineTemperature: 101 } },
    { rule: certifiedWork, raisedBy: { refrigerant: "R-22", pressure: 195.9, lineTemperature: 90 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { refrigerant: "R-22", pressure: 195.9, lineTemperature: 90 },
      expected: 10,
      tolerance: 0.1,
      source: "refpropTable",
    },
    {
      inputs: { refrigerant: "R-410A", pressure: 366.5, lineTemperature: 98 },
      expected: 12,
      tolerance: 0.15,
      source: "refpropTable",
    },
  ],
  compute({ refrigerant, pressure, lineTemperature }, { trace, step, recordFacts }) {
    const bubble = temperatureOnLine(refrigerant, pressure, "bubble", trace);
    recordFacts({ bubble });
    return step(subcoolingOf, { Tb: bubble, Tl: lineTemperature });
  },
});
