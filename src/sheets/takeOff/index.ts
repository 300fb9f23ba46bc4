/** Starter sheet "Take-off and price": material, hours, margin, price, for the invented Fernhill Hall. */
import { computed, gap, heading, input, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, check, must, starterLines } from "../sections";
import {
  INVENTED,
  MONEY,
  REFRIGERANT_NAMES,
  TUBE_SIZES,
  above,
  answer,
  betweenLimits,
  currencyInput,
  moneyPer,
  oneOf,
  warning,
} from "../technicianParts";
import type { StarterSheet } from "../sheet";
import {
  HOUR_HEADS,
  JOINTS,
  JOINT_HEADS,
  JOINT_LINES,
  MATERIAL,
  MATERIAL_LINES,
  PRICE_HEADS,
  TAKE_OFF_COLUMNS,
  TAKE_OFF_WIDTHS,
  TASKS,
  TASK_HOURS,
  TASK_LINES,
} from "./lines";

const share = (key: string, label: string, value: number, note: string): Line =>
  input(key, label, value, "", {
    format: "0%",
    validation: betweenLimits(0, 0.95, "0 to 95 %"),
    source: "your own",
    note,
  });

const inputs: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Pool pipe"),
  input("size", "Main pipe size", "2-1/2 in", "", {
    validation: oneOf("nominal size", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "4 in"),
    source: "Pool loop",
    link: "ProjectPipeSize",
  }),
  input("schedule", "Schedule", "40", "", {
    validation: oneOf("40 or 80", "40", "80"),
    source: "survey",
    link: "ProjectSchedule",
  }),
  input("run", "Straight pipe added", 60, "ft", {
    validation: above("above 0 ft"),
    source: "route",
    note: INVENTED,
    link: "ProjectPipeRun",
  }),
  input("warmest", "Warmest water in the pipe", 100, "°F", {
    validation: betweenLimits(33, 140, "33 to 140 °F"),
    source: "leaving limit",
  }),
  share("waste", "Cutting waste", 0.1, "Common practice 5 to 15 %."),
  heading("group", "Refrigerant lines"),
  input("refrigerant", "Refrigerant", "R-410A", "", {
    validation: oneOf("as on the nameplate", ...REFRIGERANT_NAMES),
    source: "nameplate",
    link: "ProjectRefrigerant",
  }),
  input("lineSize", "Liquid line", "1/2 in", "", {
    validation: oneOf("outside diameter", ...TUBE_SIZES),
    source: "Refrigerant side",
    link: "ProjectLiquidSize",
  }),
  input("lineRun", "Length of each line", 60, "ft", {
    validation: above("above 0 ft"),
    source: "route",
    note: INVENTED,
    link: "ProjectLineLength",
  }),
  input("liquid", "Temperature of the liquid", 95, "°F", {
    validation: betweenLimits(40, 130, "40 to 130 °F"),
    source: "design",
  }),
  JOINT_HEADS,
  ...JOINT_LINES,
  gap,
];

const CEMENT = `WARMBACK.PIPE.CEMENT(${JOINTS})`;
/** Rows of the cement's table: its heads, the sizes, the total. */
const TOTAL_ROW = JOINT_LINES.length + 2;

const calculation: readonly Line[] = [
  heading("part", "Calculation"),
  computed("jointsInAll", "Joints", `=INDEX(${CEMENT},${TOTAL_ROW},2)`, "", { source: "PIPE.CEMENT, total" }),
  computed("cementQuarts", "Solvent cement", `=ROUNDUP(4*INDEX(${CEMENT},${TOTAL_ROW},3),0)`, "quart", {
    source: "PIPE.CEMENT, whole quarts",
    note: "The cement's label governs.",
  }),
  computed("primerQuarts", "Primer", `=ROUNDUP(4*INDEX(${CEMENT},${TOTAL_ROW},4),0)`, "quart", {
    source: "PIPE.CEMENT, whole quarts",
  }),
  computed("spacing", "Spacing of supports", "=WARMBACK.PIPE.SUPPORT([size],[warmest],[schedule])", "ft", {
    format: "0.0",
    source: "PIPE.SUPPORT",
    note: "Codes may ask closer.",
  }),
  computed("supports", "Supports", "=ROUNDUP([run]/[spacing],0)+1", "piece", {
    source: "length over distance, and one",
  }),
  computed("expansion", "Change of length from 40 °F", "=WARMBACK.PIPE.EXPANSION([run],[warmest]-40)", "in", {
    format: "0.0",
    source: "PIPE.EXPANSION",
    note: "Leave offsets or a loop free to move.",
  }),
  computed(
    "refrigerantAdded",
    "Refrigerant added by the line",
    "=WARMBACK.LINE.CHARGE([refrigerant],[lineSize],[lineRun],[liquid])",
    "lb",
    { format: "0.0", source: "LINE.CHARGE", note: "Without the exchanger's: LINE.CHARGEBALANCE." },
  ),
  gap,
];

const money: readonly Line[] = [
  heading("part", "Material"),
  currencyInput("ProjectCurrency"),
  PRICE_HEADS,
  ...MATERIAL_LINES,
  gap,
  heading("part", "Work"),
  HOUR_HEADS,
  ...TASK_LINES,
  gap,
  heading("part", "Margin"),
  input("permits", "Permits, inspection, crane, travel", 450, MONEY, {
    format: "#,##0.00",
    validation: betweenLimits(0, 1e9, "0 or more"),
    source: "your own",
    note: INVENTED,
  }),
  share("overhead", "Overhead on cost", 0.15, "Office, insurance, vehicles."),
  share("unforeseen", "Unforeseen", 0.08, "Existing pipe, access, weather."),
  share("margin", "Margin on the price", 0.12, "Share of the price, not of the cost."),
  share("tax", "Sales tax on material", 0.06, "By place; some work is exempt."),
  gap,
];

const CENTS = "#,##0.00";

const results: readonly Line[] = [
  heading("part", "Results"),
  answer("material", "Material", `=SUM(${MATERIAL})`, MONEY, CENTS),
  answer("tasks", "Work", `=SUM(${TASKS})`, MONEY, CENTS),
  answer("hours", "Hours", `=SUM(${TASK_HOURS})`, "h", "0.0"),
  answer("cost", "Cost", "=([material]*(1+[tax])+[tasks]+[permits])*(1+[unforeseen])", MONEY, CENTS),
  answer("withOverhead", "With overhead", "=[cost]*(1+[overhead])", MONEY, CENTS),
  answer(
    "price",
    "Price",
    "=[withOverhead]/(1-[margin])",
    MONEY,
    CENTS,
    "An example: every price and rate is your own.",
  ),
  answer("pricePerHour", "Price for each hour of work", "=[price]/[hours]", moneyPer("h"), CENTS),
  gap,
];

const checks: readonly Line[] = [
  check(
    "checkJoints",
    "Joints cover the fittings listed",
    "[jointsInAll]>=2*([elbows]+[couplings]+[unions]+[ballValves]+[balancingValve]+[checkValve])+3*[tees]",
    "Two a fitting, three a tee.",
  ),
  must(
    "checkAmounts",
    "Every line is priced",
    `COUNTIF(${MATERIAL},"<=0")+COUNTIF(${TASKS},"<=0")=0`,
    "No amount of zero or less.",
  ),
  must("checkPrice", "Price covers cost and overhead", "[price]>=[withOverhead]", "Margin not below zero."),
  check("checkWarm", "PVC carries the warmest water", "[warmest]<=110", "Half of its strength is left at 110 °F."),
];

export const takeOff: StarterSheet = sheetOf({
  id: "take-off-and-price",
  name: "Take-off and price",
  summary: "Joints, pipe, fittings, cement, supports, refrigerant and hours by task, with margin and price.",
  widths: TAKE_OFF_WIDTHS,
  columns: TAKE_OFF_COLUMNS,
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "Take-off and price: the exchanger and its pipe",
    warnings: [warning("All prices and rates are examples, of no maker and no market: put your own.")],
    project: "Fernhill Hall, outdoor lap pool (invented)",
    columns: { note: "G", last: "G" },
    answer: results,
    body: [...inputs, ...calculation, ...money],
    checks,
  }),
  named: { Price: "price" },
});
