/** Saturation with its record in the working. */
import { silent, type Trace } from "../../kernel/define/steps";
import { equationSource } from "../sources";
import { loadRefrigerant } from "../refrigerant";
import { refrigerantSaturationPressure, saturationTemperature, type EnvelopeCurve } from "./saturation";
import { uncertaintyOf } from "../uncertainty";

/** Saturation pressure, Pa, at a temperature in K. */
export const pressureOnLine = (
  name: string,
  temperature: number,
  curve: EnvelopeCurve,
  trace: Trace = silent,
): number => {
  const fluid = loadRefrigerant(name);
  const pressure = refrigerantSaturationPressure(fluid, temperature, curve);
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property: `${curve} pressure, absolute`,
      inputs: { temperature: { value: temperature, kind: "temperature" } },
      result: { value: pressure, kind: "pressure" },
      uncertainty: `vapour pressure ${uncertaintyOf(fluid, "vapour pressure")}`,
      source: equationSource(fluid),
    });
  return pressure;
};

/** Saturation temperature, K, at an absolute pressure in Pa. */
export const temperatureOnLine = (
  name: string,
  pressure: number,
  curve: EnvelopeCurve,
  trace: Trace = silent,
): number => {
  const fluid = loadRefrigerant(name);
  const temperature = saturationTemperature(fluid, pressure, curve);
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property: `${curve} temperature`,
      inputs: { "absolute pressure": { value: pressure, kind: "pressure" } },
      result: { value: temperature, kind: "temperature" },
      uncertainty: `vapour pressure ${uncertaintyOf(fluid, "vapour pressure")}`,
      source: equationSource(fluid),
    });
  return temperature;
};
