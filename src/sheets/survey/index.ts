/** Starter sheet "Survey and decision": go, go after some points, or no-go, and why. */
import { computed, gap, heading, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, WIDTHS, check, must, starterLines } from "../sections";
import { warning } from "../technicianParts";
import { STATES } from "../states";
import type { StarterSheet } from "../sheet";
import { SURVEY_INPUTS } from "./inputs";
import { BOARD_DRIVES, FIRST, LAST, POINTS } from "./points";

const computations: readonly Line[] = [
  heading("part", "Calculation"),
  computed("safetyClass", "Safety class", "=INDEX(WARMBACK.REFRIG.FACTS([refrigerant]),2,2)", "", {
    source: "REFRIG.FACTS",
  }),
  computed(
    "gasLoss",
    "Hot gas line costs",
    '=INDEX(WARMBACK.LINE.DROP([refrigerant],"discharge",[gasSize],[distance],[cooling],[evaporating],[condensing],"","","",[height]),6,2)',
    "°F",
    { format: "0.0", source: "LINE.DROP", note: "As saturation temperature; up to 2 °F is usual." },
  ),
  computed(
    "flash",
    "Flash gas behind the liquid line",
    '=INDEX(WARMBACK.LINE.DROP([refrigerant],"liquid",[liquidSize],[distance],[cooling],[evaporating],[condensing],"","","",-[height]),7,2)',
    "",
    { format: "0.0%", source: "LINE.DROP", note: "From the exchanger back to the machine." },
  ),
  computed(
    "oil",
    "Least cooling that carries oil up the gas line",
    '=IF([height]>0,INDEX(WARMBACK.LINE.RISER([refrigerant],"discharge",[gasSize],[evaporating],[condensing]),4,2),0)',
    "BTU/h",
    { format: "#,##0", source: "LINE.RISER", note: "0 where the exchanger lies below the machine." },
  ),
  computed(
    "lineCharge",
    "Liquid in the added line",
    "=WARMBACK.LINE.CHARGE([refrigerant],[liquidSize],[distance])",
    "lb",
    {
      format: "0.0",
      source: "LINE.CHARGE",
    },
  ),
  gap,
];

const points: readonly Line[] = [
  heading("part", "Points"),
  {
    label: "Point",
    labelStyle: "Heading 3",
    value: "Verdict",
    style: "Heading 3",
    note: "Why",
    noteStyle: "Heading 3",
  },
  ...POINTS.map(({ key, label, noGo, look, why }) =>
    computed(key, label, `=IF(${noGo},"no-go",IF(${look},"look","go"))`, "", {
      style: "Check Cell",
      note: `=IF([${key}]="go","nothing found",${JSON.stringify(why)})`,
    }),
  ),
  gap,
];

/** The labels of the points that have a verdict, one after the other. */
const named = (verdict: string): string =>
  `SUBSTITUTE(TRIM(${POINTS.map(({ key, label }) => `IF([${key}]="${verdict}","${label.replaceAll(" ", "_")} ","")`).join("&")})," ","; ")`;

const results: readonly Line[] = [
  heading("part", "Results"),
  computed(
    "decision",
    "Decision",
    `=IF(COUNTIF([${FIRST}]:[${LAST}],"no-go")>0,"NO-GO",IF(COUNTIF([${FIRST}]:[${LAST}],"look")>0,"GO WITH CONDITIONS","GO"))`,
    "",
    { style: "Check Cell", note: "With conditions: settle the points marked look first." },
  ),
  computed(
    "stops",
    "Stopped by",
    `=IF(COUNTIF([${FIRST}]:[${LAST}],"no-go")=0,"nothing",SUBSTITUTE(${named("no-go")},"_"," "))`,
    "",
    {
      style: "Output",
    },
  ),
  computed(
    "looks",
    "To settle first",
    `=IF(COUNTIF([${FIRST}]:[${LAST}],"look")=0,"nothing",SUBSTITUTE(${named("look")},"_"," "))`,
    "",
    {
      style: "Output",
    },
  ),
  gap,
];

const { good, unfinished, bad } = STATES;

const checks: readonly Line[] = [
  computed(
    "checkConsent",
    "Maker's written consent where a board drives it",
    `=IF(OR(NOT(${BOARD_DRIVES}),[consent]="yes"),"${good}",IF([consent]="no","${bad}","${unfinished}"))`,
    "",
    { style: "Check Cell", note: "Communicating and inverter machines may lock out." },
  ),
  must(
    "checkStops",
    "No point says no-go",
    `COUNTIF([${FIRST}]:[${LAST}],"no-go")=0`,
    "Else another way to heat the pool.",
  ),
  check(
    "checkLooks",
    "No point left to look at",
    `COUNTIF([${FIRST}]:[${LAST}],"look")=0`,
    "Settle each and write how.",
  ),
];

export const survey: StarterSheet = sheetOf({
  id: "survey-and-decision",
  name: "Survey and decision",
  summary: "Machine, way and pool surveyed: go, go after some points, or no-go, and why.",
  // Room for the longest decision in bold.
  widths: WIDTHS.map((width, column) => (column === 1 ? width + 2 : width)),
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "Survey and decision: may this machine heat this pool?",
    warnings: [
      warning(
        "A second condenser alters a listed machine: maker's consent or a field evaluation, licensed trades, local codes.",
      ),
    ],
    project: "Fernhill Hall, outdoor lap pool (invented)",
    answer: results,
    body: [...SURVEY_INPUTS, ...computations, ...points],
    checks,
  }),
  named: { Decision: "decision" },
});
