import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { SENSOR } from "../args";
import { beyondTable, wrongCurve } from "../cautions";
import { otherReadings, temperatureOf } from "../thermistor";

export const controlSensorTemp = cellFunction({
  id: "CONTROL.SENSORTEMP",
  topic: "control",
  summary: "Temperature of a 10 kΩ thermistor (NTC) from its resistance.",
  keywords: ["thermistor", "NTC", "10k sensor", "10K3", "type II", "type III", "Steinhart-Hart", "beta"],
  details: [
    "Type II and type III: Steinhart–Hart with the published constants. Those of type II reproduce the published table within 0.01 °F from −40 to 140 °F.",
    "A beta value holds near 25 °C only; between two data sheets it may be off by 1 to 2 °F at 0 and 50 °C.",
    "Measure with the sensor unplugged from its controller.",
  ],
  args: {
    ohms: quantity("resistance", "resistance, measured with the sensor unplugged", { above: 0 }),
    sensor: SENSOR,
  },
  returns: quantityResult("temperature", "temperature of the sensor"),
  facts: { otherLowest: "temperature", otherHighest: "temperature", sensorTemperature: "temperature" },
  cautions: [
    { rule: wrongCurve, raisedBy: { ohms: 5325 } },
    { rule: beyondTable, raisedBy: { ohms: 500 } },
  ],
  checks: [
    { inputs: { ohms: 32650.9, units: "SI" }, expected: 0, tolerance: 0.02, source: "ntcTable" },
    { inputs: { ohms: 10000, units: "SI" }, expected: 25, tolerance: 0.02, source: "ntcTable" },
    { inputs: { ohms: 97006.9, units: "SI" }, expected: -20, tolerance: 0.02, source: "ntcTable" },
    { inputs: { ohms: 336103, units: "SI" }, expected: -40, tolerance: 0.02, source: "ntcTable" },
    { inputs: { ohms: 5325, sensor: 3380, units: "SI" }, expected: 42.5, tolerance: 0.06, source: "betaEquation" },
    {
      inputs: { ohms: 29490, sensor: "type III", units: "SI" },
      expected: 0,
      tolerance: 0.05,
      source: "ntcTypeThree",
      remark: "the type II curve reads 2 °C here",
    },
    { inputs: { ohms: 30000000 }, expected: "#N/A", source: "commonPractice", remark: "a broken wire" },
  ],
  compute({ ohms, sensor }, { trace, recordFacts }) {
    const T = temperatureOf(ohms, sensor, trace);
    recordFacts({ ...otherReadings(ohms, sensor, trace), sensorTemperature: T });
    return T;
  },
});
