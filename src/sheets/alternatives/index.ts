/** Starter sheet "Alternatives": ways to heat the pool on equal terms over the year, for the invented Fernhill Hall. */
import { gap, heading, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, check, must, starterLines } from "../sections";
import { MONEY, answer, moneyPer } from "../technicianParts";
import type { StarterSheet } from "../sheet";
import { ENERGY_LINES } from "./energy";
import { INPUT_LINES } from "./inputs";
import { MONEY_LINES, PERIOD_LINES } from "./money";

const results: readonly Line[] = [
  heading("part", "Results"),
  answer(
    "outBest",
    "Costs least over the years",
    "=INDEX([valuegas@A]:[valuerecovered@A],MATCH(MIN([valuegas]:[valuerecovered]),[valuegas]:[valuerecovered],0))",
    "",
    "@",
    '="Present value of all costs, "&[years]&" years at "&TEXT([discount],"0.0%")&"."',
  ),
  answer(
    "outSaves",
    "Recovered heat saves beside gas",
    "=[valuerecovered@C]",
    MONEY,
    "#,##0",
    '="From "&TEXT([valuerecovered@C]-[valuerecovered@D],"#,##0")&" to "&TEXT([valuerecovered@C]+[valuerecovered@D],"#,##0")&", present value."',
  ),
  answer(
    "outBreakEven",
    "It breaks even at a gas price of",
    "=[valuerecovered@E]",
    moneyPer("therm"),
    "0.00",
    "Below that price the gas heater alone is cheaper.",
  ),
  answer(
    "outCarbon",
    "Carbon dioxide saved in a year",
    "=[userecovered@F]",
    "lb",
    "#,##0",
    "At the marginal factor of electricity.",
  ),
  gap,
];

const checks: readonly Line[] = [
  must(
    "checkLives",
    "Every life at least half of the years",
    "2*MIN([costgas@D]:[costrecovered@D])>=[years]",
    "One replacement is counted.",
  ),
  check(
    "checkPoints",
    "The heat pump's points fall with the air",
    "AND([pumpHumid]>=[pumpWarm],[pumpWarm]>[pumpCool],[pumpHumid@C]>=[pumpWarm@C],[pumpWarm@C]>[pumpCool@C])",
    "If not, two points are swapped.",
  ),
  check(
    "checkCollector",
    "Collectors 50 to 100 % of the pool",
    "AND([collector]>=0.5*[poolArea],[collector]<=1.0001*[poolArea])",
    "More area rarely pays.",
  ),
  check("checkNeed", "The pool needs heat", "[need]>0", "If not, check season and set point."),
  check(
    "checkClear",
    "The cheapest way is clear of the next",
    "SMALL([valuegas]:[valuerecovered],2)-MIN([valuegas]:[valuerecovered])>=0.02*MIN([valuegas]:[valuerecovered])",
    "Within 2 % other reasons decide.",
  ),
];

export const alternatives: StarterSheet = sheetOf({
  id: "alternatives",
  name: "Alternatives",
  summary:
    "Gas, electric, pool heat pump, unglazed solar, cover and recovered heat on equal terms: cost, break-even, carbon.",
  widths: [34, 19, 14, 31, 33, 18, 11],
  columns: { unit: "C", source: "D", note: "E", last: "G" },
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "Alternatives: ways to heat the pool",
    project: "Fernhill Hall, outdoor lap pool (invented)",
    columns: { note: "E", last: "G" },
    answer: results,
    body: [...INPUT_LINES, ...PERIOD_LINES, ...ENERGY_LINES, ...MONEY_LINES],
    checks,
  }),
  named: { CheapestHeat: "outBest" },
});
