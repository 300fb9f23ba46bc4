/** The properties of one state as a table shows them, each with its uncertainty and source in the working. */
import type { KindName, System } from "../kernel/values/quantity";
import { NO_VALUE } from "../kernel/define/result";
import { silent, type StepValue, type Trace } from "../kernel/define/steps";
import { enthalpyAbove, entropyAbove } from "./equations";
import type { PhaseState } from "./helmholtz/substance";
import { equationSource } from "./sources";
import { enthalpyZero } from "./state/enthalpyZero";
import type { Fluid } from "./refrigerant";
import type { RefrigerantState } from "./state/state";
import { conductivity, viscosity, type TransportValue } from "./transport/transport";
import { aboutPerCent, uncertaintyOf } from "./uncertainty";

type OrNone = number | typeof NO_VALUE;

/** SI by mass; properties without meaning for two phases together are empty. */
export interface PropertyTable {
  readonly phase: string;
  readonly density: number;
  readonly enthalpy: number;
  readonly entropy: number;
  readonly heatCapacity: OrNone;
  readonly speedOfSound: OrNone;
  readonly viscosity: OrNone;
  readonly conductivity: OrNone;
  readonly enthalpyZero: string;
}

type RecordProperty = (property: string, value: number, kind: KindName, uncertainty: string) => number;

const propertyRecorder = (fluid: Fluid, { pressure, temperature }: RefrigerantState, trace: Trace): RecordProperty => {
  const source = equationSource(fluid);
  const inputs: Readonly<Record<string, StepValue>> = {
    "absolute pressure": { value: pressure, kind: "pressure" },
    temperature: { value: temperature, kind: "temperature" },
  };
  return (property, value, kind, uncertainty) => {
    if (trace.on)
      trace.property({
        substance: fluid.name,
        property,
        inputs,
        result: { value, kind },
        uncertainty: `uncertainty ${uncertainty}`,
        source,
      });
    return value;
  };
};

/** Enthalpy and entropy over the zero of the cell's system. */
const energies = (fluid: Fluid, state: RefrigerantState, record: RecordProperty, trace: Trace, system: System) => {
  const zero = enthalpyZero(fluid, system);
  const uncertainty = `that of heat capacity and density: ${uncertaintyOf(fluid, "heat capacity")}`;
  const h = record("enthalpy over the IIR zero", state.enthalpy, "enthalpy", uncertainty);
  const s = record("entropy over the IIR zero", state.entropy, "entropy", uncertainty);
  if (system === "SI") return { enthalpy: h, entropy: s, enthalpyZero: zero.description };
  return {
    enthalpy: trace.step(enthalpyAbove, { h, h0: zero.enthalpy }),
    entropy: trace.step(entropyAbove, { s, s0: zero.entropy }),
    enthalpyZero: zero.description,
  };
};

const transportProperty = (
  fluid: Fluid,
  state: PhaseState,
  property: "viscosity" | "conductivity",
  trace: Trace,
): TransportValue => {
  const found = property === "viscosity" ? viscosity(fluid, state) : conductivity(fluid, state);
  if (trace.on)
    trace.property({
      substance: fluid.name,
      property,
      inputs: {
        temperature: { value: state.temperature, kind: "temperature" },
        density: { value: state.density, kind: "density" },
      },
      result: { value: found.value, kind: property },
      uncertainty: `uncertainty ${aboutPerCent(found.uncertainty)} away from the critical point`,
      source: found.source,
    });
  return found;
};

const ONE_PHASE_ONLY = {
  heatCapacity: NO_VALUE,
  speedOfSound: NO_VALUE,
  viscosity: NO_VALUE,
  conductivity: NO_VALUE,
} as const;

/** Every property of a state; enthalpy and entropy count from the zero of the system. */
export const propertyTable = (
  fluid: Fluid,
  state: RefrigerantState,
  system: System,
  trace: Trace = silent,
): PropertyTable => {
  const record = propertyRecorder(fluid, state, trace);
  const common = {
    phase: state.phase,
    density: record("density", state.density, "density", uncertaintyOf(fluid, "density")),
    ...energies(fluid, state, record, trace, system),
  };
  if (state.phase === "two-phase") return { ...common, ...ONE_PHASE_ONLY };
  return {
    ...common,
    heatCapacity: record("heat capacity", state.cp, "heat capacity", uncertaintyOf(fluid, "heat capacity")),
    speedOfSound: record("speed of sound", state.speedOfSound, "velocity", uncertaintyOf(fluid, "speed of sound")),
    viscosity: transportProperty(fluid, state, "viscosity", trace).value,
    conductivity: transportProperty(fluid, state, "conductivity", trace).value,
  };
};
