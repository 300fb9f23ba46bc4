import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { valueError } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { listResult, quantityResult } from "../../kernel/define/result";
import { quantityMark } from "../../kernel/values/quantityMark";
import { doubleWall, legionella, coolStorage, unreachablePreheat, scald } from "../cautions";
import { hotWaterHeat } from "../equations";

const degF = (value: number): number => us("temperature", value);
const DAY = 86_400;
const EXAMPLE = { draw: 200, cold: 58, hot: 135, preheat: 95 };

export const sinkTank = cellFunction({
  id: "SINK.TANK",
  topic: "sink",
  summary: "Daily hot-water load, the part that recovered heat can preheat, and the rest for the main heater.",
  keywords: ["domestic hot water", "DHW", "preheat tank", "desuperheater", "legionella"],
  details: [
    "Hot water counts 8.2938 lb/gal and 1.000743 BTU/(lb·°F), as in the published method; the textbook's 8.34 gives 0.5 % more.",
    "The preheat is an upper bound: it assumes enough heat, and a tank that covers the draw between the hours of cooling. Standby losses are excluded.",
  ],
  args: {
    draw: quantity("daily draw", "hot water drawn in a day", { above: 0 }),
    cold: quantity("temperature", "cold water", { from: degF(32), to: degF(100) }),
    hot: quantity("temperature", "hot water", { from: degF(60), to: degF(200), usual: [degF(120), degF(160)] }),
    preheat: quantity("temperature", "temperature after preheating", { from: degF(32), to: degF(200) }),
  },
  returns: listResult("hot water of a day", {
    load: quantityResult("heat", "heat that the hot water takes"),
    preheated: quantityResult("heat", "part from recovered heat, at most"),
    remaining: quantityResult("heat", "for the main heater"),
    share: quantityResult("fraction", "recovered share"),
    meanRate: quantityResult("heat rate", "mean rate of the recovered heat over the day"),
  }),
  cautions: [
    { rule: doubleWall, raisedBy: EXAMPLE },
    { rule: legionella, raisedBy: EXAMPLE },
    { rule: coolStorage, raisedBy: EXAMPLE },
    { rule: scald, raisedBy: EXAMPLE },
    { rule: unreachablePreheat, raisedBy: { ...EXAMPLE, preheat: 125 } },
  ],
  checks: [
    {
      inputs: { draw: 64, cold: 58, hot: 135, preheat: 58.001 },
      expected: { load: 40902 },
      tolerance: 2,
      source: "lblHotWater",
      remark: "64 gal warmed by 77 °F",
    },
    {
      inputs: { draw: 40, cold: 60, hot: 120, preheat: 90 },
      expected: { load: 20016, preheated: 10008 },
      tolerance: "0.6 %",
      source: "commonPractice",
      remark: "With 8.34 lb/gal, from memory",
    },
  ],
  compute({ draw, cold, hot, preheat }, { step, trace }) {
    if (!(hot > cold))
      throw valueError(
        `hot: must be above the cold water's ${quantityMark("temperature", cold)}, got ${quantityMark("temperature", hot)}`,
      );
    if (!(preheat > cold))
      throw valueError(
        `preheat: must be above the cold water's ${quantityMark("temperature", cold)}, got ${quantityMark("temperature", preheat)}`,
      );
    const load = step(hotWaterHeat, { V: draw, Th: hot, Tc: cold });
    const preheated = trace.within("Preheated by recovered heat", () =>
      step(hotWaterHeat, { V: draw, Th: Math.min(preheat, hot), Tc: cold }),
    );
    return { load, preheated, remaining: load - preheated, share: preheated / load, meanRate: preheated / DAY };
  },
});
