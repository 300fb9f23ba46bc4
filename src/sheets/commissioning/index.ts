/** Starter sheet "Commissioning": both modes measured, the two duties compared, trips proven, hand-over. */
import { computed, gap, heading, sheetOf, type Line } from "../layout";
import {
  FIRST_TRIP,
  HAND_OVER_INPUTS,
  LAST_TRIP,
  MACHINE_INPUTS,
  READINGS,
  TRIP_COUNT,
  TRIP_INPUTS,
  UA_TREND,
} from "./inputs";
import { FROZEN_ROWS, WIDTHS, check, must, starterLines } from "../sections";
import { MODEL_LINES } from "./model";
import { GAUGE_BASIS, SIGNED_PERCENT, answer, change } from "../technicianParts";
import { REFRIGERANT_WARNINGS } from "../refrigerantSide/cautions";
import type { StarterSheet } from "../sheet";

/** Superheat, subcooling and heat rejected of one mode, from its readings. */
const modeResults = (mode: string, title: string): readonly Line[] => {
  const enthalpy = (pressure: string, temperature: string): string =>
    `INDEX(WARMBACK.REFRIG.STATE([refrigerant],[${mode}${pressure}],[${mode}${temperature}],${GAUGE_BASIS}),3,2)`;
  return [
    heading("group", title),
    computed(
      `${mode}Superheat`,
      "Superheat at the compressor",
      `=WARMBACK.REFRIG.SUPERHEAT([refrigerant],[${mode}Suction],[${mode}SuctionLine],${GAUGE_BASIS})`,
      "°F",
      { format: "0.0", source: "REFRIG.SUPERHEAT" },
    ),
    computed(
      `${mode}Subcooling`,
      "Subcooling",
      `=WARMBACK.REFRIG.SUBCOOLING([refrigerant],[${mode}Head],[${mode}Liquid],${GAUGE_BASIS})`,
      "°F",
      { format: "0.0", source: "REFRIG.SUBCOOLING" },
    ),
    computed(
      `${mode}Condensing`,
      "Condensing temperature (dew)",
      `=WARMBACK.REFRIG.TEMPERATURE([refrigerant],[${mode}Head],"dew",${GAUGE_BASIS})`,
      "°F",
      { format: "0.0", source: "REFRIG.TEMPERATURE" },
    ),
    computed(`${mode}H1`, "Suction enthalpy", `=${enthalpy("Suction", "SuctionLine")}`, "BTU/lb", {
      format: "0.00",
      source: "REFRIG.STATE",
    }),
    computed(`${mode}H2`, "Discharge enthalpy", `=${enthalpy("Head", "Discharge")}`, "BTU/lb", {
      format: "0.00",
      source: "REFRIG.STATE",
    }),
    computed(`${mode}H3`, "Liquid enthalpy", `=${enthalpy("Head", "Liquid")}`, "BTU/lb", {
      format: "0.00",
      source: "REFRIG.STATE",
    }),
    computed(
      `${mode}Rejected`,
      "Heat rejected, refrigerant side",
      `=[${mode}Power]*3412.14*([${mode}H2]-[${mode}H3])/([${mode}H2]-[${mode}H1])`,
      "BTU/h",
      {
        format: "#,##0",
        source: "power × (h2 − h3)/(h2 − h1)",
        note: "Without the compressor shell's loss (3 to 8 %): reads a little high.",
      },
    ),
  ];
};

const waterResults: readonly Line[] = [
  computed(
    "waterDuty",
    "Heat taken, water side",
    "=WARMBACK.EXCHANGER.WATERDUTY([flow],[waterIn],[waterOut])",
    "BTU/h",
    {
      format: "#,##0",
      source: "EXCHANGER.WATERDUTY",
      note: "0.2 °F of sensor error are 5 % of a 4 °F rise.",
    },
  ),
  change(
    "apart",
    "Water side against refrigerant side",
    "([waterDuty]/[poolRejected]-1)",
    "",
    SIGNED_PERCENT,
    "quotient",
  ),
  computed(
    "meanDifference",
    "Mean temperature difference",
    '=WARMBACK.EXCHANGER.LMTD([poolCondensing],[poolCondensing],[waterIn],[waterOut],"counterflow")',
    "°F",
    { format: "0.0", source: "EXCHANGER.LMTD" },
  ),
  computed("ua", "UA at commissioning", "=[waterDuty]/[meanDifference]", "BTU/(h·°F)", {
    format: "#,##0",
    source: "heat over mean difference",
  }),
];

const results: readonly Line[] = [
  heading("part", "Results"),
  answer("outDuty", "Heat into the pool", "=[waterDuty]", "BTU/h", "#,##0"),
  answer("outUa", "UA to compare with, every year", "=[ua]", "BTU/(h·°F)", "#,##0", "At this flow."),
  answer("outPattern", "Readings beside the model", "=[pattern]", "", "@", "=[pattern@E]"),
  answer("outCharge", "Total charge for the label", "=[nameplate]+[added]", "lb", "0.0"),
  answer("outTrips", "Safety trips still to prove", `=COUNTIF([${FIRST_TRIP}]:[${LAST_TRIP}],"not yet")`, "", "0"),
  gap,
];

const modeChecks = (mode: string, name: string): readonly Line[] => [
  check(
    `${mode}CheckHeat`,
    `${name}: superheat 5 to 25 °F`,
    `AND([${mode}Superheat]>=5,[${mode}Superheat]<=25)`,
    "At the compressor.",
  ),
  check(
    `${mode}CheckCool`,
    `${name}: subcooling within 4 °F of the one wanted`,
    `ABS([${mode}Subcooling]-[subcoolingTarget])<=4`,
    "The two condensers hold different charge: both must fit.",
  ),
  check(`${mode}CheckAmps`, `${name}: current not above rated`, `[${mode}Amps]<=[ratedAmps]`, "Rated load amps."),
  check(
    `${mode}CheckHot`,
    `${name}: discharge not above 225 °F`,
    `[${mode}Discharge]<=225`,
    "Oil and valves suffer above.",
  ),
];

const checks: readonly Line[] = [
  ...modeChecks("outdoor", "Outdoor"),
  ...modeChecks("pool", "Pool"),
  check("checkDuty", "The two duties agree within 15 %", "ABS([apart])<=0.15", "Else look at flow, sensors, charge."),
  check("checkRise", "Water rises by 3 °F or more", "[waterOut]-[waterIn]>=3", "Less: sensor error governs the duty."),
  check(
    "checkModel",
    "Readings agree with the model",
    '[pattern]="agrees"',
    "Within instrument and model errors; else look at what the pattern means.",
  ),
  must("checkLeaving", "Leaving water below 104 °F", "[waterOut]<104", "The usual limit for people."),
  check(
    "checkLift",
    "Condensing not below 80 °F on the pool",
    "[poolCondensing]>=80",
    "The metering device needs pressure.",
  ),
  must(
    "checkTrips",
    "Every safety trip proven or not fitted",
    `COUNTIF([${FIRST_TRIP}]:[${LAST_TRIP}],"proven")+COUNTIF([${FIRST_TRIP}]:[${LAST_TRIP}],"not fitted")=${TRIP_COUNT}`,
    "Each one made to happen.",
  ),
  must(
    "checkFlowTrip",
    "Flow trip and high-pressure cut-out proven",
    'AND([tripFlow]="proven",[tripHead]="proven")',
    "These two always.",
  ),
  must("checkLabel", "Charge label on the machine", '[label]="yes"', "New total."),
  must("checkBonding", "Exchanger bonded", '[bonded]="yes"', "Licensed electrician."),
  check("checkManual", "Owner has the papers", '[manual]="yes"', ""),
  check(
    "checkWinter",
    "Winter drain-down shown",
    '[winter]="yes"',
    "A frozen exchanger lets water into the compressor.",
  ),
  check(
    "checkTrend",
    "No year's UA at 80 % or less",
    "IF(COUNT([trend1]:[trend5])=0,TRUE,MIN([trend1]:[trend5])>0.8)",
    "Else clean the water side.",
  ),
];

export const commissioning: StarterSheet = sheetOf({
  id: "commissioning",
  name: "Commissioning",
  summary: "Commissioning and hand-over: both modes, the two duties, trips, label, winter, yearly UA.",
  widths: WIDTHS,
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "Commissioning and hand-over",
    warnings: REFRIGERANT_WARNINGS,
    project: "Fernhill Hall, outdoor lap pool (invented)",
    answer: results,
    body: [
      ...MACHINE_INPUTS,
      ...READINGS,
      ...TRIP_INPUTS,
      ...HAND_OVER_INPUTS,
      heading("part", "Calculation"),
      ...modeResults("outdoor", "1 Outdoor mode"),
      ...modeResults("pool", "2 Pool mode"),
      ...waterResults,
      ...MODEL_LINES,
      ...UA_TREND,
    ],
    checks,
  }),
  named: { CommissionedUA: "ua" },
});
