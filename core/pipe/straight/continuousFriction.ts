/** A friction factor without a step between laminar and turbulent flow, with its slope: a network's solver needs both. */
import { equation, symbol } from "../../kernel/define/equation";
import { silent, type Trace } from "../../kernel/define/steps";
import { laminarFriction } from "../equations";
import { frictionFactor } from "./friction";

export const transitionFriction = equation({
  name: "Darcy friction factor between laminar and turbulent flow",
  form: "f = 7*FA - FB + Re/2000 * (0.128 - 17*FA + 2.5*FB + Re/2000 * (-0.128 + 13*FA - 2*FB + Re/2000 * (0.032 - 3*FA + 0.5*FB)))",
  kind: "number",
  symbols: {
    Re: symbol("number", "Reynolds number", 2000, 4000),
    FA: symbol("number", "friction factor at Re 4,000", 0.035, 0.06),
    FB: symbol("number", "twice that, plus Re df/dRe there", 0.05, 0.1),
  },
  validity: "Re from 2,000 to 4,000, where friction is uncertain",
  source: "epanet22",
  code: ({ Re, FA, FB }) => {
    const R = Re / 2000;
    return (
      7 * FA - FB + R * (0.128 - 17 * FA + 2.5 * FB + R * (-0.128 + 13 * FA - 2 * FB + R * (0.032 - 3 * FA + 0.5 * FB)))
    );
  },
});

/** Ends of the span between laminar and turbulent flow. */
export const TRANSITION = [2000, 4000] as const;

export interface FrictionSlope {
  f: number;
  /** df/dRe */
  slope: number;
}

/** Slope of Colebrook's root, from its relation. */
function turbulentSlope(re: number, rough: number, f: number): number {
  const x = 1 / Math.sqrt(f);
  const a = (2 * 2.51) / (re * (rough + (2.51 * x) / re) * Math.LN10);
  return (-2 * f * a) / (1 + a) / re;
}

/** Values at Re 4,000 that anchor the cubic: f, and twice f plus Re df/dRe. */
export function transitionAnchors(roughness: number, bore: number): readonly [FA: number, FB: number] {
  const FA = frictionFactor(TRANSITION[1], roughness, bore);
  return [FA, 2 * FA + TRANSITION[1] * turbulentSlope(TRANSITION[1], roughness / (3.7 * bore), FA)];
}

/** Darcy friction factor at any Reynolds number above 0: 64/Re, a cubic between the ends, Colebrook's root above. */
export function continuousFriction(
  re: number,
  roughness: number,
  bore: number,
  anchors: readonly [number, number],
  trace: Trace = silent,
): FrictionSlope {
  if (re < TRANSITION[0]) {
    const f = trace.step(laminarFriction, { Re: re });
    return { f, slope: -f / re };
  }
  if (re >= TRANSITION[1]) {
    const f = frictionFactor(re, roughness, bore, trace);
    return { f, slope: turbulentSlope(re, roughness / (3.7 * bore), f) };
  }
  const [FA, FB] = anchors;
  const R = re / TRANSITION[0];
  const [, x2, x3, x4] = cubic(FA, FB);
  return {
    f: trace.step(transitionFriction, { Re: re, FA, FB }),
    slope: (x2 + R * (2 * x3 + R * 3 * x4)) / TRANSITION[0],
  };
}

function cubic(FA: number, FB: number): readonly [number, number, number, number] {
  return [7 * FA - FB, 0.128 - 17 * FA + 2.5 * FB, -0.128 + 13 * FA - 2 * FB, 0.032 - 3 * FA + 0.5 * FB];
}
