import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { HEAT_RATE, WATER_FLOW, WATER_TEMPERATURE } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { listResult, quantityResult, wordResult } from "../../kernel/define/result";
import { CONDUCTANCE } from "../args";
import { bypassLimits, coldPoolOrifice, hotCondensing } from "../surface/cautions";
import { holdHeadOf } from "../water/holdHead";

const coldPool = { heat: 110000, ua: 8000, water: 60, leastCondensing: 90, flow: 40 };

export const exchangerHoldHead = cellFunction({
  id: "EXCHANGER.HOLDHEAD",
  topic: "exchanger",
  summary: "Water flow through the exchanger that holds a least condensing temperature, and the bypass for it.",
  keywords: ["head pressure control", "bypass", "cold pool", "water regulating valve"],
  details: [
    "Assumes one condensing temperature and constant heat. The water's share of the resistance varies with the flow to the power −0.6; EXCHANGER.COIL shows the films that give the share: U on the outside area over the film outside.",
  ],
  args: {
    heat: HEAT_RATE.describedAs("heat rejected into the exchanger"),
    ua: CONDUCTANCE.describedAs("conductance at full flow"),
    water: WATER_TEMPERATURE.describedAs("entering water"),
    leastCondensing: quantity("temperature", "least condensing temperature to hold", {
      from: us("temperature", 32),
      to: us("temperature", 200),
      usual: [us("temperature", 60), us("temperature", 130)],
    }),
    flow: WATER_FLOW.describedAs("full water flow"),
    waterFilmShare: quantity("fraction", "share of the resistance that falls as the water flow rises", {
      from: 0,
      to: 1,
      usual: [0.2, 0.6],
    }).default(0.4),
  },
  returns: listResult("flow and bypass that hold the head", {
    condensingAtFullFlow: quantityResult("temperature", "condensing temperature at full flow"),
    flowThroughExchanger: quantityResult("water flow", "flow through the exchanger"),
    bypassShare: quantityResult("fraction", "share of the full flow that bypasses"),
    leavingWater: quantityResult("temperature", "water leaving the exchanger"),
    finding: wordResult("whether the head needs holding"),
  }),
  facts: { held: "yes/no" },
  cautions: [
    { rule: bypassLimits, raisedBy: coldPool },
    { rule: coldPoolOrifice, raisedBy: coldPool },
    { rule: hotCondensing, raisedBy: { ...coldPool, ua: 1500, water: 85 } },
  ],
  checks: [
    {
      inputs: { heat: 66.667, ua: 3170, water: 20, leastCondensing: 50, flow: 7.2, waterFilmShare: 0, units: "SI" },
      expected: { flowThroughExchanger: 3.606, leavingWater: 36 },
      tolerance: "0.3 %",
      source: "incropera2007",
      remark: "one tube of 30,000: 1 kg/s, twice 4.51 m",
    },
    {
      inputs: { heat: 20, ua: 2000, water: 20, leastCondensing: 30, flow: 3.6, units: "SI" },
      expected: { finding: "nothing needs holding", bypassShare: 0 },
      tolerance: 0,
      source: "identity",
      remark: "20 kW over 2,000 W/K need more than 10 K of difference",
    },
    {
      inputs: { heat: 20, ua: 2000, water: 20, leastCondensing: 35.819767, flow: 3.6, waterFilmShare: 0, units: "SI" },
      expected: { flowThroughExchanger: 1.7259, leavingWater: 30 },
      tolerance: 0.02,
      source: "identity",
      remark: "UA constant, one transfer unit: C = 2,000 W/K, rise 10 K, condensing 10/(1 − 1/e) K above the water",
    },
    {
      inputs: { heat: 58500, ua: 4500, water: 72, leastCondensing: 90, flow: 35, waterFilmShare: 0.5 },
      expected: { flowThroughExchanger: 21.76 },
      tolerance: 0.05,
      source: "bergman2011",
      remark: "a separate calculation by bisection; constant UA would give 13.06 gpm, which condenses at 95 °F",
    },
  ],
  compute(args, { trace, recordFacts }) {
    const answer = holdHeadOf(args, trace);
    recordFacts({ held: answer.holds });
    return {
      condensingAtFullFlow: answer.condensingAtFullFlow,
      flowThroughExchanger: answer.flowThrough,
      bypassShare: answer.bypass,
      leavingWater: answer.leavingWater,
      finding: answer.holds ? "bypass part of the flow" : "nothing needs holding",
    };
  },
});
