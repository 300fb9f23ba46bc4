import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { spaLimitPassed, warmPool } from "../cautions";
import {
  activityInUse,
  dew,
  handbookFactor,
  indoorRelation,
  lakeWind,
  evaporationMethodSpread,
} from "../evaporation/cautions";
import { coverInUse, oddSun, poolEstimate, noCover, ruleHoldsAll } from "../losses/cautions";
import { LOSS_INPUTS } from "../losses/inputs";
import { EVAPORATION_FACTS, evaporationFacts } from "../evaporation/facts";
import { lossRows } from "../losses/rows";
import { lossesByParts, lossesByRule } from "../losses/losses";
import { checkLossInputs, poolStateOf } from "../losses/poolState";

const LAP = { poolArea: 800, poolTemperature: 82, airTemperature: 70, humidity: 0.6, windAtWater: 3 } as const;
const RULE = { ...LAP, lossMethod: "surface rule" } as const;
/** 10 °C dew point in 20 °C air, water at 27 °C, no wind. */
const QUIET = { poolArea: 100, poolTemperature: 27, airTemperature: 20, humidity: 0.6, windAtWater: 0 } as const;

export const poolLosses = cellFunction({
  id: "POOL.LOSSES",
  topic: "pool",
  summary: "Heat a pool loses, by kind: evaporation, convection, sky, ground, make-up water, sun, cover, and the net.",
  keywords: ["heat loss", "heat balance", "energy", "pool cover", "solar gain"],
  details: [
    "Mean of day and night in steady weather; losses positive, gains negative. Share: of the sum of all losses before sun and cover. The rows are of the open pool; cover effect is what the cover changes, sun kept out included.",
    "Convection takes the film coefficient of the evaporation (Bowen), or 3.1 + 4.1 v. The hidden share of the sky stands at the air's temperature. The cover's own insulation counts only where its cuts are entered.",
    "Make-up water = evaporation + splash + backwash + leak − rain, at mains temperature; rain comes at that of the air. Ground: floor and walls of a square pool.",
    "surface rule instead of parts holds evaporation, convection and radiation in one row; those rows stay empty, nothing is added twice, and make-up water counts what is entered only.",
  ],
  args: { inputs: LOSS_INPUTS },
  returns: tableResult(
    "losses by kind",
    {
      loss: wordResult("kind of loss"),
      heatRate: quantityResult("heat rate", "heat lost; negative: gained"),
      share: quantityResult("fraction", "share of the losses"),
    },
    { total: true },
  ),
  facts: {
    ...EVAPORATION_FACTS,
    lossEstimated: "yes/no",
    coverKind: "word",
    surfaceRuleBy: "film coefficient",
    sunOnWater: "daily sun",
  },
  sources: ["nrelPools", "calPolyCovers2016"],
  cautions: [
    { rule: poolEstimate, raisedBy: { inputs: LAP } },
    { rule: evaporationMethodSpread, raisedBy: { inputs: LAP } },
    { rule: noCover, raisedBy: { inputs: LAP } },
    { rule: coverInUse, raisedBy: { inputs: { ...LAP, cover: "bubble" } } },
    { rule: dew, raisedBy: { inputs: { ...LAP, poolTemperature: 60, airTemperature: 90, humidity: 0.8 } } },
    { rule: spaLimitPassed, raisedBy: { inputs: { ...LAP, poolTemperature: 106 } } },
    { rule: warmPool, raisedBy: { inputs: { ...LAP, poolTemperature: 95 } } },
    { rule: handbookFactor, raisedBy: { inputs: { ...LAP, evaporationMethod: "Carrier" } } },
    { rule: activityInUse, raisedBy: { inputs: { ...LAP, activity: 1.5 } } },
    { rule: indoorRelation, raisedBy: { inputs: { ...LAP, evaporationMethod: "VDI 2089" } } },
    { rule: lakeWind, raisedBy: { inputs: { ...LAP, evaporationMethod: "McMillan" } } },
    { rule: oddSun, raisedBy: { inputs: { ...LAP, sunOnWater: 5.5 } } },
    { rule: ruleHoldsAll, raisedBy: { inputs: RULE } },
  ],
  checks: [
    {
      inputs: {
        inputs: {
          ...LAP,
          poolArea: 450,
          poolTemperature: 80,
          airTemperature: 60,
          lossMethod: "surface rule",
          surfaceCoefficient: 12,
        },
      },
      expected: { row: "net", column: "heatRate", value: 108_000 },
      tolerance: 1,
      source: "doePoolHeaters",
    },
    {
      inputs: { inputs: { ...QUIET, sunOnWater: 2.4 }, units: "SI" },
      expected: { row: "sun gained", column: "heatRate", value: -8 },
      tolerance: 0.5,
      source: "nrelPools",
      remark: "75 to 85 % of a mean of 100 W/m² on 100 m².",
    },
    {
      inputs: { inputs: { ...QUIET, windAtWater: 2.2, cover: "foam", coverHours: 24 }, units: "SI" },
      expected: { row: "ground", column: "heatRate", value: 0 },
      tolerance: 0,
      source: "commonPractice",
      remark: "Handbooks neglect it in dry soil.",
    },
    { inputs: { inputs: { ...RULE, cover: "foam" } }, expected: "#VALUE!", source: "identity" },
  ],
  compute({ inputs }, { trace, recordFacts }) {
    checkLossInputs(inputs);
    const pool = poolStateOf(inputs, trace);
    const byRule = inputs.lossMethod === "surface rule";
    const found = byRule ? lossesByRule(pool, inputs.surfaceCoefficient, trace) : lossesByParts(pool, trace);
    recordFacts(
      byRule
        ? { surfaceRuleBy: inputs.surfaceCoefficient, poolTemperature: inputs.poolTemperature }
        : evaporationFacts(
            inputs.evaporationMethod,
            inputs.activity,
            inputs.poolTemperature,
            pool.weather.wind,
            found.evaporated,
          ),
    );
    recordFacts({ lossEstimated: true, coverKind: inputs.cover, sunOnWater: inputs.sunOnWater });
    return lossRows(found);
  },
});
