/**
 * Twelve rows of the typical year of Miami, Florida (NREL TMY3, station "Miami Intl Ap", 25.82° N, 11 m; public data of the
 * United States): means of the month, mean of each day's highest less lowest hour, sun on a level surface; mains estimated.
 */
export const MIAMI_MONTHS: readonly (readonly (string | number)[])[] = [
  ["air (°C)", "swing (K)", "humidity", "wind at 10 m (m/s)", "sun (kWh/(m²·day))", "mains (°C)"],
  [19.42, 8.18, 0.7087, 3.307, 3.4841, 24.74],
  [20.87, 8.85, 0.669, 5.531, 4.2354, 25.07],
  [21.57, 7.27, 0.6846, 5.589, 5.1573, 26.12],
  [24.11, 6.68, 0.6746, 4.688, 5.9237, 27.64],
  [26.42, 6.6, 0.7206, 5.046, 5.8056, 29.22],
  [27.68, 5.7, 0.7502, 3.864, 5.5398, 30.43],
  [28.13, 7.85, 0.7391, 2.859, 6.007, 30.94],
  [27.97, 6.32, 0.7543, 3.455, 5.487, 30.6],
  [27.49, 6.7, 0.755, 3.391, 4.8834, 29.52],
  [26.34, 6.61, 0.7417, 3.717, 4.317, 27.99],
  [23.59, 6.72, 0.7447, 4.392, 3.5488, 26.41],
  [20.29, 7.55, 0.7653, 3.706, 3.2152, 25.22],
];

/** A bare pool in Miami: 100 m², 1.5 m deep, held at 27 °C. In SI units, as cells hold them. */
export const MIAMI_POOL = {
  poolArea: 100,
  waterDepth: 1.5,
  setPoint: 27,
  latitude: 25.82,
  altitude: 11,
  shelter: 0.3,
} as const;

/** A split air conditioner of 7.5 tons with its exchanger. */
export const MIAMI_MACHINE = { ratedCooling: 26.4, ratedPower: 8.1, outdoorFan: 0.6, exchangerUA: 2500 } as const;

/** As Miami, but 25 K colder: the pool freezes. */
export const COLD_MONTHS: typeof MIAMI_MONTHS = MIAMI_MONTHS.map((line, row) =>
  line.map((cell, column) => (row > 0 && column === 0 && typeof cell === "number" ? cell - 25 : cell)),
);
