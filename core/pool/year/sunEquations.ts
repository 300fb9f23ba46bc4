/** Sun, cloud and temperature of the hours of a synthetic day, and the water of the mains. Strict SI, angles in radians. */
import { equation, symbol } from "../../kernel/define/equation";

const DEGREE = Math.PI / 180;

const n = symbol("count", "day of the year", 1, 365);
const lat = symbol("number", "latitude, radians", -1.1, 1.1);
const dec = symbol("number", "declination, radians", -0.41, 0.41);
const ws = symbol("number", "hour angle of sunset, radians", 0.9, 2.2);

export const declination = equation({
  name: "Declination of the sun",
  form: "dec = 23.45 * pi / 180 * sin(2 * pi * (284 + n) / 365)",
  kind: "number",
  symbols: { n },
  source: "duffieBeckman2013",
  code: (x) => 23.45 * DEGREE * Math.sin((2 * Math.PI * (284 + x.n)) / 365),
});

/** On a level surface outside the air in a day, J/m². */
export const sunOutside = equation({
  name: "Sun outside the air",
  form: "H0 = 86400 / pi * 1367 * (1 + 0.033 * cos(2 * pi * n / 365)) * (cos(lat) * cos(dec) * sin(ws) + ws * sin(lat) * sin(dec))",
  kind: "daily sun",
  symbols: { n, lat, dec, ws },
  source: "duffieBeckman2013",
  code: (x) =>
    (86_400 / Math.PI) *
    1367 *
    (1 + 0.033 * Math.cos((2 * Math.PI * x.n) / 365)) *
    (Math.cos(x.lat) * Math.cos(x.dec) * Math.sin(x.ws) + x.ws * Math.sin(x.lat) * Math.sin(x.dec)),
});

/** Share of the day's sun that falls in the hour about an hour angle; below 0 at night. */
export const hourOfSun = equation({
  name: "An hour's share of the day's sun",
  form: "r = pi / 24 * (0.409 + 0.5016 * sin(ws - pi / 3) + (0.6609 - 0.4767 * sin(ws - pi / 3)) * cos(w)) * (cos(w) - cos(ws)) / (sin(ws) - ws * cos(ws))",
  kind: "fraction",
  symbols: { ws, w: symbol("number", "hour angle, radians", -1.5, 1.5) },
  source: { key: "duffieBeckman2013", where: "Collares-Pereira and Rabl 1979" },
  code: (x) => {
    const s = Math.sin(x.ws - Math.PI / 3);
    const height = (Math.cos(x.w) - Math.cos(x.ws)) / (Math.sin(x.ws) - x.ws * Math.cos(x.ws));
    return (Math.PI / 24) * (0.409 + 0.5016 * s + (0.6609 - 0.4767 * s) * Math.cos(x.w)) * height;
  },
});

export const heightOfSun = equation({
  name: "Sine of the sun's height",
  form: "s = sin(lat) * sin(dec) + cos(lat) * cos(dec) * cos(w)",
  kind: "number",
  symbols: { lat, dec, w: symbol("number", "hour angle, radians", -3.1, 3.1) },
  source: "duffieBeckman2013",
  code: (x) => Math.sin(x.lat) * Math.sin(x.dec) + Math.cos(x.lat) * Math.cos(x.dec) * Math.cos(x.w),
});

/** Of a cloudless hour on a level surface, W/m². */
export const clearSun = equation({
  name: "Sun of a clear sky",
  form: "G = max(0, 910 * s - 30)",
  kind: "irradiance",
  symbols: { s: symbol("number", "sine of the sun's height", -1, 1) },
  source: "kastenCzeplak1980",
  code: (x) => Math.max(0, 910 * x.s - 30),
});

/** G/Gclear = 1 − 0.75 (N/8)^3.4, solved for the cloud, in tenths. */
export const cloudOfSun = equation({
  name: "Cloud by the clearness of the sun",
  form: "N = 10 * (max(0, min(0.75, 1 - R)) / 0.75)^(1 / 3.4)",
  kind: "number",
  symbols: { R: symbol("fraction", "day's sun over that of a clear sky", 0, 1.2) },
  source: "kastenCzeplak1980",
  code: (x) => 10 * (Math.max(0, Math.min(0.75, 1 - x.R)) / 0.75) ** (1 / 3.4),
});

export const clearestDay = equation({
  name: "Clearness of a month's clearest day",
  form: "Kx = 0.6313 + 0.267 * K - 11.9 * (K - 0.75)^8",
  kind: "fraction",
  symbols: { K: symbol("fraction", "mean clearness of the month", 0.2, 0.8) },
  source: { key: "duffieBeckman2013", where: "Hollands and Huget 1983" },
  code: (x) => 0.6313 + 0.267 * x.K - 11.9 * (x.K - 0.75) ** 8,
});

/** Exponent of the distribution of the days' clearness between 0.05 and the clearest day's. */
export const clearnessExponent = equation({
  name: "Exponent of the days' clearness",
  form: "g = -1.498 + (1.184 * (Kx - 0.05) / (Kx - K) - 27.182 * exp(-1.5 * (Kx - 0.05) / (Kx - K))) / (Kx - 0.05)",
  kind: "number",
  symbols: {
    K: symbol("fraction", "mean clearness of the month", 0.25, 0.7),
    Kx: symbol("fraction", "clearness of the clearest day", 0.71, 0.85),
  },
  source: { key: "duffieBeckman2013", where: "Bendt and others 1981, Herzog 1985" },
  code: (x) => {
    const xi = (x.Kx - 0.05) / (x.Kx - x.K);
    return -1.498 + (1.184 * xi - 27.182 * Math.exp(-1.5 * xi)) / (x.Kx - 0.05);
  },
});

/** A day's temperature less its mean, K, at the clock's hour. */
export const hourOfWarmth = equation({
  name: "Shape of the day's temperature",
  form: "d = A * (0.4632 * cos(2 * pi * (t - 1) / 24 - 3.805) + 0.0984 * cos(4 * pi * (t - 1) / 24 - 0.360) + 0.0168 * cos(6 * pi * (t - 1) / 24 - 0.822) + 0.0138 * cos(8 * pi * (t - 1) / 24 - 3.513))",
  kind: "temperature difference",
  symbols: {
    A: symbol("temperature difference", "swing: highest less lowest", 0, 25),
    t: symbol("number", "hour of the day", 0, 24),
  },
  source: "erbs1984",
  code: (x) => {
    const a = (2 * Math.PI * (x.t - 1)) / 24;
    return (
      x.A *
      (0.4632 * Math.cos(a - 3.805) +
        0.0984 * Math.cos(2 * a - 0.36) +
        0.0168 * Math.cos(3 * a - 0.822) +
        0.0138 * Math.cos(4 * a - 3.513))
    );
  },
});

/** Highest in the afternoon: mean of four US stations (TMY3, first harmonic: 0.21 to 0.38 of the mean, at 14 h). */
export const hourOfWind = equation({
  name: "Shape of the day's wind",
  form: "v = m * (1 + 0.28 * cos(2 * pi * (t - 14) / 24))",
  kind: "wind speed",
  symbols: {
    m: symbol("wind speed", "mean wind", 0, 15),
    t: symbol("number", "hour of the day", 0, 24),
  },
  source: { key: "tmy3", where: "Miami, Chicago, Phoenix, Houston" },
  code: (x) => x.m * (1 + 0.28 * Math.cos((2 * Math.PI * (x.t - 14)) / 24)),
});

/** Estimate for the United States; the coefficients are for °F. */
export const mainsWater = equation({
  name: "Temperature of the mains",
  form: "T = (Tf + 6 + (0.4 + 0.01 * (Tf - 44)) * 0.9 * D * sin((0.986 * (n - 15 - (35 - (Tf - 44))) - 90) * pi / 180) + 459.67) / 1.8",
  kind: "temperature",
  symbols: {
    Tf: symbol("number", "mean air of the year, °F", 35, 80),
    D: symbol("temperature difference", "warmest less coldest monthly mean", 0, 35),
    n,
  },
  source: "burchChristensen2007",
  code: (x) => {
    const ratio = 0.4 + 0.01 * (x.Tf - 44);
    const lag = 35 - (x.Tf - 44);
    const wave = Math.sin((0.986 * (x.n - 15 - lag) - 90) * DEGREE);
    return (x.Tf + 6 + ratio * 0.9 * x.D * wave + 459.67) / 1.8;
  },
});
