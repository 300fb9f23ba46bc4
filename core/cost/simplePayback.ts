/** Payback and present value of a yearly saving. */
import { silent, type Trace } from "../kernel/define/steps";
import { discountedPayback, netPresentValue, presentValueFactor, simplePayback, yearlyRatio } from "./equations";

export interface Investment {
  readonly cost: number;
  /** Saving of a year at today's prices. */
  readonly saving: number;
  /** Discount rate, 1/year. */
  readonly discount: number;
  /** Yearly rise of the saving, 1/year. */
  readonly escalation: number;
  /** Years that count. */
  readonly years: number;
}

export interface Payback {
  readonly simple: number;
  /** Undefined where the discounted savings never reach the cost, however long they run. */
  readonly discounted: number | undefined;
  readonly netPresentValue: number;
  readonly presentValueFactor: number;
}

export const paybackOf = (investment: Investment, trace: Trace = silent): Payback => {
  const { cost: C, saving: S, discount: d, escalation: e, years: n } = investment;
  const simple = trace.step(simplePayback, { C, S });
  const q = trace.step(yearlyRatio, { e, d });
  const F = trace.step(presentValueFactor, { q, n });
  const net = trace.step(netPresentValue, { S, F, C });
  const reached = q >= 1 || (simple * (1 - q)) / q < 1;
  const discounted = reached ? trace.step(discountedPayback, { r: simple, q }) : undefined;
  return { simple, discounted, netPresentValue: net, presentValueFactor: F };
};
