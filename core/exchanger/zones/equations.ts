/** Equations of a refrigerant condensing against water, zone by zone. Strict SI. */
import { equation, symbol } from "../../kernel/define/equation";

const ha = symbol("enthalpy", "refrigerant entering the zone", 4.3e5, 5e5);
const hb = symbol("enthalpy", "refrigerant leaving the zone", 2e5, 4.2e5);
const m = symbol("mass flow", "refrigerant", 1e-3, 1);
const Q = symbol("heat rate", "heat", 500, 500_000);

export const zoneDuty = equation({
  name: "Heat given off in a zone",
  form: "Q = m * (ha - hb)",
  kind: "heat rate",
  symbols: { m, ha, hb },
  source: "identity",
  code: (x) => x.m * (x.ha - x.hb),
});

export const flowForHeat = equation({
  name: "Refrigerant flow for the heat",
  form: "m = Q / (ha - hb)",
  kind: "mass flow",
  symbols: { Q, ha, hb },
  source: "identity",
  code: (x) => x.Q / (x.ha - x.hb),
});

export const effectiveDifference = equation({
  name: "Mean difference of a zone",
  form: "dTm = Q / UA",
  kind: "temperature difference",
  symbols: { Q, UA: symbol("heat conductance", "sum over the slices", 50, 50_000) },
  source: "identity",
  code: (x) => x.Q / x.UA,
});

export const shareOfDuty = equation({
  name: "Share of the duty",
  form: "s = Q / Qt",
  kind: "fraction",
  symbols: { Q, Qt: symbol("heat rate", "whole duty", 500, 500_000) },
  source: "identity",
  code: (x) => x.Q / x.Qt,
});
