import { choice, quantity, yesNo } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { inSystem } from "../../kernel/values/fault";
import { POOL_WATER } from "../../kernel/define/glossary";
import { us } from "../../kernel/values/quantity";
import { list, word } from "../../kernel/define/result";
import {
  flowNeedsPump,
  hotLeavingWater,
  limitBelowSetPoint,
  noEvaporator,
  notEquipment,
  pilotValve,
  spaLimit,
} from "../cautions";
import { DIVERT_RULES, divert as decide } from "../divertModes";

const CALLING = { pool: 78, setPoint: 82, band: 2, coolingCalls: true, flowProven: true, highLimit: 88 };

export const divert = cellFunction({
  id: "CONTROL.DIVERT",
  topic: "control",
  summary: "Where the sequence sends the heat (pool, outdoor coil, or idle), and why.",
  finds: ["sequence of operation", "diverting valve", "three-way valve", "truth table", "interlock", "high limit"],
  remarks: [
    "For checking a sequence of operation, not for running equipment. The truth table: rules in their order, the first that holds decides.",
    ...DIVERT_RULES.map(({ says }, i) => `Rule ${i + 1}: ${says}.`),
    "Idle is the outdoor position, as when unpowered. The band lies below the set point. A blank minutesInMode counts as met; idle has no minimum time.",
    "Pump wanted: in pool mode, where the flow alone is missing, and after the leaving limit, to carry the exchanger's heat off.",
  ],
  args: {
    pool: POOL_WATER,
    setPoint: POOL_WATER.saying("set point of the pool water"),
    band: quantity("temperature difference", "dead band below the set point", {
      from: 0,
      to: us("temperature difference", 20),
      usual: [us("temperature difference", 0.5), us("temperature difference", 5)],
    }),
    coolingCalls: yesNo("whether the room calls for cooling"),
    flowProven: yesNo("whether flow through the pool exchanger is proven"),
    highLimit: POOL_WATER.saying("pool temperature at which heating must stop"),
    was: choice("DivertMode", ["pool", "outdoor", "idle"], "mode until now").otherwise("outdoor"),
    minutesInMode: quantity("minutes", "time in that mode; blank: long enough", { from: 0 }).optionally(),
    minimumMinutes: quantity("minutes", "least time in a mode", { from: 0, to: 7200 }).otherwise(us("minutes", 5)),
    heatingOrDefrost: yesNo("whether a heat pump heats or defrosts").otherwise(false),
    sensorGood: yesNo("whether the pool sensor reads within its span").otherwise(true),
    leavingWater: quantity("temperature", "water leaving the exchanger", {
      from: us("temperature", 32),
      to: us("temperature", 250),
    }).optionally(),
    leavingLimit: quantity("temperature", "limit of the leaving water", {
      from: us("temperature", 60),
      to: us("temperature", 140),
    }).otherwise(us("temperature", 104)),
    headPressureTrip: yesNo("whether the head-pressure control has tripped").otherwise(false),
  },
  gives: list("what the sequence asks for", {
    mode: word("pool, outdoor or idle"),
    valvePosition: word("position of the diverting valve"),
    outdoorFan: word("outdoor fan"),
    pumpWanted: word("pool pump"),
    reason: word("the rule that decided"),
  }),
  cautions: [
    { rule: notEquipment, fires: CALLING },
    { rule: pilotValve, fires: CALLING },
    { rule: flowNeedsPump, fires: { ...CALLING, flowProven: false } },
    { rule: spaLimit, fires: { ...CALLING, setPoint: 100, highLimit: 104 } },
    { rule: limitBelowSetPoint, fires: { ...CALLING, highLimit: 82 } },
    { rule: noEvaporator, fires: { ...CALLING, heatingOrDefrost: true } },
    { rule: hotLeavingWater, fires: { ...CALLING, leavingLimit: 120 } },
  ],
  checks: [
    { at: CALLING, gives: { mode: "pool", valvePosition: "pool", outdoorFan: "off" }, from: "commonPractice" },
    {
      at: { ...CALLING, flowProven: false, was: "pool", minutesInMode: 1 },
      gives: { mode: "outdoor", pumpWanted: "yes", reason: "no proven flow through the pool exchanger" },
      from: "poolHeaterManual",
      remark: "Loss of flow acts before any minimum time",
    },
    {
      at: { ...CALLING, pool: 83, was: "pool", minutesInMode: 2, minimumMinutes: 3 },
      gives: { mode: "pool", reason: "in this mode for 2 min, at least 3 min" },
      from: "poolHeaterManual",
    },
    {
      at: { ...CALLING, pool: 88, was: "pool", minutesInMode: 2, minimumMinutes: 3 },
      gives: { mode: "outdoor", outdoorFan: "on" },
      from: "poolHeaterManual",
      remark: "So does the high limit",
    },
    {
      at: { ...CALLING, coolingCalls: false },
      gives: { mode: "idle", valvePosition: "outdoor" },
      from: "commonPractice",
    },
  ],
  work(state, { trace, system }) {
    const decision = decide(state, trace);
    return { ...decision, reason: inSystem(decision.reason, system) };
  },
});
