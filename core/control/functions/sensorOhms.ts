import { quantity } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { of } from "../../kernel/result";
import { SENSOR } from "../args";
import { beyondTable, wrongCurve } from "../cautions";
import { SENSOR_SPAN, otherReadings, resistanceOf } from "../models/thermistor";

export const sensorOhms = cellFunction({
  id: "CONTROL.SENSOROHMS",
  topic: "control",
  summary: "Resistance that a 10 kΩ thermistor (NTC) should show at a temperature.",
  finds: ["thermistor", "NTC", "10k sensor", "10K3", "type II", "type III", "check a sensor", "Steinhart-Hart", "beta"],
  remarks: [
    "Type II and type III: Steinhart–Hart with the published constants. Those of type II give the published table back within 0.02 % from −40 to 60 °C.",
  ],
  args: {
    temperature: quantity("temperature", "temperature of the sensor", SENSOR_SPAN),
    sensor: SENSOR,
  },
  gives: of("resistance", "resistance"),
  facts: { otherLowest: "temperature", otherHighest: "temperature", sensorTemperature: "temperature" },
  cautions: [
    { rule: wrongCurve, fires: { temperature: 104 } },
    { rule: beyondTable, fires: { temperature: 200 } },
  ],
  checks: [
    { at: { temperature: 0, units: "SI" }, gives: 32650.9, within: 6.5, from: "ntcTable" },
    { at: { temperature: 25, units: "SI" }, gives: 10000, within: 5, from: "ntcTable" },
    { at: { temperature: -20, units: "SI" }, gives: 97006.9, within: 19.4, from: "ntcTable" },
    { at: { temperature: -40, units: "SI" }, gives: 336103.2, within: 67.2, from: "ntcTable" },
    { at: { temperature: 0, sensor: "type III", units: "SI" }, gives: 29490, within: 60, from: "ntcTypeThree" },
    { at: { temperature: 0, sensor: 3380, units: "SI" }, gives: 28224, within: 5, from: "betaEquation" },
  ],
  work({ temperature, sensor }, { trace, note }) {
    const ohms = resistanceOf(temperature, sensor, trace);
    note({ ...otherReadings(ohms, sensor, trace), sensorTemperature: temperature });
    return ohms;
  },
});
