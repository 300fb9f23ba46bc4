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

/** SI by mass; what has no meaning for two phases side by side is left empty. */
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

type Tell = (property: string, value: number, kind: KindName, uncertainty: string) => number;

const teller = (fluid: Fluid, { pressure, temperature }: RefrigerantState, trace: Trace): Tell => {
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
const energies = (fluid: Fluid, state: RefrigerantState, tell: Tell, trace: Trace, system: System) => {
  const zero = enthalpyZero(fluid, system);
  const follows = `that of heat capacity and density: ${uncertaintyOf(fluid, "heat capacity")}`;
  const h = tell("enthalpy over the IIR zero", state.enthalpy, "enthalpy", follows);
  const s = tell("entropy over the IIR zero", state.entropy, "entropy", follows);
  if (system === "SI") return { enthalpy: h, entropy: s, enthalpyZero: zero.says };
  return {
    enthalpy: trace.step(enthalpyAbove, { h, h0: zero.enthalpy }),
    entropy: trace.step(entropyAbove, { s, s0: zero.entropy }),
    enthalpyZero: zero.says,
  };
};

const transported = (
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
  const tell = teller(fluid, state, trace);
  const common = {
    phase: state.phase,
    density: tell("density", state.density, "density", uncertaintyOf(fluid, "density")),
    ...energies(fluid, state, tell, trace, system),
  };
  if (state.phase === "two-phase") return { ...common, ...ONE_PHASE_ONLY };
  return {
    ...common,
    heatCapacity: tell("heat capacity", state.cp, "heat capacity", uncertaintyOf(fluid, "heat capacity")),
    speedOfSound: tell("speed of sound", state.speedOfSound, "velocity", uncertaintyOf(fluid, "speed of sound")),
    viscosity: transported(fluid, state, "viscosity", trace).value,
    conductivity: transported(fluid, state, "conductivity", trace).value,
  };
};
