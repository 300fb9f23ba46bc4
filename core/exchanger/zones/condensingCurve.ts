/** Temperature of a condensing refrigerant along its enthalpy: gas, glide and liquid at one pressure. */
import { notAvailable } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import type { PhaseState } from "../../refrigerant/helmholtz/substance";
import type { Fluid } from "../../refrigerant/refrigerant";
import { saturatedStateAtPressure, refrigerantSaturationPressure } from "../../refrigerant/saturation/saturation";
import { checkRange, singlePhase, stateAt } from "../../refrigerant/state/state";
import { stateOnIsobar } from "../../refrigerant/state/stateBy";

/** Slices of each zone. */
export const SLICES = { desuperheating: 8, condensing: 24, subcooling: 4 } as const;

/** Below this glide, K, temperature counts as linear in enthalpy between bubble and dew: within 0.005 K. */
const SMALL_GLIDE = 0.15;

/** K within which gas counts as saturated: converting between pressure and temperature adds rounding. */
const ON_THE_LINE = 1e-6;

export interface CondensingCurve {
  readonly pressure: number;
  /** The gas as it enters, its dew point, its bubble point, the liquid as it leaves. */
  readonly inlet: PhaseState;
  readonly dew: PhaseState;
  readonly bubble: PhaseState;
  readonly outlet: PhaseState;
  /** Points from inlet to outlet, J/kg and K. */
  readonly enthalpies: Float64Array;
  readonly temperatures: Float64Array;
  /** Index of the dew and of the bubble point among the points. */
  readonly dewAt: number;
  readonly bubbleAt: number;
}

/** How the gas enters: its temperature, K, or its enthalpy, J/kg (IIR zero). */
export type Inlet = { readonly temperature: number } | { readonly enthalpy: number };

const inletState = (fluid: Fluid, dew: PhaseState, inlet: Inlet): PhaseState => {
  if ("enthalpy" in inlet) {
    if (inlet.enthalpy < dew.enthalpy)
      throw notAvailable("the discharge gas would be wet: the cycle leaves no superheat; raise the superheat");
    return inlet.enthalpy === dew.enthalpy ? dew : stateOnIsobar(fluid, dew, inlet.enthalpy, "enthalpy");
  }
  const T = inlet.temperature;
  if (T < dew.temperature - ON_THE_LINE)
    throw notAvailable(
      `dischargeTemperature: at least condensing (${quantityMark("temperature", dew.temperature)}), or the gas is wet, got ${quantityMark("temperature", T)}`,
    );
  if (T <= dew.temperature + ON_THE_LINE) return dew;
  checkRange(fluid, dew.pressure, T);
  return singlePhase(fluid, dew.pressure, T, "vapour");
};

/** Temperatures inside the dome: flashes at two points of the glide, and the cubic through them and both ends. */
const insideDome = (fluid: Fluid, dew: PhaseState, bubble: PhaseState): ((h: number) => number) => {
  const glide = dew.temperature - bubble.temperature;
  const known: readonly { readonly enthalpy: number; readonly temperature: number }[] =
    glide < SMALL_GLIDE
      ? [bubble, dew]
      : [
          bubble,
          stateAt(fluid, dew.pressure, bubble.temperature + 0.25 * glide),
          stateAt(fluid, dew.pressure, bubble.temperature + 0.75 * glide),
          dew,
        ];
  const parts = known.map((at) =>
    known.reduce((part, other) => (other === at ? part : part / (at.enthalpy - other.enthalpy)), at.temperature),
  );
  return (h) => {
    let T = 0;
    for (let k = 0; k < known.length; k++) {
      let part = parts[k] ?? Number.NaN;
      for (let j = 0; j < known.length; j++) if (j !== k) part *= h - (known[j]?.enthalpy ?? Number.NaN);
      T += part;
    }
    return T;
  };
};

/**
 * The states of one phase along equal steps of enthalpy: each search starts from the cubic through the two states before
 * and their heat capacities.
 */
const walkAlong = (fluid: Fluid, from: PhaseState): ((h: number) => number) => {
  let before: PhaseState | undefined;
  let last = from;
  return (h) => {
    const step = h - last.enthalpy;
    const guess = before && 5 * before.temperature - 4 * last.temperature + step * (2 / before.cp + 4 / last.cp);
    const next = stateOnIsobar(fluid, last, h, "enthalpy", guess);
    [before, last] = [last, next];
    return next.temperature;
  };
};

/** Points of one zone after its first one. */
const fill = (
  curve: { readonly h: number[]; readonly T: number[] },
  to: { readonly enthalpy: number; readonly temperature: number },
  slices: number,
  temperatureAt: (h: number) => number,
): void => {
  const from = curve.h[curve.h.length - 1] ?? to.enthalpy;
  if (from === to.enthalpy) return;
  for (let i = 1; i < slices; i++) {
    const h = from + ((to.enthalpy - from) * i) / slices;
    curve.h.push(h);
    curve.T.push(temperatureAt(h));
  }
  curve.h.push(to.enthalpy);
  curve.T.push(to.temperature);
};

/**
 * The curve of a refrigerant that condenses at one pressure.
 *
 * @param condensing dew temperature, K
 * @param subcooling below the bubble point, K, from 0
 */
export const condensingCurve = (
  fluid: Fluid,
  condensing: number,
  subcooling: number,
  inlet: Inlet,
): CondensingCurve => {
  const pressure = refrigerantSaturationPressure(fluid, condensing, "dew");
  const dew = saturatedStateAtPressure(fluid, pressure, "dew");
  const bubble =
    fluid.bubble === fluid.dew ? bubbleOf(fluid, dew) : saturatedStateAtPressure(fluid, pressure, "bubble");
  const enters = inletState(fluid, dew, inlet);
  const leaves = subcooling > 0 ? liquidBelow(fluid, bubble, subcooling) : bubble;
  const curve = { h: [enters.enthalpy], T: [enters.temperature] };
  fill(curve, dew, SLICES.desuperheating, walkAlong(fluid, enters));
  const dewAt = curve.h.length - 1;
  fill(curve, bubble, SLICES.condensing, insideDome(fluid, dew, bubble));
  const bubbleAt = curve.h.length - 1;
  fill(curve, leaves, SLICES.subcooling, walkAlong(fluid, bubble));
  return {
    pressure,
    inlet: enters,
    dew,
    bubble,
    outlet: leaves,
    enthalpies: new Float64Array(curve.h),
    temperatures: new Float64Array(curve.T),
    dewAt,
    bubbleAt,
  };
};

/** A pure fluid's bubble point, set to exactly the dew point's temperature. */
const bubbleOf = (fluid: Fluid, dew: PhaseState): PhaseState => ({
  ...saturatedStateAtPressure(fluid, dew.pressure, "bubble"),
  temperature: dew.temperature,
});

const liquidBelow = (fluid: Fluid, bubble: PhaseState, subcooling: number): PhaseState => {
  const T = bubble.temperature - subcooling;
  checkRange(fluid, bubble.pressure, T);
  return singlePhase(fluid, bubble.pressure, T, "liquid");
};
