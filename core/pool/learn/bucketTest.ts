/** The bucket test: what a pool evaporates, what it leaks, and what the water that makes it up takes in heat. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";
import { block, quantity, type ValueOf } from "../../kernel/define/argument";
import { POOL_WATER, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import type { Trace } from "../../kernel/define/steps";
import { si, us } from "../../kernel/values/quantity";
import { latentHeatOfWater } from "../../water/latentHeat";
import { SURFACE } from "../args";
import { WATER_CAPACITY } from "./coolingFit";

const level = (description: string, from = -1) => quantity("rain depth", description, { from, to: 2 });
const volume = (description: string) =>
  quantity("pool volume", description, { from: 0, to: us("pool volume", 1e7) }).default(0);

export const BUCKET_INPUTS = block(
  {
    poolArea: SURFACE,
    testDays: quantity("number", "days of the test", { above: 0, to: 400 }).default(1),
    poolFell: level("fall of the pool's level; negative: it rose").optional(),
    bucketFell: level("fall of the level in the bucket; negative: it rose").optional(),
    rain: level("rain meanwhile", 0).default(0),
    fillWater: volume("fresh water let in, by the meter"),
    backwashAndSplash: volume("water of backwash and splash"),
    bucketRatio: quantity("number", "evaporation of the pool over that of the bucket", { from: 0.3, to: 3 }).default(1),
    levelError: level("standard error of a fall", 0).default(0.001),
    poolTemperature: POOL_WATER.default(si("temperature", 26)),
    mainsTemperature: WATER_TEMPERATURE.describedAs("temperature of the make-up water").optional(),
    makeUp: quantity("rain depth", "make-up water over the test; left out: what the pool fell and was filled", {
      above: 0,
      to: 20,
    }).optional(),
  },
  "block of labels, values and units: see NOTE.INPUTS",
);

const h = (description: string) => symbol("rain depth", description, 0, 0.05);
const n = symbol("number", "days", 1, 7);
const A = symbol("area", "area of the pool", 20, 200);

export const bucketEvaporation = equation({
  name: "Evaporation by the bucket",
  form: "E = c * (b + r) / n",
  kind: "rain depth",
  symbols: { c: symbol("number", "pool over bucket", 0.7, 1.2), b: h("fall in the bucket"), r: h("rain"), n },
  source: "commonPractice",
  code: (x) => (x.c * (x.b + x.r)) / x.n,
});

export const waterBalanceLeak = equation({
  name: "Leak by the balance of the water",
  form: "L = (p + r + (F - S) / A) / n - E",
  kind: "rain depth",
  symbols: {
    p: h("fall of the pool"),
    r: h("rain"),
    F: symbol("pool volume", "fresh water let in", 0, 1),
    S: symbol("pool volume", "backwash and splash", 0, 1),
    A,
    n,
    E: h("evaporation"),
  },
  source: "identity",
  code: (x) => (x.p + x.r + (x.F - x.S) / x.A) / x.n - x.E,
});

/** Kilograms of a cubic metre, as a level's fall is counted: 1 mm on 1 m² is 1 kg. */
export const evaporationFlux = equation({
  name: "Heat of the evaporation, by surface",
  form: "q = 1000 * E * Y / 86400",
  kind: "irradiance",
  symbols: { E: h("evaporation in a day"), Y: symbol("enthalpy", "latent heat", 2.35e6, 2.5e6) },
  source: "identity",
  code: (x) => (1000 * x.E * x.Y) / 86_400,
});

export const makeUpEnergy = equation({
  name: "Heat of the make-up water",
  form: "Q = C * A * m * (Tp - Tm)",
  kind: "heat",
  symbols: {
    A,
    m: h("make-up water"),
    Tp: symbol("temperature", "pool", 295, 305),
    Tm: symbol("temperature", "make-up water", 280, 300),
  },
  constants: { C: WATER_CAPACITY },
  source: "identity",
  code: (x) => WATER_CAPACITY * x.A * x.m * (x.Tp - x.Tm),
});

/** A leak is found from twice its standard error on. */
const FOUND = 2;

type BucketInputs = ValueOf<typeof BUCKET_INPUTS>;

/** Evaporation and leak in m a day; undefined without both falls. */
function lossesOf(x: BucketInputs, trace: Trace) {
  const { poolArea: A, testDays: n, poolFell: p, bucketFell: b, rain: r, bucketRatio: c, levelError } = x;
  const evaporated = b === undefined ? undefined : trace.step(bucketEvaporation, { c, b, r, n });
  if (evaporated === undefined || p === undefined) return { evaporated };
  const leak = trace.step(waterBalanceLeak, { p, r, F: x.fillWater, S: x.backwashAndSplash, A, n, E: evaporated });
  const error = (levelError * Math.hypot(1, c)) / n;
  return { evaporated, leak, error };
}

/** What the test shows; members are undefined where their inputs are missing. */
export function bucketTest(x: BucketInputs, trace: Trace) {
  const { poolArea, testDays, mainsTemperature, poolTemperature, poolFell } = x;
  const { evaporated, leak, error = 0 } = lossesOf(x, trace);
  const m = x.makeUp ?? (poolFell === undefined ? undefined : Math.max(0, poolFell + x.fillWater / poolArea));
  const makeUp =
    m === undefined || mainsTemperature === undefined
      ? undefined
      : trace.step(makeUpEnergy, { A: poolArea, m, Tp: poolTemperature, Tm: mainsTemperature });
  return {
    dailyEvaporation: evaporated,
    dailyEvaporationError: evaporated === undefined ? undefined : (x.bucketRatio * x.levelError) / testDays,
    evaporationHeat:
      evaporated === undefined
        ? undefined
        : trace.step(evaporationFlux, { E: evaporated, Y: latentHeatOfWater(poolTemperature, trace) }),
    dailyLeak: leak,
    dailyLeakError: leak === undefined ? undefined : error,
    dailyLeakVolume: leak === undefined ? undefined : leak * poolArea,
    dailyLeakVolumeError: leak === undefined ? undefined : error * poolArea,
    finding:
      leak === undefined ? "" : leak >= FOUND * error ? "leak" : leak <= -FOUND * error ? "gains water" : "none found",
    makeUpHeat: makeUp,
    makeUpLoss: makeUp === undefined ? undefined : makeUp / (poolArea * testDays * 86_400),
  };
}
