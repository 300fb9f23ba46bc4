/** The cycle with its record in the working. */
import { silent, type StepValue, type Trace } from "../kernel/define/steps";
import type { KindName } from "../kernel/values/quantity";
import { loadRefrigerant } from "../refrigerant/refrigerant";
import { equationSource } from "../refrigerant/sources";
import { compressorWork, coolingOf, dischargeEnthalpy, rejectedOf } from "./equations";
import { solveCycle, type Cycle } from "./cycle";

/** A cycle that names its refrigerant; temperatures and differences in K. */
export interface NamedCycle {
  readonly refrigerant: string;
  readonly evaporating: number;
  readonly condensing: number;
  readonly superheat: number;
  readonly subcooling: number;
  readonly efficiency: number;
}

const shown = (value: number, kind: KindName): StepValue => ({ value, kind });

/** Records properties and balances of a solved cycle. */
const traceSolved = (solved: Cycle, trace: Trace): void => {
  const { input, suction, isentropicDischarge, discharge, dew, bubble, liquid } = solved;
  const { name } = input.refrigerant;
  const source = equationSource(input.refrigerant);
  const traceProperty = (
    property: string,
    inputs: Readonly<Record<string, StepValue>>,
    value: number,
    kind: KindName,
  ): void => trace.property({ substance: name, property, inputs, result: shown(value, kind), source });
  const pe = shown(solved.evaporatingPressure, "pressure");
  const pc = shown(solved.condensingPressure, "pressure");
  const at = (temperature: number): StepValue => shown(temperature, "temperature");
  trace.within("States", () => {
    traceProperty(
      "evaporating pressure, absolute",
      { dew: at(input.evaporating) },
      solved.evaporatingPressure,
      "pressure",
    );
    traceProperty(
      "condensing pressure, absolute",
      { dew: at(input.condensing) },
      solved.condensingPressure,
      "pressure",
    );
    traceProperty(
      "suction enthalpy h1 (IIR zero)",
      { pressure: pe, temperature: at(suction.temperature) },
      suction.enthalpy,
      "enthalpy",
    );
    traceProperty(
      "suction entropy",
      { pressure: pe, temperature: at(suction.temperature) },
      suction.entropy,
      "entropy",
    );
    traceProperty(
      "enthalpy h2s at the suction's entropy",
      { pressure: pc, entropy: shown(suction.entropy, "entropy") },
      isentropicDischarge.enthalpy,
      "enthalpy",
    );
    traceProperty("dew enthalpy", { pressure: pc }, dew.enthalpy, "enthalpy");
    traceProperty(
      "bubble enthalpy",
      { pressure: pc, temperature: at(bubble.temperature) },
      bubble.enthalpy,
      "enthalpy",
    );
    traceProperty(
      "liquid enthalpy h3",
      { pressure: pc, temperature: at(liquid.temperature) },
      liquid.enthalpy,
      "enthalpy",
    );
  });
  trace.within("Balances", () => {
    const h1 = suction.enthalpy;
    const w = trace.step(compressorWork, { h2s: isentropicDischarge.enthalpy, h1, e: input.efficiency });
    const h2 = trace.step(dischargeEnthalpy, { h1, w });
    traceProperty(
      "discharge temperature",
      { pressure: pc, enthalpy: shown(h2, "enthalpy") },
      discharge.temperature,
      "temperature",
    );
    trace.step(coolingOf, { h1, h3: liquid.enthalpy });
    trace.step(rejectedOf, { h2, h3: liquid.enthalpy });
  });
};

/** Solves the cycle and, on a recording trace, records its states and balances. */
export const cycleOf = (named: NamedCycle, trace: Trace = silent): Cycle => {
  const solved = solveCycle({ ...named, refrigerant: loadRefrigerant(named.refrigerant) });
  if (trace.on) traceSolved(solved, trace);
  return solved;
};

/** The facts that the cautions of the cycle functions read. */
export const factsOf = (solved: Cycle): { dischargeTemperature: number; pressureRatio: number } => ({
  dischargeTemperature: solved.discharge.temperature,
  pressureRatio: solved.condensingPressure / solved.evaporatingPressure,
});
