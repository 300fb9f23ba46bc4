import { quantity, sheet } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { listResult, NO_VALUE, quantityResult } from "../../kernel/define/result";
import { notAvailable, valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { quantityMark } from "../../kernel/values/quantityMark";
import { REFRIGERANT } from "../../refrigerant/args";
import { loadRefrigerant } from "../../refrigerant/refrigerant";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { CONDENSING_TEMPERATURE, EVAPORATING_TEMPERATURE, SUBCOOLING, SUPERHEAT } from "../args";
import { hotDischarge } from "../cautions";
import { SAMPLE_MAP } from "../data/sampleMap";
import { heatOfFlow } from "../equations";
import { MAP_SUPERHEAT } from "../map/args";
import { envelopeUnknown, ratedWithin, returnGasWarm, unlikelyMap } from "../map/cautions";
import { coefficientsOf } from "../map/coefficients";
import { mapPoint, mappedCycle, mapSuperheatAt, type CompressorMap } from "../map/map";

const USUAL_SUPERHEAT = us("temperature difference", 20);

const sample = { coefficients: SAMPLE_MAP, suction: 45, discharge: 130, refrigerant: "R-410A" } as const;

/** Refuses condensing outside the envelope given. */
function checkEnvelope(discharge: number, least: number | undefined, greatest: number | undefined): void {
  const shown = (T: number): string => quantityMark("temperature", T);
  if (least !== undefined && discharge < least - 1e-9)
    throw notAvailable(`discharge: the envelope begins at ${shown(least)} condensing, got ${shown(discharge)}`);
  if (greatest !== undefined && discharge > greatest + 1e-9)
    throw notAvailable(`discharge: the envelope ends at ${shown(greatest)} condensing, got ${shown(discharge)}`);
}

/** Condensing below it lies in no maker's envelope: a 0 from a blank cell isn't one. */
const ENVELOPE_END = quantity("temperature", "end of the envelope", {
  from: us("temperature", 33),
  to: us("temperature", 300),
});

export const cycleMap = cellFunction({
  id: "CYCLE.MAP",
  topic: "cycle",
  memoised: true,
  summary: "Mass flow, power, cooling and heat rejected of a compressor from its ten coefficients.",
  keywords: ["AHRI 540", "compressor map", "ten coefficients", "polynomial", "compressor data", "EN 12900"],
  details: [
    "X = C1 + C2 S + C3 D + C4 S² + C5 S D + C6 D² + C7 S³ + C8 D S² + C9 S D² + C10 D³ with suction S and discharge D as DEW temperatures. Units of the call: °F, lb/h and W, or °C, kg/h and W.",
    "Two columns or rows of ten, mass flow before power unless their heads say otherwise; a column that numbers them is passed over.",
    "Away from the map's superheat the flow changes with three quarters of the change of suction density, the power with flow and isentropic rise. Without a refrigerant: flow and power at the map's own superheat only.",
    "A polynomial must not be used outside the maker's envelope: enter its condensing limits and the function refuses beyond them.",
  ],
  args: {
    coefficients: sheet("ten coefficients each of mass flow and power, in the standard's order", 80),
    suction: EVAPORATING_TEMPERATURE.describedAs("suction dew temperature"),
    discharge: CONDENSING_TEMPERATURE.describedAs("discharge dew temperature"),
    superheat: SUPERHEAT.describedAs("superheat at the compressor, all of it useful cooling").default(USUAL_SUPERHEAT),
    subcooling: SUBCOOLING,
    refrigerant: REFRIGERANT.describedAs("refrigerant; left out: flow and power only").optional(),
    mapSuperheat: MAP_SUPERHEAT,
    leastCondensing: ENVELOPE_END.describedAs("least condensing temperature of the envelope").optional(),
    greatestCondensing: ENVELOPE_END.describedAs("greatest condensing temperature of the envelope").optional(),
  },
  returns: listResult("the compressor at this point", {
    massFlow: quantityResult("mass flow", "refrigerant"),
    power: quantityResult("electric power", "power of the compressor"),
    cooling: quantityResult("heat rate", "cooling of the evaporator"),
    rejected: quantityResult("heat rate", "heat rejected at the condenser"),
    dischargeTemperature: quantityResult("temperature", "discharge gas"),
    isentropicEfficiency: quantityResult("fraction", "isentropic efficiency that the map means"),
  }),
  facts: {
    bounded: "yes/no",
    isentropicEfficiency: "fraction",
    dischargeTemperature: "temperature",
    correction: "temperature difference",
  },
  cautions: [
    { rule: envelopeUnknown, raisedBy: sample },
    { rule: unlikelyMap, raisedBy: { ...sample, refrigerant: "R-454B" } },
    { rule: hotDischarge, raisedBy: { ...sample, suction: 30, discharge: 140 } },
    { rule: returnGasWarm, raisedBy: { ...sample, superheat: 45 } },
    { rule: ratedWithin, raisedBy: sample },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: sample,
      expected: { massFlow: 459.45, power: 3.07497 },
      tolerance: "0.002 %",
      source: "publicCompressorMap",
    },
    {
      inputs: sample,
      expected: { cooling: 30_326, rejected: 40_818, dischargeTemperature: 208.7 },
      tolerance: "0.1 %",
      source: "publicCompressorMap",
      remark: "properties by CoolProp 8.0.0",
    },
    {
      inputs: { ...sample, superheat: 10 },
      expected: { massFlow: 472.5, power: 3.0377, cooling: 29_943 },
      tolerance: "0.1 %",
      source: "publicCompressorMap",
      remark: "corrected to 10 °F of superheat, properties by CoolProp 8.0.0",
    },
    {
      inputs: { ...sample, discharge: 75, leastCondensing: 80 },
      expected: "#N/A",
      source: "identity",
      remark: "outside the envelope given",
    },
  ],
  compute(args, { trace, recordFacts, system }) {
    const { suction, discharge, superheat, subcooling, refrigerant, mapSuperheat } = args;
    const map: CompressorMap = { ...coefficientsOf(args.coefficients), system, superheat: mapSuperheat };
    checkEnvelope(discharge, args.leastCondensing, args.greatestCondensing);
    if (!(discharge > suction))
      throw valueError(
        `discharge: must be above suction (${quantityMark("temperature", suction)}), got ${quantityMark("temperature", discharge)}`,
      );
    const correction = Math.abs(superheat - mapSuperheatAt(map, suction));
    const bounded = args.leastCondensing !== undefined && args.greatestCondensing !== undefined;
    if (refrigerant === undefined) {
      if (correction > 1e-9) throw valueError("refrigerant: is needed to correct the map's superheat, and is left out");
      recordFacts({ bounded });
      const none = { cooling: NO_VALUE, rejected: NO_VALUE, dischargeTemperature: NO_VALUE } as const;
      return { ...mapPoint(map, suction, discharge, trace), ...none, isentropicEfficiency: NO_VALUE };
    }
    const at = { evaporating: suction, condensing: discharge, superheat, subcooling };
    const { massFlow, power, efficiency, cycle } = mappedCycle(map, loadRefrigerant(refrigerant), at, trace);
    const dischargeTemperature = cycle.discharge.temperature;
    recordFacts({ bounded, isentropicEfficiency: efficiency, dischargeTemperature, correction });
    return {
      massFlow,
      power,
      cooling: trace.step(heatOfFlow, { m: massFlow, q: cycle.cooling }),
      rejected: trace.within("Rejected", () => trace.step(heatOfFlow, { m: massFlow, q: cycle.rejected })),
      dischargeTemperature,
      isentropicEfficiency: efficiency,
    };
  },
});
