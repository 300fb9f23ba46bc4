import { quantity } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { HEAT_RATE, WATER_FLOW, WATER_TEMPERATURE } from "../../kernel/glossary";
import { us } from "../../kernel/quantity";
import { list, of, word } from "../../kernel/result";
import { CONDUCTANCE } from "../args";
import { bypassLimits, coldPoolOrifice, hotCondensing } from "../cautions";
import { holdHeadOf } from "../models/holdHead";

const coldPool = { heat: 110000, ua: 8000, water: 60, leastCondensing: 90, flow: 40 };

export const holdHead = cellFunction({
  id: "EXCHANGER.HOLDHEAD",
  topic: "exchanger",
  summary: "Water flow through the exchanger that holds a least condensing temperature, and the bypass for it.",
  finds: ["head pressure control", "bypass", "cold pool", "water regulating valve"],
  remarks: [
    "The refrigerant is taken to condense at one temperature and the heat as constant. The water's share of the resistance goes with the flow to the power −0.6; EXCHANGER.COIL shows the films that give the share: U on the outside area over the film outside.",
  ],
  args: {
    heat: HEAT_RATE.saying("heat rejected into the exchanger"),
    ua: CONDUCTANCE.saying("conductance at full flow"),
    water: WATER_TEMPERATURE.saying("entering water"),
    leastCondensing: quantity("temperature", "least condensing temperature to hold", {
      from: us("temperature", 32),
      to: us("temperature", 200),
      usual: [us("temperature", 60), us("temperature", 130)],
    }),
    flow: WATER_FLOW.saying("full water flow"),
    waterFilmShare: quantity("fraction", "share of the resistance that falls with the water's flow", {
      from: 0,
      to: 1,
      usual: [0.2, 0.6],
    }).otherwise(0.4),
  },
  gives: list("how the head is held", {
    condensingAtFullFlow: of("temperature", "condensing temperature at full flow"),
    flowThroughExchanger: of("water flow", "flow through the exchanger"),
    bypassShare: of("fraction", "share of the full flow that bypasses"),
    leavingWater: of("temperature", "water leaving the exchanger"),
    finding: word("whether anything needs holding"),
  }),
  facts: { held: "yes/no" },
  cautions: [
    { rule: bypassLimits, fires: coldPool },
    { rule: coldPoolOrifice, fires: coldPool },
    { rule: hotCondensing, fires: { ...coldPool, ua: 1500, water: 85 } },
  ],
  checks: [
    {
      at: { heat: 66.667, ua: 3170, water: 20, leastCondensing: 50, flow: 7.2, waterFilmShare: 0, units: "SI" },
      gives: { flowThroughExchanger: 3.606, leavingWater: 36 },
      within: "0.3 %",
      from: "incropera2007",
      remark: "one tube of 30,000: 1 kg/s, twice 4.51 m",
    },
    {
      at: { heat: 20, ua: 2000, water: 20, leastCondensing: 30, flow: 3.6, units: "SI" },
      gives: { finding: "nothing needs holding", bypassShare: 0 },
      within: 0,
      from: "identity",
      remark: "20 kW over 2,000 W/K need more than 10 K of difference",
    },
    {
      at: { heat: 20, ua: 2000, water: 20, leastCondensing: 35.819767, flow: 3.6, waterFilmShare: 0, units: "SI" },
      gives: { flowThroughExchanger: 1.7259, leavingWater: 30 },
      within: 0.02,
      from: "identity",
      remark: "UA constant, one transfer unit: C = 2,000 W/K, rise 10 K, condensing 10/(1 − 1/e) K above the water",
    },
    {
      at: { heat: 58500, ua: 4500, water: 72, leastCondensing: 90, flow: 35, waterFilmShare: 0.5 },
      gives: { flowThroughExchanger: 21.76 },
      within: 0.05,
      from: "bergman2011",
      remark: "worked apart by halving; UA held constant would give 13.06 gpm, which condenses at 95 °F",
    },
  ],
  work(args, { trace, note }) {
    const answer = holdHeadOf(args, trace);
    note({ held: answer.holds });
    return {
      condensingAtFullFlow: answer.condensingAtFullFlow,
      flowThroughExchanger: answer.flowThrough,
      bypassShare: answer.bypass,
      leavingWater: answer.leavingWater,
      finding: answer.holds ? "bypass part of the flow" : "nothing needs holding",
    };
  },
});
