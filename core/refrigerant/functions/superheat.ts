import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { of } from "../../kernel/define/result";
import { LINE_TEMPERATURE, READING, REFRIGERANT } from "../args";
import { certifiedWork, littleSuperheat, noSuperheat } from "../cautions";
import { superheatOf } from "../equations";
import { temperatureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const superheat = cellFunction({
  id: "REFRIG.SUPERHEAT",
  topic: "refrigerant",
  summary: "Superheat: line temperature less the dew temperature at the pressure read.",
  finds: ["suction", "charging", "commissioning"],
  args: { refrigerant: REFRIGERANT, pressure: READING, lineTemperature: LINE_TEMPERATURE, basis: BASIS },
  gives: of("temperature difference", "superheat"),
  facts: { dew: "temperature" },
  cautions: [
    { rule: noSuperheat, fires: { refrigerant: "R-22", pressure: 76, lineTemperature: 40 } },
    { rule: littleSuperheat, fires: { refrigerant: "R-410A", pressure: 130, lineTemperature: 46 } },
    { rule: certifiedWork, fires: { refrigerant: "R-22", pressure: 76, lineTemperature: 55 } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    { at: { refrigerant: "R-22", pressure: 68.6, lineTemperature: 52 }, gives: 12, within: 0.1, from: "refpropTable" },
    {
      at: { refrigerant: "R-410A", pressure: 118.4, lineTemperature: 50 },
      gives: 10,
      within: 0.2,
      from: "refpropTable",
    },
  ],
  work({ refrigerant, pressure, lineTemperature }, { trace, step, note }) {
    const dew = temperatureOnLine(refrigerant, pressure, "dew", trace);
    note({ dew });
    return step(superheatOf, { Tl: lineTemperature, Td: dew });
  },
});
