import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { zonesOf } from "../zones/working";
import { ZONE_NAMES, type Zone } from "../zones/zones";
import { closePinch, hotGasNearPlastic, warmLeavingWater } from "../zones/cautions";
import { ZONE_INPUTS } from "../zones/inputs";
import { hotWaterInPlastic } from "../water/cautions";

const fernhill = {
  refrigerant: "R-410A",
  heatRejected: 112000,
  condensing: 105,
  evaporating: 45,
  waterFlow: 40,
  enteringWater: 82,
} as const;

const textbook = {
  refrigerant: "R-22",
  massFlow: 100,
  condensing: 60,
  dischargeTemperature: 60,
  subcooling: 0,
  waterFlow: 1,
  enteringWater: 30,
} as const;

const rowOf = (zone: string, of: Zone | undefined, share: number) =>
  of === undefined
    ? {
        zone,
        duty: 0,
        refrigerantIn: NO_VALUE,
        refrigerantOut: NO_VALUE,
        waterIn: NO_VALUE,
        waterOut: NO_VALUE,
        meanDifference: NO_VALUE,
        UA: 0,
        share,
        leastDifference: NO_VALUE,
        place: NO_VALUE,
      }
    : {
        zone,
        duty: of.duty,
        refrigerantIn: of.refrigerantIn,
        refrigerantOut: of.refrigerantOut,
        waterIn: of.waterIn,
        waterOut: of.waterOut,
        meanDifference: of.meanDifference,
        UA: of.ua,
        share,
        leastDifference: of.least.difference,
        place: of.least.place,
      };

export const exchangerZones = cellFunction({
  id: "EXCHANGER.ZONES",
  topic: "exchanger",
  summary: "Desuperheating, condensing and subcooling against water: duty, temperatures, UA, pinch.",
  keywords: ["condenser", "pinch", "glide", "desuperheater", "approach", "temperature profile"],
  details: [
    "Matches water along the refrigerant's real enthalpy curve: 8 slices of gas, 24 of condensing (glide of blends included), 4 of liquid, each with its log mean difference.",
    "The gas enters at its discharge temperature, or as a cycle's evaporating temperature, superheat and efficiency give it. No pressure drop; the water's heat capacity is that at entry.",
    "The gas is assumed to cool fully before it condenses. A wall below the dew temperature condenses gas sooner, so the UA actually needed is usually smaller.",
    "If the curves cross, the error names the place and the condensing temperature at which they would just touch.",
  ],
  args: { inputs: ZONE_INPUTS },
  returns: tableResult(
    "zones and their total",
    {
      zone: wordResult("part of the exchanger"),
      duty: quantityResult("heat rate", "heat passed"),
      refrigerantIn: quantityResult("temperature", "refrigerant entering"),
      refrigerantOut: quantityResult("temperature", "refrigerant leaving"),
      waterIn: quantityResult("temperature", "water entering"),
      waterOut: quantityResult("temperature", "water leaving"),
      meanDifference: quantityResult("temperature difference", "duty over UA"),
      UA: quantityResult("heat conductance", "conductance that the duty needs"),
      share: quantityResult("fraction", "share of the duty"),
      leastDifference: quantityResult(
        "temperature difference",
        "least difference between the streams; of the total: the pinch",
      ),
      place: wordResult("where the difference is least"),
    },
    { total: true },
  ),
  facts: {
    pinchDifference: "temperature difference",
    pinchPlace: "word",
    hotGas: "temperature",
    leavingWater: "temperature",
  },
  memoised: true,
  cautions: [
    { rule: closePinch, raisedBy: { inputs: { ...fernhill, condensing: 94 } } },
    { rule: hotGasNearPlastic, raisedBy: { inputs: fernhill } },
    { rule: hotWaterInPlastic, raisedBy: { inputs: { ...fernhill, condensing: 148, waterFlow: 3.5 } } },
    { rule: warmLeavingWater, raisedBy: { inputs: { ...fernhill, condensing: 130, waterFlow: 8 } } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      inputs: { inputs: textbook, units: "SI" },
      expected: { row: "total", column: "duty", value: 3.887134 },
      tolerance: "0.01 %",
      source: "coolprop8",
      remark: "latent heat of R-22 at 60 °C: 417.549406 − 277.612575 = 139.936831 kJ/kg",
    },
    {
      inputs: { inputs: { ...textbook, waterFlow: 0.22417 }, units: "SI" },
      expected: { row: "total", column: "mean difference", value: 21.6 },
      tolerance: 0.05,
      source: "steamCondenserTables",
      remark: "60 °C condensing, water 30 to 45 °C",
    },
    {
      inputs: { inputs: { ...fernhill, condensing: 80 } },
      expected: "#N/A",
      source: "identity",
      remark: "water of 82 °F takes no heat from a refrigerant at 80 °F",
    },
    { inputs: { inputs: { ...fernhill, massFlow: 1500 } }, expected: "#VALUE!", source: "identity" },
  ],
  compute({ inputs }, { trace, recordFacts }) {
    const { zones: found, total, curve } = zonesOf(inputs, trace);
    recordFacts({
      pinchDifference: total.least.difference,
      pinchPlace: total.least.place,
      hotGas: curve.inlet.temperature,
      leavingWater: total.waterOut,
    });
    return [
      ...ZONE_NAMES.map((name) => rowOf(name, found[name], (found[name]?.duty ?? 0) / total.duty)),
      rowOf("total", total, 1),
    ];
  },
});
