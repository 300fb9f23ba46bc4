/** A 10 kΩ thermistor both ways, and how far a wrong curve leads. */
import { notAvailable } from "../kernel/values/fault";
import { silent, type Trace } from "../kernel/define/steps";
import { quantityMark } from "../kernel/values/quantityMark";
import { betaResistance, betaTemperature, steinhartHalf, steinhartResistance, steinhartTemperature } from "./equations";

/** The part with published constants, or the beta value (K) of a 10 kΩ part. */
export type Sensor = "10K3" | number;

/** Beta values that are sold as "10k" (data sheets), K. */
export const OTHER_BETAS = [3380, 3435, 3950, 3977] as const;

/** −55 to 150 °C: what such parts are made for (common practice). */
export const SENSOR_SPAN = { from: 218.15, to: 423.15 } as const;

/** Temperature, K, of a resistance, ohm; not checked against the span. */
const rawTemperature = (ohms: number, sensor: Sensor, trace: Trace = silent): number =>
  sensor === "10K3"
    ? trace.step(steinhartTemperature, { R: ohms })
    : trace.step(betaTemperature, { R: ohms, beta: sensor });

/** Temperature, K. Refused outside −55 to 150 °C: open or shorted sensor. */
export const temperatureOf = (ohms: number, sensor: Sensor, trace: Trace = silent): number => {
  const T = rawTemperature(ohms, sensor, trace);
  if (T >= SENSOR_SPAN.from && T <= SENSOR_SPAN.to) return T;
  const cold = !(T > SENSOR_SPAN.to);
  throw notAvailable(
    `ohms: ${quantityMark("resistance", ohms)} lies ${cold ? "below" : "above"} ${quantityMark("temperature", cold ? SENSOR_SPAN.from : SENSOR_SPAN.to)} on this curve: the sensor is ${cold ? "open (broken wire or plug)" : "shorted"}, or another part`,
  );
};

/** Resistance, ohm, at a temperature, K. */
export const resistanceOf = (T: number, sensor: Sensor, trace: Trace = silent): number =>
  sensor === "10K3"
    ? trace.step(steinhartResistance, { x: trace.step(steinhartHalf, { T }) })
    : trace.step(betaResistance, { T, beta: sensor });

export interface OtherReadings {
  /** K */
  readonly otherLowest: number;
  readonly otherHighest: number;
}

const nameOf = (sensor: Sensor): string => (sensor === "10K3" ? "10K3" : `beta ${sensor}`);

/** What the same resistance would read by the other curves that are sold as 10 kΩ. */
export const otherReadings = (ohms: number, sensor: Sensor, trace: Trace = silent): OtherReadings => {
  const others: readonly Sensor[] = ["10K3" as const, ...OTHER_BETAS].filter((each) => each !== sensor);
  let [otherLowest, otherHighest] = [Number.POSITIVE_INFINITY, 0];
  for (const each of others) {
    const T = rawTemperature(ohms, each);
    otherLowest = Math.min(otherLowest, T);
    otherHighest = Math.max(otherHighest, T);
  }
  if (trace.on)
    trace.within("The same resistance by other curves that are sold as 10k", () => {
      for (const each of others) {
        trace.remark(nameOf(each));
        rawTemperature(ohms, each, trace);
      }
    });
  return { otherLowest, otherHighest };
};
