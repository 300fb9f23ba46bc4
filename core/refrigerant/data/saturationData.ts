import type { PackedSeries } from "../../numeric/packedSeries";

/** Chebyshev series by pieces. */
export interface SeriesData extends PackedSeries {
  /** The largest difference from the converged equilibria, in the series' own unit. */
  readonly error: number;
}

/** One saturation curve. q = sqrt(1 - T / critical temperature), T in K, p in Pa, densities mol/m3. */
export interface CurveData {
  /** ln p by T */
  readonly pressure: SeriesData;
  /** ln of the liquid's density by q */
  readonly liquid: SeriesData;
  /** ln of the vapour's density by q */
  readonly vapour: SeriesData;
  /** Blends: ln of each mole fraction of the incipient phase by q */
  readonly incipient: readonly SeriesData[];
}

/** A refrigerant's saturation lines, fitted to converged phase equilibria of its equation of state. */
export interface SaturationData {
  readonly name: string;
  /** Lowest and highest temperature of the fit, K. */
  readonly from: number;
  readonly to: number;
  /** Where liquid and vapour become one: published for pure fluids, traced on the model for blends. K, Pa */
  readonly critical: { readonly temperature: number; readonly pressure: number };
  /** Enthalpy over R (K) and entropy over R to subtract for 200 kJ/kg and 1 kJ/(kg K) in the saturated liquid at 0 degC. */
  readonly zero: { readonly enthalpy: number; readonly entropy: number };
  readonly bubble: CurveData;
  /** Blends only: a pure fluid has one line. */
  readonly dew?: CurveData;
}
