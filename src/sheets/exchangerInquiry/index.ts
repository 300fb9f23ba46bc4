/** Starter sheet "Exchanger inquiry": what a supplier needs to know and to answer, for the invented Fernhill Hall. */
import { computed, gap, heading, sheetOf, type Line } from "../layout";
import { ALONG_CHART, ALONG_LINES } from "./along";
import { ANSWER_LINES, CLAUSE_LINES, DUTY_LINES, LIMIT_LINES } from "./parts";
import { FROZEN_ROWS, WIDTHS, check, checkWhen, starterLines } from "../sections";
import { GAUGE_BASIS, answer } from "../technicianParts";
import { zone } from "./zones";
import type { StarterSheet } from "../sheet";

const [GAS, CONDENSING, LIQUID, TOTAL] = [2, 3, 4, 5] as const;
const [DUTY, REFRIGERANT_IN, REFRIGERANT_OUT, WATER_OUT, UA, LEAST, PLACE] = [2, 3, 4, 6, 8, 10, 11] as const;

const from = (key: string, label: string, row: number, column: number, unit: string, format = "0.0"): Line =>
  computed(key, label, `=${zone(row, column)}`, unit, {
    ...(format === "" ? {} : { format }),
    source: "EXCHANGER.ZONES",
  });

const calculation: readonly Line[] = [
  heading("part", "Calculation"),
  from("gasDuty", "Desuperheating", GAS, DUTY, "BTU/h", "#,##0"),
  from("condensingDuty", "Condensing", CONDENSING, DUTY, "BTU/h", "#,##0"),
  from("liquidDuty", "Subcooling", LIQUID, DUTY, "BTU/h", "#,##0"),
  from("hotGas", "Hot gas enters at", TOTAL, REFRIGERANT_IN, "°F"),
  from("liquidLeaves", "Liquid leaves at", TOTAL, REFRIGERANT_OUT, "°F"),
  from("leaving", "Water leaves at", TOTAL, WATER_OUT, "°F"),
  from("ua", "UA needed, all zones", TOTAL, UA, "BTU/(h·°F)", "#,##0"),
  from("pinch", "Least difference between the streams", TOTAL, LEAST, "°F"),
  from("pinchPlace", "Place of the least difference", TOTAL, PLACE, "", ""),
  computed(
    "condensingPressure",
    "Condensing pressure",
    `=WARMBACK.REFRIG.PRESSURE([refrigerant],[condensing],"dew",${GAUGE_BASIS})`,
    "psig",
    { format: "0", source: "REFRIG.PRESSURE" },
  ),
  computed(
    "standingPressure",
    "Pressure at the warmest standing temperature",
    `=WARMBACK.REFRIG.PRESSURE([refrigerant],[standing],"bubble",${GAUGE_BASIS})`,
    "psig",
    { format: "0", source: "REFRIG.PRESSURE" },
  ),
  computed("uaAsked", "UA asked for, with the margin", "=[ua]*(1+[marginAsked])", "BTU/(h·°F)", {
    format: "#,##0",
    source: "product",
  }),
  gap,
];

const results: readonly Line[] = [
  heading("part", "Results"),
  answer("outDuty", "Heat that the exchanger must transfer", "=[duty]", "BTU/h", "#,##0"),
  answer("outUa", "Its UA, with the margin", "=[uaAsked]", "BTU/(h·°F)", "#,##0"),
  answer(
    "outMargin",
    "Margin of the offered UA",
    '=IF(LEN([uaOffered])=0,"open",[uaOffered]/[ua]-1)',
    "",
    "0%",
    "Open until the supplier answers.",
  ),
  gap,
];

const checks: readonly Line[] = [
  check("checkPinch", "Streams at least 5 °F apart", "[pinch]>=5", "Smaller differences need very large exchangers."),
  check("checkLeaving", "Water leaves below 104 °F", "[leaving]<104", "The usual upper limit for people."),
  check(
    "checkStanding",
    "Design pressure above the standing pressure",
    "[refrigerantDesign]>[standingPressure]",
    "Machine off, everything warm.",
  ),
  check(
    "checkTest",
    "Test pressures above design",
    "AND([refrigerantTest]>[refrigerantDesign],[waterTest]>[waterDesign])",
    "The code that applies names the ratio.",
  ),
  checkWhen(
    "checkDuty",
    "Offered heat covers the duty",
    "dutyOffered",
    "[dutyOffered]>=[duty]",
    "At the same temperatures and flow.",
  ),
  checkWhen(
    "checkUa",
    "Offered UA covers UA and margin",
    "uaOffered",
    "[uaOffered]>=[uaAsked]",
    "With both foulings counted.",
  ),
  checkWhen(
    "checkAgree",
    "Offered heat and offered UA agree",
    "uaOffered",
    'AND([dutyOffered]<>"",[dutyOffered]<=[uaOffered]/[ua]*[duty]*1.05)',
    "A UA passes no more heat than in proportion at these temperatures.",
  ),
  checkWhen(
    "checkWaterDrop",
    "Water drop within its limit",
    "waterDropOffered",
    "[waterDropOffered]<=[waterDropLimit]",
    "",
  ),
  checkWhen(
    "checkRefrigerantDrop",
    "Refrigerant drop within its limit",
    "refrigerantDropOffered",
    "[refrigerantDropOffered]<=[refrigerantDropLimit]",
    "",
  ),
  checkWhen(
    "checkRefrigerantDesign",
    "Refrigerant side rated for its design pressure",
    "refrigerantDesignOffered",
    "[refrigerantDesignOffered]>=[refrigerantDesign]",
    "Never below the machine's high side.",
  ),
  checkWhen(
    "checkRefrigerantTest",
    "Refrigerant side tested as asked",
    "refrigerantTestOffered",
    "[refrigerantTestOffered]>=[refrigerantTest]",
    "",
  ),
  checkWhen(
    "checkWaterDesign",
    "Water side rated for its design pressure",
    "waterDesignOffered",
    "[waterDesignOffered]>=[waterDesign]",
    "",
  ),
  checkWhen(
    "checkWaterHottest",
    "Water side rated for its design temperature",
    "waterHottestOffered",
    "[waterHottestOffered]>=[waterHottest]",
    "At loss of flow the tube reaches the hot gas.",
  ),
];

export const exchangerInquiry: StarterSheet = sheetOf({
  id: "exchanger-inquiry",
  name: "Exchanger inquiry",
  summary: "An inquiry that a supplier can answer: duty, limits, pressures, materials, clauses, blanks, comparison.",
  widths: WIDTHS,
  charts: [ALONG_CHART],
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "Exchanger inquiry: a condenser for pool water",
    project: "Fernhill Hall, outdoor lap pool (invented)",
    answer: results,
    body: [...DUTY_LINES, ...LIMIT_LINES, ...CLAUSE_LINES, ...ANSWER_LINES, ...calculation, ...ALONG_LINES],
    checks,
  }),
  named: { InquiryUA: "uaAsked", InquiryDuty: "duty", InquiryCheck: "masterCheck" },
});
