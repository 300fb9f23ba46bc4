/** Design pressure of a side of the circuit. */
import { notAvailable, valueError } from "../kernel/values/fault";
import { quantityMark } from "../kernel/values/quantityMark";
import { STANDARD_PRESSURE } from "../kernel/define/pressureBasis";
import { silent, type Trace } from "../kernel/define/steps";
import { si, us } from "../kernel/values/quantity";
import { pressureOnLine } from "../refrigerant/saturation/working";
import { airCooledDesign, waterCooledDesign, waterCooledDesignEN } from "./equations";

export type DesignSide = "low" | "high air" | "high water";

export interface DesignInput {
  readonly refrigerant: string;
  readonly side: DesignSide;
  readonly summerDryBulb: number | undefined;
  readonly leavingWater: number | undefined;
  readonly rule: "ASHRAE 15" | "EN 378";
}

/** EN 378-2, °C: warmest ambient, air-cooled high side. */
const AMBIENTS = [
  [32, 55],
  [38, 59],
  [43, 63],
  [55, 67],
] as const;

const LEAST = STANDARD_PRESSURE + us("pressure", 15);
const LOW_SIDE = us("temperature", 80);

function needed(value: number | undefined, name: string, { side, rule }: DesignInput): number {
  if (value === undefined) throw valueError(`${name}: needed for the ${side} side by ${rule}, got nothing`);
  return value;
}

function byAmbient(input: DesignInput, trace: Trace): number {
  const ambient = needed(input.summerDryBulb, "summerDryBulb", input);
  const row = AMBIENTS.find(([warmest]) => ambient <= si("temperature", warmest) + 1e-9);
  if (!row)
    throw notAvailable(
      `summerDryBulb: must be at most ${quantityMark("temperature", si("temperature", 55))} by EN 378, got ${quantityMark("temperature", ambient)}`,
    );
  const T = si("temperature", input.side === "low" ? row[0] : row[1]);
  trace.lookup({
    table: "Design temperature by ambient",
    row: `up to ${quantityMark("temperature", si("temperature", row[0]))}, ${input.side === "low" ? "low side outdoors" : "air-cooled high side"}`,
    result: { value: T, kind: "temperature" },
    source: "en378Pressure",
  });
  return T;
}

function designTemperature(input: DesignInput, trace: Trace): number {
  const european = input.rule === "EN 378";
  if (input.side === "high water") {
    const Tw = needed(input.leavingWater, "leavingWater", input);
    return trace.step(european ? waterCooledDesignEN : waterCooledDesign, { Tw });
  }
  if (european) return byAmbient(input, trace);
  if (input.side === "high air")
    return trace.step(airCooledDesign, { Ta: needed(input.summerDryBulb, "summerDryBulb", input) });
  trace.lookup({
    table: "Design temperature",
    row: "low side",
    result: { value: LOW_SIDE, kind: "temperature" },
    source: "ashrae15Pressure",
  });
  return LOW_SIDE;
}

/** Temperature (K) and absolute design pressure (Pa): bubble pressure, at least 15 psi over the air. */
export function designPressure(input: DesignInput, trace: Trace = silent) {
  const temperature = designTemperature(input, trace);
  return { temperature, pressure: Math.max(LEAST, pressureOnLine(input.refrigerant, temperature, "bubble", trace)) };
}
