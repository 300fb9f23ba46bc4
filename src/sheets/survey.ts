/** Starter sheet "Survey and decision": go, go after some points, or no-go, and why. */
import { computed, gap, heading, sheetOf, type Line } from "./build";
import { FROZEN_ROWS, WIDTHS, head, people, revisions, twoPeople } from "./parts";
import { check, warning } from "./pieces";
import type { StarterSheet } from "./sheet";
import { SURVEY_INPUTS } from "./surveyInputs";

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

/** What a capacity step gives of the rated cooling at least. */
const LOWEST_STEP = 'IF([stages]="single",1,IF([stages]="two-stage",0.65,0.25))';

interface Point {
  readonly key: string;
  readonly label: string;
  /** Conditions of the two other verdicts; "go" is left. */
  readonly noGo: string;
  readonly look: string;
  readonly why: string;
}

const POINTS: readonly Point[] = [
  {
    key: "pointMachine",
    label: "Machine type",
    noGo: 'OR([machine]="multi-split or VRF",[machine]="window unit")',
    look: '[machine]<>"split"',
    why: "VRF and window units can't take a second condenser; others need a maker's drawing.",
  },
  {
    key: "pointHeatPump",
    label: "Heat pump",
    noGo: "FALSE",
    look: '[heatPump]="yes"',
    why: "Lock pool mode out in heating and defrost: as an evaporator the exchanger freezes.",
  },
  {
    key: "pointDevice",
    label: "Metering device",
    noGo: "FALSE",
    look: '[device]="fixed orifice"',
    why: "A fixed orifice needs head: hold it by bypass, or stay on the outdoor coil with cold water.",
  },
  {
    key: "pointStages",
    label: "Stages",
    noGo: "FALSE",
    look: '[stages]="inverter"',
    why: "An inverter's own control may not bear a second condenser: ask the maker.",
  },
  {
    key: "pointClass",
    label: "Safety class",
    noGo: 'OR([safetyClass]="A3",AND([safetyClass]="A2L",[consent]<>"yes"))',
    look: '[safetyClass]="A2L"',
    why: "Flammable refrigerant only in equipment listed for it, exchanger and lines included.",
  },
  {
    key: "pointWarranty",
    label: "Warranty and listing",
    noGo: 'OR([consent]="no",AND([warranty]="yes",[consent]<>"yes"))',
    look: '[consent]<>"yes"',
    why: "A second condenser alters a listed machine: maker's consent or a field evaluation.",
  },
  {
    key: "pointGas",
    label: "Hot gas line",
    noGo: "[distance]>200",
    look: "[gasLoss]>2",
    why: "Over 2 °F lost: a larger line, where oil still returns; over 200 ft bring water, not refrigerant.",
  },
  {
    key: "pointLiquid",
    label: "Liquid line",
    noGo: "FALSE",
    look: "[flash]>0",
    why: "Flash gas starves the metering device: larger line, more subcooling, less lift.",
  },
  {
    key: "pointOil",
    label: "Oil return",
    noGo: "[oil]>[cooling]",
    look: `[oil]>[cooling]*${LOWEST_STEP}`,
    why: "The smallest step must carry oil up the riser: smaller or double riser.",
  },
  {
    key: "pointHours",
    label: "Pump hours",
    noGo: "[pumpHours]=0",
    look: "[pumpHours]<[coolingHours]",
    why: "Heat is taken only while the pump runs: shift or lengthen its hours.",
  },
  {
    key: "pointDrain",
    label: "Drain covers",
    noGo: 'OR([drains]="single",[flow]>[coverFlow])',
    look: '[coverValid]="no"',
    why: "Suction entrapment kills: marked cover of the rated flow, two drains or a second means.",
  },
  {
    key: "pointBonding",
    label: "Bonding",
    noGo: "FALSE",
    look: '[bonding]="no"',
    why: "The exchanger's metal joins the equipotential bonding before start: licensed electrician.",
  },
  {
    key: "pointWater",
    label: "Water chemistry",
    noGo: "FALSE",
    look: '[chemistry]="no"',
    why: "Water out of range eats heaters and exchangers: mend it first.",
  },
];

const [FIRST, LAST] = ["pointMachine", "pointWater"] as const;

const points: readonly Line[] = [
  heading("part", "Decision"),
  { label: "Point", labelStyle: "Heading 3", value: "Verdict", style: "Heading 3", note: "Why" },
  ...POINTS.map(({ key, label, noGo, look, why }) =>
    computed(key, label, `=IF(${noGo},"no-go",IF(${look},"look","go"))`, "", {
      style: "Check Cell",
      note: `=IF([${key}]="go","",${JSON.stringify(why)})`,
    }),
  ),
  gap,
];

/** The labels of the points that have a verdict, one after the other. */
const named = (verdict: string): string =>
  POINTS.map(({ key, label }) => `IF([${key}]="${verdict}","${label}; ","")`).join("&");

const results: readonly Line[] = [
  heading("part", "Results"),
  computed(
    "decision",
    "Decision",
    `=IF(COUNTIF([${FIRST}]:[${LAST}],"no-go")>0,"NO-GO",IF(COUNTIF([${FIRST}]:[${LAST}],"look")>0,"GO, BUT","GO"))`,
    "",
    { style: "Output", note: "GO, BUT: after the points marked look." },
  ),
  computed("stops", "Stopped by", `=IF(COUNTIF([${FIRST}]:[${LAST}],"no-go")=0,"nothing",${named("no-go")})`, "", {
    style: "Output",
  }),
  computed("looks", "To settle first", `=IF(COUNTIF([${FIRST}]:[${LAST}],"look")=0,"nothing",${named("look")})`, "", {
    style: "Output",
  }),
  gap,
];

const checks: readonly Line[] = [
  heading("part", "Checks"),
  twoPeople("checkPeople"),
  check(
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
  gap,
];

export const survey: StarterSheet = sheetOf({
  id: "survey-and-decision",
  name: "Survey and decision",
  summary: "Machine, way and pool surveyed: go, go after some points, or no-go, and why.",
  widths: WIDTHS,
  frozenRows: FROZEN_ROWS,
  lines: [
    ...head("Survey and decision: may this machine heat this pool?", "checkPeople", "checkLooks"),
    warning(
      "A second condenser alters a listed machine: maker's consent or a field evaluation, licensed trades, local codes.",
    ),
    ...people("Fernhill Hall, outdoor lap pool (invented)", "Fernhill Hall is an invented example."),
    ...SURVEY_INPUTS,
    ...computations,
    ...points,
    ...results,
    ...checks,
    ...revisions,
  ],
  named: {},
});
