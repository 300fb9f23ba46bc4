import { cellFunction } from "../../kernel/cellFunction";
import { of, table, word } from "../../kernel/result";
import { spaLimit, warmPool } from "../cautions";
import { activityInUse, dew, handbookFactor, indoorRelation, lakeWind, methodSpread } from "../evaporation/cautions";
import { coverInUse, estimate, noCover, ruleHoldsAll } from "../losses/cautions";
import { LOSS_INPUTS } from "../losses/inputs";
import { EVAPORATION_FACTS, evaporationFacts } from "../evaporation/facts";
import { lossRows } from "../losses/rows";
import { lossesByParts, lossesByRule } from "../losses/losses";
import { checkLossInputs, poolStateOf } from "../losses/poolState";

const LAP = { poolArea: 800, poolTemperature: 82, airTemperature: 70, humidity: 0.6, windAtWater: 3 } as const;
const RULE = { ...LAP, lossMethod: "surface rule" } as const;
/** 10 °C dew point in 20 °C air, water at 27 °C, no wind. */
const QUIET = { poolArea: 100, poolTemperature: 27, airTemperature: 20, humidity: 0.6, windAtWater: 0 } as const;

export const losses = cellFunction({
  id: "POOL.LOSSES",
  topic: "pool",
  summary: "Heat a pool loses, by kind: evaporation, convection, sky, ground, make-up water, sun, cover, and the net.",
  finds: ["heat loss", "heat balance", "energy", "pool cover", "solar gain"],
  remarks: [
    "Mean of day and night in steady weather; losses positive, gains negative. Share: of the sum of all losses before sun and cover. The rows are of the open pool; cover effect is what the cover changes, sun kept out included.",
    "Convection takes the film coefficient of the evaporation (Bowen), or 3.1 + 4.1 v. The hidden share of the sky stands at the air's temperature. The cover's own insulation counts only where its cuts are entered.",
    "Make-up water = evaporation + splash + backwash + leak − rain, at mains temperature; rain comes at that of the air. Ground: floor and walls of a square pool.",
    "surface rule instead of parts holds evaporation, convection and radiation in one row; those rows stay empty, nothing is added twice, and make-up water counts what is entered only.",
  ],
  args: { inputs: LOSS_INPUTS },
  gives: table(
    "losses by kind",
    {
      loss: word("kind of loss"),
      heatRate: of("heat rate", "heat lost; negative: gained"),
      share: of("fraction", "share of the losses"),
    },
    { total: true },
  ),
  facts: {
    ...EVAPORATION_FACTS,
    lossEstimated: "yes/no",
    coverKind: "word",
    surfaceRuleBy: "film coefficient",
  },
  sources: ["nrelPools", "calPolyCovers2016"],
  cautions: [
    { rule: estimate, fires: { inputs: LAP } },
    { rule: methodSpread, fires: { inputs: LAP } },
    { rule: noCover, fires: { inputs: LAP } },
    { rule: coverInUse, fires: { inputs: { ...LAP, cover: "bubble" } } },
    { rule: dew, fires: { inputs: { ...LAP, poolTemperature: 60, airTemperature: 90, humidity: 0.8 } } },
    { rule: spaLimit, fires: { inputs: { ...LAP, poolTemperature: 106 } } },
    { rule: warmPool, fires: { inputs: { ...LAP, poolTemperature: 95 } } },
    { rule: handbookFactor, fires: { inputs: { ...LAP, evaporationMethod: "Carrier" } } },
    { rule: activityInUse, fires: { inputs: { ...LAP, activity: 1.5 } } },
    { rule: indoorRelation, fires: { inputs: { ...LAP, evaporationMethod: "VDI 2089" } } },
    { rule: lakeWind, fires: { inputs: { ...LAP, evaporationMethod: "McMillan" } } },
    { rule: ruleHoldsAll, fires: { inputs: RULE } },
  ],
  checks: [
    {
      at: {
        inputs: {
          ...LAP,
          poolArea: 450,
          poolTemperature: 80,
          airTemperature: 60,
          lossMethod: "surface rule",
          surfaceCoefficient: 12,
        },
      },
      gives: { row: "net", column: "heatRate", is: 108_000 },
      within: 1,
      from: "doePoolHeaters",
    },
    {
      at: { inputs: { ...QUIET, sunOnWater: 2.4 }, units: "SI" },
      gives: { row: "sun gained", column: "heatRate", is: -8 },
      within: 0.5,
      from: "nrelPools",
      remark: "75 to 85 % of a mean of 100 W/m² on 100 m².",
    },
    {
      at: { inputs: { ...QUIET, windAtWater: 2.2, cover: "foam", coverHours: 24 }, units: "SI" },
      gives: { row: "ground", column: "heatRate", is: 0 },
      within: 0,
      from: "commonPractice",
      remark: "Handbooks neglect it in dry soil.",
    },
    { at: { inputs: { ...RULE, cover: "foam" } }, gives: "#VALUE!", from: "identity" },
  ],
  work({ inputs }, { trace, note }) {
    checkLossInputs(inputs);
    const pool = poolStateOf(inputs, trace);
    const byRule = inputs.lossMethod === "surface rule";
    const found = byRule ? lossesByRule(pool, inputs.surfaceCoefficient, trace) : lossesByParts(pool, trace);
    note(
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
    note({ lossEstimated: true, coverKind: inputs.cover });
    return lossRows(found);
  },
});
