/** Pumps of a network: by points or by a quadratic, at a speed. */
import { item } from "../../numeric/series";
import { normalizeKey } from "../../kernel/define/argument";
import { valueError } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import type { GridPump, PumpSpan } from "./gridLink";
import type { PumpRow } from "./networkArgs";

/** A curve of points, straight between them and beyond. */
function spansOfPoints(name: string, points: readonly PumpRow[]): { spans: readonly PumpSpan[]; end: number } {
  const at = points.map(({ flow, head }) => {
    if (flow === undefined || head === undefined)
      throw valueError(`pumps, ${name}: a point needs flow and head; a curve by coefficients needs H0 and c`);
    return { flow, head };
  });
  if (at.length < 2) throw valueError(`pumps, ${name}: one point is no curve: give two or more, or H0 and c`);
  const spans = at.slice(1).map((next, i): PumpSpan => {
    const here = item(at, i);
    if (!(next.flow > here.flow))
      throw valueError(
        `pumps, ${name}: flows must rise from row to row, got ${quantityMark("water flow", next.flow)} after ${quantityMark("water flow", here.flow)}`,
      );
    const b = (next.head - here.head) / (next.flow - here.flow);
    return { from: i === 0 ? 0 : here.flow, H0: here.head - b * here.flow, b, c: 0 };
  });
  return { spans, end: at.at(-1)?.flow ?? 0 };
}

function curveOf(name: string, own: readonly PumpRow[]): { spans: readonly PumpSpan[]; end: number } {
  const coefficients = own.find(({ H0 }) => H0 !== undefined);
  if (!coefficients) return spansOfPoints(name, own);
  const { H0 = 0, b, c } = coefficients;
  // Some hosts pass a blank as 0.
  if (own.length > 1 || coefficients.flow || coefficients.head)
    throw valueError(`pumps, ${name}: give points or H0, b, c, not both, and H0 in one row only`);
  if (c === undefined) throw valueError(`pumps, ${name}: c is blank: a curve by coefficients needs H0 and c`);
  return { spans: [{ from: 0, H0, b, c }], end: (b + Math.sqrt(b * b + 4 * c * H0)) / (2 * c) };
}

/** Pumps by their normalized names. */
export function pumpsOf(rows: readonly PumpRow[]): ReadonlyMap<string, GridPump> {
  const byName = new Map<string, PumpRow[]>();
  for (const row of rows) {
    const key = normalizeKey(row.name);
    byName.set(key, [...(byName.get(key) ?? []), row]);
  }
  return new Map(
    [...byName].map(([key, own]) => {
      const [{ name, speed }] = own as [PumpRow];
      if (own.some((row) => row.speed !== speed && row.speed !== 1))
        throw valueError(`pumps, ${name}: give its speed once, in its first row`);
      return [key, { speed, ...curveOf(name, own) }];
    }),
  );
}

/** Whether a curve rises anywhere: such a pump may meet its system twice. */
export function risesSomewhere({ spans }: GridPump): boolean {
  return spans.some(({ b }) => b > 0);
}
