import { choice, quantity, yesNo } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { renderMarks } from "../../kernel/values/fault";
import { POOL_WATER } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { listResult, wordResult } from "../../kernel/define/result";
import {
  flowNeedsPump,
  hotLeavingWater,
  limitBelowSetPoint,
  poolAsEvaporator,
  paperCheckOnly,
  pilotValve,
  spaLimitSetting,
} from "../cautions";
import { DIVERT_RULES, divertStates as decide } from "../divertModes";

const CALLING = { pool: 78, setPoint: 82, band: 2, coolingCalls: true, flowProven: true, highLimit: 88 };

export const controlDivert = cellFunction({
  id: "CONTROL.DIVERT",
  topic: "control",
  summary: "Where the sequence sends the heat (pool, outdoor coil, or idle), and why.",
  keywords: ["sequence of operation", "diverting valve", "three-way valve", "truth table", "interlock", "high limit"],
  details: [
    "For checking a sequence of operation, not for running equipment. The truth table lists the rules in their order; the first one that holds decides.",
    ...DIVERT_RULES.map(({ description }, i) => `Rule ${i + 1}: ${description}.`),
    "Idle is the outdoor position, as without power. The band is below the set point. A blank minutesInMode counts as long enough; idle has no minimum time.",
    "Pump wanted: in pool mode, if only the flow is missing, and after the leaving limit, to remove the exchanger's heat.",
  ],
  args: {
    pool: POOL_WATER,
    setPoint: POOL_WATER.describedAs("set point of the pool water"),
    band: quantity("temperature difference", "dead band below the set point", {
      from: 0,
      to: us("temperature difference", 20),
      usual: [us("temperature difference", 0.5), us("temperature difference", 5)],
    }),
    coolingCalls: yesNo("whether the room calls for cooling"),
    flowProven: yesNo("whether flow through the pool exchanger is proven"),
    highLimit: POOL_WATER.describedAs("pool temperature at which heating must stop"),
    was: choice("DivertMode", ["pool", "outdoor", "idle"], "mode until now").default("outdoor"),
    minutesInMode: quantity("minutes", "time in that mode; blank: long enough", { from: 0 }).optional(),
    minimumMinutes: quantity("minutes", "least time in a mode", { from: 0, to: 7200 }).default(us("minutes", 5)),
    heatingOrDefrost: yesNo("whether a heat pump heats or defrosts").default(false),
    sensorGood: yesNo("whether the pool sensor reads within its span").default(true),
    leavingWater: quantity("temperature", "water leaving the exchanger", {
      from: us("temperature", 32),
      to: us("temperature", 250),
    }).optional(),
    leavingLimit: quantity("temperature", "limit of the leaving water", {
      from: us("temperature", 60),
      to: us("temperature", 140),
    }).default(us("temperature", 104)),
    headPressureTrip: yesNo("whether the head-pressure control has tripped").default(false),
  },
  returns: listResult("the decision of the sequence", {
    mode: wordResult("pool, outdoor or idle"),
    valvePosition: wordResult("position of the diverting valve"),
    outdoorFan: wordResult("outdoor fan"),
    pumpWanted: wordResult("pool pump"),
    reason: wordResult("the rule that decided"),
  }),
  cautions: [
    { rule: paperCheckOnly, raisedBy: CALLING },
    { rule: pilotValve, raisedBy: CALLING },
    { rule: flowNeedsPump, raisedBy: { ...CALLING, flowProven: false } },
    { rule: spaLimitSetting, raisedBy: { ...CALLING, setPoint: 100, highLimit: 104 } },
    { rule: limitBelowSetPoint, raisedBy: { ...CALLING, highLimit: 82 } },
    { rule: poolAsEvaporator, raisedBy: { ...CALLING, heatingOrDefrost: true } },
    { rule: hotLeavingWater, raisedBy: { ...CALLING, leavingLimit: 120 } },
  ],
  checks: [
    { inputs: CALLING, expected: { mode: "pool", valvePosition: "pool", outdoorFan: "off" }, source: "commonPractice" },
    {
      inputs: { ...CALLING, flowProven: false, was: "pool", minutesInMode: 1 },
      expected: { mode: "outdoor", pumpWanted: "yes", reason: "no proven flow through the pool exchanger" },
      source: "poolHeaterManual",
      remark: "Loss of flow overrides any minimum time",
    },
    {
      inputs: { ...CALLING, pool: 83, was: "pool", minutesInMode: 2, minimumMinutes: 3 },
      expected: { mode: "pool", reason: "in this mode for 2 min, at least 3 min" },
      source: "poolHeaterManual",
    },
    {
      inputs: { ...CALLING, pool: 88, was: "pool", minutesInMode: 2, minimumMinutes: 3 },
      expected: { mode: "outdoor", outdoorFan: "on" },
      source: "poolHeaterManual",
      remark: "So does the high limit",
    },
    {
      inputs: { ...CALLING, coolingCalls: false },
      expected: { mode: "idle", valvePosition: "outdoor" },
      source: "commonPractice",
    },
  ],
  compute(state, { trace, system }) {
    const decision = decide(state, trace);
    return { ...decision, reason: renderMarks(decision.reason, system) };
  },
});
