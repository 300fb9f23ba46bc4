import { newtonSystem } from "../../numeric/newtonSystem";
import { GAS_CONSTANT, logFugacities, mixtureAt } from "../helmholtz/mixture";
import type { Mixture } from "../helmholtz/mixture";

/** A blend at its bubble or dew point: molar densities mol/m3, pressure Pa, mole fractions of the incipient phase. */
export interface BlendEquilibrium {
  readonly liquid: number;
  readonly vapour: number;
  readonly pressure: number;
  readonly incipient: readonly number[];
  /** Largest of the relative pressure difference, the differences of ln fugacity and the sum of fractions less one. */
  readonly residual: number;
}

/** Which phase has the blend's own composition: the liquid at the bubble point, the vapour at the dew point. */
export type EnvelopeCurve = "bubble" | "dew";

/**
 * Equal pressures and fugacities at one temperature, by Newton on the logarithms of both densities and of the incipient
 * phase's fractions.
 *
 * @param temperature K
 * @param start what to start from
 * @returns undefined where the search fails or falls on the trivial answer of two equal phases
 */
export function blendEquilibrium(
  m: Mixture,
  curve: EnvelopeCurve,
  temperature: number,
  start: { readonly liquid: number; readonly vapour: number; readonly incipient: readonly number[] },
): BlendEquilibrium | undefined {
  const z = m.parts.moleFractions;
  const n = z.length;
  const w = new Float64Array(n);
  const fL = new Float64Array(n);
  const fV = new Float64Array(n);
  const pressure = (density: number) => density * GAS_CONSTANT * temperature * (1 + m.out[1]!);
  let pV = 0;
  const residuals = (u: Float64Array, into: Float64Array) => {
    for (let i = 0; i < n; i++) w[i] = Math.exp(u[2 + i]!);
    const [liquid, vapour] = [Math.exp(u[0]!), Math.exp(u[1]!)];
    const [x, y] = curve === "bubble" ? [z, w] : [w, z];
    mixtureAt(m, x, temperature, liquid);
    logFugacities(m, x, liquid, fL);
    const pL = pressure(liquid);
    mixtureAt(m, y, temperature, vapour);
    logFugacities(m, y, vapour, fV);
    pV = pressure(vapour);
    into[0] = pL / pV - 1;
    into[1] = -1;
    for (let i = 0; i < n; i++) {
      into[1] += w[i]!;
      into[2 + i] = fL[i]! - fV[i]!;
    }
  };
  const unknowns = [Math.log(start.liquid), Math.log(start.vapour), ...start.incipient.map((part) => Math.log(part))];
  const found = newtonSystem(residuals, unknowns, 1e-9);
  if (!found) return undefined;
  residuals(found.unknowns, new Float64Array(n + 2));
  const [liquid, vapour] = [Math.exp(found.unknowns[0]!), Math.exp(found.unknowns[1]!)];
  if (!(liquid > vapour * (1 + 1e-3))) return undefined;
  return { liquid, vapour, pressure: pV, incipient: [...w], residual: found.residual };
}
