/** Caution rules of the calibration. */
import { caution } from "../../kernel/define/caution";

export const calibrationLimits = caution({
  code: "POOL-CALIBRATE-LIMITS",
  severity: "Caution",
  source: "guideline14",
  description: "The fitted model misses the guideline's limits of bias and variation.",
  needs: { outsideLimits: "yes/no" },
  when: ({ outsideLimits }) => outsideLimits,
  message: () =>
    "Bias or variation of the fitted pool lies outside the guideline's limits: don't use the values. Look for heat, fill water or a cover that the log doesn't name.",
});

export const calibrationWeak = caution({
  code: "POOL-CALIBRATE-WEAK",
  severity: "Caution",
  source: "commonPractice",
  description: "Labels that the log can't tell apart, that lie at a bound, or of which it says little.",
  needs: { weak: "word" },
  when: ({ weak }) => weak !== "",
  message: ({ weak }) =>
    `Not found by this log: ${weak}. Fit fewer labels, hold the rest, or log longer in other weather.`,
});

export const calibrationWell = caution({
  code: "POOL-CALIBRATE-WELL",
  severity: "Notice",
  standing: true,
  source: "commonPractice",
  description: "A fit takes up every other fault of the block: a wrong depth shows as wind.",
  needs: {},
  when: () => true,
  message: () =>
    "A fitted value takes up every other fault of the block: a wrong depth or a leak shows as wind. Check the fit on days that it hasn't seen, and keep the pump on so that the sensor reads mixed water.",
});
