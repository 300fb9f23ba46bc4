import { outOfRange } from "../../kernel/values/fault";
import { isothermalFlash } from "../equilibrium/flash";
import type { Mixture } from "../helmholtz/mixture";
import { mixtureState } from "../helmholtz/mixture";
import type { PhaseState } from "../helmholtz/substance";
import { phaseState } from "../helmholtz/substance";
import type { Fluid } from "../refrigerant";
import { curveDensity, curveIncipient, curvePressure } from "../saturation/saturationCurve";
import { markPressure, markTemperature } from "../marks";

/** Liquid and vapour together, SI by mass of the mixture. */
export interface TwoPhaseState {
  readonly phase: "two-phase";
  /** K */
  readonly temperature: number;
  /** Pa */
  readonly pressure: number;
  /** kg/m3 of the mixture, as if both phases moved at one velocity */
  readonly density: number;
  /** J/kg */
  readonly enthalpy: number;
  /** J/(kg K) */
  readonly entropy: number;
  /** Vapour's share by mass, 0 to 1 */
  readonly quality: number;
  readonly liquid: PhaseState;
  readonly vapour: PhaseState;
  /** Blends off an azeotrope: mole fractions of both phases, and how the flash ended. */
  readonly flash?: {
    readonly x: readonly number[];
    readonly y: readonly number[];
    readonly residual: number;
    readonly passes: number;
  };
}

/** Mixes two phases by a vapour share by mass. */
export function mixPhases(liquid: PhaseState, vapour: PhaseState, quality: number): TwoPhaseState {
  const by = (l: number, v: number) => l + quality * (v - l);
  return {
    phase: "two-phase",
    temperature: vapour.temperature,
    pressure: vapour.pressure,
    density: 1 / by(1 / liquid.density, 1 / vapour.density),
    enthalpy: by(liquid.enthalpy, vapour.enthalpy),
    entropy: by(liquid.entropy, vapour.entropy),
    quality,
    liquid,
    vapour,
  };
}

/** Relative width of the dome in pressure below which both phases count as having the blend's composition. */
const AZEOTROPIC = 1e-6;

/** At an azeotrope the phases share one composition, so a flash has nothing to solve; the lever rule gives the share. */
function azeotropeState(fluid: Fluid, temperature: number, pressure: number, quality: number): TwoPhaseState {
  const s = fluid.substance;
  const phase = (name: "liquid" | "vapour", curve: "bubble" | "dew") =>
    phaseState(s, { phase: name, temperature, pressure, density: curveDensity(fluid[curve], name, temperature) });
  return mixPhases(phase("liquid", "bubble"), phase("vapour", "dew"), quality);
}

/**
 * A blend inside its glide, by an isothermal flash started between the fitted bubble and dew points.
 *
 * @param temperature K
 * @param pressure Pa, between dew and bubble pressure
 */
export function twoPhaseState(fluid: Fluid, mixture: Mixture, temperature: number, pressure: number): TwoPhaseState {
  const { bubble, dew } = fluid;
  const [pBubble, pDew] = [curvePressure(bubble, temperature), curvePressure(dew, temperature)];
  const towards = pBubble > pDew ? (pressure - pDew) / (pBubble - pDew) : 0.5;
  if (pBubble - pDew < AZEOTROPIC * pBubble) return azeotropeState(fluid, temperature, pressure, 1 - towards);
  const between = (atDew: number, atBubble: number) => atDew + towards * (atBubble - atDew);
  const y = curveIncipient(bubble, temperature);
  const x = curveIncipient(dew, temperature);
  const z = mixture.parts.moleFractions;
  const found = isothermalFlash(mixture, temperature, pressure, {
    logK: z.map((part, i) => between(Math.log(part / x[i]!), Math.log(y[i]! / part))),
    liquid: between(curveDensity(dew, "liquid", temperature), curveDensity(bubble, "liquid", temperature)),
    vapour: between(curveDensity(dew, "vapour", temperature), curveDensity(bubble, "vapour", temperature)),
  });
  if (!found)
    throw outOfRange({
      quantity: `${fluid.name} two-phase state`,
      limit: "one whose flash converges",
      got: `${markPressure(pressure)} at ${markTemperature(temperature)}`,
    });
  const mass = (fractions: ArrayLike<number>) =>
    mixture.parts.components.reduce((sum, part, i) => sum + fractions[i]! * part.molarMass, 0);
  const share = Math.min(1, Math.max(0, found.vapourShare));
  const [massL, massV] = [(1 - share) * mass(found.x), share * mass(found.y)];
  const liquid = mixtureState(mixture, found.x, { phase: "liquid", temperature, density: found.liquid, pressure });
  const vapour = mixtureState(mixture, found.y, { phase: "vapour", temperature, density: found.vapour, pressure });
  return {
    ...mixPhases(liquid, vapour, massV / (massL + massV)),
    flash: { x: [...found.x], y: [...found.y], residual: found.residual, passes: found.passes },
  };
}
