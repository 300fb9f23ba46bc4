/** Part load of a machine that starts and stops, or runs between two speeds. */

/** The share of a step that the machine runs for a load, with the loss of starting and stopping. */
export function runShareFor(load: number, cooling: number, cyclingLoss: number): number {
  if (load >= cooling) return 1;
  const part = load / cooling;
  return part / (1 - cyclingLoss * (1 - part));
}

/** Power where the COP is straight over the load between two points, W. */
function powerOnLine(load: number, qa: number, pa: number, qb: number, pb: number): number {
  const t = (load - qa) / (qb - qa);
  return load / ((1 - t) * (qa / pa) + t * (qb / pb));
}

/** Electricity of a variable-speed machine between least and full speed, W: its COP is straight over the load. */
export function powerBetweenSpeeds(
  load: number,
  qLow: number,
  pLow: number,
  qFull: number,
  pFull: number,
  middle: readonly [number, number] | undefined,
): number {
  if (middle === undefined) return powerOnLine(load, qLow, pLow, qFull, pFull);
  const q = qLow + middle[0] * (qFull - qLow);
  const p = pLow + middle[1] * (pFull - pLow);
  return load <= q ? powerOnLine(load, qLow, pLow, q, p) : powerOnLine(load, q, p, qFull, pFull);
}
