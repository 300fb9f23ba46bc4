/** Equations whose printed form is 0/0 at one point compute the limit there. */
import { expect, test } from "vitest";
import { discountedPayback, presentValueFactor } from "../../core/cost/equations";
import { decayShare, logMeanDifference, logShare } from "../../core/exchanger/surface/equations";

// With escalation and discount alike, each year's saving is worth that of the first: n years are worth n, and a cost of r
// yearly savings is paid back in r years.
test.each([0.9, 4, 25])("%d years at equal escalation and discount are worth as many", (years) => {
  expect(presentValueFactor.code({ q: 1, n: years })).toBe(years);
  expect(presentValueFactor.code({ q: 1 + 1e-12, n: years })).toBeCloseTo(years, 9);
  expect(discountedPayback.code({ q: 1, r: years })).toBe(years);
  expect(discountedPayback.code({ q: 1 + 1e-12, r: years })).toBeCloseTo(years, 9);
});

test("ln(1 + x)/x and (1 − exp(−x))/x are 1 at 0, so that equal differences have their own mean", () => {
  for (const share of [logShare, decayShare]) {
    expect(share(0)).toBe(1);
    expect(share(1e-12)).toBeCloseTo(1, 9);
  }
  expect(logMeanDifference.code({ dT1: 7, dT2: 7 })).toBe(7);
});
