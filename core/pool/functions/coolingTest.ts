import { block, literalDefaults, quantity, rows, yesNo } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { AIR_TEMPERATURE, POOL_WATER } from "../../kernel/define/glossary";
import { quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { si } from "../../kernel/values/quantity";
import { SURFACE, WATER_DEPTH } from "../args";
import { coolingDisagrees, coolingNoFinding, coolingTestConditions } from "../learn/coolingCautions";
import { checkCooling, coolingResult, coolingRuns } from "../learn/coolingTest";
import { coolingRow } from "../learn/coolingRow";
import { HEATER_ENTRIES, heaterOf } from "../learn/heaterInPlace";
import { NIGHT_ENTRIES } from "../losses/inputs";

const kelvin = (value: number): number => si("temperature difference", value);
const error = (description: string, from: number) =>
  quantity("temperature difference", description, { from, to: kelvin(5) });

const TEST_ENTRIES = {
  ...NIGHT_ENTRIES,
  airError: error("standard error of the air", 0).default(kelvin(0.5)),
  depthError: quantity("fraction", "standard error of the depth", { from: 0, to: 0.5 }).default(0.03),
  ...HEATER_ENTRIES,
} as const;

/** An invented open night. */
const NIGHT = {
  log: [
    [0, 27, ""],
    [10, 25.6, 15],
  ],
  area: 50,
  depth: 1.5,
  units: "SI",
} as const;
const COVERED = [
  [24, 26.9, "", true],
  [34, 26.4, 15.2, true],
];
const WEATHER = { humidity: 0.6, windAtWater: 1.5 } as const;
/** Four decimals of a made night whose coefficient is 45 W/(m²·K). */
const AIR = [17.09, 16.24, 15.47, 14.83, 14.36, 14.08, 14, 14.13, 14.46, 14.98];
const WATER = [27, 26.7465, 26.4777, 26.1961, 25.9053, 25.61, 25.315, 25.0256, 24.7468, 24.4837, 24.2405];
const HOURLY = WATER.map((water, hour) => [hour, water, AIR[hour - 1] ?? ""]);

export const poolCoolingTest = cellFunction({
  id: "POOL.COOLINGTEST",
  topic: "pool",
  summary:
    "Loss coefficient of a pool from a night or week with the heater off, open and covered, with its uncertainty.",
  keywords: ["measured loss", "heat loss test", "logger", "night", "cool-down", "cover test", "time constant"],
  details: [
    "Log: time (hours, or dates of the sheet), water, air, [covered], [sun], [heat]. Air, sun and heat are means since the row before; those of the first row aren't used. A gap over 2.5 usual steps, or a change of the cover, begins a new run with its own start temperature. Give night rows only, or sun on a level surface.",
    "Each step is solved exactly with air held through it; least squares over coefficient and start temperatures; two rows give the closed form. Water: 997 kg/m³, 4.18 kJ/(kg·K). Coefficient by the water surface, against the air.",
    "Uncertainty: standard, of the readings (the sensor's error, or the scatter about the line if larger), the air and the depth; least and most are two of it to each side (about 95 %). Fit error: of the scatter alone. No finding: the water fell by less than four sensor errors.",
    "Sky: by Clark and Allen from the humidity, cloud and hidden sky of the inputs at the mean air; without sky is what is left against the air, for comparison with other nights.",
    "Heater in place: with rise, hours, mean water and mean air of a night with the heater on (the four heater labels), what the water stored and what the coefficient of the row lost meanwhile: take the row of that night's cover.",
    "By relations: what POOL.LOSSES gives without sun at the means of the rows, with humidity and wind of the inputs.",
  ],
  args: {
    log: rows(
      {
        time: quantity("time", "hours, or dates of the sheet", { from: 0 }),
        water: POOL_WATER,
        air: AIR_TEMPERATURE.describedAs("air, mean since the row before").optional(),
        covered: yesNo("cover on since the row before").default(false),
        sun: quantity("irradiance", "sun on a level surface, mean since the row before", {
          from: 0,
          to: 1500,
        }).default(0),
        heat: quantity("heat rate", "known heat into the water since the row before", { from: 0 }).default(0),
      },
      "rows: time, water, air, [covered], [sun], [heat]",
      { least: 2, most: 5000 },
    ),
    area: SURFACE,
    depth: WATER_DEPTH.describedAs("mean depth of the water"),
    sensorError: error("standard error of a water reading", kelvin(0.001)).default(kelvin(0.1)),
    inputs: block(TEST_ENTRIES, "block of labels and values: humidity, wind and cover of the hours, errors").default({
      words: "defaults of its labels",
      from: () => literalDefaults(TEST_ENTRIES),
    }),
  },
  returns: tableResult("loss coefficient open and covered", {
    state: wordResult("state of the cover"),
    coefficient: quantityResult("film coefficient", "loss by surface and difference to the air"),
    uncertainty: quantityResult("film coefficient", "its standard uncertainty"),
    least: quantityResult("film coefficient", "low end of the interval"),
    most: quantityResult("film coefficient", "high end of the interval"),
    timeConstant: quantityResult("time", "heat capacity over coefficient"),
    meanLoss: quantityResult("irradiance", "mean loss of the hours by surface"),
    shareOfOpen: quantityResult("fraction", "coefficient covered over open"),
    shareUncertainty: quantityResult("number", "its standard uncertainty"),
    fitError: quantityResult("film coefficient", "standard error by the scatter alone"),
    scatter: quantityResult("temperature difference", "root mean square of what is left"),
    start: quantityResult("temperature", "water at the start by the line"),
    hours: quantityResult("time", "hours counted"),
    readings: quantityResult("count", "readings"),
    byRelations: quantityResult("film coefficient", "what POOL.LOSSES gives"),
    finding: wordResult("found, no finding or not tested"),
    beside: wordResult("the test beside POOL.LOSSES"),
    skyTemperature: quantityResult("temperature", "of the sky over the hours, hidden share counted"),
    skyLoss: quantityResult("irradiance", "radiation of the open water to it, by surface"),
    withoutSky: quantityResult("film coefficient", "coefficient less that radiation: wind and evaporation"),
    heaterHeat: quantityResult("irradiance", "what the heater delivers, by surface"),
    heaterUncertainty: quantityResult("irradiance", "its standard uncertainty"),
    heaterOutput: quantityResult("heat rate", "what the heater delivers"),
  }),
  facts: {
    weakFall: "temperature difference",
    sensorError: "temperature difference",
    noFinding: "yes/no",
    disagreement: "word",
  },
  cautions: [
    { rule: coolingNoFinding, raisedBy: { ...NIGHT, log: [NIGHT.log[0], [8, 26.9, 20]] } },
    { rule: coolingTestConditions, raisedBy: NIGHT },
    { rule: coolingDisagrees, raisedBy: { ...NIGHT, inputs: { ...WEATHER, windAtWater: 9 } } },
  ],
  example: {
    ...NIGHT,
    log: [...NIGHT.log.map((row) => [...row, false]), ...COVERED],
    inputs: { ...WEATHER, cover: "foam" },
  },
  checks: [
    {
      inputs: NIGHT,
      expected: { row: "open", column: "coefficient", value: 21.54102 },
      tolerance: "0.001 %",
      source: "identity",
      remark: "ρ c depth/time × ln(12/10.6), by another program",
    },
    {
      inputs: { ...NIGHT, log: HOURLY },
      expected: { row: "open", column: "coefficient", value: 45.00008 },
      tolerance: "0.01 %",
      source: "identity",
      remark: "a night made with 45 W/(m²·K), fitted by another program",
    },
    {
      inputs: {
        ...NIGHT,
        log: HOURLY,
        inputs: { heaterRise: 0.7, heaterHours: 8, heaterWater: 26, heaterAir: 18 },
      },
      expected: { row: "open", column: "heaterHeat", value: 511.9386 },
      tolerance: "0.001 %",
      source: "identity",
      remark: "storage and loss, by another program",
    },
  ],
  compute({ log, area, depth, sensorError, inputs }, { trace, recordFacts }) {
    const runs = coolingRuns(log, area, inputs.sunShare);
    checkCooling(runs);
    const errors = { sensor: sensorError, air: inputs.airError, depth: inputs.depthError };
    const resultOf = (covered: boolean, title: string) => {
      const own = runs.filter((run) => run.covered === covered);
      return own.length === 0 ? undefined : trace.within(title, () => coolingResult(own, depth, errors, trace));
    };
    const [open, under] = [resultOf(false, "Open"), resultOf(true, "Covered")];
    const tested = [open, under].filter((each) => each !== undefined);
    const night = { ...inputs, area, depth };
    const rowOf = (state: string, found: typeof open, beside: typeof open) =>
      trace.within(`Beside the ${state} test`, () =>
        coolingRow(state, found, beside, night, found && heaterOf(found, depth, errors, inputs, trace), trace),
      );
    const lines = [rowOf("open", open, undefined), rowOf("covered", under, open)];
    recordFacts({
      sensorError,
      weakFall: Math.min(...tested.map(({ fall }) => fall)),
      noFinding: tested.some(({ found }) => !found),
      disagreement: lines
        .filter(({ beside }) => beside.startsWith("test"))
        .map(({ state, beside }) => `${state}, the ${beside}`)
        .join("; "),
    });
    return lines;
  },
});
