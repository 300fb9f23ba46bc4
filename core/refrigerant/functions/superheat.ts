import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { LINE_TEMPERATURE, READING, REFRIGERANT } from "../args";
import { certifiedWork, littleSuperheat, noSuperheat } from "../cautions";
import { superheatOf } from "../equations";
import { temperatureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const refrigSuperheat = cellFunction({
  id: "REFRIG.SUPERHEAT",
  topic: "refrigerant",
  summary: "Superheat: line temperature less the dew temperature at the pressure read.",
  keywords: ["suction", "charging", "commissioning"],
  args: { refrigerant: REFRIGERANT, pressure: READING, lineTemperature: LINE_TEMPERATURE, basis: BASIS },
  returns: quantityResult("temperature difference", "superheat"),
  facts: { dew: "temperature" },
  cautions: [
    { rule: noSuperheat, raisedBy: { refrigerant: "R-22", pressure: 76, lineTemperature: 40 } },
    { rule: littleSuperheat, raisedBy: { refrigerant: "R-410A", pressure: 130, lineTemperature: 46 } },
    { rule: certifiedWork, raisedBy: { refrigerant: "R-22", pressure: 76, lineTemperature: 55 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { refrigerant: "R-22", pressure: 68.6, lineTemperature: 52 },
      expected: 12,
      tolerance: 0.1,
      source: "refpropTable",
    },
    {
      inputs: { refrigerant: "R-410A", pressure: 118.4, lineTemperature: 50 },
      expected: 10,
      tolerance: 0.2,
      source: "refpropTable",
    },
  ],
  compute({ refrigerant, pressure, lineTemperature }, { trace, step, recordFacts }) {
    const dew = temperatureOnLine(refrigerant, pressure, "dew", trace);
    recordFacts({ dew });
    return step(superheatOf, { Tl: lineTemperature, Td: dew });
  },
});
