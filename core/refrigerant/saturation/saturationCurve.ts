import type { ChebyshevPieces } from "../../numeric/chebyshev";
import { chebyshevAt, chebyshevWithSlope } from "../../numeric/chebyshev";
import { unpackSeries } from "../../numeric/packedSeries";
import type { CurveData } from "../data/saturationData";

/** A saturation curve ready to evaluate: see `CurveData` for the variables. */
export interface SaturationCurve {
  readonly pressure: ChebyshevPieces;
  readonly temperature: ChebyshevPieces;
  readonly liquid: ChebyshevPieces;
  readonly vapour: ChebyshevPieces;
  readonly incipient: readonly ChebyshevPieces[];
  readonly critical: number;
  /** ln p at the ends of the curve */
  readonly lowest: number;
  readonly highest: number;
}

/** Lays out a curve; `critical` is the temperature in q = sqrt(1 - T / critical). */
export function compileCurve(data: CurveData, critical: number): SaturationCurve {
  const pressure = unpackSeries(data.pressure);
  return {
    pressure,
    temperature: unpackSeries(data.temperature),
    liquid: unpackSeries(data.liquid),
    vapour: unpackSeries(data.vapour),
    incipient: data.incipient.map(unpackSeries),
    critical,
    lowest: chebyshevAt(pressure, pressure.breaks[0]!),
    highest: chebyshevAt(pressure, pressure.breaks[pressure.breaks.length - 1]!),
  };
}

/** Saturation pressure, Pa, at a temperature in K within the curve. */
export const curvePressure = (curve: SaturationCurve, temperature: number): number =>
  Math.exp(chebyshevAt(curve.pressure, temperature));

/** Saturation temperature, K, at a pressure in Pa within the curve: fitted, then one Newton step on the pressure's series. */
export function curveTemperature(curve: SaturationCurve, pressure: number): number {
  const log = Math.log(pressure);
  const near = chebyshevAt(curve.temperature, log);
  const at = { value: 0, slope: 0 };
  chebyshevWithSlope(curve.pressure, near, at);
  return near - (at.value - log) / at.slope;
}

/** The fitted molar density of one phase on the curve, mol/m3: good to about 1e-8 (incipient phases to 1e-5). */
export const curveDensity = (curve: SaturationCurve, phase: "liquid" | "vapour", temperature: number): number =>
  Math.exp(chebyshevAt(curve[phase], Math.sqrt(Math.max(0, 1 - temperature / curve.critical))));

/** Fitted mole fractions of the incipient phase, to start a flash from. */
export const curveIncipient = (curve: SaturationCurve, temperature: number): number[] =>
  curve.incipient.map((part) => Math.exp(chebyshevAt(part, Math.sqrt(Math.max(0, 1 - temperature / curve.critical)))));
