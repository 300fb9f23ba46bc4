/** The loss coefficient of a pool that cools unheated: least squares on the exact solution of each step. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";
import { silent, type Trace } from "../../kernel/define/steps";
import { sumOf } from "../../numeric/series";

/** Density times heat capacity of water at 25 °C, J/(m³·K). */
export const WATER_CAPACITY = 997 * 4180;

const C = symbol("number", "heat capacity below a square metre of surface, J/(m²·K)", 2e6, 1e7);
const t = symbol("time", "time", 3600, 2e5);
const U = symbol("film coefficient", "loss coefficient by the water surface, against the air", 1, 80);

export const coolingCoefficient = equation({
  name: "Loss coefficient from two readings",
  form: "U = C / t * log((T0 - Ta) / (T1 - Ta))",
  kind: "film coefficient",
  symbols: {
    C,
    t,
    T0: symbol("temperature", "water at the start", 299, 310),
    T1: symbol("temperature", "water at the end", 295, 298),
    Ta: symbol("temperature", "air, or air that known heat makes it seem", 270, 290),
  },
  source: "identity",
  code: (x) => (x.C / x.t) * Math.log((x.T0 - x.Ta) / (x.T1 - x.Ta)),
});

export const coolingStep = equation({
  name: "Water after a step",
  form: "T1 = Ta + q / U + (T0 - Ta - q / U) * exp(-U * t / C)",
  kind: "temperature",
  symbols: {
    C,
    t,
    U,
    T0: symbol("temperature", "water before it", 290, 310),
    Ta: symbol("temperature", "air through it", 265, 300),
    q: symbol("irradiance", "known heat", 0, 400),
  },
  source: "identity",
  code: (x) => x.Ta + x.q / x.U + (x.T0 - x.Ta - x.q / x.U) * Math.exp((-x.U * x.t) / x.C),
});

export const combinedUncertainty = equation({
  name: "Standard uncertainty of the coefficient",
  form: "u = sqrt((s * g)^2 + (ua * ga)^2 + (U * ud)^2)",
  kind: "film coefficient",
  symbols: {
    s: symbol("temperature difference", "error of a water reading: the sensor's, or the fit's if larger", 0.01, 0.5),
    g: symbol("number", "change of the coefficient with a water reading", 1, 100),
    ua: symbol("temperature difference", "error of the air", 0.1, 1),
    ga: symbol("number", "change of the coefficient with the air", 0.1, 10),
    U,
    ud: symbol("fraction", "error of the depth", 0, 0.1),
  },
  source: "identity",
  code: (x) => Math.hypot(x.s * x.g, x.ua * x.ga, x.U * x.ud),
});

export const heatInPlace = equation({
  name: "Heat of a heater in place",
  form: "q = C * dT / t + U * (Tm - Ta)",
  kind: "irradiance",
  symbols: {
    C,
    t,
    U,
    dT: symbol("temperature difference", "rise of the water", 0, 5),
    Tm: symbol("temperature", "mean water", 290, 310),
    Ta: symbol("temperature", "mean air", 265, 300),
  },
  source: "identity",
  code: (x) => (x.C * x.dT) / x.t + x.U * (x.Tm - x.Ta),
});

/** Time since the reading before, s; air through it, K; known heat through it, W/m². */
export interface CoolingStep {
  readonly time: number;
  readonly air: number;
  readonly heat: number;
}

/** Readings without a gap: the water at the start and after each step, K. */
export interface CoolingRun {
  readonly water: readonly number[];
  readonly steps: readonly CoolingStep[];
}

/** Range of coefficients, W/(m²·K). */
const [LEAST, MOST] = [0.1, 200];

/** The water by the model is `a` times the start and `b`; their change with the coefficient; its change with the air. */
interface Sensitivity {
  readonly a: number;
  readonly b: number;
  readonly da: number;
  readonly db: number;
  readonly air: number;
}

function sensitivities({ steps }: CoolingRun, u: number, capacity: number): readonly Sensitivity[] {
  let at: Sensitivity = { a: 1, b: 0, da: 0, db: 0, air: 0 };
  return [
    at,
    ...steps.map(({ time, air, heat }) => {
      const e = Math.exp((-u * time) / capacity);
      const de = (-time / capacity) * e;
      const [T, dT] = [air + heat / u, -heat / (u * u)];
      const { a, b, da, db } = at;
      at = {
        a: a * e,
        b: b * e + T * (1 - e),
        da: da * e + a * de,
        db: db * e + b * de + dT * (1 - e) - T * de,
        air: at.air * e + 1 - e,
      };
      return at;
    }),
  ];
}

/** Sums of one run's squares, with the start temperature already fitted. */
function runSums(run: CoolingRun, u: number, capacity: number) {
  const s = sensitivities(run, u, capacity);
  const at = s.map((each, i) => [each, run.water[i] ?? 0] as const);
  const aa = sumOf(s, ({ a }) => a * a);
  const start = sumOf(at, ([{ a, b }, water]) => a * (water - b)) / aa;
  // What of a column the start temperature can't take up.
  const own = (column: (each: Sensitivity) => number) => {
    const share = sumOf(s, (each) => each.a * column(each)) / aa;
    return s.map((each) => column(each) - share * each.a);
  };
  const slopes = own(({ da, db }) => da * start + db);
  const air = own((each) => each.air);
  const errors = at.map(([{ a, b }, water]) => water - b - a * start);
  const end = s.at(-1) as Sensitivity;
  return { start, end: end.a * start + end.b, slopes, air, errors };
}

export interface CoolingFit {
  readonly coefficient: number;
  /** Change of the coefficient with a water reading and with the air, W/(m²·K) per K. */
  readonly perReading: number;
  readonly perAir: number;
  /** Root mean square of what is left, K, by readings and by free readings (undefined without any). */
  readonly error: number;
  readonly scatter: number | undefined;
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  /** Whether the range of coefficients holds no better one. */
  readonly atBound: boolean;
}

/** Gauss-Newton over the coefficient; every run has its own start temperature. */
export function fitCooling(runs: readonly CoolingRun[], capacity: number): CoolingFit {
  const at = (u: number) => {
    const sums = runs.map((run) => runSums(run, u, capacity));
    const flat = (column: "slopes" | "air" | "errors"): readonly number[] => sums.flatMap((each) => each[column]);
    const slopes = flat("slopes");
    const dot = (other: readonly number[]): number => slopes.reduce((all, each, i) => all + each * (other[i] ?? 0), 0);
    return { sums, errors: flat("errors"), squares: dot(slopes), pull: dot(flat("errors")), air: dot(flat("air")) };
  };
  let u = 20;
  let found = at(u);
  for (let pass = 0; pass < 60; pass++) {
    const next = Math.min(MOST, Math.max(LEAST, Math.max(u / 3, u + found.pull / found.squares)));
    const done = Math.abs(next - u) < 1e-10 * u;
    u = next;
    found = at(u);
    if (done) break;
  }
  const left = sumOf(found.errors, (error) => error * error);
  const count = found.errors.length;
  const free = count - runs.length - 1;
  return {
    coefficient: u,
    perReading: 1 / Math.sqrt(found.squares),
    perAir: Math.abs(found.air / found.squares),
    error: Math.sqrt(left / count),
    scatter: free > 0 ? Math.sqrt(left / free) : undefined,
    starts: found.sums.map(({ start }) => start),
    ends: found.sums.map(({ end }) => end),
    atBound: u <= LEAST || u >= MOST,
  };
}

/** Shows one reading's step, or the closed form where there are only two readings. */
export function traceCooling(runs: readonly CoolingRun[], capacity: number, fit: CoolingFit, trace: Trace = silent) {
  const [run] = runs;
  const step = run?.steps[0];
  if (!trace.on || run === undefined || step === undefined || fit.atBound) return;
  const [T0, U] = [fit.starts[0] ?? 0, fit.coefficient];
  const { time: t, air: Ta, heat: q } = step;
  if (runs.length === 1 && run.water.length === 2)
    trace.step(coolingCoefficient, { C: capacity, t, T0, T1: fit.ends[0] ?? 0, Ta: Ta + q / U });
  else trace.step(coolingStep, { C: capacity, t, U, T0, Ta, q }, "first step of the fitted line");
}
