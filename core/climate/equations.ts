/** Distance between places, and air at another height. Strict SI, angles in radians. */
import { equation, symbol } from "../kernel/define/equation";

const latitude = symbol("number", "latitude, radians", -1.5, 1.5);
const longitude = symbol("number", "longitude, radians", -3.1, 3.1);
const z = symbol("altitude", "altitude of the place", 0, 3000);
const z0 = symbol("altitude", "altitude of the station", 0, 3000);

export const greatCircle = equation({
  name: "Distance on the sphere (haversine)",
  form: "D = 2 * R * asin(sqrt(sin((b - a) / 2)^2 + cos(a) * cos(b) * sin((m - l) / 2)^2))",
  kind: "distance",
  symbols: { a: latitude, b: latitude, l: longitude, m: longitude },
  constants: { R: 6.371e6 },
  source: "identity",
  code: (x) =>
    2 *
    6.371e6 *
    Math.asin(
      Math.sqrt(Math.sin((x.b - x.a) / 2) ** 2 + Math.cos(x.a) * Math.cos(x.b) * Math.sin((x.m - x.l) / 2) ** 2),
    ),
});

export const airAtHeight = equation({
  name: "Air at another height",
  form: "T = T0 - 0.0065 * (z - z0)",
  kind: "temperature",
  symbols: { T0: symbol("temperature", "air at the station", 250, 310), z, z0 },
  validity: "the standard atmosphere; nights and winters fall less, inversions turn it round",
  source: "standardAtmosphere1976",
  code: (x) => x.T0 - 0.0065 * (x.z - x.z0),
});

export const vapourAtHeight = equation({
  name: "Vapour pressure at another height",
  form: "e = e0 * p / p0",
  kind: "pressure",
  symbols: {
    e0: symbol("pressure", "vapour pressure at the station", 100, 3000),
    p: symbol("pressure", "pressure of the standard atmosphere at the place", 70_000, 102_000),
    p0: symbol("pressure", "pressure of the standard atmosphere at the station", 70_000, 102_000),
  },
  validity: "at most saturation",
  source: "commonPractice",
  code: (x) => (x.e0 * x.p) / x.p0,
});
