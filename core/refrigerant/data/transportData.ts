import type { SourceKey } from "../../kernel/reference";

/** Dilute-gas viscosity of a correlation, Pa s. */
export type DiluteViscosity =
  /** C sqrt(M T) / (sigma^2 exp(sum a (ln T*)^t)), M in g/mol, sigma in nm; rows a, t */
  | { readonly kind: "collision"; readonly C: number; readonly rows: readonly (readonly [a: number, t: number])[] }
  /** Kinetic theory with P. D. Neufeld's collision integral (1972) */
  | { readonly kind: "kinetic" }
  /** The form of Laesecke and Muzny (2017) */
  | { readonly kind: "R-744"; readonly a: readonly number[] };

/** Dense-fluid viscosity of a correlation, Pa s. */
export type DenseViscosity =
  /**
   * sum a delta^d tau^t exp(gamma delta^l) + (sum f delta^d tau^t) (1/(delta0 - delta) - 1/delta0),
   * delta0 = sum g tau^h / sum p tau^q; rows as named
   */
  | {
      readonly kind: "Batschinski-Hildebrand";
      readonly temperature: number;
      readonly density: number;
      readonly a: readonly (readonly [a: number, d: number, t: number, gamma: number, l: number])[];
      readonly f: readonly (readonly [f: number, d: number, t: number])[];
      readonly g: readonly (readonly [g: number, h: number])[];
      readonly p: readonly (readonly [p: number, q: number])[];
    }
  /** eta_t (c1 Tr rhor^3 + (rhor^2 + rhor^gamma) / (Tr - c2)), Laesecke and Muzny (2017) */
  | {
      readonly kind: "R-744";
      readonly c1: number;
      readonly c2: number;
      readonly gamma: number;
      readonly temperature: number;
      readonly density: number;
    };

/** A viscosity model. sigma in nm, epsilon over k in K, densities mol/m3. */
export type ViscosityData = { readonly source: SourceKey; readonly uncertainty: PhaseUncertainty } & (
  | {
      readonly kind: "correlation";
      readonly sigma: number;
      readonly epsilon: number;
      readonly dilute: DiluteViscosity;
      readonly dense: DenseViscosity;
    }
  /** Extended corresponding states with a reference fluid: psi = sum psi_k (rho / density)^k */
  | {
      readonly kind: "conformal";
      readonly reference: string;
      readonly sigma: number;
      readonly epsilon: number;
      readonly psi: readonly number[];
      readonly density: number;
    }
  /** Residual-entropy scaling: C, and the critical value of rho times the residual entropy, J/(m3 K) */
  | { readonly kind: "entropy"; readonly C: number; readonly critical: number }
);

/** Constants of the simplified crossover term of G. A. Olchowy, J. V. Sengers (1989). SI. */
export interface CriticalEnhancement {
  readonly qD: number;
  readonly zeta0: number;
  readonly Gamma: number;
  readonly R0: number;
  /** K; 1.5 times the reducing temperature where absent */
  readonly reference?: number;
}

/** A conductivity model, W/(m K). */
export type ConductivityData = { readonly source: SourceKey; readonly uncertainty: PhaseUncertainty } & (
  | {
      readonly kind: "correlation";
      /** sum A (T / temperature)^n, or for R-744 1e-3 tau^-0.5 / sum l_k tau^k */
      readonly dilute:
        | { readonly kind: "polynomial"; readonly temperature: number; readonly A: readonly number[] }
        | { readonly kind: "R-744"; readonly l: readonly number[] };
      /** sum B tau^t delta^d with these reducing values (K, kg/m3); rows B, t, d */
      readonly residual: {
        readonly temperature: number;
        readonly density: number;
        readonly rows: readonly (readonly [B: number, t: number, d: number])[];
      };
      readonly critical: CriticalEnhancement;
    }
  /** Extended corresponding states: psi as for viscosity, Eucken factor of the internal part f = f0 + f1 T (published times 1e-3) */
  | {
      readonly kind: "conformal";
      readonly reference: string;
      readonly psi: readonly number[];
      readonly density: number;
      readonly f: readonly [number, number];
      readonly critical: CriticalEnhancement;
    }
);

/** Expected uncertainty as a share, away from the critical point. */
export interface PhaseUncertainty {
  readonly liquid: number;
  readonly vapour: number;
}

/** Surface tension sum a (1 - T / critical)^n, N/m; rows a, n. */
export interface SurfaceTensionData {
  readonly critical: number;
  readonly rows: readonly (readonly [a: number, n: number])[];
  readonly source: SourceKey;
}

/** Transport properties and surface tension of one pure fluid. */
export interface TransportData {
  readonly name: string;
  readonly viscosity: ViscosityData;
  readonly conductivity: ConductivityData;
  readonly surfaceTension: SurfaceTensionData;
}
