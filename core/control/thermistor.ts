/** A 10 kΩ thermistor both ways, and the error of a wrong curve. */
import { notAvailable } from "../kernel/values/fault";
import { silent, type Trace } from "../kernel/define/steps";
import { quantityMark } from "../kernel/values/quantityMark";
import { CURVES } from "./data/thermistors";
import {
  betaResistance,
  betaTemperature,
  steinhartHalfConstant,
  steinhartResistance,
  steinhartTemperature,
} from "./equations";

/** A published curve, or the beta value (K) of a 10 kΩ part. */
export type Sensor = keyof typeof CURVES | number;

const NAMES = Object.keys(CURVES) as readonly (keyof typeof CURVES)[];

const curveOf = (name: keyof typeof CURVES, trace: Trace) => {
  const { A, B, C, source } = CURVES[name];
  if (trace.on)
    trace.lookup({ table: "Steinhart–Hart constants", row: `10 kΩ ${name}`, result: `${A}, ${B}, ${C}`, source });
  return { A, B, C };
};

/** Beta values sold as "10k" (data sheets), K. */
export const OTHER_BETAS = [3380, 3435, 3950, 3977] as const;

/** −55 to 150 °C, the range of such parts (common practice). */
export const SENSOR_SPAN = { from: 218.15, to: 423.15 } as const;

/** Temperature, K, of a resistance, ohm; not checked against the span. */
const rawTemperature = (ohms: number, sensor: Sensor, trace: Trace = silent): number =>
  typeof sensor === "number"
    ? trace.step(betaTemperature, { R: ohms, beta: sensor })
    : trace.step(steinhartTemperature, { R: ohms, ...curveOf(sensor, trace) });

/** Temperature, K. Refused outside −55 to 150 °C: open or shorted sensor. */
export const temperatureOf = (ohms: number, sensor: Sensor, trace: Trace = silent): number => {
  const T = rawTemperature(ohms, sensor, trace);
  if (T >= SENSOR_SPAN.from && T <= SENSOR_SPAN.to) return T;
  const cold = !(T > SENSOR_SPAN.to);
  throw notAvailable(
    `ohms: ${quantityMark("resistance", ohms)} is ${cold ? "below" : "above"} ${quantityMark("temperature", cold ? SENSOR_SPAN.from : SENSOR_SPAN.to)} on this curve: the sensor is ${cold ? "open (broken wire or plug)" : "shorted"}, or another part`,
  );
};

/** Resistance, ohm, at a temperature, K. */
export const resistanceOf = (T: number, sensor: Sensor, trace: Trace = silent): number => {
  if (typeof sensor === "number") return trace.step(betaResistance, { T, beta: sensor });
  const { A, B, C } = curveOf(sensor, trace);
  return trace.step(steinhartResistance, { x: trace.step(steinhartHalfConstant, { T, A, C }), B, C });
};

export interface OtherReadings {
  /** K */
  readonly otherLowest: number;
  readonly otherHighest: number;
}

const nameOf = (sensor: Sensor): string => (typeof sensor === "number" ? `beta ${sensor}` : sensor);

/** Readings of the same resistance by the other curves sold as 10 kΩ. */
export const otherReadings = (ohms: number, sensor: Sensor, trace: Trace = silent): OtherReadings => {
  const others: readonly Sensor[] = [...NAMES, ...OTHER_BETAS].filter((each) => each !== sensor);
  let [otherLowest, otherHighest] = [Number.POSITIVE_INFINITY, 0];
  for (const each of others) {
    const T = rawTemperature(ohms, each);
    otherLowest = Math.min(otherLowest, T);
    otherHighest = Math.max(otherHighest, T);
  }
  if (trace.on)
    trace.within("The same resistance by other curves sold as 10k", () => {
      for (const each of others) {
        trace.remark(nameOf(each));
        rawTemperature(ohms, each, trace);
      }
    });
  return { otherLowest, otherHighest };
};
