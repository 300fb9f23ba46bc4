import { quantity } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { mend } from "../../kernel/values/fault";
import { us } from "../../kernel/values/quantity";
import { list, of } from "../../kernel/define/result";
import { told } from "../../kernel/values/quantityMark";
import { doubleWall, legionella, lukewarmStore, neverSoHot, scald } from "../cautions";
import { hotWaterHeat } from "../equations";

const degF = (value: number): number => us("temperature", value);
const DAY = 86_400;
const EXAMPLE = { draw: 200, cold: 58, hot: 135, preheat: 95 };

export const tank = cellFunction({
  id: "SINK.TANK",
  topic: "sink",
  summary: "Hot-water load of a day, what recovered heat can preheat of it, and what remains for the main heater.",
  finds: ["domestic hot water", "DHW", "preheat tank", "desuperheater", "legionella"],
  remarks: [
    "Hot water counts 8.2938 lb/gal and 1.000743 BTU/(lb·°F), as the published method does; the textbook's 8.34 reads 0.5 % more.",
    "The preheat is an upper bound: enough heat, and a tank that holds the draw between the hours of cooling. Standby losses are left out.",
  ],
  args: {
    draw: quantity("daily draw", "hot water drawn in a day", { above: 0 }),
    cold: quantity("temperature", "cold water", { from: degF(32), to: degF(100) }),
    hot: quantity("temperature", "hot water", { from: degF(60), to: degF(200), usual: [degF(120), degF(160)] }),
    preheat: quantity("temperature", "what recovered heat warms it to", { from: degF(32), to: degF(200) }),
  },
  gives: list("hot water of a day", {
    load: of("heat", "heat that the hot water takes"),
    preheated: of("heat", "of that by recovered heat, at most"),
    remaining: of("heat", "for the main heater"),
    share: of("fraction", "recovered share"),
    meanRate: of("heat rate", "mean rate of the recovered heat over the day"),
  }),
  cautions: [
    { rule: doubleWall, fires: EXAMPLE },
    { rule: legionella, fires: EXAMPLE },
    { rule: lukewarmStore, fires: EXAMPLE },
    { rule: scald, fires: EXAMPLE },
    { rule: neverSoHot, fires: { ...EXAMPLE, preheat: 125 } },
  ],
  checks: [
    {
      at: { draw: 64, cold: 58, hot: 135, preheat: 58.001 },
      gives: { load: 40902 },
      within: 2,
      from: "lblHotWater",
      remark: "64 gal warmed by 77 °F",
    },
    {
      at: { draw: 40, cold: 60, hot: 120, preheat: 90 },
      gives: { load: 20016, preheated: 10008 },
      within: "0.6 %",
      from: "commonPractice",
      remark: "With 8.34 lb/gal, from memory",
    },
  ],
  work({ draw, cold, hot, preheat }, { step, trace }) {
    if (!(hot > cold))
      throw mend(`hot: must be above the cold water's ${told("temperature", cold)}, got ${told("temperature", hot)}`);
    if (!(preheat > cold))
      throw mend(
        `preheat: must be above the cold water's ${told("temperature", cold)}, got ${told("temperature", preheat)}`,
      );
    const load = step(hotWaterHeat, { V: draw, Th: hot, Tc: cold });
    const preheated = trace.within("Preheated by recovered heat", () =>
      step(hotWaterHeat, { V: draw, Th: Math.min(preheat, hot), Tc: cold }),
    );
    return { load, preheated, remaining: load - preheated, share: preheated / load, meanRate: preheated / DAY };
  },
});
