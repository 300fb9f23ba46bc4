import { quantity } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { of } from "../../kernel/result";
import { SENSOR } from "../args";
import { beyondTable, wrongCurve } from "../cautions";
import { otherReadings, temperatureOf } from "../models/thermistor";

export const sensorTemp = cellFunction({
  id: "CONTROL.SENSORTEMP",
  topic: "control",
  summary: "Temperature of a 10 kΩ thermistor (NTC) by its resistance.",
  finds: ["thermistor", "NTC", "10k sensor", "10K3", "type II", "type III", "Steinhart-Hart", "beta"],
  remarks: [
    "Type II and type III: Steinhart–Hart with the published constants. Those of type II give the published table back within 0.01 °F from −40 to 140 °F.",
    "A beta value holds near 25 °C only; between two data sheets it may be off by 1 to 2 °F at 0 and 50 °C.",
    "Measure with the sensor unplugged from its controller.",
  ],
  args: {
    ohms: quantity("resistance", "resistance, measured with the sensor unplugged", { above: 0 }),
    sensor: SENSOR,
  },
  gives: of("temperature", "temperature of the sensor"),
  facts: { otherLowest: "temperature", otherHighest: "temperature", sensorTemperature: "temperature" },
  cautions: [
    { rule: wrongCurve, fires: { ohms: 5325 } },
    { rule: beyondTable, fires: { ohms: 500 } },
  ],
  checks: [
    { at: { ohms: 32650.9, units: "SI" }, gives: 0, within: 0.02, from: "ntcTable" },
    { at: { ohms: 10000, units: "SI" }, gives: 25, within: 0.02, from: "ntcTable" },
    { at: { ohms: 97006.9, units: "SI" }, gives: -20, within: 0.02, from: "ntcTable" },
    { at: { ohms: 336103, units: "SI" }, gives: -40, within: 0.02, from: "ntcTable" },
    { at: { ohms: 5325, sensor: 3380, units: "SI" }, gives: 42.5, within: 0.06, from: "betaEquation" },
    {
      at: { ohms: 29490, sensor: "type III", units: "SI" },
      gives: 0,
      within: 0.05,
      from: "ntcTypeThree",
      remark: "the type II curve reads 2 °C here",
    },
    { at: { ohms: 30000000 }, gives: "#N/A", from: "commonPractice", remark: "a broken wire" },
  ],
  work({ ohms, sensor }, { trace, note }) {
    const T = temperatureOf(ohms, sensor, trace);
    note({ ...otherReadings(ohms, sensor, trace), sensorTemperature: T });
    return T;
  },
});
