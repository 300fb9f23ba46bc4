/** A point of a saturation curve: temperature K, pressure Pa, molar densities mol/m3, incipient mole fractions (blends). */
export interface SaturationPoint {
  readonly temperature: number;
  readonly pressure: number;
  readonly liquid: number;
  readonly vapour: number;
  readonly incipient: readonly number[];
  readonly residual: number;
}

/** Solves one point from a start; undefined where it can't. */
export type PointSolver = (
  temperature: number,
  start: Pick<SaturationPoint, "liquid" | "vapour" | "incipient">,
) => SaturationPoint | undefined;

const logs = (p: SaturationPoint): number[] => [
  Math.log(p.liquid),
  Math.log(p.vapour),
  ...p.incipient.map((part) => Math.log(part)),
];
const fromLogs = (u: readonly number[]) => ({
  liquid: Math.exp(u[0]!),
  vapour: Math.exp(u[1]!),
  incipient: u.slice(2).map((part) => Math.exp(part)),
});

/**
 * Walks along a saturation curve from one solved point, extrapolating each start from the last three points and
 * shortening the step where the search fails.
 *
 * @returns the points passed, without the first; ends at `end` or where steps of 1 mK fail (the critical point)
 */
export function followEnvelope(solve: PointSolver, first: SaturationPoint, end: number): SaturationPoint[] {
  const points: SaturationPoint[] = [];
  const direction = Math.sign(end - first.temperature);
  let recent = [first];
  let step = 1;
  let at = first.temperature;
  while (direction * (end - at) > 1e-9) {
    const next = direction * (end - at) <= step ? end : at + direction * step;
    const u = recent.map(logs);
    const n = u.length;
    const start = n > 2 ? u[n - 1]!.map((value, i) => 3 * value - 3 * u[n - 2]![i]! + u[n - 3]![i]!) : u[n - 1]!;
    const found = solve(next, fromLogs(start));
    if (!found) {
      step /= 4;
      if (step < 1e-3) break;
      recent = recent.slice(-1);
      continue;
    }
    points.push(found);
    // Extrapolation needs equal steps.
    recent = next === end ? [found] : [...recent, found].slice(-3);
    at = next;
  }
  return points;
}

/** A point that the search misses from a start between its neighbours (close to the critical point): walked to in steps. */
const walkTo = (
  solve: PointSolver,
  neighbours: readonly SaturationPoint[],
  temperature: number,
): SaturationPoint | undefined => {
  for (const from of neighbours) {
    const last = followEnvelope(solve, from, temperature).at(-1);
    if (last && Math.abs(last.temperature - temperature) < 1e-9) return last;
  }
  return undefined;
};

/** A solver for any temperature between the points of a walked curve, started by interpolation in sqrt(1 - T / top). */
export function interpolateEnvelope(
  solve: PointSolver,
  points: readonly SaturationPoint[],
  top: number,
): (temperature: number) => SaturationPoint {
  const q = (temperature: number) => Math.sqrt(Math.max(0, 1 - temperature / top));
  return (temperature) => {
    let k = points.findIndex((point) => point.temperature >= temperature);
    k = Math.max(1, k < 0 ? points.length - 1 : k);
    const [a, b] = [points[k - 1]!, points[k]!];
    const f = (q(temperature) - q(a.temperature)) / (q(b.temperature) - q(a.temperature));
    const [ua, ub] = [logs(a), logs(b)];
    const found =
      solve(temperature, fromLogs(ua.map((value, i) => value + f * (ub[i]! - value)))) ??
      walkTo(solve, [a, b], temperature);
    if (!found) throw new Error(`no equilibrium found at ${temperature} K`);
    return found;
  };
}
