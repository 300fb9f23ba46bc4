/** The pictures of a sample: how often, how much at most, and which inputs rule. */
import { ascending, percentilesOf, rankCorrelation } from "../index";
import type { Runs } from "../uncertainty/study";
import { roundedForTable, type Picture, type PictureChoice, type PictureCurve, type PicturePoint } from "./picture";
import type { Shares } from "./shares";
import type { NamedOutcome, UncertainCall } from "./uncertainCall";

const PERCENTILE_NAMES = ["P10", "P50", "P90"] as const;

/** Classes of a histogram: about as many as the root of the number of values. */
const classesFor = (count: number): number => Math.max(5, Math.min(30, Math.round(Math.sqrt(count))));

const withUnit = (name: string, unit: string): string => (unit === "" ? name : `${name}, ${unit}`);

const percent = (share: number): string => `${String(roundedForTable(100 * share))} %`;

/** Finite values of an outcome, sorted, in the cell's unit, and the share that has none ("never"). */
function valuesOf({ of }: NamedOutcome, values: readonly number[]) {
  const finite = values.filter(Number.isFinite);
  return { sorted: ascending(finite.map(of)), never: 1 - finite.length / values.length };
}

type Drawn = ReturnType<typeof valuesOf>;

/** Shares of the values in classes of one width, as the outline of bars; the classes' ends. */
function histogram({ sorted, never }: Drawn) {
  const [low = 0, high = 0] = [sorted[0], sorted.at(-1)];
  const classes = classesFor(sorted.length);
  const width = (high - low) / classes || 1;
  const counts = Array.from({ length: classes }, () => 0);
  for (const value of sorted) {
    const at = Math.min(classes - 1, Math.floor((value - low) / width));
    counts[at] = (counts[at] ?? 0) + 1;
  }
  return counts.map((count, at) => ({
    from: low + at * width,
    to: low + (at + 1) * width,
    share: (100 * (1 - never) * count) / sorted.length,
  }));
}

/** Upright dashed lines at the percentiles, each with its name on top. */
function percentileLines(places: readonly number[], top: (place: number) => number) {
  const curves = places.map((x, at): PictureCurve => {
    const points: PicturePoint[] = [
      [x, 0],
      [x, top(at)],
    ];
    return { name: PERCENTILE_NAMES[at] ?? "", tone: "outline", dashed: true, points };
  });
  const marks = places.map((x, at) => ({ at: [x, top(at)] as PicturePoint, label: PERCENTILE_NAMES[at] ?? "" }));
  return { curves, marks };
}

const sentenceOf = ({ name, unit }: NamedOutcome, places: readonly number[], never: number, run: string): string => {
  const [p10, p50, p90] = places.map((place) => roundedForTable(place).toLocaleString("en-US"));
  const rest = never > 0 ? ` Never in ${percent(never)} of the ${run}s.` : "";
  return `${name}: P10 ${p10 ?? ""}, P50 ${p50 ?? ""}, P90 ${p90 ?? ""}${unit === "" ? "" : ` ${unit}`}.${rest}`;
};

/** How often the outcome lies where. */
function howOften(outcome: NamedOutcome, drawn: Drawn, run: string): Picture {
  const bars = histogram(drawn);
  const places = percentilesOf([...drawn.sorted]);
  const most = Math.max(...bars.map(({ share }) => share));
  const lines = percentileLines(places, (at) => most * (at === 1 ? 1.16 : 1.08));
  const outline = bars.flatMap(({ from, to, share }): readonly PicturePoint[] => [
    [from, share],
    [to, share],
  ]);
  const [first, last] = [outline[0]?.[0] ?? 0, outline.at(-1)?.[0] ?? 0];
  return {
    title: `How often: ${outcome.name}`,
    description: sentenceOf(outcome, places, drawn.never, run),
    x: { label: withUnit(outcome.name, outcome.unit) },
    y: { label: `share of the ${run}s, %` },
    curves: [{ name: "share", tone: "first", points: [[first, 0], ...outline, [last, 0]] }, ...lines.curves],
    marks: lines.marks,
    head: [withUnit("from", outcome.unit), withUnit("to", outcome.unit), "share, %"],
    rows: bars.map(({ from, to, share }) => [from, to, share].map(roundedForTable)),
  };
}

const CUMULATIVE_STEPS = 40;

/** What share of the runs stays below a value. */
function howMuch(outcome: NamedOutcome, { sorted, never }: Drawn, run: string): Picture {
  const places = percentilesOf([...sorted]);
  const scale = 100 * (1 - never);
  const points = Array.from({ length: CUMULATIVE_STEPS + 1 }, (_, step): PicturePoint => {
    const at = Math.round((step / CUMULATIVE_STEPS) * (sorted.length - 1));
    return [sorted[at] ?? 0, (scale * (at + 0.5)) / sorted.length];
  });
  const lines = percentileLines(places, (at) => scale * ([0.1, 0.5, 0.9][at] ?? 0));
  return {
    title: `At most: ${outcome.name}`,
    description: sentenceOf(outcome, places, never, run),
    x: { label: withUnit(outcome.name, outcome.unit) },
    y: { label: `share of the ${run}s below, %`, span: [0, 100] },
    curves: [{ name: "share below", tone: "first", points }, ...lines.curves],
    marks: lines.marks,
    head: [withUnit(outcome.name, outcome.unit), "share below, %"],
    rows: points.map((point) => point.map(roundedForTable)),
  };
}

/** The outcomes that vary and are known: their places. */
const drawnOutcomes = ({ outcomes }: Runs): readonly number[] =>
  [...outcomes.keys()].filter((place) => {
    const finite = (outcomes[place] ?? []).filter(Number.isFinite);
    return finite.length > 7 && finite.some((value) => value !== finite[0]);
  });

/** Shown first: the saving, where there is one. */
const firstOf = (names: readonly string[]): number => Math.max(0, names.indexOf("money saved"));

const choiceOf = (label: string, options: PictureChoice["options"]): readonly PictureChoice[] =>
  options.length === 0 ? [] : [{ label, first: firstOf(options.map(({ name }) => name)), options }];

/** The distribution of each outcome: how often, and cumulative. */
export function distributionPictures({ outcomes, run }: UncertainCall, runs: Runs): readonly PictureChoice[] {
  const drawn = drawnOutcomes(runs).flatMap((place) => {
    const outcome = outcomes[place];
    return outcome === undefined ? [] : [{ outcome, values: valuesOf(outcome, runs.outcomes[place] ?? []) }];
  });
  return choiceOf(
    "distribution",
    drawn.flatMap(({ outcome, values }) => [
      { name: outcome.name, picture: howOften(outcome, values, run) },
      { name: `${outcome.name}, cumulative`, picture: howMuch(outcome, values, run) },
    ]),
  );
}

interface Ranked {
  readonly name: string;
  readonly values: readonly number[];
}

/** Bars across, the longest first. */
function rankingPicture(title: string, x: string, series: readonly string[], inputs: readonly Ranked[]): Picture {
  const size = ({ values }: Ranked): number => Math.abs(values[0] ?? 0);
  const sorted = [...inputs].sort((a, b) => size(b) - size(a));
  return {
    title,
    description: `${title}: ${sorted.map(({ name, values }) => `${name} ${(values[0] ?? 0).toFixed(2)}`).join(", ")}.`,
    x: { label: x },
    y: { label: "", names: sorted.map(({ name }) => name) },
    curves: [],
    groups: series.map((name, place) => ({
      name,
      tone: place === 0 ? "first" : "second",
      values: sorted.map(({ values }) => values[place] ?? 0),
    })),
    head: ["input", ...series],
    rows: sorted.map(({ name, values }) => [name, ...values.map((value) => Number(value.toFixed(3)))]),
  };
}

/** Rank correlation of each input with each outcome. */
export function rankPictures({ model, outcomes }: UncertainCall, runs: Runs): readonly PictureChoice[] {
  return choiceOf(
    "inputs that rule",
    drawnOutcomes(runs).map((place) => {
      const { name = "" } = outcomes[place] ?? {};
      const inputs = model.inputs.map(({ label }, at) => ({
        name: label,
        values: [rankCorrelation(runs.inputs[at] ?? [], runs.outcomes[place] ?? [])],
      }));
      const title = `Inputs that rule: ${name}`;
      return { name, picture: rankingPicture(title, "rank correlation", ["rank correlation"], inputs) };
    }),
  );
}

/** Shares of each input in the variance of each outcome that has some. */
export function sharePictures(
  { model, outcomes }: UncertainCall,
  shares: readonly (readonly Shares[])[],
): readonly PictureChoice[] {
  return choiceOf(
    "shares of the inputs",
    shares.flatMap((of, place) => {
      const { name = "" } = outcomes[place] ?? {};
      if (of.length === 0) return [];
      const inputs = model.inputs.map(({ label }, at) => ({
        name: label,
        values: [of[at]?.total ?? 0, of[at]?.firstOrder ?? 0],
      }));
      const series = ["total share", "first-order share"];
      return [
        { name, picture: rankingPicture(`Shares in the spread: ${name}`, "share of the variance", series, inputs) },
      ];
    }),
  );
}
