/** Starter sheet "Recovery sizing": the main job in its order, for the invented Fernhill Hall. */
import { gap, heading, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, check, must, starterLines } from "../sections";
import { STATES } from "../states";
import { MONEY, answer, moneyText } from "../technicianParts";
import { coolerInputs, loopInputs, moneyInputs, poolInputs } from "./inputs";
import { LOSS_LINES, LOSS_RESULTS } from "./losses";
import { exchangerResults, heatResults, loopResults, moneyResults, poolResults, warmUpResults } from "./results";
import { MONTH_CHARTS, MONTH_LINES } from "./months";
import { RANGE_LINES, UNCERTAIN_RESULTS } from "./uncertainty";
import { YEAR_LINES, YEAR_RESULTS } from "./year";
import type { StarterSheet } from "../sheet";

/** What speaks against the job, from the survey and the checks. */
const verdict: readonly Line[] = [
  {
    key: "verdict",
    label: "Verdict",
    value:
      `=IF(OR([surveyed]="NO-GO",IFERROR([masterCheck]="${STATES.bad}",TRUE)),"don't do it as planned",` +
      `IF(AND([surveyed]="GO",[masterCheck]="${STATES.good}"),"nothing found against it","open conditions"))`,
    style: "Check Cell",
    source: "survey and checks of this sheet",
    note: '="Survey: "&[surveyed]&"; the open checks are named above."',
  },
];

const results: readonly Line[] = [
  heading("part", "Results"),
  answer(
    "outMet",
    "Share of the pool's need that recovery meets",
    "=[yearMet]",
    "",
    "0%",
    "The back-up heater does the rest: keep it.",
  ),
  answer(
    "outDays",
    "Warm days gained in the season",
    "=[yearDaysWith]-[yearDaysWithout]",
    "day",
    "0",
    '="Without back-up heat: "&TEXT([yearDaysWithout],"0")&" days warm without recovery, "&TEXT([yearDaysWith],"0")&" with it."',
  ),
  answer(
    "outMoney",
    "A year saves",
    "=[yearMoney]",
    MONEY,
    "#,##0",
    `="From "&${moneyText("[moneyLow]")}&" to "&${moneyText("[moneyHigh]")}&" in 8 of 10 cases, against "&[yearBackUp]&"; "&[rulesFirst]&" rules. Paid back in "&[yearWithin]&" years: "&TEXT([paybackChance],"0%")&"."`,
  ),
  answer(
    "outRejected",
    "The air conditioner rejects",
    "=[rejected]",
    "BTU/h",
    "#,##0",
    '=TEXT([yearTaken],"#,##0")&" of "&TEXT([yearRejected],"#,##0")&" MMBtu a year go into the pool; that is "&TEXT([rejected]/12000,"0.0")&" tons (12,000 BTU/h)."',
  ),
  answer(
    "outUa",
    "The exchanger needs a UA of",
    "=[ua]",
    "BTU/(h·°F)",
    "#,##0",
    '=TEXT([exchangerArea],"0")&" ft² of tube at "&TEXT([uValue],"0")&" BTU/(h·ft²·°F)."',
  ),
  answer(
    "outPressure",
    "Condensing pressure on the pool",
    "=[pressure]",
    "psig",
    "0",
    '="At "&TEXT([condensing],"0")&" °F; the high-pressure cut-out opens at "&TEXT([cutOut],"0")&" psig."',
  ),
  answer(
    "outFlow",
    "Flow through the exchanger",
    "=[flow]",
    "gpm",
    "0",
    '="Warms by "&TEXT([rise],"0.0")&" °F, runs at "&TEXT([velocity],"0.0")&" ft/s; the added pipe takes "&TEXT([headLoss],"0.0")&" ft of head."',
  ),
  answer(
    "outLoss",
    "The pool loses now",
    "=[loss]",
    "BTU/h",
    "#,##0",
    "At the conditions below; wind and use move it by 30 % and more.",
  ),
  gap,
];

const checks: readonly Line[] = [
  check(
    "checkSurvey",
    "The survey says GO",
    '[surveyed]="GO"',
    "The maker's consent, drain covers and bonding are settled there.",
  ),
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
    "Suction side; return side 8 ft/s; look up which edition is law.",
  ),
  must(
    "checkLeaving",
    "Leaving water below 104 °F",
    "[leaving]<104",
    "The usual upper limit for people; PVC loses strength long before.",
  ),
  check(
    "checkApproach",
    "Condensing at least 5 °F above leaving water",
    "[condensing]-[leaving]>=5",
    "Smaller differences need very large exchangers.",
  ),
  check(
    "checkHead",
    "Condensing not below 80 °F",
    "[condensing]>=80",
    "The metering device needs pressure difference.",
  ),
  must(
    "checkCutOut",
    "Condensing pressure 10 % below the cut-out",
    "[pressure]<=0.9*[cutOut]",
    "Common practice; the setting of the machine governs.",
  ),
  check("checkSaving", "A year saves money", "MIN([yearMoney],[moneyLow])>0", "In nine cases of ten."),
];

export const recoverySizing: StarterSheet = sheetOf({
  id: "recovery-sizing",
  name: "Recovery sizing",
  summary: "An air conditioner's heat into a pool: what it brings, exchanger, pressures, loop, warm-up, money.",
  widths: [34, 19, 14, 31, 33, 18, 11],
  columns: { unit: "C", source: "D", note: "E", last: "G" },
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "Recovery sizing: an air conditioner's heat into a pool",
    verdict,
    project: "Fernhill Hall, outdoor lap pool (invented)",
    columns: { note: "E", last: "G" },
    answer: results,
    body: [
      ...poolInputs,
      ...LOSS_LINES,
      ...coolerInputs,
      ...loopInputs,
      ...moneyInputs,
      ...YEAR_LINES,
      ...RANGE_LINES,
      gap,
      ...poolResults,
      ...LOSS_RESULTS,
      ...heatResults,
      ...exchangerResults,
      ...loopResults,
      ...warmUpResults,
      ...moneyResults,
      ...YEAR_RESULTS,
      ...UNCERTAIN_RESULTS,
      ...MONTH_LINES,
    ],
    checks,
  }),
  charts: MONTH_CHARTS,
  named: {
    PoolLoss: "loss",
    PoolShare: "yearShare",
    HeatRejected: "rejected",
    ExchangerUA: "ua",
    YearInputs: "[[yearArea:yearHotPrice]]",
    MasterCheck: "masterCheck",
  },
});
