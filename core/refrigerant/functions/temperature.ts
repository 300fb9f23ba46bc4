import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { quantityResult } from "../../kernel/define/result";
import { CURVE, READING, REFRIGERANT } from "../args";
import { temperatureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const refrigTemperature = cellFunction({
  id: "REFRIG.TEMPERATURE",
  topic: "refrigerant",
  summary: "Saturation temperature of a refrigerant at a pressure.",
  keywords: ["PT chart", "gauge", "condensing temperature", "evaporating temperature"],
  args: { refrigerant: REFRIGERANT, pressure: READING, curve: CURVE, basis: BASIS },
  returns: quantityResult("temperature", "saturation temperature"),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    { inputs: { refrigerant: "R-22", pressure: 195.9 }, expected: 100, tolerance: 0.1, source: "refpropTable" },
    { inputs: { refrigerant: "R-134a", pressure: 35 }, expected: 40, tolerance: 0.1, source: "refpropTable" },
    {
      inputs: { refrigerant: "R-410A", pressure: 318.5, curve: "bubble" },
      expected: 100,
      tolerance: 0.15,
      source: "refpropTable",
    },
    {
      inputs: { refrigerant: "R-407C", pressure: 1541.2, curve: "dew", basis: "absolute", units: "SI" },
      expected: 40,
      tolerance: 0.05,
      source: "coolprop8",
    },
  ],
  compute: ({ refrigerant, pressure, curve }, { trace }) => temperatureOnLine(refrigerant, pressure, curve, trace),
});
