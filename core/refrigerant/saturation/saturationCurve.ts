import type { ChebyshevPieces } from "../../numeric/chebyshev";
import { chebyshevAt, chebyshevWithSlope } from "../../numeric/chebyshev";
import { unpackSeries } from "../../numeric/packedSeries";
import type { CurveData } from "../data/saturationData";

/** A saturation curve ready to evaluate: see `CurveData` for the variables. */
export interface SaturationCurve {
  readonly pressure: ChebyshevPieces;
  readonly liquid: ChebyshevPieces;
  readonly vapour: ChebyshevPieces;
  readonly incipient: readonly ChebyshevPieces[];
  readonly critical: number;
  /** Even steps of temperature along the curve, to start from when a pressure is given. */
  readonly steps: CurveSteps;
  /** ln p at the ends of the curve */
  readonly lowest: number;
  readonly highest: number;
}

/** ln p and its slope by temperature at the ends of even steps, `width` in K from `from`. */
interface CurveSteps {
  readonly from: number;
  readonly width: number;
  readonly log: Float64Array;
  readonly slope: Float64Array;
}

const STEPS = 128;

function curveSteps(pressure: ChebyshevPieces): CurveSteps {
  const from = pressure.breaks[0]!;
  const width = (pressure.breaks[pressure.breaks.length - 1]! - from) / STEPS;
  const log = new Float64Array(STEPS + 1);
  const slope = new Float64Array(STEPS + 1);
  const at = { value: 0, slope: 0 };
  for (let i = 0; i <= STEPS; i++) {
    chebyshevWithSlope(pressure, from + i * width, at);
    log[i] = at.value;
    slope[i] = at.slope;
  }
  return { from, width, log, slope };
}

/** Near the temperature of a ln p, K: by the cubic through the ends of its step, good to 1e-4 K. */
function nearTemperature({ from, width, log, slope }: CurveSteps, value: number): number {
  let low = 0;
  for (let half = STEPS / 2; half >= 1; half /= 2) if (value > log[low + half]!) low += half;
  const rise = log[low + 1]! - log[low]!;
  const u = (value - log[low]!) / rise;
  const [start, end] = [rise / slope[low]!, rise / slope[low + 1]!];
  const u2 = u * u;
  const u3 = u2 * u;
  return from + (low + 3 * u2 - 2 * u3) * width + (u3 - 2 * u2 + u) * start + (u3 - u2) * end;
}

/** Lays out a curve; `critical` is the temperature in q = sqrt(1 - T / critical). */
export function compileCurve(data: CurveData, critical: number): SaturationCurve {
  const pressure = unpackSeries(data.pressure);
  return {
    pressure,
    liquid: unpackSeries(data.liquid),
    vapour: unpackSeries(data.vapour),
    incipient: data.incipient.map(unpackSeries),
    critical,
    steps: curveSteps(pressure),
    lowest: chebyshevAt(pressure, pressure.breaks[0]!),
    highest: chebyshevAt(pressure, pressure.breaks[pressure.breaks.length - 1]!),
  };
}

/** Saturation pressure, Pa, at a temperature in K within the curve. */
export const curvePressure = (curve: SaturationCurve, temperature: number): number =>
  Math.exp(chebyshevAt(curve.pressure, temperature));

/** Saturation temperature, K, at a pressure in Pa within the curve: by steps, then Newton steps on the pressure's series. */
export function curveTemperature(curve: SaturationCurve, pressure: number): number {
  const log = Math.log(pressure);
  const at = { value: 0, slope: 0 };
  let temperature = nearTemperature(curve.steps, log);
  // One step is enough but for the last kelvins below the critical point.
  for (let pass = 0; pass < 3; pass++) {
    chebyshevWithSlope(curve.pressure, temperature, at);
    const change = (at.value - log) / at.slope;
    temperature -= change;
    if (Math.abs(change) < 1e-5) break;
  }
  return temperature;
}

/** The fitted molar density of one phase on the curve, mol/m3: good to about 1e-8 (incipient phases to 1e-5). */
export const curveDensity = (curve: SaturationCurve, phase: "liquid" | "vapour", temperature: number): number =>
  Math.exp(chebyshevAt(curve[phase], Math.sqrt(Math.max(0, 1 - temperature / curve.critical))));

/** Fitted mole fractions of the incipient phase, to start a flash from. */
export const curveIncipient = (curve: SaturationCurve, temperature: number): number[] =>
  curve.incipient.map((part) => Math.exp(chebyshevAt(part, Math.sqrt(Math.max(0, 1 - temperature / curve.critical)))));
