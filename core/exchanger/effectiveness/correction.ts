/** Correction factor of the mean difference. */
import { notAvailable } from "../../kernel/values/fault";
import { showNumber } from "../../kernel/values/quantity";
import { silent, type Trace } from "../../kernel/define/steps";
import {
  changeRatio,
  correctionFactor,
  effectivenessPerShell,
  temperatureEffectiveness,
  unitsPerShell,
} from "./correctionEquations";
import { counterflowEffectiveness, counterflowUnits, shellUnits } from "./equations";
import { checkSenses, terminalText, type TerminalTemperatures } from "./ends";
import { mostEffectiveness } from "./effectiveness";

/**
 * The highest temperature effectiveness of shells in series, on the stream that changes more.
 *
 * @param R smaller over larger temperature change, 0 to 1
 */
export const mostTemperatureEffectiveness = (R: number, shells: number): number => {
  const one = mostEffectiveness("shell and tube", R);
  if (one >= 1) return 1;
  return counterflowEffectiveness.code({ N: shells * counterflowUnits.code({ e: one, C: R }), C: R });
};

/** On the cold stream, as charts print it: P = cold change / (hotIn − coldIn), R = hot change / cold change. */
const chartWords = (P: number, R: number, most: number, coldChangesMore: boolean): string => {
  const onCold = (value: number): number => (coldChangesMore ? value : value * R);
  const ratio = coldChangesMore ? R : 1 / R;
  return `at R = (hotIn − hotOut)/(coldOut − coldIn) = ${showNumber(ratio)}, P = (coldOut − coldIn)/(hotIn − coldIn) must be below ${showNumber(onCold(most))}, got ${showNumber(onCold(P))}`;
};

/** Correction factor F, 0 to 1, for shells in series with an even number of tube passes each. Refuses where none exists. */
export const correctionOf = (ends: TerminalTemperatures, shells: number, trace: Trace = silent): number => {
  checkSenses(ends);
  const { hotIn, hotOut, coldIn, coldOut } = ends;
  if (hotIn <= coldIn) throw notAvailable(`hotIn must be above coldIn, got ${terminalText(ends)}`);
  const coldChangesMore = coldOut - coldIn >= hotIn - hotOut;
  const [To, Ti] = coldChangesMore ? [coldOut, coldIn] : [hotIn, hotOut];
  const less = coldChangesMore ? hotIn - hotOut : coldOut - coldIn;
  const P = trace.step(temperatureEffectiveness, { To, Ti, D: hotIn - coldIn });
  if (less === 0 && P < 1) {
    trace.remark("One stream keeps its temperature: no correction, F = 1.");
    return 1;
  }
  const R = trace.step(changeRatio, { a: less, b: To - Ti });
  const most = mostTemperatureEffectiveness(R, shells);
  if (P >= most)
    throw notAvailable(
      `no correction factor exists with ${shells} shell ${shells === 1 ? "pass" : "passes"} (${terminalText(ends)}): ${chartWords(P, R, most, coldChangesMore)}; use more shells in series or counterflow`,
    );
  const N = trace.step(counterflowUnits, { e: P, C: R });
  const n = trace.step(unitsPerShell, { N, S: shells });
  const e = trace.step(effectivenessPerShell, { n, R });
  const Ns = trace.step(shellUnits, { e, C: R });
  return trace.step(correctionFactor, { n, Ns });
};
