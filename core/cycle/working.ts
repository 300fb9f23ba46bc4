/** The cycle with its record in the working. */
import { silent, type Shown, type Trace } from "../kernel/define/steps";
import type { KindName } from "../kernel/values/quantity";
import { refrigerant } from "../refrigerant/refrigerant";
import { equationSource } from "../refrigerant/sources";
import { compressorWork, coolingOf, dischargeEnthalpy, rejectedOf } from "./equations";
import { cycle, type Cycle } from "./cycle";

/** A cycle by the name of its refrigerant; temperatures K, differences K. */
export interface NamedCycle {
  readonly refrigerant: string;
  readonly evaporating: number;
  readonly condensing: number;
  readonly superheat: number;
  readonly subcooling: number;
  readonly efficiency: number;
}

const shown = (value: number, kind: KindName): Shown => ({ value, kind });

/** Records properties and balances of a solved cycle. */
const tell = (solved: Cycle, trace: Trace): void => {
  const { input, suction, isentropicDischarge, discharge, dew, bubble, liquid } = solved;
  const { name } = input.refrigerant;
  const source = equationSource(input.refrigerant);
  const tellOne = (property: string, at: Readonly<Record<string, Shown>>, value: number, kind: KindName): void =>
    trace.property({ substance: name, property, at, gives: shown(value, kind), source });
  const pe = shown(solved.evaporatingPressure, "pressure");
  const pc = shown(solved.condensingPressure, "pressure");
  const at = (temperature: number): Shown => shown(temperature, "temperature");
  trace.within("States", () => {
    tellOne("evaporating pressure, absolute", { dew: at(input.evaporating) }, solved.evaporatingPressure, "pressure");
    tellOne("condensing pressure, absolute", { dew: at(input.condensing) }, solved.condensingPressure, "pressure");
    tellOne(
      "suction enthalpy h1 (IIR zero)",
      { pressure: pe, temperature: at(suction.temperature) },
      suction.enthalpy,
      "enthalpy",
    );
    tellOne("suction entropy", { pressure: pe, temperature: at(suction.temperature) }, suction.entropy, "entropy");
    tellOne(
      "enthalpy h2s at the suction's entropy",
      { pressure: pc, entropy: shown(suction.entropy, "entropy") },
      isentropicDischarge.enthalpy,
      "enthalpy",
    );
    tellOne("dew enthalpy", { pressure: pc }, dew.enthalpy, "enthalpy");
    tellOne("bubble enthalpy", { pressure: pc, temperature: at(bubble.temperature) }, bubble.enthalpy, "enthalpy");
    tellOne("liquid enthalpy h3", { pressure: pc, temperature: at(liquid.temperature) }, liquid.enthalpy, "enthalpy");
  });
  trace.within("Balances", () => {
    const h1 = suction.enthalpy;
    const w = trace.step(compressorWork, { h2s: isentropicDischarge.enthalpy, h1, e: input.efficiency });
    const h2 = trace.step(dischargeEnthalpy, { h1, w });
    tellOne(
      "discharge temperature",
      { pressure: pc, enthalpy: shown(h2, "enthalpy") },
      discharge.temperature,
      "temperature",
    );
    trace.step(coolingOf, { h1, h3: liquid.enthalpy });
    trace.step(rejectedOf, { h2, h3: liquid.enthalpy });
  });
};

/** Solves the cycle and, on a recording trace, tells its states and balances. */
export const cycleOf = (named: NamedCycle, trace: Trace = silent): Cycle => {
  const solved = cycle({ ...named, refrigerant: refrigerant(named.refrigerant) });
  if (trace.on) tell(solved, trace);
  return solved;
};

/** What the cautions of the cycle functions read. */
export const factsOf = (solved: Cycle): { dischargeTemperature: number; pressureRatio: number } => ({
  dischargeTemperature: solved.discharge.temperature,
  pressureRatio: solved.condensingPressure / solved.evaporatingPressure,
});
