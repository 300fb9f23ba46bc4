/** Payback and present value of a yearly saving. */
import { silent, type Trace } from "../kernel/define/steps";
import { bracketedRoot } from "../numeric/root";
import { discountedPayback, netPresentValue, presentValueFactor, simplePayback, yearlyRatio } from "./equations";

export interface Investment {
  readonly cost: number;
  /** Saving of a year at today's prices; may be negative. */
  readonly saving: number;
  /** Discount rate, 1/year. */
  readonly discount: number;
  /** Yearly rise of the saving, 1/year. */
  readonly escalation: number;
  /** Years to count. */
  readonly years: number;
  /** Of a year, at today's prices. */
  readonly upkeep?: number;
  /** Paid once, at today's price, at the end of `replacementYear`. */
  readonly replacement?: number;
  readonly replacementYear?: number | undefined;
}

export interface Payback {
  /** Undefined if the saving less upkeep is zero or negative. */
  readonly simple: number | undefined;
  /** Undefined if the discounted savings never pay the cost for good. */
  readonly discounted: number | undefined;
  readonly netPresentValue: number;
  readonly presentValueFactor: number;
}

const NEVER = Number.POSITIVE_INFINITY;

/** Net present value of the first `n` years. */
function presentValue(investment: Investment, n: number, trace: Trace): { readonly F: number; readonly net: number } {
  const { cost: C, saving: S, discount: d, escalation: e, upkeep: u = 0, replacement: R = 0 } = investment;
  const F = trace.step(presentValueFactor, { q: trace.step(yearlyRatio, { e, d }), n });
  const U = u === 0 ? 0 : trace.step(presentValueFactor, { q: 1 / (1 + d), n });
  const { replacementYear: y = NEVER } = investment;
  const P = R === 0 || y > n ? 0 : (1 + d) ** -y;
  return { F, net: trace.step(netPresentValue, { S, F, u, U, R, P, C }) };
}

/** The last time, in years and fractions, that the sum turns positive; undefined if it ends negative. */
function turnsPositive(investment: Investment): number | undefined {
  const net = (n: number): number => presentValue(investment, n, silent).net;
  let n = investment.years;
  if (net(n) < 0) return undefined;
  while (n > 1 && net(n - 1) >= 0) n--;
  // In the year of a replacement the sum falls back at its very end.
  const root = bracketedRoot((x) => net(x), n - 1, n, { tolerance: 1e-9 });
  return root.found ? root.x : n;
}

/** The closed formula, regardless of the years counted. */
function withoutUpkeep({ cost: C, saving: S, discount: d, escalation: e }: Investment, trace: Trace) {
  if (S <= 0) return undefined;
  const [r, q] = [C / S, yearlyRatio.code({ e, d })];
  const reached = q >= 1 || (r * (1 - q)) / q < 1;
  return reached ? trace.step(discountedPayback, { r, q }) : undefined;
}

export function paybackOf(investment: Investment, trace: Trace = silent): Payback {
  const { cost: C, saving, upkeep = 0, replacement = 0 } = investment;
  const S = saving - upkeep;
  const simple = S > 0 ? trace.step(simplePayback, { C, S }) : undefined;
  const { F, net } = presentValue(investment, investment.years, trace);
  const discounted = upkeep === 0 && replacement === 0 ? withoutUpkeep(investment, trace) : turnsPositive(investment);
  return { simple, discounted, netPresentValue: net, presentValueFactor: F };
}
