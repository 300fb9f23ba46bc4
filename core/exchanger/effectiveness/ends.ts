/** End temperatures of two streams and their mean difference. */
import { valueError, notAvailable } from "../../kernel/values/fault";
import { silent, type Trace } from "../../kernel/define/steps";
import { quantityMark } from "../../kernel/values/quantityMark";
import type { Direction } from "../args";
import { endDifference, logMeanDifference } from "../surface/equations";

/** Temperatures, K. */
export interface TerminalTemperatures {
  readonly hotIn: number;
  readonly hotOut: number;
  readonly coldIn: number;
  readonly coldOut: number;
}

const T = (value: number): string => quantityMark("temperature", value);

/** The four temperatures by name. */
export const terminalText = (ends: TerminalTemperatures): string =>
  `hotIn ${T(ends.hotIn)}, hotOut ${T(ends.hotOut)}, coldIn ${T(ends.coldIn)}, coldOut ${T(ends.coldOut)}`;

/** Refuses a hot stream that warms or a cold one that cools. */
export const checkSenses = (ends: TerminalTemperatures): void => {
  if (ends.hotOut > ends.hotIn)
    throw valueError(
      `hotOut: must be at most hotIn (${T(ends.hotIn)}), since the hot stream gives heat, got ${T(ends.hotOut)}`,
    );
  if (ends.coldOut < ends.coldIn)
    throw valueError(
      `coldOut: must be at least coldIn (${T(ends.coldIn)}), since the cold stream takes heat, got ${T(ends.coldOut)}`,
    );
};

/** Log mean temperature difference, K. Refuses temperatures that cross or touch at an end. */
export const meanDifferenceOf = (ends: TerminalTemperatures, direction: Direction, trace: Trace = silent): number => {
  checkSenses(ends);
  const [coldAtHotIn, coldAtHotOut] =
    direction === "counterflow" ? [ends.coldOut, ends.coldIn] : [ends.coldIn, ends.coldOut];
  if (ends.hotIn <= coldAtHotIn || ends.hotOut <= coldAtHotOut)
    throw notAvailable(
      `temperatures cross or touch in ${direction}: the hot stream must be the warmer one at both ends (hotIn against ${
        direction === "counterflow" ? "coldOut, hotOut against coldIn" : "coldIn, hotOut against coldOut"
      }), got ${terminalText(ends)}`,
    );
  const dT1 = trace.step(endDifference, { Th: ends.hotIn, Tc: coldAtHotIn });
  const dT2 = trace.step(endDifference, { Th: ends.hotOut, Tc: coldAtHotOut });
  return trace.step(logMeanDifference, { dT1, dT2 });
};
