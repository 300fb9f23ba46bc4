/** Interpolates in the maker's own rows, straight in outdoor temperature, wet bulb and airflow; never outside them. */
import { notAvailable, valueError } from "../../kernel/values/fault";
import type { KindName } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import type { TableRow } from "./read";

export interface TablePoint {
  /** W */
  readonly capacity: number;
  readonly power: number;
}

type Axis = "outdoor" | "wetBulb" | "airflow";

interface Dimension {
  readonly axis: Axis;
  readonly kind: KindName;
  /** The argument that sets it. */
  readonly named: string;
  readonly at: number | undefined;
}

const SAME = 1e-6;
const same = (a: number, b: number): boolean => Math.abs(a - b) <= SAME * Math.max(1, Math.abs(a));

const mixed = (a: TablePoint, b: TablePoint, t: number): TablePoint => ({
  capacity: a.capacity + t * (b.capacity - a.capacity),
  power: a.power + t * (b.power - a.power),
});

/** The values of an axis that the rows have, rising. */
const valuesOf = (rows: readonly TableRow[], axis: Axis): readonly number[] =>
  rows
    .map((row) => row[axis])
    .filter((value) => value !== undefined)
    .sort((a, b) => a - b)
    .filter((value, place, all) => place === 0 || !same(value, all[place - 1] ?? 0));

const listed = (values: readonly number[], kind: KindName): string =>
  values.map((value) => quantityMark(kind, value)).join(", ");

/** Rows of one value of an axis. */
const rowsAt = (rows: readonly TableRow[], axis: Axis, value: number): readonly TableRow[] =>
  rows.filter((row) => same(row[axis] ?? Number.NaN, value));

function single(rows: readonly TableRow[]): TablePoint {
  const [row, other] = rows;
  if (row === undefined) throw notAvailable("table: has no such row");
  const differs = rows.find((each) => !same(each.capacity, row.capacity) || !same(each.power, row.power));
  if (other !== undefined && differs)
    throw valueError(
      `table: two rows at ${quantityMark("temperature", row.outdoor)} outdoors differ: ${quantityMark("heat rate", row.capacity)} and ${quantityMark("heat rate", differs.capacity)}; what tells them apart must be a column or left out`,
    );
  return row;
}

/** Walks the axes one by one; the last is the outdoor temperature, so ragged tables work. */
function along(rows: readonly TableRow[], [dimension, ...inner]: readonly Dimension[]): TablePoint {
  if (dimension === undefined) return single(rows);
  const { axis, kind, named, at } = dimension;
  const values = valuesOf(rows, axis);
  if (values.length === 0) return along(rows, inner);
  const [first = 0] = values;
  const last = values.at(-1) ?? first;
  if (at === undefined) {
    if (values.length === 1) return along(rows, inner);
    throw valueError(`${named}: the table has ${listed(values, kind)}: say which`);
  }
  const slack = SAME * Math.max(1, Math.abs(at));
  if (at < first - slack || at > last + slack)
    throw notAvailable(
      `${named}: the table's rows hold from ${quantityMark(kind, first)} to ${quantityMark(kind, last)}, got ${quantityMark(kind, at)}`,
    );
  const exact = values.find((value) => same(value, at));
  if (exact !== undefined) return along(rowsAt(rows, axis, exact), inner);
  const above = values.findIndex((value) => value > at);
  const [low = first, high = last] = [values[above - 1], values[above]];
  const [a, b] = [along(rowsAt(rows, axis, low), inner), along(rowsAt(rows, axis, high), inner)];
  return mixed(a, b, (at - low) / (high - low));
}

/** "low", "2", "60 %": the rows of one stage. */
function rowsOfStage(rows: readonly TableRow[], stage: string | undefined): readonly TableRow[] {
  const stages = [...new Set(rows.map((row) => row.stage).filter((each) => each !== undefined))];
  if (stages.length === 0) {
    if (stage === undefined) return rows;
    throw valueError("stage: the table has no column of stage or speed; leave it out");
  }
  const choices = stages.map((each) => `"${each}"`).join(", ");
  if (stage === undefined) {
    if (stages.length === 1) return rows;
    throw valueError(`stage: the table has ${choices}: say which`);
  }
  const found = rows.filter((row) => row.stage === stage);
  if (found.length === 0) throw notAvailable(`stage: the table has ${choices}, got "${stage}"`);
  return found;
}

export interface TableQuery {
  readonly outdoor: number;
  readonly wetBulb: number | undefined;
  readonly stage: string | undefined;
  readonly airflow: number | undefined;
}

/** Rows of numbered speeds on both sides of a speed between them; undefined where the stage is a row's own. */
function speedsAround(
  rows: readonly TableRow[],
  stage: string | undefined,
): readonly [string, string, number] | undefined {
  const at = Number(stage);
  if (stage === undefined || stage === "" || Number.isNaN(at)) return undefined;
  const speeds = [...new Set(rows.map((row) => row.stage ?? ""))];
  const numbers = speeds.map(Number);
  if (speeds.includes(stage) || numbers.some((value, place) => Number.isNaN(value) || speeds[place] === ""))
    return undefined;
  const below = Math.max(...numbers.filter((value) => value < at));
  const above = Math.min(...numbers.filter((value) => value > at));
  if (!Number.isFinite(below) || !Number.isFinite(above)) return undefined;
  return [speeds[numbers.indexOf(below)] ?? "", speeds[numbers.indexOf(above)] ?? "", (at - below) / (above - below)];
}

export function interpolateTable(rows: readonly TableRow[], query: TableQuery): TablePoint {
  for (const [axis, named, words] of [
    ["wetBulb", "indoorWetBulb", "indoor wet bulb"],
    ["airflow", "airflow", "airflow"],
  ] as const)
    if (query[axis] !== undefined && rows.every((row) => row[axis] === undefined))
      throw valueError(`${named}: the table has no column of ${words}; leave it out`);
  const dimensions: readonly Dimension[] = [
    { axis: "airflow", kind: "air flow", named: "airflow", at: query.airflow },
    { axis: "wetBulb", kind: "temperature", named: "indoorWetBulb", at: query.wetBulb },
    { axis: "outdoor", kind: "temperature", named: "outdoor", at: query.outdoor },
  ];
  const around = speedsAround(rows, query.stage);
  if (around === undefined) return along(rowsOfStage(rows, query.stage), dimensions);
  const [low, high, t] = around;
  return mixed(along(rowsOfStage(rows, low), dimensions), along(rowsOfStage(rows, high), dimensions), t);
}
