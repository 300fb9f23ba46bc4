/** The heat a pool loses in steady mean weather, by kind; losses positive, W. */
import { silent, type Trace } from "../../kernel/steps";
import { coverOf, type CoverKind } from "../data/covers";
import { surfaceRule } from "../equations";
import { coverReduction, groundArea, groundLoss, makeUpHeat, makeUpMass, sunAbsorbed } from "./equations";
import { surfaceLoss, type Surface, type SurfaceState } from "./surface";

export interface Cover {
  readonly kind: CoverKind;
  /** Share of the time that it lies on the water. */
  readonly time: number;
  /** Share of the day's sun that falls meanwhile. */
  readonly sunTime: number;
  /** Share of the surface that it hides. */
  readonly covered: number;
  /** Cut of convection and of radiation while in place. */
  readonly convectionCut: number;
  readonly radiationCut: number;
}

export interface PoolState {
  readonly weather: SurfaceState;
  readonly surface: Surface;
  readonly cover: Cover;
  /** W/(m²·K), K and m */
  readonly ground: { readonly coefficient: number; readonly temperature: number; readonly depth: number };
  /** kg/s; K */
  readonly water: {
    readonly splash: number;
    readonly backwash: number;
    readonly leak: number;
    readonly rain: number;
    readonly mains: number;
  };
  /** J/(m²·day) on a level surface, and shares. */
  readonly sun: { readonly daily: number; readonly absorbed: number; readonly shaded: number };
}

/** Losses in W, signed; `undefined` where the way of reckoning has no such part. */
export interface PoolLosses {
  readonly evaporation: number | undefined;
  readonly convection: number | undefined;
  readonly radiation: number | undefined;
  readonly surfaceRule: number | undefined;
  readonly ground: number;
  readonly makeUp: number;
  readonly sun: number;
  readonly cover: number;
  readonly net: number;
  /** kg/s, of the open pool */
  readonly evaporated: number;
}

const groundOf = ({ weather, ground }: PoolState, trace: Trace): number => {
  const A = trace.step(groundArea, { A: weather.area, d: ground.depth });
  return trace.step(groundLoss, { U: ground.coefficient, A, Tw: weather.water, Tg: ground.temperature });
};

const makeUpOf = ({ weather, water }: PoolState, evaporated: number, trace: Trace): number => {
  const { splash: ms, backwash: mb, leak: ml, rain: mr } = water;
  const m = trace.step(makeUpMass, { me: evaporated, ms, mb, ml, mr });
  return trace.step(makeUpHeat, { m, mr, Tw: weather.water, Tm: water.mains, Ta: weather.air });
};

const sunOf = ({ weather, sun }: PoolState, absorbed: number, trace: Trace): number =>
  trace.step(sunAbsorbed, { A: weather.area, G: sun.daily, a: absorbed, s: sun.shaded });

/** Change of the loss by the cover: heat kept (negative) and sun kept out (positive). */
const coverEffect = (
  pool: PoolState,
  open: { readonly evaporation: number; readonly convection: number; readonly radiation: number },
  evaporated: number,
  trace: Trace,
): number => {
  const { kind, time, sunTime, covered, convectionCut, radiationCut } = pool.cover;
  if (kind === "none" || time === 0) return 0;
  const row = coverOf(kind);
  trace.lookup({
    table: "Covers",
    row: kind,
    gives: { value: row.evaporation, kind: "fraction" },
    source: "calPolyCovers2016",
  });
  const less = trace.step(coverReduction, { c: covered, t: time, f: row.evaporation });
  const kept =
    open.evaporation * less +
    open.convection * trace.step(coverReduction, { c: covered, t: time, f: convectionCut }) +
    open.radiation * trace.step(coverReduction, { c: covered, t: time, f: radiationCut });
  const dry = makeUpOf(pool, evaporated, silent) - makeUpOf(pool, evaporated * (1 - less), silent);
  const points = trace.step(coverReduction, { c: covered, t: sunTime, f: Math.min(row.sun, pool.sun.absorbed) });
  return sunOf(pool, points, silent) - kept - dry;
};

/** By parts: evaporation, convection and radiation each by its own relation. */
export const lossesByParts = (pool: PoolState, trace: Trace = silent): PoolLosses => {
  const open = surfaceLoss(pool.surface, pool.weather, trace);
  const ground = trace.within("Ground", () => groundOf(pool, trace));
  const makeUp = trace.within("Make-up water", () => makeUpOf(pool, open.evaporated, trace));
  const sun = trace.within("Sun", () => -sunOf(pool, pool.sun.absorbed, trace));
  const cover = trace.within("Cover", () => coverEffect(pool, open, open.evaporated, trace));
  const net = open.evaporation + open.convection + open.radiation + ground + makeUp + sun + cover;
  return { ...open, surfaceRule: undefined, ground, makeUp, sun, cover, net };
};

/** By the handbook's surface rule, which holds evaporation, convection and radiation together: they are never added to it. */
export const lossesByRule = (pool: PoolState, coefficient: number, trace: Trace = silent): PoolLosses => {
  const { area: A, water: Tw, air: Ta } = pool.weather;
  const rule = trace.step(surfaceRule, { U: coefficient, A, Tw, Ta });
  const ground = trace.within("Ground", () => groundOf(pool, trace));
  const makeUp = trace.within("Make-up water", () => makeUpOf(pool, 0, trace));
  const sun = trace.within("Sun", () => -sunOf(pool, pool.sun.absorbed, trace));
  const parts = { evaporation: undefined, convection: undefined, radiation: undefined };
  return {
    ...parts,
    surfaceRule: rule,
    ground,
    makeUp,
    sun,
    cover: 0,
    net: rule + ground + makeUp + sun,
    evaporated: 0,
  };
};
