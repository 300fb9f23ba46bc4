import { block, choice, quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { NO_VALUE, listResult, quantityResult } from "../../kernel/define/result";
import { belowTable, holdingHeadUp, datedFactors } from "../cautions";
import { ISENTROPIC_EFFICIENCY } from "../../cycle/args";
import { REFRIGERANT } from "../../refrigerant/args";
import { COMPRESSORS } from "../data/rejectionFactors";
import { RECLAIMS, USUAL_SHARE, rackHeat, type RackInputs } from "../rackHeat";

const degF = (value: number): number => us("temperature", value);
const evaporating = (about: string, otherwise: number) =>
  quantity("temperature", about, { from: degF(-60), to: degF(60) }).default(degF(otherwise));

const INPUTS = {
  compressor: choice("RackCompressor", COMPRESSORS, "kind of compressor").default("suction-cooled hermetic"),
  mediumLoad: quantity("heat rate", "medium temperature load", { from: 0 }).default(0),
  mediumEvaporating: evaporating("evaporating temperature of the medium load", 20),
  lowLoad: quantity("heat rate", "low temperature load", { from: 0 }).default(0),
  lowEvaporating: evaporating("evaporating temperature of the low load", -20),
  condensing: quantity("temperature", "condensing temperature", { from: degF(50), to: degF(160) }),
  reclaim: choice("Reclaim", RECLAIMS, "part of the heat that is reclaimed").default("desuperheating"),
  desuperheatingShare: quantity("fraction", "desuperheating share of the heat", {
    from: 0,
    to: 1,
    usual: [0.08, 0.35],
  }).default(USUAL_SHARE),
  heldCondensing: quantity("temperature", "condensing temperature held up for heat", {
    from: degF(50),
    to: degF(160),
  }).optional(),
  refrigerant: REFRIGERANT.optional(),
  efficiency: ISENTROPIC_EFFICIENCY,
};

const RACK = { "medium load": 150000, "low load": 60000, condensing: 95 };
const coldestOf = (x: RackInputs): number =>
  Math.min(x.mediumLoad > 0 ? x.mediumEvaporating : 1e3, x.lowLoad > 0 ? x.lowEvaporating : 1e3);

export const sinkRack = cellFunction({
  id: "SINK.RACK",
  topic: "sink",
  summary: "Heat available from a refrigeration rack, and the cost of holding its head pressure up.",
  keywords: ["heat reclaim", "supermarket", "heat rejection factor", "head pressure", "desuperheating"],
  details: [
    "Heat rejected = load × published rejection factor, each load on its own compressors (no two-stage or cascade).",
    "Desuperheating is 10 % (R-134a) to 25 % (R-32) of the heat, more at low evaporating temperatures: enter the cycle's share (CYCLE.SPLIT); the default is 15 % (common practice).",
    "With a refrigerant (R-449A, R-407A …) factor and share are those of its single-stage cycle between dew temperatures, with 18 °F (10 K) of useful superheat, 5 °F (3 K) of subcooling and the isentropic efficiency; transcritical R-744: CYCLE.GASCOOLER.",
    "Extra power of a held-up head by the same table, and by the disputed rules of 0.5 to 2 % per °F.",
  ],
  args: { inputs: block(INPUTS, "labels, values and units: see NOTE.INPUTS") },
  returns: listResult("heat of the rack", {
    mediumFactor: quantityResult("number", "heat rejected per refrigeration, medium"),
    lowFactor: quantityResult("number", "heat rejected per refrigeration, low"),
    heatRejected: quantityResult("heat rate", "all heat rejected"),
    desuperheating: quantityResult("heat rate", "desuperheating part"),
    condensing: quantityResult("heat rate", "condensing and subcooling part"),
    heatToBeHad: quantityResult("heat rate", "heat available from this reclaim"),
    compressorPower: quantityResult("electric power", "compressor power that becomes heat"),
    extraHeat: quantityResult("heat rate", "extra heat with the head held up"),
    extraPower: quantityResult("electric power", "extra power, by the table"),
    extraPowerLeast: quantityResult("electric power", "extra power at 0.5 % per °F"),
    extraPowerMost: quantityResult("electric power", "extra power at 2 % per °F"),
  }),
  facts: { coldest: "temperature" },
  cautions: [
    { rule: datedFactors, raisedBy: { inputs: RACK } },
    { rule: belowTable, raisedBy: { inputs: RACK } },
    { rule: holdingHeadUp, raisedBy: { inputs: { ...RACK, "held condensing": 110 } } },
  ],
  checks: [
    {
      inputs: { inputs: { "medium load": 225000, "medium evaporating": 20, condensing: 110 } },
      expected: { mediumFactor: 1.33 },
      tolerance: 0.01,
      source: "heatRejectionFactors",
      remark: "An I-P table of the same kind",
    },
    {
      inputs: { inputs: { "low load": 300000, "low evaporating": -20, condensing: 105 } },
      expected: { lowFactor: 1.55, heatRejected: 465000 },
      tolerance: "1 %",
      source: "heatRejectionFactors",
      remark: "An I-P table of the same kind; here below the table's last full row",
    },
    {
      inputs: {
        inputs: { compressor: "open", "medium load": 10, "medium evaporating": 5, condensing: 40 },
        units: "SI",
      },
      expected: { mediumFactor: 1.15, heatRejected: 11.5 },
      tolerance: 0.005,
      source: "heatRejectionFactors",
    },
    {
      inputs: {
        inputs: { "medium load": 10, "medium evaporating": 0, condensing: 45 },
        units: "SI",
      },
      expected: { mediumFactor: 1.28 },
      tolerance: 0.005,
      source: "heatRejectionFactors",
    },
    {
      inputs: {
        inputs: {
          "medium load": 10,
          "medium evaporating": -7,
          "low load": 5,
          "low evaporating": -30,
          condensing: 40,
          refrigerant: "R-449A",
        },
        units: "SI",
      },
      expected: { mediumFactor: 1.349, lowFactor: 1.639 },
      tolerance: 0.002,
      source: "coolprop8",
    },
    {
      inputs: { inputs: { "medium load": 100000, condensing: 145 } },
      expected: "#N/A",
      source: "heatRejectionFactors",
    },
  ],
  compute({ inputs }, { trace, recordFacts }) {
    const { heat, held } = rackHeat(inputs, trace);
    if (inputs.refrigerant === undefined) recordFacts({ coldest: coldestOf(inputs) });
    return {
      ...heat,
      mediumFactor: heat.mediumFactor ?? NO_VALUE,
      lowFactor: heat.lowFactor ?? NO_VALUE,
      extraHeat: held?.extraHeat ?? NO_VALUE,
      extraPower: held?.extraPower ?? NO_VALUE,
      extraPowerLeast: held?.extraPowerLeast ?? NO_VALUE,
      extraPowerMost: held?.extraPowerMost ?? NO_VALUE,
    };
  },
});
