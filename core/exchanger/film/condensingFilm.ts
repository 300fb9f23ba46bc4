/** Condensation inside a tube: Shah 2009 along the share of vapour, with the vapour's resistance for a blend with glide. */
import { sumOf } from "../../numeric/series";
import { silent, type Trace } from "../../kernel/define/steps";
import {
  dittusBoelterFilm,
  glideFilm,
  gravityFilm,
  gravityLimit,
  sensibleShare,
  shah1979Film,
  shahParameter,
  shearLimit,
  shearedFilm,
  vapourVelocityNumber,
} from "./condensationEquations";
import { tubeReynolds } from "./equations";
import { prandtlOf, type TwoPhaseProperties } from "./fluid";

export interface CondensingFlow {
  /** Inside diameter, m. */
  readonly bore: number;
  /** kg/s in one tube */
  readonly flow: number;
  readonly fluid: TwoPhaseProperties;
  /** A blend's glide, K, and the heat given off over it, J/kg. */
  readonly glide?: { readonly temperature: number; readonly heat: number };
}

/** I: shear, II: shear and gravity, III: gravity. */
export type Regime = "I" | "II" | "III";

export interface LocalFilm {
  /** W/(m²·K) */
  readonly film: number;
  readonly regime: Regime;
}

/** The film of all the flow as liquid, W/(m²·K). */
const liquidFilm = ({ bore, flow, fluid: { liquid } }: CondensingFlow, trace: Trace): number => {
  const Re = trace.step(tubeReynolds, { m: flow, D: bore, mu: liquid.mu });
  return trace.step(dittusBoelterFilm, { Re, Pr: prandtlOf(liquid, trace), k: liquid.k, D: bore });
};

/** Film by Shah 1979, W/(m²·K). @param x share of vapour, above 0, below 1; `hl`: the film of all the flow as liquid, if known */
export const shah1979 = (condensing: CondensingFlow, x: number, trace: Trace = silent, hl?: number): number =>
  trace.step(shah1979Film, { hl: hl ?? liquidFilm(condensing, trace), x, pr: condensing.fluid.reducedPressure });

const regimeAt = ({ bore: D, flow: m, fluid }: CondensingFlow, x: number, trace: Trace): Regime => {
  const Z = trace.step(shahParameter, { x, pr: fluid.reducedPressure });
  const J = trace.step(vapourVelocityNumber, { x, m, D, rg: fluid.vapour.rho, rl: fluid.liquid.rho });
  if (J >= trace.step(shearLimit, { Z })) return "I";
  return J <= trace.step(gravityLimit, { Z }) ? "III" : "II";
};

/** Film by Shah 2009 for a horizontal straight tube; arguments as `shah1979`. */
export const shah2009 = (condensing: CondensingFlow, x: number, trace: Trace = silent, hl?: number): LocalFilm => {
  const { bore: D, flow: m, fluid } = condensing;
  const { liquid, vapour, reducedPressure: pr } = fluid;
  const regime = regimeAt(condensing, x, trace);
  const shear = (): number =>
    trace.step(shearedFilm, { ho: shah1979(condensing, x, trace, hl), mul: liquid.mu, mug: vapour.mu, pr });
  const gravity = (): number =>
    trace.step(gravityFilm, { m, x, D, mul: liquid.mu, rl: liquid.rho, rg: vapour.rho, k: liquid.k });
  const film = regime === "I" ? shear() : regime === "III" ? gravity() : shear() + gravity();
  return { film, regime };
};

/** The local film with the resistance of the vapour that must cool along the glide. */
const withGlide = (condensing: CondensingFlow, film: number, x: number, trace: Trace): number => {
  const { glide, fluid, bore: D, flow } = condensing;
  if (glide === undefined) return film;
  const Re = trace.step(tubeReynolds, { m: flow * x, D, mu: fluid.vapour.mu });
  const hg = trace.step(dittusBoelterFilm, { Re, Pr: prandtlOf(fluid.vapour, trace), k: fluid.vapour.k, D });
  const S = trace.step(sensibleShare, { x, cp: fluid.vapour.cp, dT: glide.temperature, dh: glide.heat });
  return trace.step(glideFilm, { hc: film, hg, S });
};

export interface MeanFilm {
  /** W/(m²·K): a uniform film that needs the same length at one temperature difference. */
  readonly film: number;
  readonly regimes: readonly Regime[];
}

/** Slices along the share of vapour. */
const SLICES = 20;

/** Mean film from one share of vapour to another, by the middle of equal slices; the working shows the middle one. */
export const condensingFilm = (
  condensing: CondensingFlow,
  from: number,
  to: number,
  trace: Trace = silent,
): MeanFilm => {
  const hl = liquidFilm(condensing, silent);
  const local = Array.from({ length: SLICES }, (_, slice) => {
    const x = from + ((to - from) * (slice + 0.5)) / SLICES;
    const { film, regime } = shah2009(condensing, x, silent, hl);
    return { film: withGlide(condensing, film, x, silent), regime };
  });
  if (trace.on) {
    const x = (from + to) / 2;
    trace.within("Local film at the middle of the range", () =>
      withGlide(condensing, shah2009(condensing, x, trace).film, x, trace),
    );
    trace.series({
      title: "Condensing film along the share of vapour",
      of: "Silver–Bell–Ghaly on Shah 2009, middles of equal slices",
      kind: "film coefficient",
      total: "harmonic mean",
      values: local.map(({ film }) => film),
    });
  }
  const film = SLICES / sumOf(local, ({ film }) => 1 / film);
  return { film, regimes: local.map(({ regime }) => regime) };
};

/** How a flow leaves the data of Shah 2009, in words; empty inside. */
export const outsideShah2009 = ({ bore, flow, fluid }: CondensingFlow): readonly string[] => {
  const flux = (4 * flow) / (Math.PI * bore ** 2);
  const Pr = prandtlOf(fluid.liquid);
  const Re = tubeReynolds.code({ m: flow, D: bore, mu: fluid.liquid.mu });
  const checks: readonly (readonly [string, number, number, number])[] = [
    ["reduced pressure", fluid.reducedPressure, 0.0008, 0.9],
    ["flow on the bore in kg/(m²·s)", flux, 4, 820],
    ["Reynolds number of all the flow as liquid", Re, 68, 85_000],
    ["Prandtl number of the liquid", Pr, 1, 18],
    ["bore in mm", bore * 1000, 2, 49],
  ];
  return checks
    .filter(([, value, from, to]) => value < from || value > to)
    .map(([name, value, from, to]) => `${name} ${Number(value.toPrecision(3))} is outside ${from} to ${to}`);
};
