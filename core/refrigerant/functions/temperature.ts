import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { of } from "../../kernel/define/result";
import { CURVE, READING, REFRIGERANT } from "../args";
import { temperatureOnLine } from "../saturation/working";
import { EQUATION_SOURCES } from "../sources";

export const temperature = cellFunction({
  id: "REFRIG.TEMPERATURE",
  topic: "refrigerant",
  summary: "Saturation temperature of a refrigerant at a pressure.",
  finds: ["PT chart", "gauge", "condensing temperature", "evaporating temperature"],
  args: { refrigerant: REFRIGERANT, pressure: READING, curve: CURVE, basis: BASIS },
  gives: of("temperature", "saturation temperature"),
  cautions: [],
  sources: EQUATION_SOURCES,
  checks: [
    { at: { refrigerant: "R-22", pressure: 195.9 }, gives: 100, within: 0.1, from: "refpropTable" },
    { at: { refrigerant: "R-134a", pressure: 35 }, gives: 40, within: 0.1, from: "refpropTable" },
    { at: { refrigerant: "R-410A", pressure: 318.5, curve: "bubble" }, gives: 100, within: 0.15, from: "refpropTable" },
    {
      at: { refrigerant: "R-407C", pressure: 1541.2, curve: "dew", basis: "absolute", units: "SI" },
      gives: 40,
      within: 0.05,
      from: "coolprop8",
    },
  ],
  work: ({ refrigerant, pressure, curve }, { trace }) => temperatureOnLine(refrigerant, pressure, curve, trace),
});
