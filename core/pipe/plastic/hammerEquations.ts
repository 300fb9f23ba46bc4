/** Equations of the surge of a closing valve. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const rho = symbol("density", "density of the water", 950, 1001);
const a = symbol("velocity", "speed of the pressure wave", 200, 1400);
const v = symbol("velocity", "velocity that is stopped", 0.1, 4);
const L = symbol("length", "length of pipe", 1, 200);

/** Bulk modulus of water, Pa. */
const BULK = 2.19e9;

export const waveSpeed = equation({
  name: "Speed of the pressure wave in a thin pipe free to move",
  form: "a = sqrt(K / rho) / sqrt(1 + K / E * D / w)",
  kind: "velocity",
  symbols: {
    rho,
    E: symbol("pressure", "modulus of the pipe", 1e9, 4e9),
    D: symbol("diameter", "bore at the minimum wall", 0.01, 0.2),
    w: symbol("diameter", "minimum wall", 0.002, 0.02),
  },
  constants: { K: BULK },
  source: "korteweg",
  code: (x) => Math.sqrt(BULK / x.rho) / Math.sqrt(1 + ((BULK / x.E) * x.D) / x.w),
});

export const roundTrip = equation({
  name: "Round trip of the wave",
  form: "t = 2 * L / a",
  kind: "seconds",
  symbols: { L, a },
  source: "identity",
  code: (x) => (2 * x.L) / x.a,
});

export const rapidSurge = equation({
  name: "Surge of a flow stopped within the round trip (Joukowsky)",
  form: "p = rho * a * v",
  kind: "pressure drop",
  symbols: { rho, a, v },
  source: "joukowsky",
  code: (x) => x.rho * x.a * x.v,
});

export const slowSurge = equation({
  name: "Surge of a slower, uniform closing (Michaud)",
  form: "p = 2 * rho * L * v / t",
  kind: "pressure drop",
  symbols: { rho, L, v, t: symbol("seconds", "time that does the closing", 0.1, 60) },
  validity: "closing slower than the round trip; friction left out",
  source: "joukowsky",
  code: (x) => (2 * x.rho * x.L * x.v) / x.t,
});
