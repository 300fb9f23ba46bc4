import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { BASIS } from "../../kernel/define/pressureBasis";
import { us } from "../../kernel/values/quantity";
import { listResult } from "../../kernel/define/result";
import { READING, REFRIGERANT } from "../args";
import { hotterThanFit, blendByMixing, supercriticalState, twoPhaseProperties } from "../cautions";
import { propertyTable } from "../propertyTable";
import { isPure, loadRefrigerant as named } from "../refrigerant";
import { stateAt } from "../state/state";
import { PROPERTY_ROWS, ZERO_ROW } from "../propertyRows";
import { EQUATION_SOURCES, TRANSPORT_SOURCES } from "../sources";

export const refrigState = cellFunction({
  id: "REFRIG.STATE",
  topic: "refrigerant",
  summary: "Properties of a refrigerant at a pressure and a temperature.",
  keywords: [
    "density",
    "enthalpy",
    "entropy",
    "superheated vapour",
    "subcooled liquid",
    "supercritical",
    "specific heat",
  ],
  details: [
    "The saturation lines decide the phase. Inside a blend's glide the answer is for liquid and vapour together; properties without meaning there stay empty.",
    "On a pure refrigerant's saturation line pressure and temperature don't fix the phase, so the function refuses: use REFRIG.SATURATED.",
    "Enthalpy zero: IIR in SI units, saturated liquid at −40 °F in US units; the last row says which. Differences don't depend on it.",
  ],
  args: {
    refrigerant: REFRIGERANT,
    pressure: READING,
    temperature: quantity("temperature", "temperature", { from: us("temperature", -300), to: us("temperature", 1500) }),
    basis: BASIS,
  },
  returns: listResult("properties", { ...PROPERTY_ROWS, ...ZERO_ROW }),
  facts: { blend: "yes/no", quality: "fraction", hottest: "temperature" },
  memoised: true,
  cautions: [
    {
      rule: twoPhaseProperties,
      raisedBy: { refrigerant: "R-407C", pressure: 1650, temperature: 40, basis: "absolute", units: "SI" },
    },
    {
      rule: supercriticalState,
      raisedBy: { refrigerant: "R-744", pressure: 9000, temperature: 40, basis: "absolute", units: "SI" },
    },
    { rule: blendByMixing, raisedBy: { refrigerant: "R-454B", pressure: 100, temperature: 80 } },
    { rule: hotterThanFit, raisedBy: { refrigerant: "R-32", pressure: 300, temperature: 350 } },
  ],
  sources: [...EQUATION_SOURCES, ...TRANSPORT_SOURCES],
  checks: [
    {
      inputs: { refrigerant: "R-134a", pressure: 1000, temperature: 36.85, basis: "absolute", units: "SI" },
      expected: {
        phase: "liquid",
        density: 1160.4,
        enthalpy: 251.72,
        heatCapacity: 1.4795,
        speedOfSound: 452.15,
      },
      tolerance: "0.01 %",
      source: { key: "tillnerRothBaehr1994", where: "table 9" },
    },
    {
      inputs: { refrigerant: "R-134a", pressure: 2000, temperature: 71.85, basis: "absolute", units: "SI" },
      expected: { phase: "vapour", density: 102.38, enthalpy: 434.73, heatCapacity: 1.4224, speedOfSound: 131.78 },
      tolerance: "0.01 %",
      source: { key: "tillnerRothBaehr1994", where: "table 9" },
    },
    {
      inputs: { refrigerant: "R-744", pressure: 9500, temperature: 80, basis: "absolute", units: "SI" },
      expected: {
        phase: "supercritical",
        density: 205.0675,
        enthalpy: 476.2987,
        entropy: 1.860493,
        heatCapacity: 1.757,
      },
      tolerance: "0.2 %",
      source: "coolprop8",
    },
    {
      inputs: { refrigerant: "R-22", pressure: 245.3126486, temperature: -18, basis: "absolute", units: "SI" },
      expected: { density: 10.6826591, enthalpy: 398.3923, entropy: 1.78783, viscosity: 0.010655 },
      tolerance: "0.2 %",
      source: "coolprop8",
    },
    {
      inputs: { refrigerant: "R-22", pressure: 245.3126486, temperature: -20, basis: "absolute", units: "SI" },
      expected: "#N/A",
      source: "identity",
      remark: "on the saturation line pressure and temperature don't fix the state",
    },
  ],
  compute({ refrigerant, pressure, temperature }, { trace, recordFacts, system }) {
    const fluid = named(refrigerant);
    const found = stateAt(fluid, pressure, temperature);
    recordFacts({ hottest: fluid.range.hottest, blend: !isPure(fluid) && found.phase !== "two-phase" });
    if (found.phase === "two-phase") recordFacts({ quality: found.quality });
    return propertyTable(fluid, found, system, trace);
  },
});
