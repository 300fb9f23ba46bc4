/** Surface tension with its record in the working. */
import { silent, type Trace } from "../../kernel/define/steps";
import { isPure, type Fluid } from "../refrigerant";
import { surfaceTension } from "./surfaceTension";
import { transportOf } from "./viscosity";

/** N/m at a temperature in K of the bubble line. */
export const tensionOnLine = (fluid: Fluid, temperature: number, trace: Trace = silent): number => {
  const tension = surfaceTension(fluid, temperature);
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property: "surface tension",
      inputs: { temperature: { value: temperature, kind: "temperature" } },
      result: { value: tension, kind: "surface tension" },
      uncertainty: isPure(fluid) ? "uncertainty about 3 %" : "uncertainty about 10 %, parachors mixed by mole",
      source: isPure(fluid) ? transportOf(fluid.name).surfaceTension.source : "weinaugKatz1943",
    });
  return tension;
};
