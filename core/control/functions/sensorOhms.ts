import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult } from "../../kernel/define/result";
import { SENSOR } from "../args";
import { beyondTable, wrongCurve } from "../cautions";
import { SENSOR_SPAN, otherReadings, resistanceOf } from "../thermistor";

export const controlSensorOhms = cellFunction({
  id: "CONTROL.SENSOROHMS",
  topic: "control",
  summary: "Resistance that a 10 kΩ thermistor (NTC) should show at a temperature.",
  keywords: [
    "thermistor",
    "NTC",
    "10k sensor",
    "10K3",
    "type II",
    "type III",
    "check a sensor",
    "Steinhart-Hart",
    "beta",
  ],
  details: [
    "Type II and type III: Steinhart–Hart with the published constants. Those of type II reproduce the published table within 0.02 % from −40 to 60 °C.",
  ],
  args: {
    temperature: quantity("temperature", "temperature of the sensor", SENSOR_SPAN),
    sensor: SENSOR,
  },
  returns: quantityResult("resistance", "resistance"),
  facts: { otherLowest: "temperature", otherHighest: "temperature", sensorTemperature: "temperature" },
  cautions: [
    { rule: wrongCurve, raisedBy: { temperature: 104 } },
    { rule: beyondTable, raisedBy: { temperature: 200 } },
  ],
  checks: [
    { inputs: { temperature: 0, units: "SI" }, expected: 32650.9, tolerance: 6.5, source: "ntcTable" },
    { inputs: { temperature: 25, units: "SI" }, expected: 10000, tolerance: 5, source: "ntcTable" },
    { inputs: { temperature: -20, units: "SI" }, expected: 97006.9, tolerance: 19.4, source: "ntcTable" },
    { inputs: { temperature: -40, units: "SI" }, expected: 336103.2, tolerance: 67.2, source: "ntcTable" },
    {
      inputs: { temperature: 0, sensor: "type III", units: "SI" },
      expected: 29490,
      tolerance: 60,
      source: "ntcTypeThree",
    },
    { inputs: { temperature: 0, sensor: 3380, units: "SI" }, expected: 28224, tolerance: 5, source: "betaEquation" },
  ],
  compute({ temperature, sensor }, { trace, recordFacts }) {
    const ohms = resistanceOf(temperature, sensor, trace);
    recordFacts({ ...otherReadings(ohms, sensor, trace), sensorTemperature: temperature });
    return ohms;
  },
});
