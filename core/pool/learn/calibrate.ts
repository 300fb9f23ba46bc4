/** Labels of a pool's block fitted to a log, within bounds, and how well the log can tell them. */
import { labelKey, admitLabel } from "../../kernel/call/admitLabel";
import { labelOf, type BlockShape } from "../../kernel/define/argument";
import { isFault, valueError } from "../../kernel/values/fault";
import type { CellMatrix, CellScalar } from "../../kernel/values/cellInput";
import type { KindName, System } from "../../kernel/values/quantity";
import { boundedFit, normalMatrix } from "../../numeric/boundedFit";
import { linearSolve } from "../../numeric/linearSolve";
import { clamp, mean, sumOf } from "../../numeric/series";
import { effectivePoints, fitErrors } from "../../cost/saved";
import { silent, type Trace } from "../../kernel/define/steps";
import { SHELTERS } from "../data/shelter";
import { YEAR_INPUTS, type YearInputs } from "../year/inputs";
import { loggedPool, type LogReading } from "./loggedPool";

/** Bounds where none are given: common practice. Other labels: a third to three times what the block says. */
const BOUNDS: Readonly<Record<string, readonly [number, number]>> = {
  shelter: [0.02, 1],
  shading: [0, 0.9],
  hiddenSky: [0, 0.9],
  sunShare: [0.4, 0.98],
  coveredShare: [0, 1],
  coverConvectionCut: [0, 0.95],
  coverRadiationCut: [0, 0.95],
};

/** A handbook's factor may lie below 1, a ratio to quiet water doesn't. */
const activityBounds = (inputs: YearInputs): readonly [number, number] => [
  inputs.evaporationMethod === "Carrier" ? 0.3 : 1,
  3,
];

export interface FittedLabel {
  readonly key: string;
  readonly label: string;
  readonly kind: KindName;
  readonly given: number;
  readonly low: number;
  readonly high: number;
}

const MOST_LABELS = 5;

/** The value of a label in the block as a number: a word of shelter is its share. */
function numberOf(inputs: YearInputs, key: string, label: string): number {
  const value = (inputs as Readonly<Record<string, unknown>>)[key];
  if (key === "shelter" && typeof value === "string") return SHELTERS[value as keyof typeof SHELTERS];
  if (typeof value !== "number") throw valueError(`labels: "${label}" must be a number in the block to begin from`);
  return value;
}

function kindOfLabel(key: string, label: string): KindName {
  const shape = (YEAR_INPUTS.shape as BlockShape).entries[key]?.shape;
  const inner = shape?.type === "either" ? shape.quantity : shape;
  if (inner?.type !== "quantity" || typeof inner.kind !== "string")
    throw valueError(`labels: "${label}" isn't a number that can be fitted`);
  return inner.kind;
}

/** Reads the labels to fit with their bounds. */
export function readLabels(rows: CellMatrix, inputs: YearInputs, system: System): readonly FittedLabel[] {
  const isBlank = (cell: CellScalar | undefined): boolean => cell === undefined || cell === null || cell === "";
  const lines = rows.filter(([label]) => !isBlank(label) && label !== 0 && String(label).toLowerCase() !== "label");
  if (lines.length === 0 || lines.length > MOST_LABELS)
    throw valueError(`labels: expected 1 to ${MOST_LABELS} labels, got ${lines.length === 0 ? "none" : lines.length}`);
  const found = lines.map(([name, ...ends]) => {
    const key = labelKey(YEAR_INPUTS, String(name), "labels");
    const label = labelOf(key);
    const kind = kindOfLabel(key, label);
    const given = numberOf(inputs, key, label);
    const usual = key === "activity" ? activityBounds(inputs) : (BOUNDS[key] ?? [given / 3, given * 3]);
    const [low, high] = [0, 1].map((end) => {
      const cell = ends[end];
      if (isBlank(cell)) return usual[end] ?? 0;
      return admitLabel(YEAR_INPUTS, key, cell ?? null, `labels, ${label}`, system, inputs) as number;
    }) as [number, number];
    if (!(high > low)) throw valueError(`labels, ${label}: the upper bound must be above the lower one`);
    return { key, label, kind, given, low, high };
  });
  const twice = found.find(({ key }, place) => found.findIndex((each) => each.key === key) !== place);
  if (twice) throw valueError(`labels: "${twice.label}" appears twice`);
  return found;
}

/** Correlation from which two labels count as one: in any case, and where the error is a share of the range. */
const ALIKE = [0.99, 0.9] as const;
const ALIKE_ERROR = 0.05;
/** K about the first reading in which the water may have begun. */
const START_BAND = 1;

export interface CalibratedLabel extends FittedLabel {
  readonly fitted: number;
  readonly error: number | undefined;
  readonly finding: string;
}

/** Inverse of the normal matrix of the free columns; a little is added so that equal columns stay finite. */
function covarianceOf(columns: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const n = columns.length;
  return Array.from({ length: n }, (_, place) => {
    const unit = new Float64Array(n);
    unit[place] = 1;
    linearSolve(normalMatrix(columns, 1e-10), unit);
    return Array.from(unit);
  });
}

/** Fits the labels; the water at the start is fitted beside them. */
export function calibrate(
  inputs: YearInputs,
  climate: CellMatrix,
  log: readonly LogReading[],
  labels: readonly FittedLabel[],
  system: System,
  trace: Trace = silent,
) {
  const { model } = loggedPool(inputs, climate, log, system);
  const first = log[0]?.water ?? 0;
  const blockAt = (parameters: readonly number[]): YearInputs => ({
    ...inputs,
    ...Object.fromEntries(
      labels.map(({ key, low, high }, place) => [key, low + (high - low) * (parameters[place] ?? 0)]),
    ),
  });
  const startAt = (parameters: readonly number[]): number =>
    first + START_BAND * (2 * (parameters[labels.length] ?? 0.5) - 1);
  const measured = log.map(({ water }) => water);
  const begin = [...labels.map(({ given, low, high }) => clamp((given - low) / (high - low), 0.02, 0.98)), 0.5];
  // A trial may ask for what no machine can do; the values to begin from may not.
  model(blockAt(begin), startAt(begin));
  const fit = boundedFit(
    (at) => {
      try {
        return model(blockAt(at), startAt(at));
      } catch (fault) {
        if (isFault(fault)) return undefined;
        throw fault;
      }
    },
    measured,
    begin,
  );
  labels.forEach(({ label }, place) => {
    if (Math.max(...(fit.slopes[place] ?? []).map(Math.abs)) < 1e-6)
      throw valueError(`labels: "${label}" doesn't change the water of this log: take it out`);
  });
  const modelled = fit.residuals.map((residual, row) => (measured[row] ?? 0) - residual);
  const { error, autocorrelation } = fitErrors(
    measured.map((each, row) => ({ measured: each, modelled: modelled[row] ?? 0 })),
    0,
  );
  // Of the water over its air: a temperature has no share of its own.
  const over = mean(log.map(({ water, air }) => water - air));
  const points = measured.map((each, row) => ({
    measured: each - (log[row]?.air ?? 0),
    modelled: (modelled[row] ?? 0) - (log[row]?.air ?? 0),
  }));
  const shares = Math.abs(over) < 1 ? undefined : fitErrors(points, 1);
  const rho = clamp(autocorrelation, 0, 0.99);
  const effective = trace.step(effectivePoints, { n: log.length, rho });
  const atBound = labels.map((_, place) => {
    const at = fit.parameters[place] ?? 0.5;
    return at < 1e-4 || at > 1 - 1e-4;
  });
  const free = [...labels.keys(), labels.length].filter((place) => atBound[place] !== true);
  const covariance = covarianceOf(free.map((place) => fit.slopes[place] ?? []));
  const variance = sumOf(fit.residuals, (each) => each * each) / Math.max(1, log.length - free.length);
  const scale = Math.sqrt((variance * log.length) / effective);
  const errorAt = (at: number): number => scale * Math.sqrt(Math.max(0, covariance[at]?.[at] ?? 0));
  const alike = (at: number): readonly string[] =>
    free.flatMap((place, other) => {
      const r =
        (covariance[at]?.[other] ?? 0) / Math.sqrt((covariance[at]?.[at] ?? 1) * (covariance[other]?.[other] ?? 1));
      const name = labels[place]?.label;
      return other !== at && name !== undefined && Math.abs(r) >= ALIKE[errorAt(at) > ALIKE_ERROR ? 1 : 0]
        ? [`${name} (${r.toFixed(2)})`]
        : [];
    });
  const found: readonly CalibratedLabel[] = labels.map((label, place) => {
    const at = free.indexOf(place);
    const fitted = label.low + (label.high - label.low) * (fit.parameters[place] ?? 0);
    if (at < 0) return { ...label, fitted, error: undefined, finding: "at its bound" };
    const spread = errorAt(at);
    const others = alike(at);
    return {
      ...label,
      fitted,
      error: spread * (label.high - label.low),
      finding:
        others.length > 0
          ? `not told apart from ${others.join(", ")}`
          : spread > 0.25
            ? "the log says little"
            : "found",
    };
  });
  return { labels: found, start: startAt(fit.parameters), error, autocorrelation: rho, effective, shares, over };
}
