/** The points of the decision: what stops the job, what must be settled first, and why. */

/** What a capacity step gives of the rated cooling at least. */
const LOWEST_STEP = 'IF([stages]="single",1,IF([stages]="two-stage",0.65,0.25))';

/** A board drives fan, expansion valve and oil return. */
export const BOARD_DRIVES = 'OR([stages]="inverter",[communicating]="yes")';

export interface SurveyPoint {
  readonly key: string;
  readonly label: string;
  /** Conditions of the two other verdicts; "go" is left. */
  readonly noGo: string;
  readonly look: string;
  readonly why: string;
}

export const POINTS: readonly SurveyPoint[] = [
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
    noGo: `AND(${BOARD_DRIVES},[consent]="no")`,
    look: BOARD_DRIVES,
    why: "The board may lock out when the outdoor coil is bypassed: only with the maker's written consent.",
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

export const [FIRST, LAST] = ["pointMachine", "pointWater"] as const;
