/** Starter sheet "Recovery sizing": the main job in its order, for the invented Fernhill Hall. */
import { computed, gap, heading, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, WIDTHS, head, people, revisions, twoPeople } from "../sections";
import { coolerInputs, loopInputs, moneyInputs, poolInputs } from "./inputs";
import { LOSS_LINES, LOSS_RESULTS } from "./losses";
import { exchangerResults, heatResults, loopResults, moneyResults, poolResults, warmUpResults } from "./results";
import { YEAR_LINES, YEAR_RESULTS } from "./year";
import type { StarterSheet } from "../sheet";

const answer = (key: string, label: string, formula: string, unit: string, format: string, note = ""): Line =>
  computed(key, label, formula, unit, { format, style: "Output", ...(note === "" ? {} : { note }) });

const results: readonly Line[] = [
  heading("part", "Results"),
  answer(
    "outLoss",
    "The pool loses",
    "=[loss]",
    "BTU/h",
    "#,##0",
    "At these conditions; wind and use move it by 30 % and more.",
  ),
  answer("outRejected", "The air conditioner rejects", "=[rejected]", "BTU/h", "#,##0"),
  answer("outUa", "The exchanger needs a UA of", "=[ua]", "BTU/(h·°F)", "#,##0"),
  answer("outHead", "The added pipe takes", "=[headLoss]", "ft", "0.0"),
  answer("outWarm", "Warm-up takes", "=[warmUp]", "h", "0.0"),
  answer(
    "outTaken",
    "Of a year's rejected heat the pool takes",
    "=[yearShare]",
    "",
    "0%",
    "Hour by hour, for the climate above.",
  ),
  answer(
    "outWorth",
    "A year saves",
    "=[yearMoney]",
    "money",
    "#,##0",
    "Against natural gas; pump and cooling electricity counted. ±30 %.",
  ),
  gap,
];

const check = (key: string, label: string, condition: string, note: string): Line =>
  computed(key, label, `=IF(${condition},"OK","CHECK")`, "", { style: "Check Cell", note });

const checks: readonly Line[] = [
  heading("part", "Checks"),
  twoPeople("checkPeople"),
  check(
    "checkFactor",
    "Rating and cycle agree on the heat rejected",
    "ABS([rejected]/[cooling]-[factor])<=0.1",
    "Within 0.1 of heat rejected per cooling.",
  ),
  check(
    "checkVelocity",
    "Velocity within 6 ft/s",
    "[velocity]<=6",
    "Suction side; return side 8 ft/s; which edition is law must be looked up.",
  ),
  check(
    "checkLeaving",
    "Leaving water below 104 °F",
    "[leaving]<104",
    "The usual upper limit for people; PVC is derated long before.",
  ),
  check(
    "checkApproach",
    "Condensing at least 5 °F above leaving water",
    "[condensing]-[leaving]>=5",
    "Smaller approaches need very large exchangers.",
  ),
  check(
    "checkHead",
    "Condensing not below 80 °F",
    "[condensing]>=80",
    "The metering device needs pressure difference.",
  ),
  gap,
];

export const recoverySizing: StarterSheet = sheetOf({
  id: "recovery-sizing",
  name: "Recovery sizing",
  summary: "An air conditioner's heat into a pool: loss, heat, exchanger, loop, warm-up, money.",
  widths: [...WIDTHS, 17, 12],
  columns: { unit: "C", source: "D", note: "E", last: "G" },
  frozenRows: FROZEN_ROWS,
  lines: [
    ...head("Recovery sizing: an air conditioner's heat into a pool", "checkPeople", "checkHead"),
    ...people("Fernhill Hall, outdoor lap pool (invented)", "Fernhill Hall is an invented example."),
    ...poolInputs,
    ...LOSS_LINES,
    ...coolerInputs,
    ...loopInputs,
    ...moneyInputs,
    ...YEAR_LINES,
    gap,
    ...poolResults,
    ...LOSS_RESULTS,
    ...heatResults,
    ...exchangerResults,
    ...loopResults,
    ...warmUpResults,
    ...moneyResults,
    ...YEAR_RESULTS,
    ...results,
    ...checks,
    ...revisions,
  ],
  named: {
    PoolLoss: "loss",
    HeatRejected: "rejected",
    ExchangerUA: "ua",
    MasterCheck: "masterCheck",
  },
});
