import { piecewiseFit, type PiecewiseFit } from "../../numeric/chebyshev";
import type { SaturationPoint } from "../equilibrium/trace";

/** A converged saturation curve to be fitted: a solver, its range (K) and the critical temperature for q. */
export interface ConvergedCurve {
  readonly at: (temperature: number) => SaturationPoint;
  readonly range: readonly [number, number];
  readonly critical: number;
}

/** The fits of one curve, before they are rounded and packed: see `CurveData`. */
export interface FittedCurve {
  readonly pressure: PiecewiseFit;
  readonly liquid: PiecewiseFit;
  readonly vapour: PiecewiseFit;
  readonly incipient: readonly PiecewiseFit[];
}

/** Fits one curve; blends (with an incipient composition) need their incipient phase only as a start for a flash. */
export function fitCurve(curve: ConvergedCurve, loosely: "liquid" | "vapour" | undefined): FittedCurve {
  const { at, range, critical } = curve;
  const seen = new Map<number, SaturationPoint>();
  const point = (temperature: number): SaturationPoint => {
    const known = seen.get(temperature);
    if (known) return known;
    const found = at(temperature);
    seen.set(temperature, found);
    return found;
  };
  const logP = (temperature: number) => Math.log(point(temperature).pressure);
  const byQ = (value: (p: SaturationPoint) => number) => (q: number) => value(point(critical * (1 - q * q)));
  const q = (temperature: number) => Math.sqrt(1 - temperature / critical);
  // Rounded outwards: the pieces must cover the whole range.
  const qRange = [q(range[1]), q(range[0])] as const;
  const density = (phase: "liquid" | "vapour"): PiecewiseFit =>
    piecewiseFit(
      byQ((p) => Math.log(p[phase])),
      qRange,
      loosely === phase
        ? { degree: 6, tolerance: 2e-5, decimals: 7, narrowest: 0.004 }
        : { degree: 8, tolerance: 2e-8, decimals: 10, narrowest: 0.004 },
    );
  const components = point(range[0]).incipient.length;
  return {
    pressure: piecewiseFit(logP, range, { degree: 12, tolerance: 5e-11, decimals: 13, narrowest: 0.2 }),
    liquid: density("liquid"),
    vapour: density("vapour"),
    incipient: Array.from({ length: components }, (_, i) =>
      piecewiseFit(
        byQ((p) => Math.log(p.incipient[i]!)),
        qRange,
        { degree: 6, tolerance: 2e-5, decimals: 7, narrowest: 0.01 },
      ),
    ),
  };
}
