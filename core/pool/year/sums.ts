/** What a pool's year adds up, month by month. */

/** Sums of one month while it runs. */
export interface Tally {
  /** Losses of the pool, J/m². */
  evaporation: number;
  convection: number;
  radiation: number;
  ground: number;
  makeUp: number;
  /** Gains of the pool, J/m²: sun, pump, the machine's heat and back-up heat. */
  sun: number;
  pumpHeat: number;
  taken: number;
  backUp: number;
  /** Integral of the pool's temperature, K·s; time in which it holds ice, s. */
  warmth: number;
  frozen: number;
  /** Heat that the machine rejects, its electricity, the load that it doesn't meet, J. */
  rejected: number;
  electricity: number;
  unmet: number;
  /** Electricity of the pool's pump beyond its hours, and of the tank's, J. */
  extraPump: number;
  /** Running time on pool, outdoor coil and tank, s. */
  poolTime: number;
  outdoorTime: number;
  tankTime: number;
  /** Heat that the tank takes, gives to the draw and loses, J; integral of its temperature, K·s. */
  toTank: number;
  drawnHeat: number;
  tankLoss: number;
  tankWarmth: number;
}

export type Figure = keyof Tally;
/** Twelve months of each figure. */
export type Sums = Readonly<Record<Figure, Float64Array>>;

export const emptyTally = (): Tally => ({
  evaporation: 0,
  convection: 0,
  radiation: 0,
  ground: 0,
  makeUp: 0,
  sun: 0,
  pumpHeat: 0,
  taken: 0,
  backUp: 0,
  warmth: 0,
  frozen: 0,
  rejected: 0,
  electricity: 0,
  unmet: 0,
  extraPump: 0,
  poolTime: 0,
  outdoorTime: 0,
  tankTime: 0,
  toTank: 0,
  drawnHeat: 0,
  tankLoss: 0,
  tankWarmth: 0,
});

const FIGURES = Object.keys(emptyTally()) as Figure[];

export const emptySums = (): Sums =>
  Object.fromEntries(FIGURES.map((figure) => [figure, new Float64Array(12)])) as unknown as Sums;

export function clearSums(sums: Sums): void {
  for (const figure of FIGURES) sums[figure].fill(0);
}

/** Adds a month's tally to the sums and sets it back to 0. */
export function addMonth(tally: Tally, month: number, sums: Sums): void {
  for (const figure of FIGURES) {
    const months = sums[figure];
    months[month] = (months[month] ?? 0) + tally[figure];
    tally[figure] = 0;
  }
}

export function totalOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i] ?? 0;
  return sum;
}
