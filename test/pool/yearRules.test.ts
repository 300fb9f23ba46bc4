/** When each caution of the year is raised and what it says, and which entries are refused together. */
import { describe, expect, test } from "vitest";
import type { ShowQuantity } from "../../core/kernel/define/caution";
import * as rules from "../../core/pool/year/cautions";
import { checkYearInputs } from "../../core/pool/year/checks";
import * as inputRules from "../../core/pool/year/inputCautions";
import type { YearInputs } from "../../core/pool/year/inputs";
import { DEFAULTS } from "./yearPools";

/** A quantity as its number and kind in angle brackets. */
const show: ShowQuantity = (value, kind) => `<${Number(value.toPrecision(6))} ${kind}>`;

type Facts = Readonly<Record<string, number | string | boolean>>;
interface Rule {
  readonly code: string;
  when(facts: never): boolean;
  message(facts: never, show: ShowQuantity): string;
}
const RULES: readonly Rule[] = [...Object.values(rules), ...Object.values(inputRules)];
const ruleOf = (code: string): Rule => {
  const rule = RULES.find((each) => each.code === `POOL-YEAR-${code}`);
  if (rule === undefined) throw new Error(code);
  return rule;
};
const isRaised = (code: string, facts: Facts): boolean => ruleOf(code).when(facts as never);
const textOf = (code: string, facts: Facts): string => ruleOf(code).message(facts as never, show);

/** Facts that raise a rule, what its text says of them, and facts that just don't. */
const CASES: readonly (readonly [code: string, raising: Facts, says: RegExp, quiet: Facts | undefined])[] = [
  [
    "AT-LIMIT",
    { sentOutdoors: 0.256, timeAtLimit: 7200, limit: 303, warms: "the pool" },
    /^26 % of the rejected heat goes outdoors \(<7200 time> of running time\): .* limit of <303 temperature> or the pump rests\. A pool keeps/,
    { sentOutdoors: 0.02 },
  ],
  [
    "AT-LIMIT",
    { sentOutdoors: 0.03, timeAtLimit: 7200, limit: 303, warms: "pool and tank" },
    /pump rests, and the tank is at its own\. A pool/,
    { sentOutdoors: 0 },
  ],
  [
    "COINCIDENCE",
    { usefulOfNeed: 0.384, usefulOfTaken: 0.6 },
    /^Recovery covers 38 % of the need for back-up heat, and 60 % of the heat that the held pool takes/,
    { usefulOfNeed: 0.6 },
  ],
  [
    "KEEP-HEATER",
    { stillNeeded: 5e9 },
    /^Holding the set point still takes <5000000000 heat> of back-up heat/,
    { stillNeeded: 0 },
  ],
  [
    "FROZEN",
    { frozenTime: 3600 },
    /at freezing for <3600 time>; .* protect pipes, pump and exchanger from frost\.$/,
    { frozenTime: 0 },
  ],
  ["NO-RECOVERY", { recovers: false }, /labels rated cooling, rated power and exchanger UA/, { recovers: true }],
  ["MADE-HOURS", { monthlyRows: true }, /made from monthly means: .* within 5 %/, { monthlyRows: false }],
  [
    "BEYOND-CURVE",
    { beyondCurveTime: 7200, coversFrom: 291, coversTo: 319 },
    /^For <7200 time> there is a load outside <291 temperature> to <319 temperature>: /,
    { beyondCurveTime: 0 },
  ],
  ["NOT-MET", { notMetShare: 0.037 }, /^4 % of the year's cooling load is beyond the machine/, { notMetShare: 0.01 }],
  [
    "PUMP",
    { pumpBeyond: 3e9, electricitySaved: 1e10 },
    /^The pump's extra hours take <3000000000 electric energy> a year beside <10000000000 electric energy> of cooling electricity saved: /,
    { pumpBeyond: 2.5e9, electricitySaved: 1e10 },
  ],
  [
    "PUMP",
    { pumpBeyond: 1, electricitySaved: -7e9 },
    /beside <7000000000 electric energy> of cooling electricity added: /,
    { pumpBeyond: 0, electricitySaved: -7e9 },
  ],
  [
    "MORE-POWER",
    { electricitySaved: -7e9, warms: "the pool" },
    /^Cooling takes <7000000000 electric energy> MORE electricity a year on the pool than outdoors/,
    { electricitySaved: 0 },
  ],
  ["TANK-DOUBLE-WALL", { preheat: 320 }, /^Refrigerant has a higher pressure than/, undefined],
  ["HOT-WATER-UNPRICED", { hotWaterUnpriced: true }, /label hot water source is none/, { hotWaterUnpriced: false }],
  [
    "SINGLE-SPEED",
    { singleSpeed: true },
    /^A single-speed machine: .* choose the machine type/,
    { singleSpeed: false },
  ],
  [
    "HOT",
    { hotTime: 3600, hottest: 330, hottestHour: "2 Jul, 14 h" },
    /^In <3600 time> of the year it condenses above <327\.594 temperature> on the water, at worst at <330 temperature> \(2 Jul, 14 h\)/,
    { hotTime: 0 },
  ],
  [
    "HOT-WATER",
    { hotWaterTime: 3600, leavingWater: 315, leavingWaterHour: "2 Jul, 14 h" },
    /^In <3600 time> of the year water returns to the pool above <313\.15 temperature>, at worst at <315 temperature> \(2 Jul, 14 h\)/,
    { hotWaterTime: 0 },
  ],
  [
    "OVER-LIMIT",
    { overLimitTime: 60, poolTemperature: 306, limit: 304, firstOver: "1 May", warmestHour: "9 Aug" },
    /^The pool passes its high limit of <304 temperature> by up to <2 temperature difference>: for <60 time>, first on 1 May, warmest on 9 Aug\./,
    { overLimitTime: 0 },
  ],
  [
    "SUN",
    { oddSun: 0.856, oddSunMonths: "May, Jun", oddSunReason: "perhaps kWh" },
    /^Sun: 0\.86 of the sun above the air at this latitude in the first of May, Jun; .*: perhaps kWh\.$/,
    undefined,
  ],
  ["WEATHER", { oddWeather: "wind 20" }, /^Unlikely weather: wind 20\. Look at source and units\.$/, undefined],
  [
    "CLOCK",
    { clockLabel: "pump start", clock: 0.354166667 },
    /^pump start is 0\.354, soon after midnight\. .*: if 8:30 was meant, enter 8\.5\.$/,
    undefined,
  ],
  ["DESIGN-LOAD", { assumedLoad: 26_400 }, /whole cooling at design, <26400 heat rate>, is taken\./, undefined],
];

describe("the year's cautions", () => {
  test.each(CASES)("%s is raised by %j and says what it is about", (code, raising, says, quiet) => {
    expect(isRaised(code, raising)).toBe(true);
    expect(textOf(code, raising)).toMatch(says);
    if (quiet !== undefined) expect(isRaised(code, { ...raising, ...quiet })).toBe(false);
  });

  test("are all looked at here", () => {
    expect(new Set(CASES.map(([code]) => `POOL-YEAR-${code}`))).toEqual(new Set(RULES.map(({ code }) => code)));
  });
});

describe("entries of the block", () => {
  const HOUR = 3600;
  const inputs = (values: Partial<YearInputs>): YearInputs =>
    ({ ...DEFAULTS, poolArea: 50, waterDepth: 2, setPoint: 300, highLimit: 303, ...values }) as YearInputs;
  const refusal = (values: Partial<YearInputs>): string => {
    try {
      checkYearInputs(inputs(values));
      return "";
    } catch (thrown) {
      return (thrown as Error).message;
    }
  };
  const speeds = { pumpSpeedEnergy: [3.6e6, 3.6e6], pumpSpeedHours: [HOUR, 2 * HOUR] } as const;

  test.each<[string, Partial<YearInputs>]>([
    ["none but those that are needed", {}],
    ["a cover with losses by parts", { cover: "solid" }],
    ["the surface rule without a cover", { lossMethod: "surface rule" }],
    ["a machine by its map", { ratedCooling: 26_400, mapFlow: [[1]] as never }],
    ["a machine with its exchanger", { ratedCooling: 26_400, ratedPower: 8000, exchangerUA: 5000 }],
    ["speeds of a day's length", { pumpSpeedEnergy: [1, 1], pumpSpeedHours: [20 * HOUR, 4 * HOUR] }],
    ["a pump on call as strong as its fastest speed", { ...speeds, pumpPower: 1000 }],
    ["speeds without a pump on call", { ...speeds, pumpPower: 0 }],
    ["a design outdoor temperature just far enough", { balanceOutdoor: 300, designOutdoor: 300 + 5 / 1.8 }],
    ["a high limit at the set point", { backUpSource: "natural gas", highLimit: 300 }],
    ["a high limit below the set point without a back-up heater", { backUpSource: "none", highLimit: 290 }],
  ])("go together: %s", (_, values) => {
    expect(refusal(values)).toBe("");
  });

  test.each<[Partial<YearInputs>, RegExp]>([
    [
      { lossMethod: "surface rule", cover: "solid" },
      /^inputs: cover: the surface rule knows no cover: use loss method "parts"$/,
    ],
    [
      { ratedCooling: 26_400 },
      /^inputs: the label "rated power" is missing or blank: it is needed with rated cooling$/,
    ],
    [{ exchangerUA: 5000 }, /^inputs: the label "rated cooling" is missing or blank: an exchanger needs an air cond/],
    [{ pumpSpeedEnergy: [1] }, /^inputs: pump speed energy and pump speed hours need one value for each speed$/],
    [{ pumpSpeedHours: [1] }, /need one value for each speed$/],
    [{ ...speeds, pumpSpeedEnergy: [1] }, /need one value for each speed$/],
    [
      { pumpSpeedEnergy: [1, 1], pumpSpeedHours: [20 * HOUR, 5 * HOUR] },
      /^inputs: pump speed hours must make at most ⟦time\|86400⟧, got ⟦time\|90000⟧$/,
    ],
    [
      { ...speeds, pumpPower: 999 },
      /^inputs: pump power, on call, .* of every speed, ⟦electric power\|1000⟧, got ⟦electric power\|999⟧; left out/,
    ],
    [
      { balanceOutdoor: 300, designOutdoor: 302.7 },
      /^inputs: design outdoor must lie at least ⟦temperature difference\|2\.77.*⟧ above balance outdoor, got ⟦temperature\|302\.7⟧ over ⟦temperature\|300⟧$/,
    ],
    [
      { backUpSource: "natural gas", highLimit: 299 },
      /^inputs: high limit must be at least the set point, ⟦temperature\|300⟧, got ⟦temperature\|299⟧$/,
    ],
    [{ secondSink: "preheat tank" }, /a preheat tank needs an air conditioner$/],
  ])("are refused together: %j", (values, message) => {
    expect(refusal(values)).toMatch(message);
  });
});
