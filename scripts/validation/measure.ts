/** Runs every published check and every grid and measures how far our values lie from the references. */
import {
  CATALOGUE,
  type CellFunction,
  type CellOut,
  cite,
  COMPILED,
  evaluate,
  isFault,
  normalizeKey,
  runCheck,
} from "../../core";
import { referenceOf, type Check } from "../../core/help";
import { referenceFile } from "./goldenRows";
import { type ReferenceGrid, GRIDS } from "./grids";

/** One comparison. */
export interface Deviation {
  /** As a share of what the tolerance allows; above 1 is a failure. */
  readonly share: number;
  /** As a share of the reference; undefined for words and for a reference of 0. */
  readonly relative: number | undefined;
  readonly where: string;
}

export interface MeasuredCheck extends Deviation {
  readonly source: string;
  readonly seen: "opened" | "copied" | "memory" | "rule";
  readonly agrees: boolean;
}

export interface MeasuredGrid {
  readonly grid: ReferenceGrid;
  readonly source: string;
  readonly rows: number;
  readonly worst: Deviation;
  readonly median: number;
  readonly deviations: readonly Deviation[];
}

export interface Measured {
  readonly definition: CellFunction;
  readonly checks: readonly MeasuredCheck[];
  readonly grids: readonly MeasuredGrid[];
}

const allowedBy = (expected: number, tolerance: Check["tolerance"]): number =>
  typeof tolerance === "string" ? (parseFloat(tolerance) / 100) * Math.abs(expected) : (tolerance ?? 0);

/** A word agrees or doesn't; a number without a tolerance has to agree to twelve digits. */
function deviationOf(expected: number | string, got: CellOut, check: Check): Pick<Deviation, "share" | "relative"> {
  if (typeof expected !== "number" || typeof got !== "number") return { share: 0, relative: undefined };
  const far = Math.abs(got - expected);
  const allowed = allowedBy(expected, check.tolerance) || 1e-12 * Math.max(1, Math.abs(expected));
  return { share: far / allowed, relative: expected === 0 ? undefined : far / Math.abs(expected) };
}

const measureChecks = (definition: CellFunction): readonly MeasuredCheck[] =>
  definition.checks.flatMap((check) =>
    runCheck(definition, check, CATALOGUE).map(({ what, expected, got, agrees }) => ({
      ...deviationOf(expected, got, check),
      where: what === "" ? "the value" : what,
      source: cite(check.source),
      seen: referenceOf(check.source).seen,
      agrees,
    })),
  );

/** The compared number of a result: itself, or the value beside a label. */
function pick(out: unknown, label: string | undefined): number {
  if (label === undefined) return typeof out === "number" ? out : Number.NaN;
  const line = (out as readonly (readonly unknown[])[]).find(
    ([first]) => normalizeKey(String(first)) === normalizeKey(label),
  );
  return typeof line?.[1] === "number" ? line[1] : Number.NaN;
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? (sorted[half] ?? 0) : ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2;
};

function measureGrid(grid: ReferenceGrid): MeasuredGrid {
  const { id, file, label, tolerance } = grid;
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`${file}: no function ${id}`);
  const { rows, heading } = referenceFile(file);
  const deviations = rows.flatMap((row, place): readonly Deviation[] => {
    const inputs = grid.inputs(row);
    const expected = grid.expected(row);
    if (inputs === undefined || expected === undefined) return [];
    const out = evaluate(compiled, inputs, CATALOGUE);
    const where = `row ${String(place + 1)}`;
    if (isFault(out)) throw new Error(`${file}, ${where}: ${id} answers ${out.code}: ${out.message}`);
    const far = Math.abs(pick(out, label) - expected);
    if (Number.isNaN(far)) throw new Error(`${file}, ${where}: ${id} has no number ${label ?? ""}`);
    const relative = expected === 0 ? far : far / Math.abs(expected);
    return [{ share: relative / tolerance, relative, where }];
  });
  const [first, ...others] = deviations;
  if (first === undefined) throw new Error(`${file}: no row of ${id}`);
  const worst = others.reduce((most, one) => (one.share > most.share ? one : most), first);
  const source = heading.replace(/^source:\s*/i, "");
  return {
    grid,
    source,
    rows: deviations.length,
    worst,
    median: median(deviations.map((d) => d.relative ?? 0)),
    deviations,
  };
}

export function measureAll(): readonly Measured[] {
  const grids = GRIDS.map(measureGrid);
  return CATALOGUE.map((definition) => ({
    definition,
    checks: measureChecks(definition),
    grids: grids.filter(({ grid }) => grid.id === definition.id),
  }));
}

/** Every passed tolerance as a sentence. */
export function failuresIn(measured: readonly Measured[]): readonly string[] {
  return measured.flatMap(({ definition: { id }, checks, grids }) => [
    ...checks.filter(({ agrees }) => !agrees).map(({ where, source }) => `${id}, ${where}: differs from ${source}`),
    ...grids
      .filter(({ worst }) => worst.share > 1)
      .map(
        ({ grid, worst }) => `${id}, ${grid.file}, ${worst.where}: ${worst.share.toPrecision(3)} times the tolerance`,
      ),
  ]);
}
