/** Saturation with its record in the working. */
import { silent, type Trace } from "../../kernel/define/steps";
import { equationSource } from "../sources";
import { refrigerant } from "../refrigerant";
import { saturationPressure, saturationTemperature, type Curve } from "./saturation";
import { uncertaintyOf } from "../uncertainty";

/** Saturation pressure, Pa, at a temperature in K. */
export const pressureOnLine = (name: string, temperature: number, curve: Curve, trace: Trace = silent): number => {
  const fluid = refrigerant(name);
  const pressure = saturationPressure(fluid, temperature, curve);
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property: `${curve} pressure, absolute`,
      at: { temperature: { value: temperature, kind: "temperature" } },
      gives: { value: pressure, kind: "pressure" },
      uncertainty: `vapour pressure ${uncertaintyOf(fluid, "vapour pressure")}`,
      source: equationSource(fluid),
    });
  return pressure;
};

/** Saturation temperature, K, at an absolute pressure in Pa. */
export const temperatureOnLine = (name: string, pressure: number, curve: Curve, trace: Trace = silent): number => {
  const fluid = refrigerant(name);
  const temperature = saturationTemperature(fluid, pressure, curve);
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property: `${curve} temperature`,
      at: { "absolute pressure": { value: pressure, kind: "pressure" } },
      gives: { value: temperature, kind: "temperature" },
      uncertainty: `vapour pressure ${uncertaintyOf(fluid, "vapour pressure")}`,
      source: equationSource(fluid),
    });
  return temperature;
};
