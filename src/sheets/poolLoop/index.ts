/** Starter sheet "Pool loop": the loop before and after the new exchanger beside each other, for the invented Fernhill Hall. */
import { computed, gap, heading, input, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, check, must, starterLines } from "../sections";
import { INVENTED, MONEY, above, betweenLimits, currencyInput, moneyPer, oneOf, warning } from "../technicianParts";
import { ADDED_LINES, CURVE_LINES, EXISTING_LINES, LOOP_COLUMNS, LOOP_WIDTHS, PART_HEADS } from "./parts";
import { CURVES_OF_LOOP, LOOP_CHART } from "./curves";
import { LOOP_CALCULATION } from "./results";
import { BRANCH_LINES, COVER_INPUTS } from "./branches";
import type { StarterSheet } from "../sheet";

/** The shared head, with both values' columns named. */
const withBothColumns = (lines: readonly Line[]): readonly Line[] =>
  lines.map((line) =>
    line.label === "Quantity"
      ? { ...line, value: "Before", extra: { C: { content: "After", style: "Heading 3" } } }
      : line,
  );

const survey: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Pool and pump"),
  input("volume", "Volume of the pool", 35766, "gal", {
    format: "#,##0",
    validation: above("above 0 gal"),
    source: "POOL.VOLUME",
    note: INVENTED,
    link: "ProjectVolume",
  }),
  input("turnoverAsked", "Turnover asked for, at most", 9, "h", {
    validation: above("above 0 h"),
    source: "health code, designer",
    note: "6 to 8 h is common for small pools.",
  }),
  input("water", "Water temperature", 82, "°F", {
    validation: betweenLimits(33, 140, "33 to 140 °F"),
    source: "measured",
    link: "ProjectWater",
  }),
  input("schedule", "Schedule of the pipe", "40", "", {
    validation: oneOf("40 or 80", "40", "80"),
    source: "survey",
    link: "ProjectSchedule",
  }),
  input("static", "Static head", 0, "ft", {
    validation: betweenLimits(0, 500, "0 to 500 ft"),
    source: "height between open surfaces",
    note: "0 in a closed round from pool to pool.",
  }),
  input("knownFlow", "Flow at which the heads below are worked", 75, "gpm", {
    validation: above("above 0 gpm"),
    source: "near the flow expected",
  }),
  input("altitude", "Altitude", 500, "ft", {
    validation: betweenLimits(-1500, 16000, "-1,500 to 16,000 ft"),
    source: "map",
    link: "ProjectAltitude",
  }),
  input("lift", "Water below the pump (above: negative)", -1, "ft", {
    validation: betweenLimits(-100, 30, "-100 to 30 ft"),
    source: "survey",
  }),
  input("npshNeeded", "Suction head that the pump needs", 12, "ft", {
    validation: above("above 0 ft"),
    source: "maker's curve, at this flow",
    note: INVENTED,
  }),
  input("wire", "Efficiency, wire to water", 0.45, "", {
    format: "0%",
    validation: betweenLimits(0.01, 1, "1 to 100 %"),
    source: "maker; usual 35 to 60 %",
  }),
  input("hours", "Hours that the pump runs in a year", 4400, "h", {
    format: "#,##0",
    validation: betweenLimits(0, 8784, "0 to 8,784 h"),
    source: "timer",
  }),
  currencyInput("ProjectCurrency"),
  input("powerPrice", "Electricity", 0.15, moneyPer("kWh"), {
    format: "0.000",
    validation: above("above 0"),
    source: "bill",
    note: INVENTED,
    link: "ProjectPowerPrice",
  }),
  input("coverRating", "Rated flow of the drain covers, one blocked", 110, "gpm", {
    validation: above("above 0 gpm"),
    source: "marked on the covers",
    note: "Those left open carry the whole flow.",
  }),
  input("exchangerLeast", "Least flow that the exchanger needs", 50, "gpm", {
    validation: above("above 0 gpm"),
    source: "supplier; flow switch",
  }),
];

const results: readonly Line[] = [
  heading("part", "Results"),
  { label: "What the exchanger costs the loop", labelStyle: "Heading 3", value: "Change", style: "Heading 3" },
  computed("flowLost", "Flow lost by the new exchanger", "=[flow]-[flow@C]", "gpm", { format: "0.0", style: "Output" }),
  computed("shareLost", "Share of the flow", "=[flowLost]/[flow]", "", { format: "0.0%", style: "Output" }),
  computed("headAdded", "Head that the new parts take at the known flow", "=[systemHead@C]-[systemHead]", "ft", {
    format: "0.0",
    style: "Output",
  }),
  computed("longer", "Longer turnover", "=[turnover@C]-[turnover]", "h", { format: "0.0", style: "Output" }),
  computed("longerHours", "Extra pump energy for the same turnovers", "=[energy@C]*[flow]/[flow@C]-[energy]", "kWh", {
    format: "#,##0",
    style: "Output",
    note: "The pump runs longer by the flow that it lost.",
  }),
  computed("longerCost", "Cost of that in a year", "=[longerHours]*[powerPrice]", MONEY, {
    format: "#,##0",
    style: "Output",
  }),
  gap,
];

const checks: readonly Line[] = [
  check("checkSuction", "Suction within 6 ft/s", "MAX([suctionSpeed],[suctionSpeed@C])<=6", "Or 8 ft/s, by edition."),
  check("checkReturn", "Return within 8 ft/s", "MAX([returnSpeed],[returnSpeed@C])<=8", "Else a larger pipe."),
  check(
    "checkTurnover",
    "Turnover kept after",
    "[turnover@C]<=[turnoverAsked]",
    "Else more speed, a bypass, or less head.",
  ),
  check("checkExchanger", "Exchanger gets its least flow", "[flow@C]>=[exchangerLeast]", "With the filter dirty."),
  must(
    "checkNpsh",
    "Suction head with 2 ft to spare",
    "MIN([npsh],[npsh@C])>=[npshNeeded]+2",
    "Else the pump cavitates.",
  ),
  must(
    "checkCover",
    "Drain covers carry the flow",
    "AND(MAX([flow],[flow@C],[highestFlow])<=[coverRating],[oneBlocked]<=[coverMarked])",
    "With one blocked, filter clean, bypass open: suction entrapment.",
  ),
];

export const poolLoop: StarterSheet = sheetOf({
  id: "pool-loop",
  name: "Pool loop",
  summary: "Flow, head, velocity, turnover and suction before and after the new exchanger, beside each other.",
  widths: LOOP_WIDTHS,
  columns: LOOP_COLUMNS,
  frozenRows: FROZEN_ROWS,
  lines: withBothColumns(
    starterLines({
      title: "Pool loop: before and after the new exchanger",
      warnings: [
        warning(
          "Suction entrapment: check every drain cover's rated flow, one blocked, whenever pump, speed, valves or pipe change.",
        ),
      ],
      project: "Fernhill Hall, outdoor lap pool (invented)",
      columns: { note: "F", last: "H" },
      answer: results,
      body: [
        ...survey,
        heading("group", "Loop as it is", "A loss known at a flow, or a valve's Cv."),
        PART_HEADS,
        ...EXISTING_LINES,
        heading("group", "Added with the exchanger"),
        ...ADDED_LINES,
        ...CURVE_LINES,
        ...COVER_INPUTS,
        gap,
        ...LOOP_CALCULATION,
        ...BRANCH_LINES,
        ...CURVES_OF_LOOP,
      ],
      checks,
    }),
  ),
  charts: [LOOP_CHART],
  named: { FlowBefore: "flow", FlowLost: "flowLost" },
});
