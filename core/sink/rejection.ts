/** The heat rejection factor of a compressor from the published table. */
import { notAvailable } from "../kernel/values/fault";
import { silent, type Trace } from "../kernel/define/steps";
import { quantityMark } from "../kernel/values/quantityMark";
import {
  COLDER,
  COLDER_AT_30,
  CONDENSING_GRID,
  EVAPORATING_GRID,
  FACTORS,
  type Compressor,
} from "./data/rejectionFactors";

const ZERO = 273.15;

interface Place {
  readonly at: number;
  readonly share: number;
}

/** The span of ascending points that contains x, and the position in it. */
const placeIn = (points: readonly number[], x: number): Place => {
  let at = 0;
  while (at < points.length - 2 && x > (points[at + 1] ?? 0)) at++;
  const from = points[at] ?? 0;
  return { at, share: (x - from) / ((points[at + 1] ?? 0) - from) };
};

const between = (values: readonly number[], { at, share }: Place): number =>
  (values[at] ?? 0) * (1 - share) + (values[at + 1] ?? 0) * share;

/** Coldest evaporating temperature allowed, K: −35 °C. */
export const COLDEST = (COLDER[0] ?? 0) + ZERO;
/** Below this only the 30 °C column is published, K: −20 °C. */
export const TABLE_FROM = (EVAPORATING_GRID[0] ?? 0) + ZERO;
const WARMEST = (EVAPORATING_GRID.at(-1) ?? 0) + ZERO;
const CONDENSING_FROM = (CONDENSING_GRID[0] ?? 0) + ZERO;
const CONDENSING_TO = (CONDENSING_GRID.at(-1) ?? 0) + ZERO;
/** Temperatures typed in whole °F may miss the table's edge by rounding. */
const EDGE = 1e-6;

const checkSpan = (what: string, T: number, from: number, to: number): void => {
  if (T < from - EDGE || T > to + EDGE)
    throw notAvailable(
      `${what}: the table of rejection factors runs from ${quantityMark("temperature", from)} to ${quantityMark("temperature", to)}, got ${quantityMark("temperature", T)}`,
    );
};

const factorAt = (compressor: Compressor, evaporating: number, condensing: number): number => {
  const column = placeIn(CONDENSING_GRID, condensing - ZERO);
  const rows = FACTORS[compressor];
  const t = evaporating - ZERO;
  const first = EVAPORATING_GRID[0] ?? 0;
  if (t >= first) {
    const row = placeIn(EVAPORATING_GRID, t);
    return between([between(rows[row.at] ?? [], column), between(rows[row.at + 1] ?? [], column)], {
      at: 0,
      share: row.share,
    });
  }
  const coldest = rows[0] ?? [];
  const at30 = between([...COLDER_AT_30[compressor], coldest[0] ?? 0], placeIn([...COLDER, first], t));
  return at30 + between(coldest, column) - (coldest[0] ?? 0);
};

/**
 * Heat rejected per refrigeration, linear between the table's values. From −20 down to −35 °C evaporating the published
 * 30 °C column rises with the condensing temperature like the −20 °C row.
 *
 * @param evaporating K, −35 to 10 °C
 * @param condensing K, 30 to 60 °C
 * @param label the argument that a fault in the evaporating temperature names
 */
export const rejectionFactor = (
  compressor: Compressor,
  evaporating: number,
  condensing: number,
  label: string,
  trace: Trace = silent,
): number => {
  checkSpan(label, evaporating, COLDEST, WARMEST);
  checkSpan("condensing", condensing, CONDENSING_FROM, CONDENSING_TO);
  const value = factorAt(compressor, evaporating, condensing);
  if (trace.on)
    trace.lookup({
      table: "Heat rejected per refrigeration",
      row: `${compressor}, ${quantityMark("temperature", evaporating)} evaporating, ${quantityMark("temperature", condensing)} condensing`,
      interpolation:
        evaporating < TABLE_FROM ? "below the table: its 30 °C column, rising like the −20 °C row" : "linear both ways",
      result: { value, kind: "number" },
      source: "heatRejectionFactors",
    });
  return value;
};
