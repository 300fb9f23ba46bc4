/** Moist air by temperature, relative humidity and altitude. */
import { notAvailable } from "../kernel/values/fault";
import { standardAtmosphere } from "../kernel/define/pressureBasis";
import { silent, type Trace } from "../kernel/define/steps";
import { humidityRatioEquation, partialPressure } from "./equations";
import { DRIEST, dewPointAt, saturationPressure, wetBulbAt } from "./psychrometrics";

/** Partial pressure of the vapour, Pa, at T (K) and relative humidity (0 to 1). */
export const vapourPressureOfAir = (T: number, humidity: number, trace: Trace = silent): number => {
  const ps = saturationPressure(T);
  trace.property({
    substance: T <= 273.16 ? "air saturated over ice" : "air saturated over water",
    property: "vapour pressure",
    inputs: { air: { value: T, kind: "temperature" } },
    result: { value: ps, kind: "pressure" },
    source: { key: "ashraePsychrometrics", where: "eq. 5 and 6" },
  });
  return trace.step(partialPressure, { phi: humidity, ps });
};

/** Mass of vapour per mass of dry air, at T (K), relative humidity and altitude (m). */
export const humidityRatioOfAir = (T: number, humidity: number, altitude: number, trace: Trace = silent): number => {
  const pv = vapourPressureOfAir(T, humidity, trace);
  const p = trace.step(standardAtmosphere, { z: altitude });
  return trace.step(humidityRatioEquation, { pv, p });
};

/** Dew point, K; below the triple point of water the frost point. */
export const dewPointOfAir = (T: number, humidity: number, trace: Trace = silent): number => {
  const pv = vapourPressureOfAir(T, humidity, trace);
  if (pv < DRIEST) throw notAvailable("humidity: air this dry has no dew point above −148 °F (−100 °C)");
  const dewPoint = dewPointAt(T, pv);
  trace.property({
    substance: "moist air",
    property: dewPoint < 273.16 ? "dew point (frost point: saturation over ice)" : "dew point",
    inputs: { vapourPressure: { value: pv, kind: "pressure" } },
    result: { value: dewPoint, kind: "temperature" },
    uncertainty: "0.1 K",
    source: { key: "ashraePsychrometrics", where: "eq. 5 and 6, inverted" },
  });
  return dewPoint;
};

/** Thermodynamic wet bulb, K, at T (K), relative humidity and altitude (m); below 0 °C over ice. */
export const wetBulbOfAir = (T: number, humidity: number, altitude: number, trace: Trace = silent): number => {
  const pv = vapourPressureOfAir(T, humidity, trace);
  const p = trace.step(standardAtmosphere, { z: altitude });
  const W = trace.step(humidityRatioEquation, { pv, p });
  const wetBulb = wetBulbAt(T, W, p);
  trace.property({
    substance: "moist air",
    property: "thermodynamic wet bulb",
    inputs: {
      air: { value: T, kind: "temperature" },
      "humidity ratio": { value: W, kind: "humidity ratio" },
      pressure: { value: p, kind: "pressure" },
    },
    result: { value: wetBulb, kind: "temperature" },
    uncertainty: "0.1 K",
    source: { key: "ashraePsychrometrics", where: "eq. 33 and 35, solved for the wet bulb" },
  });
  return wetBulb;
};
