/** A small plot of deviations: how many comparisons use which share of their tolerance, by decades. */
import type { Deviation } from "./measure";

const DECADES = ["< 1e-6", "1e-6", "1e-5", "1e-4", "1e-3", "0.01", "0.1 to 1"];
const [WIDTH, HEIGHT, BASE, GAP] = [34, 48, 60, 4];

const decadeOf = ({ share }: Deviation): number =>
  share < 1e-6 ? 0 : Math.min(DECADES.length - 1, Math.floor(Math.log10(share)) + 7);

/** @param title what a reader hears instead of the picture */
export function deviationPlot(title: string, deviations: readonly Deviation[]): string {
  const counts = DECADES.map((_, at) => deviations.filter((one) => decadeOf(one) === at).length);
  const most = Math.max(1, ...counts);
  const bars = counts.map((count, at) => {
    const height = (HEIGHT * count) / most;
    const x = at * (WIDTH + GAP);
    const label = count === 0 ? "" : `<text x="${x + WIDTH / 2}" y="${BASE - height - 2}">${count}</text>`;
    const bar = `<rect x="${x}" y="${(BASE - height).toFixed(1)}" width="${WIDTH}" height="${height.toFixed(1)}"/>`;
    return `${bar}${label}<text x="${x + WIDTH / 2}" y="${BASE + 10}">${(DECADES[at] ?? "").replace("<", "&lt;")}</text>`;
  });
  const width = DECADES.length * (WIDTH + GAP);
  return `<svg class="deviations" viewBox="0 -10 ${width} ${BASE + 26}" width="${width}" height="${BASE + 26}" role="img" aria-label="${title}" font-size="8" text-anchor="middle" fill="currentColor">${bars.join("")}</svg>`;
}
