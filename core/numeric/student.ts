/** Student's distribution. */
import { bracketedRoot } from "./root";

const SLICES = 2000;

/** Integral of cos^(freedom - 1) from 0 to `end`, by Simpson's rule. */
function cosinePower(freedom: number, end: number): number {
  const at = (angle: number): number => Math.max(0, Math.cos(angle)) ** (freedom - 1);
  let total = at(0) + at(end);
  for (let i = 1; i < SLICES; i++) total += (i % 2 === 1 ? 4 : 2) * at((end * i) / SLICES);
  return (total * end) / (3 * SLICES);
}

/** The t that a share `confidence` of values lies within, to both sides; degrees of freedom from 1 up, whole or not. */
export function studentQuantile(confidence: number, freedom: number): number {
  // With t = sqrt(freedom) tan(angle) the density is a power of the cosine.
  const far = Math.min(Math.PI / 2, 12 / Math.sqrt(freedom));
  const whole = cosinePower(freedom, far);
  const { x } = bracketedRoot((angle) => cosinePower(freedom, angle) / whole - confidence, 0, far, {
    tolerance: 1e-10,
  });
  return Math.sqrt(freedom) * Math.tan(x);
}

/** Student's t by the share of values below it, from one table. */
export function studentTable(freedom: number): (share: number) => number {
  const angle = (place: number): number => Math.PI * (place / SLICES - 0.5);
  const below = [0];
  for (let place = 0; place < SLICES; place++)
    below.push((below[place] ?? 0) + Math.cos(angle(place + 0.5)) ** (freedom - 1));
  const whole = below[SLICES] ?? 1;
  return (share) => {
    const wanted = share * whole;
    const high = Math.max(
      1,
      below.findIndex((each) => each >= wanted),
    );
    const [from, to] = [below[high - 1] ?? 0, below[high] ?? 0];
    return Math.sqrt(freedom) * Math.tan(angle(high - 1 + (wanted - from) / (to - from)));
  };
}
