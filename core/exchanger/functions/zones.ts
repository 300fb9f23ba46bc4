import { cellFunction } from "../../kernel/define/cellFunction";
import { NO_VALUE, of, table, word } from "../../kernel/define/result";
import { EQUATION_SOURCES } from "../../refrigerant/sources";
import { zonesOf } from "../zones/working";
import { ZONE_NAMES, type Zone } from "../zones/zones";
import { closePinch, gasBesidePlastic, warmLeavingWater } from "../zones/cautions";
import { ZONE_INPUTS } from "../zones/inputs";
import { hotWaterBesidePlastic } from "../water/cautions";

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

export const zones = cellFunction({
  id: "EXCHANGER.ZONES",
  topic: "exchanger",
  summary: "Desuperheating, condensing and subcooling beside water: duty, temperatures, UA, pinch.",
  finds: ["condenser", "pinch", "glide", "desuperheater", "approach", "temperature profile"],
  remarks: [
    "Water is matched along the refrigerant's real enthalpy curve: 8 slices of gas, 24 of condensing (glide of blends included), 4 of liquid, each with its log mean difference.",
    "The gas enters at its discharge temperature, or as a cycle's evaporating temperature, superheat and efficiency leave it. No pressure drop; the water's heat capacity is that of entering.",
    "The gas is taken to cool down before it condenses. A wall below the dew temperature condenses sooner: the UA that is really needed is then rather smaller.",
    "Where curves cross, the refusal names the place and the condensing temperature at which they would just touch.",
  ],
  args: { inputs: ZONE_INPUTS },
  gives: table(
    "zones and their total",
    {
      zone: word("part of the exchanger"),
      duty: of("heat rate", "heat passed"),
      refrigerantIn: of("temperature", "refrigerant entering"),
      refrigerantOut: of("temperature", "refrigerant leaving"),
      waterIn: of("temperature", "water entering"),
      waterOut: of("temperature", "water leaving"),
      meanDifference: of("temperature difference", "duty over UA"),
      UA: of("heat conductance", "conductance that the duty asks for"),
      share: of("fraction", "share of the duty"),
      leastDifference: of("temperature difference", "least difference between the streams; of the total: the pinch"),
      place: word("where the difference is least"),
    },
    { total: true },
  ),
  facts: {
    pinchDifference: "temperature difference",
    pinchPlace: "word",
    hotGas: "temperature",
    leavingWater: "temperature",
  },
  heavy: true,
  cautions: [
    { rule: closePinch, fires: { inputs: { ...fernhill, condensing: 94 } } },
    { rule: gasBesidePlastic, fires: { inputs: fernhill } },
    { rule: hotWaterBesidePlastic, fires: { inputs: { ...fernhill, condensing: 148, waterFlow: 3.5 } } },
    { rule: warmLeavingWater, fires: { inputs: { ...fernhill, condensing: 130, waterFlow: 8 } } },
  ],
  sources: EQUATION_SOURCES,
  checks: [
    {
      at: { inputs: textbook, units: "SI" },
      gives: { row: "total", column: "duty", is: 3.887134 },
      within: "0.01 %",
      from: "coolprop8",
      remark: "latent heat of R-22 at 60 °C: 417.549406 − 277.612575 = 139.936831 kJ/kg",
    },
    {
      at: { inputs: { ...textbook, waterFlow: 0.22417 }, units: "SI" },
      gives: { row: "total", column: "mean difference", is: 21.6 },
      within: 0.05,
      from: "steamCondenserTables",
      remark: "60 °C condensing, water 30 to 45 °C",
    },
    {
      at: { inputs: { ...fernhill, condensing: 80 } },
      gives: "#N/A",
      from: "identity",
      remark: "water of 82 °F takes no heat from a refrigerant at 80 °F",
    },
    { at: { inputs: { ...fernhill, massFlow: 1500 } }, gives: "#VALUE!", from: "identity" },
  ],
  work({ inputs }, { trace, note }) {
    const { zones: found, total, curve } = zonesOf(inputs, trace);
    note({
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
