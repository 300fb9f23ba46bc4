/** How the stations' months are packed: least + (step × n)^power, n in two digits of base 91. */

export const DIGITS = Array.from({ length: 94 }, (_, i) => String.fromCharCode(33 + i))
  .filter((digit) => !'"\\`'.includes(digit))
  .join("");

/** Columns in °C, K, a fraction, m/s, kWh/m² a day and kPa; two digits hold 8,280 steps. */
export const COLUMNS = [
  { from: "air_mean_degC", least: -20, step: 0.01, power: 1 },
  { from: "daily_swing_mean_K", least: 0, step: 0.01, power: 1 },
  { from: "humidity_mean_frac", least: 0.15, step: 0.0001, power: 1 },
  { from: "wind_mean_m_s", least: 0, step: 0.001, power: 1 },
  { from: "sun_kWh_m2_day", least: 0, step: 1 / 2800, power: 2 },
  { from: "vapour_pressure_mean_kPa", least: 0, step: 1 / 4500, power: 2 },
] as const;
