/** The least flow that carries oil up a riser. */
import type { Cycle } from "../cycle/cycle";
import { silent, type Trace } from "../kernel/define/steps";
import { leastRiserFlow } from "./equations";
import { lineState, type Service } from "./lineState";

/** Compressor oil between mineral (about 900) and polyolester oil (about 1,000), kg/m3: 5 % more changes the flow by 2.5 %. */
export const OIL_DENSITY = 960;

/** kg/s in a gas line of a bore in m. */
export const leastFlow = (cycle: Cycle, service: Service, bore: number, trace: Trace = silent): number => {
  const { density } = lineState(cycle, service, trace);
  return trace.step(leastRiserFlow, { D: bore, rho: density, rhoOil: OIL_DENSITY });
};
