/** Every part of the changed circuit and the pressure that it is good for. */
import { isFault, valueError, type Fault } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { traceFor, type Trace } from "../../kernel/define/steps";
import { sizesOfTube } from "../../line/tube";
import { BRAZED, isEstimate, ratedPressure, type TubeChoice } from "../tube";
import type { PressureInputs } from "./inputs";

/** Pa over the air; undefined where no rating is known. */
export interface CircuitPart {
  readonly part: string;
  readonly side: "high" | "low";
  readonly rating: number | Fault | undefined;
  readonly note: string;
}

const UNMARKED = "not given: read its mark";

const marked = (part: string, side: CircuitPart["side"], rating: number | undefined): CircuitPart => ({
  part,
  side,
  rating,
  note: rating === undefined ? UNMARKED : "as marked",
});

/** A tube outside the table of stresses fails its own row only. */
function ratingOf(outside: number, wall: number, tube: TubeChoice, trace: Trace): number | Fault {
  try {
    return ratedPressure(outside, wall, tube, trace);
  } catch (fault) {
    if (isFault(fault) && fault.code === "#N/A") return fault;
    throw fault;
  }
}

function line(part: string, size: string | undefined, temperature: number, trace: Trace): CircuitPart {
  if (size === undefined) return { part, side: "high", rating: undefined, note: "no size given" };
  const { outside, wall } = sizesOfTube(size);
  const rating = ratingOf(outside, wall, { material: "copper", temperature, ...BRAZED }, traceFor(part, trace));
  return { part, side: "high", rating, note: `${size} copper, brazed` };
}

function coil(inputs: PressureInputs, trace: Trace): CircuitPart {
  const { coilStamped, coilMaterial, coilDiameter, coilWall, coilTemperature, coilJoint } = inputs;
  const part = "pool coil";
  if (coilStamped !== undefined) return { part, side: "high", rating: coilStamped, note: "as stamped" };
  if (coilMaterial === undefined || coilDiameter === undefined || coilWall === undefined)
    return { part, side: "high", rating: undefined, note: "no stamped pressure: unfit without one" };
  if (coilTemperature === undefined)
    throw valueError("inputs: coil temperature is needed to estimate the coil: give it, or coil stamped");
  const tube: TubeChoice = { ...BRAZED, material: coilMaterial, temperature: coilTemperature, joint: coilJoint };
  return {
    part,
    side: "high",
    rating: ratingOf(coilDiameter, coilWall, tube, traceFor(part, trace)),
    note: `estimate${isEstimate(coilMaterial) ? " from memory" : ""}: the stamped pressure governs`,
  };
}

/** In the table's order, nameplate first. */
export function partsOf(inputs: PressureInputs, trace: Trace): readonly CircuitPart[] {
  return [
    {
      part: "nameplate high side",
      side: "high",
      rating: inputs.nameplateHigh,
      note: "governs the machine",
    },
    { part: "nameplate low side", side: "low", rating: inputs.nameplateLow, note: "governs the machine" },
    marked("compressor shell", "low", inputs.compressorShell),
    line("added gas line", inputs.gasLineSize, inputs.gasLineTemperature, trace),
    line("added liquid line", inputs.liquidLineSize, inputs.liquidLineTemperature, trace),
    coil(inputs, trace),
    marked("diverting valve", "high", inputs.divertingValve),
    marked("check valve", "high", inputs.checkValve),
    marked("receiver", "high", inputs.receiver),
  ];
}

/** Share of a relief setting that a cut-out may reach. */
export const CUT_OUT_SHARE = 0.9;

/** Water at 60 °F, as trade heads count. */
export const COLUMN_DENSITY = us("density", 62.37);
