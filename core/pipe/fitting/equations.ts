/** Equations of losses in fittings. Strict SI; the forms convert to the papers' inches. */
import { equation, symbol } from "../../kernel/define/equation";
import { GRAVITY } from "../../numeric/constants";

const Re = symbol("number", "Reynolds number", 2e3, 1e6);
const K1 = symbol("number", "constant K1", 100, 2000);

export const threeConstant = equation({
  name: "Loss coefficient, three constants",
  form: "K = K1 / Re + Ki * (1 + Kd / (N / 0.0254)^0.3)",
  kind: "number",
  symbols: {
    K1,
    Re,
    Ki: symbol("number", "constant Ki", 0.01, 3),
    Kd: symbol("number", "constant Kd", 3, 5),
    N: symbol("diameter", "nominal size", 0.0127, 0.2032),
  },
  source: "darby1999",
  code: (x) => x.K1 / x.Re + x.Ki * (1 + x.Kd / (x.N / 0.0254) ** 0.3),
});

export const twoConstant = equation({
  name: "Loss coefficient, two constants",
  form: "K = K1 / Re + Kinf * (1 + 0.0254 / D)",
  kind: "number",
  symbols: { K1, Re, Kinf: symbol("number", "constant K∞", 0.05, 10), D: symbol("diameter", "bore", 0.013, 0.21) },
  source: "hooper1981",
  code: (x) => x.K1 / x.Re + x.Kinf * (1 + 0.0254 / x.D),
});

export const suddenContraction = equation({
  name: "Loss coefficient of a reducer, on the smaller bore",
  form: "K = 0.5 * (1 - (D / Db)^2)",
  kind: "number",
  symbols: { D: symbol("diameter", "smaller bore", 0.013, 0.1), Db: symbol("diameter", "larger bore", 0.11, 0.21) },
  validity: "sudden contraction, conservative for a tapered reducer",
  source: "craneTp410",
  code: (x) => 0.5 * (1 - (x.D / x.Db) ** 2),
});

export const fittingHead = equation({
  name: "Head lost in fittings",
  form: "h = n * K * v^2 / (2 * g)",
  kind: "head",
  symbols: {
    n: symbol("count", "number of fittings", 1, 20),
    K: symbol("number", "loss coefficient", 0.02, 10),
    v: symbol("velocity", "mean velocity", 0.1, 4),
  },
  constants: { g: GRAVITY },
  source: "darcyWeisbach",
  code: (x) => (x.n * x.K * x.v ** 2) / (2 * GRAVITY),
});

export const equivalentCoefficient = equation({
  name: "Loss coefficient of an equivalent length",
  form: "K = f * Le / D",
  kind: "number",
  symbols: {
    f: symbol("number", "Darcy friction factor", 0.01, 0.05),
    Le: symbol("length", "equivalent length", 0.3, 8),
    D: symbol("diameter", "bore", 0.013, 0.21),
  },
  source: "darcyWeisbach",
  code: (x) => (x.f * x.Le) / x.D,
});
