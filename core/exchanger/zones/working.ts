/** Zones with their record in the working. */
import type { KindName } from "../../kernel/values/quantity";
import { silent, type StepValue, type Trace } from "../../kernel/define/steps";
import { solveCycle } from "../../cycle/cycle";
import { cycleOf } from "../../cycle/working";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import { equationSource } from "../../refrigerant/sources";
import { densityOfWater, heatCapacityOfWater } from "../../water/equations";
import { conductanceForDuty, logMeanDifference } from "../surface/equations";
import { capacityRateOfWater, leavingWater } from "../water/equations";
import { effectiveDifference, flowForHeat, shareOfDuty, zoneDuty } from "./equations";
import { checkDuty, type DutyChoice } from "./inputs";
import type { Direction } from "../args";
import { matchStreams, ZONE_NAMES, type StreamMatch, type Zone, type ZonesInput } from "./zones";

/** The duty side as the input block gives it. */
export interface DutyInputs extends DutyChoice {
  readonly refrigerant: string;
  readonly condensing: number;
  readonly subcooling: number;
  readonly superheat: number;
  readonly efficiency: number;
  readonly waterFlow: number;
  readonly enteringWater: number;
  readonly direction: Direction;
  /** Enthalpy of the hot gas, J/kg, in place of the one that the cycle gives. */
  readonly inletEnthalpy?: number;
}

const shown = (value: number, kind: KindName): StepValue => ({ value, kind });

/** The model's input from the block's; refuses none or both of two ways. */
export const zonesInputOf = (inputs: DutyInputs): ZonesInput => {
  checkDuty(inputs);
  const fluid = loadRefrigerant(inputs.refrigerant);
  const { dischargeTemperature, evaporating, superheat, subcooling, efficiency, inletEnthalpy } = inputs;
  return {
    fluid,
    heat: inputs.heatRejected,
    massFlow: inputs.massFlow,
    inlet: (condensing) =>
      dischargeTemperature !== undefined
        ? { temperature: dischargeTemperature }
        : {
            enthalpy:
              inletEnthalpy ??
              solveCycle({
                refrigerant: fluid,
                evaporating: evaporating ?? condensing,
                condensing,
                superheat,
                subcooling,
                efficiency,
              }).discharge.enthalpy,
          },
    condensing: inputs.condensing,
    subcooling,
    waterFlow: inputs.waterFlow,
    enteringWater: inputs.enteringWater,
    direction: inputs.direction,
  };
};

const traceRefrigerant = (input: ZonesInput, { curve }: StreamMatch, trace: Trace): void => {
  const source = equationSource(input.fluid);
  const states = [
    ["hot gas", curve.inlet],
    ["dew point", curve.dew],
    ["bubble point", curve.bubble],
    ["leaving liquid", curve.outlet],
  ] as const;
  for (const [name, { temperature, enthalpy }] of states)
    trace.property({
      substance: input.fluid.name,
      property: `enthalpy of the ${name} (IIR zero)`,
      inputs: { pressure: shown(curve.pressure, "pressure"), temperature: shown(temperature, "temperature") },
      result: shown(enthalpy, "enthalpy"),
      source,
    });
};

const traceZone = (title: string, zone: Zone, slices: Slices, total: number, trace: Trace): void =>
  trace.within(title, () => {
    trace.step(zoneDuty, { m: slices.massFlow, ha: slices.ha, hb: slices.hb });
    trace.series({
      title: "Conductance of each slice: its heat over its log mean difference",
      of: conductanceForDuty.name,
      kind: "heat conductance",
      total: "sum",
      values: slices.conductances,
    });
    trace.step(effectiveDifference, { Q: zone.duty, UA: zone.ua });
    trace.step(shareOfDuty, { Q: zone.duty, Qt: total });
  });

interface Slices {
  readonly massFlow: number;
  readonly ha: number;
  readonly hb: number;
  readonly conductances: readonly number[];
}

const slicesOf = ({ curve, water, massFlow }: StreamMatch, from: number, to: number): Slices => {
  const value = (of: Float64Array, i: number): number => of[i] ?? Number.NaN;
  const dT = (i: number): number => value(curve.temperatures, i) - value(water, i);
  return {
    massFlow,
    ha: value(curve.enthalpies, from),
    hb: value(curve.enthalpies, to),
    conductances: Array.from({ length: to - from }, (_, i) => {
      const Q = massFlow * (value(curve.enthalpies, from + i) - value(curve.enthalpies, from + i + 1));
      const dTm = logMeanDifference.code({ dT1: dT(from + i), dT2: dT(from + i + 1) });
      return conductanceForDuty.code({ Q, F: 1, dTm });
    }),
  };
};

const traceMatch = (input: ZonesInput, found: StreamMatch, trace: Trace): void => {
  const { curve, total } = found;
  trace.within("Refrigerant", () => {
    traceRefrigerant(input, found, trace);
    if (input.heat !== undefined)
      trace.step(flowForHeat, { Q: input.heat, ha: curve.inlet.enthalpy, hb: curve.outlet.enthalpy });
  });
  trace.within("Water", () => {
    const rho = trace.step(densityOfWater, { T: input.enteringWater });
    const cp = trace.step(heatCapacityOfWater, { T: input.enteringWater });
    const C = trace.step(capacityRateOfWater, { V: input.waterFlow, rho, cp });
    trace.step(leavingWater, { Tw: input.enteringWater, Q: total.duty, C });
  });
  const spans = {
    desuperheating: [0, curve.dewAt],
    condensing: [curve.dewAt, curve.bubbleAt],
    subcooling: [curve.bubbleAt, found.water.length - 1],
  } as const;
  for (const name of ZONE_NAMES) {
    const zone = found.zones[name];
    const [from, to] = spans[name];
    if (zone) traceZone(name, zone, slicesOf(found, from, to), total.duty, trace);
  }
};

/** Matches both streams from the block's inputs and, on a recording trace, records how. */
export const zonesOf = (inputs: DutyInputs, trace: Trace = silent): StreamMatch => {
  const input = zonesInputOf(inputs);
  const found = matchStreams(input);
  if (trace.on) {
    const { evaporating, dischargeTemperature, ...named } = inputs;
    if (evaporating !== undefined && dischargeTemperature === undefined && inputs.inletEnthalpy === undefined)
      trace.within("Cycle", () => cycleOf({ ...named, evaporating }, trace));
    traceMatch(input, found, trace);
  }
  return found;
};
