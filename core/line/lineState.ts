/** The state of the flow in a refrigerant line. */
import { outOfRange } from "../kernel/values/fault";
import type { Cycle } from "../cycle/cycle";
import { silent, type Trace } from "../kernel/define/steps";
import type { PhaseState } from "../refrigerant/helmholtz/substance";
import { viscosity } from "../refrigerant/transport/transport";
import { aboutPerCent } from "../refrigerant/uncertainty";
import { equationSource } from "../refrigerant/sources";

export const SERVICES = ["suction", "discharge", "liquid"] as const;
export type Service = (typeof SERVICES)[number];

/** The state at the compressor's inlet or outlet, or after the condenser; kg/m3 in the working. */
export const lineState = (cycle: Cycle, service: Service, trace: Trace = silent): PhaseState => {
  const state = service === "suction" ? cycle.suction : service === "liquid" ? cycle.liquid : cycle.discharge;
  const { refrigerant: fluid } = cycle.input;
  if (state.phase === "two-phase")
    throw outOfRange({
      quantity: `${fluid.name} ${service} line`,
      limit: "a single phase",
      got: "wet gas from the compressor",
    });
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property: `density in the ${service} line`,
      inputs: {
        "absolute pressure": { value: state.pressure, kind: "pressure" },
        temperature: { value: state.temperature, kind: "temperature" },
      },
      result: { value: state.density, kind: "density" },
      source: equationSource(fluid),
    });
  return state;
};

/** Dynamic viscosity of that state, Pa s. */
export const lineViscosity = (cycle: Cycle, state: PhaseState, trace: Trace = silent): number => {
  const { refrigerant: fluid } = cycle.input;
  const found = viscosity(fluid, state);
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property: "viscosity",
      inputs: { temperature: { value: state.temperature, kind: "temperature" } },
      result: { value: found.value, kind: "viscosity" },
      uncertainty: `uncertainty ${aboutPerCent(found.uncertainty)}`,
      source: found.source,
    });
  return found.value;
};
