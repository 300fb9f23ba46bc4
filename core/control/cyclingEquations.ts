/** Equations of a two-position control on a mass of water. Strict SI. */
import { equation, relation, symbol } from "../kernel/define/equation";

const number = (description: string, from: number, to: number) => symbol("number", description, from, to);
const seconds = (description: string, from: number, to: number) => symbol("seconds", description, from, to);
const C = number("heat that a kelvin takes, J/K", 5000, 4e8);
const Q = symbol("heat rate", "heat while on", 3000, 40000);
const band = symbol("temperature difference", "dead band", 0.2, 5);
const tau = seconds("time constant of the sensor", 1, 60);

export const warmingRate = equation({
  name: "Rise while on, K/s",
  form: "r = (1 - x) * Q / C",
  kind: "number",
  symbols: { x: symbol("fraction", "load: heat lost, as a share of the heat while on", 0.05, 0.95), Q, C },
  source: "identity",
  code: (s) => ((1 - s.x) * s.Q) / s.C,
});

export const shortestCycle = equation({
  name: "Shortest cycle, at half load",
  form: "t = 4 * (C * b / Q + tau)",
  kind: "seconds",
  symbols: { C, b: band, Q, tau },
  validity: "cycles of several time constants of the sensor; shorter ones are shorter still",
  source: "commonPractice",
  code: (s) => 4 * ((s.C * s.b) / s.Q + s.tau),
});

/** A first-order sensor on the saw-tooth that the switching makes: exact in the steady cycle. */
export const cycleCloses = relation({
  name: "The sensor swings by the dead band",
  form: "r * t1 - (r + f) * tau * (1 - exp(-t1/tau)) * (1 - exp(-t0/tau)) / (1 - exp(-(t1 + t0)/tau)) = b",
  symbols: {
    r: number("rise while on, K/s", 1e-5, 1),
    t1: seconds("on", 1, 3600),
    f: number("fall while off, K/s", 1e-5, 1),
    tau,
    t0: seconds("off", 1, 3600),
    b: band,
  },
  source: "identity",
  left: (s) =>
    s.r * s.t1 -
    ((s.r + s.f) * s.tau * (1 - Math.exp(-s.t1 / s.tau)) * (1 - Math.exp(-s.t0 / s.tau))) /
      (1 - Math.exp(-(s.t1 + s.t0) / s.tau)),
  right: (s) => s.b,
});

export const startsByLoad = equation({
  name: "Starts an hour of a thermostat",
  form: "N = 4 * Nm * x * (1 - x)",
  kind: "number",
  symbols: {
    Nm: number("starts an hour at half load", 1, 6),
    x: symbol("fraction", "share of the time it runs", 0, 1),
  },
  validity: "from memory: form of the cycling tests of thermostats",
  source: "commonPractice",
  code: (s) => 4 * s.Nm * s.x * (1 - s.x),
});
