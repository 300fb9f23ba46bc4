/** Ratings, tests and margins of the changed circuit. */
import { NO_VALUE } from "../../kernel/define/result";
import { STANDARD_PRESSURE } from "../../kernel/define/pressureBasis";
import { traceFor, type Trace } from "../../kernel/define/steps";
import { columnPressure } from "../../line/equations";
import { designPressure, type DesignSide } from "../design";
import { strengthTest } from "../equations";
import type { PressureInputs } from "./inputs";
import { COLUMN_DENSITY, CUT_OUT_SHARE, partsOf, type CircuitPart } from "./parts";

/** A part with a known rating. */
interface Rated extends CircuitPart {
  readonly rating: number;
}

const isRated = (part: CircuitPart): part is Rated => typeof part.rating === "number";
const isNameplate = (part: string): boolean => part.startsWith("nameplate");
const least = (parts: readonly Rated[]): number => Math.min(...parts.map(({ rating }) => rating));

/** Least design pressures by rule, Pa over the air. */
function byRule(inputs: PressureInputs, trace: Trace) {
  const side = (which: DesignSide): number =>
    trace.within(`Design pressure, ${which}`, () => designPressure({ ...inputs, side: which }, trace).pressure) -
    STANDARD_PRESSURE;
  return { high: Math.max(side("high air"), side("high water")), low: side("low") };
}

/** The machine's own sides answer to the rule, all other parts to the nameplate too: the machine may reach it. */
function designOf({ part, side }: CircuitPart, rule: { high: number; low: number }, inputs: PressureInputs): number {
  if (isNameplate(part)) return rule[side];
  return Math.max(rule[side], side === "high" ? inputs.nameplateHigh : inputs.nameplateLow);
}

function rowOf(part: CircuitPart, design: number, test: number, cutOut: number, trace: Trace) {
  const added = !isNameplate(part.part) && part.part !== "compressor shell";
  const fits = isRated(part) && part.rating >= design;
  return {
    part: part.part,
    rating: part.rating ?? NO_VALUE,
    design,
    test,
    cutOut: part.side === "high" ? cutOut : NO_VALUE,
    margin: isRated(part) ? part.rating - design : NO_VALUE,
    strengthTest: added && fits ? traceFor(part.part, trace).step(strengthTest, { P: design }) : NO_VALUE,
    note:
      isRated(part) && !fits
        ? `${isNameplate(part.part) ? "below the rule: ask the maker" : "below its design pressure"}; ${part.note}`
        : part.note,
  };
}

function waterRow({ waterShell, pumpDeadHead }: PressureInputs, trace: Trace) {
  const part = "water side of the coil";
  const design =
    pumpDeadHead === undefined
      ? NO_VALUE
      : traceFor(part, trace).step(columnPressure, { rho: COLUMN_DENSITY, z: pumpDeadHead });
  return {
    part,
    rating: waterShell ?? NO_VALUE,
    design,
    test: NO_VALUE,
    cutOut: NO_VALUE,
    margin: waterShell === undefined || design === NO_VALUE ? NO_VALUE : waterShell - design,
    strengthTest: NO_VALUE,
    note: "against the pump at no flow: relief needed",
  };
}

/** Pa over the air. */
export function solvePressures(inputs: PressureInputs, trace: Trace) {
  const rule = byRule(inputs, trace);
  const parts = partsOf(inputs, trace);
  const rated = parts.filter(isRated);
  const high = rated.filter(({ side }) => side === "high");
  const low = rated.filter(({ side }) => side === "low");
  const test = inputs.highSideShutOff
    ? { high: least(high), low: least(low) }
    : { high: least(rated), low: least(rated) };
  const relief = inputs.reliefSetting === undefined ? Infinity : CUT_OUT_SHARE * inputs.reliefSetting;
  const cutOut = Math.min(least(high), relief);
  const rows = parts.map((part) => rowOf(part, designOf(part, rule, inputs), test[part.side], cutOut, trace));
  const judged = rated.filter(({ part }) => !isNameplate(part));
  const marginOf = (part: Rated): number => part.rating - designOf(part, rule, inputs);
  const weakest = (judged.length > 0 ? judged : rated).reduce((a, b) => (marginOf(b) < marginOf(a) ? b : a));
  const unrated = parts.filter((part) => !isRated(part)).map(({ part }) => part);
  const last = {
    part: "weakest part",
    rating: weakest.rating,
    design: designOf(weakest, rule, inputs),
    test: least(rated),
    cutOut,
    margin: marginOf(weakest),
    strengthTest: NO_VALUE,
    note: `${weakest.part}${unrated.length > 0 ? `; not rated: ${unrated.join(", ")}` : ""}`,
  };
  return {
    rows: [...rows, waterRow(inputs, trace), last],
    facts: {
      ...(judged.length > 0 && { weakestPart: weakest.part, weakestMargin: marginOf(weakest) }),
      unratedParts: unrated.join(", "),
      highTest: test.high,
      highDesign: Math.max(rule.high, inputs.nameplateHigh),
    },
  };
}
