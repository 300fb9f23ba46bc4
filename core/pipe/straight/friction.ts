/** Friction of water in straight smooth pipe. */
import { silent, type Trace } from "../../kernel/define/steps";
import { LAMINAR_REYNOLDS_LIMIT, colebrook, laminarFriction } from "../equations";

/** Roughness of PVC, m (drawn tubing in texts of hydraulics). */
export const PVC_ROUGHNESS = 1.5e-6;

/** Passes of the fixed-point start and of Newton's method; three of the latter converge to rounding. */
const NEWTON_PASSES = 4;

/**
 * Darcy friction factor: 64/Re below Re 2,040, else the root of Colebrook's relation, by Newton's method on 1/√f (the
 * relation is nearly linear in it).
 *
 * @param re Reynolds number, above 0
 * @param roughness m
 * @param bore m
 */
export const frictionFactor = (re: number, roughness: number, bore: number, trace: Trace = silent): number => {
  if (re < LAMINAR_REYNOLDS_LIMIT) return trace.step(laminarFriction, { Re: re });
  const rough = roughness / (3.7 * bore);
  let x = -2 * Math.log10(rough + 5.74 / re ** 0.9);
  for (let pass = 0; pass < NEWTON_PASSES; pass++) {
    const inside = rough + (2.51 * x) / re;
    const residual = x + 2 * Math.log10(inside);
    x -= residual / (1 + (2 * 2.51) / (re * inside * Math.LN10));
  }
  const f = 1 / x ** 2;
  if (trace.on) trace.relation(colebrook, { f, k: roughness, D: bore, Re: re });
  return f;
};
