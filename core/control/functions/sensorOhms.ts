import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { of } from "../../kernel/define/result";
import { SENSOR } from "../args";
import { beyondTable, wrongCurve } from "../cautions";
import { SENSOR_SPAN, otherReadings, resistanceOf } from "../thermistor";

export const sensorOhms = cellFunction({
  id: "CONTROL.SENSOROHMS",
  topic: "control",
  summary: "Resistance that a 10 kΩ thermistor (NTC) should show at a temperature.",
  finds: ["thermistor", "NTC", "10k sensor", "check a sensor", "Steinhart-Hart", "beta"],
  remarks: [
    "10K3: Steinhart–Hart with the published constants. They give the published table back within 0.02 % from −40 to 60 °C.",
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
    { at: { temperature: 0, sensor: 3380, units: "SI" }, gives: 28224, within: 5, from: "betaEquation" },
  ],
  work({ temperature, sensor }, { trace, note }) {
    const ohms = resistanceOf(temperature, sensor, trace);
    note({ ...otherReadings(ohms, sensor, trace), sensorTemperature: temperature });
    return ohms;
  },
});
