/** The models of the golden rows: inputs by their distribution, the outcome by its formula. */
import * as mathjs from "mathjs";
import { normalQuantile } from "../../core/numeric/normal";
import { correlationOf } from "../../core/uncertainty/correlation";
import { uncertainInputs, type UncertainInput, type UncertainRange } from "../../core/uncertainty/ranges";
import type { UncertainModel } from "../../core/uncertainty/study";

/** A tenth of a normal distribution lies this many deviations above its mean. */
const TENTH = normalQuantile(0.9);

const numbersIn = (text: string): readonly number[] =>
  [...text.matchAll(/-?\d+(?:\.\d+)?(?:e[-+]?\d+)?/gi)].map((match) => Number(match[0]));

const range = (
  label: string,
  distribution: UncertainRange["distribution"],
  low: number,
  high: number,
  likely?: number,
) =>
  uncertainInputs(
    [{ label, distribution, low, high, likely, unit: undefined }],
    () => "number",
    "SI",
  )[0] as UncertainInput;

/** Distributions that the product has no word for. */
const byShare = (label: string, at: (share: number) => number, deviation = NaN): UncertainInput => ({
  label,
  likely: at(0.5),
  mean: at(0.5),
  deviation,
  freedom: Infinity,
  unit: "",
  at,
});

/** Student's distribution: with t = √ν tan(angle) the density is a power of the cosine, summed once. */
const student = (location: number, scale: number, freedom: number) => {
  const STEPS = 20_000;
  const angle = (place: number): number => Math.PI * (place / STEPS - 0.5);
  const below = new Float64Array(STEPS + 1);
  for (let place = 1; place <= STEPS; place++)
    below[place] = (below[place - 1] ?? 0) + Math.cos(angle(place - 0.5)) ** (freedom - 1);
  const all = below[STEPS] ?? 1;
  return (share: number): number => {
    let [low, high] = [0, STEPS];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((below[middle] ?? 0) / all > share) high = middle;
      else low = middle;
    }
    const [from = 0, to = 0] = [below[low], below[high]];
    const place = low + (share * all - from) / Math.max(to - from, Number.MIN_VALUE);
    return location + scale * Math.sqrt(freedom) * Math.tan(angle(place));
  };
};

const MAKERS: Readonly<Record<string, (label: string, numbers: readonly number[]) => UncertainInput>> = {
  rectangular: (label, [low = 0, high = 0]) => range(label, "rectangular", low, high),
  triangular: (label, [low = 0, mode = 0, high = 0]) => range(label, "triangular", low, high, mode),
  normal: (label, [mean = 0, sd = 0]) => range(label, "normal", mean - TENTH * sd, mean + TENTH * sd),
  lognormal: (label, [median = 0, g = 0]) => range(label, "log-normal", median / g ** TENTH, median * g ** TENTH),
  t: (label, [location = 0, scale = 0, freedom = 0]) => byShare(label, student(location, scale, freedom), scale),
  arcsine: (label, [low = 0, high = 0]) =>
    byShare(
      label,
      (u) => (low + high) / 2 + ((high - low) / 2) * Math.sin(Math.PI * (u - 0.5)),
      (high - low) / 2 / Math.SQRT2,
    ),
};

/** "x1=normal(mean 0, sd 1); x2=…": each input; other parts are passed over. */
const inputsOf = (text: string): readonly UncertainInput[] =>
  text.split(";").flatMap((part) => {
    const match = /^\s*(\w+)=(\w+)\((.*)\)\s*$/.exec(part);
    const [, label = "", distribution = "", numbers = ""] = match ?? [];
    const make = MAKERS[distribution];
    return make === undefined ? [] : [make(label, numbersIn(numbers))];
  });

/** Two deviations of width d about a trapezoid with curved sides, from two rectangular numbers (JCGM 101, 6.4.3.4). */
const curved = (low: number, high: number, d: number, u1: number, u2: number): number => {
  const from = low - d + 2 * d * u1;
  return from + (low + high - from - from) * u2;
};

/** The formula's own value at a run's inputs. */
const outcomeOf = (formula: string): ((scope: Record<string, number>) => number) => {
  const code = mathjs.compile(formula.replace(/ln\(/g, "log("));
  return (scope) => Number(code.evaluate(scope));
};

/** A golden row's model. */
export function goldenModel(formula: string, text: string): UncertainModel {
  const inputs = inputsOf(text);
  const r = Number(/correlation of the first two \(normal scores\) (-?[\d.]+)/.exec(text)?.[1] ?? 0);
  const valueOf = outcomeOf(formula);
  const scopeOf = (values: readonly number[]): Record<string, number> => {
    const scope = Object.fromEntries(inputs.map(({ label }, place) => [label, values[place] ?? 0]));
    const { dAlpha_u1: a = 0, dAlpha_u2: b = 0, dTheta_u1: c = 0, dTheta_u2: d = 0 } = scope;
    return { ...scope, dAlpha: curved(-1e-6, 1e-6, 0.1e-6, a, b), dTheta: curved(-0.05, 0.05, 0.025, c, d) };
  };
  const [first, second] = inputs;
  const pairs = r === 0 ? [] : [{ label: first?.label ?? "", with: second?.label ?? "", r }];
  const correlation = correlationOf(pairs, inputs);
  return { inputs, correlation, compute: (values) => [valueOf(scopeOf(values))] };
}
