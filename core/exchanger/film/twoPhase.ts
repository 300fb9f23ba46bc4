/** Friction and hold-up of a condensing flow. */
import { sum } from "../../numeric/series";
import { silent, type Trace } from "../../kernel/define/steps";
import { meanDensity, rouhaniVoid, twoPhaseDrop, ziviVoid } from "./twoPhaseEquations";
import type { Tube, TwoPhaseProperties } from "./fluid";
import { insideDrop } from "./insideFilm";

const SLICES = 20;

/**
 * Friction drop of two phases, Pa, over the tube while the share of vapour runs evenly from one value to another
 * (Müller-Steinhagen and Heck, with the friction of the tube as it is, coiled or straight). Pressure regained as the
 * vapour slows down is not counted: the drop is on the safe side.
 *
 * @param flow kg/s in one tube
 */
export const condensingDrop = (
  tube: Tube,
  fluid: TwoPhaseProperties,
  flow: number,
  shares: { readonly from: number; readonly to: number },
  trace: Trace = silent,
): number => {
  const A = trace.within("All the flow as liquid", () => insideDrop(tube, fluid.liquid, flow, trace));
  const B = trace.within("All the flow as vapour", () => insideDrop(tube, fluid.vapour, flow, trace));
  const local = Array.from({ length: SLICES }, (_, slice) => {
    const x = shares.from + ((shares.to - shares.from) * (slice + 0.5)) / SLICES;
    return twoPhaseDrop.code({ A, B, x }) / SLICES;
  });
  trace.step(twoPhaseDrop, { A, B, x: (shares.from + shares.to) / 2 });
  trace.series({
    title: "Friction drop by slices",
    of: twoPhaseDrop.name,
    kind: "pressure drop",
    total: "sum",
    values: local,
  });
  return sum(local);
};

/**
 * Void fraction at a share of vapour: Rouhani and Axelsson where the surface tension is given, else Zivi.
 *
 * @param x share of vapour, above 0, to 1
 */
export const voidFraction = (
  fluid: TwoPhaseProperties,
  x: number,
  flow: { readonly bore: number; readonly flow: number; readonly surfaceTension?: number },
  trace: Trace = silent,
): number => {
  const [rl, rg] = [fluid.liquid.rho, fluid.vapour.rho];
  return flow.surfaceTension === undefined
    ? trace.step(ziviVoid, { x, rg, rl })
    : trace.step(rouhaniVoid, { x, rg, rl, s: flow.surfaceTension, D: flow.bore, m: flow.flow });
};

/** Mass in a tube of two phases, kg, the share of vapour running evenly between the two values. */
export const holdUp = (
  tube: Tube,
  fluid: TwoPhaseProperties,
  flow: { readonly flow: number; readonly surfaceTension?: number },
  shares: { readonly from: number; readonly to: number },
): number => {
  const volume = (Math.PI / 4) * tube.bore ** 2 * tube.length;
  let sum = 0;
  for (let slice = 0; slice < SLICES; slice++) {
    const x = shares.from + ((shares.to - shares.from) * (slice + 0.5)) / SLICES;
    const e = voidFraction(fluid, x, { ...flow, bore: tube.bore });
    sum += meanDensity.code({ e, rg: fluid.vapour.rho, rl: fluid.liquid.rho });
  }
  return (volume * sum) / SLICES;
};
