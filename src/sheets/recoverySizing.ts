/** Starter sheet "Recovery sizing": the main job in its order, for the invented Fernhill Hall. */
import { computed, gap, heading, input, sheetOf, type Line } from "./build";
import { FROZEN_ROWS, WIDTHS, head, people, revisions, twoPeople } from "./parts";
import { LOSS_LINES, LOSS_RESULTS } from "./recoveryLosses";
import type { StarterSheet, Validation } from "./sheet";

const oneOf = (prompt: string, ...list: readonly string[]): Validation => ({ list, prompt });
const above = (prompt: string, least = 0): Validation => ({ above: least, prompt });
const between = (from: number, to: number, prompt: string): Validation => ({ from, to, prompt });

const INVENTED = "Invented example: replace by the survey.";

const poolInputs: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Pool"),
  input("shape", "Shape", "rectangle", "", {
    validation: oneOf("rectangle, oval, round or kidney", "rectangle", "oval", "round", "kidney"),
    source: "survey",
  }),
  input("length", "Length", 75, "ft", { validation: above("above 0 ft"), source: "survey", note: INVENTED }),
  input("width", "Width", 15, "ft", { source: "survey", note: 'Kidney: both widths, such as "12; 16 ft".' }),
  input("shallow", "Shallow depth", 3.5, "ft", { validation: above("above 0 ft"), source: "survey" }),
  input("deep", "Deep depth", 5, "ft", { validation: above("above 0 ft"), source: "survey" }),
  input("start", "Water before warm-up", 68, "°F", {
    validation: between(33, 104, "33 to 104 °F"),
    source: "measured",
  }),
];

const coolerInputs: readonly Line[] = [
  heading("group", "Air conditioner"),
  input("refrigerant", "Refrigerant", "R-410A", "", {
    validation: oneOf("as on the nameplate", "R-22", "R-32", "R-134a", "R-407C", "R-410A", "R-454B"),
    source: "nameplate",
  }),
  input("cooling", "Net cooling at rating", 90000, "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "nameplate or data sheet",
    note: "7.5 tons of refrigeration. " + INVENTED,
  }),
  input("power", "Power of the whole machine at rating", 8.1, "kW", {
    validation: above("above 0 kW"),
    source: "data sheet",
  }),
  input("outdoorFan", "Of that the outdoor fan", 0.6, "kW", {
    validation: between(0, 20, "0 kW or more"),
    source: "data sheet",
  }),
  input("evaporating", "Evaporating temperature", 45, "°F", { source: "gauge or data sheet", note: "dew" }),
  input("condensing", "Condensing temperature on the pool", 100, "°F", {
    validation: between(70, 140, "70 to 140 °F"),
    source: "chosen",
    note: "Not below about 80 °F: the metering device needs pressure difference.",
  }),
  input("fullLoad", "Full-load cooling hours in a year", 1300, "h", {
    format: "#,##0",
    validation: between(0, 8760, "0 to 8,760 h"),
    source: "bills, logger, or AIRCON.HOURS",
  }),
  input("usable", "Share of that heat which the pool can use", 0.6, "", {
    format: "0%",
    validation: between(0, 1, "0 to 100 %"),
    source: "estimate: need and run time must coincide",
    note: "Too warm in high summer, little heat in spring: the hourly year decides.",
  }),
];

const loopInputs: readonly Line[] = [
  heading("group", "Exchanger and loop"),
  input("flow", "Water through the exchanger", 75, "gpm", {
    validation: above("above 0 gpm"),
    source: "flow meter or pump curve",
  }),
  input("uValue", "Overall coefficient, outside area", 120, "BTU/(h·ft²·°F)", {
    validation: above("above 0"),
    source: "supplier; estimate 70 to 175 for titanium coils",
    note: "No published value for titanium coils in a shell: ask the supplier.",
  }),
  input("pipeSize", "Pipe size", "2-1/2 in", "", {
    validation: oneOf("nominal size", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "4 in"),
    source: "survey",
  }),
  input("schedule", "Schedule", "40", "", { validation: oneOf("40 or 80", "40", "80"), source: "survey" }),
  input("run", "Straight pipe added", 60, "ft", {
    validation: between(0, 5000, "0 ft or more"),
    source: "route on site",
  }),
];

const moneyInputs: readonly Line[] = [
  heading("group", "Money"),
  input("gasPrice", "Natural gas", 1.4, "money/therm", {
    validation: above("above 0"),
    source: "bill",
    note: INVENTED,
  }),
  input("propanePrice", "Propane", 2.9, "money/gal", { validation: above("above 0"), source: "bill", note: INVENTED }),
  input("powerPrice", "Electricity", 0.15, "money/kWh", {
    validation: above("above 0"),
    source: "bill",
    note: INVENTED,
  }),
  gap,
];

const poolResults: readonly Line[] = [
  heading("part", "Calculation"),
  heading("group", "1 Pool"),
  computed("volume", "Volume", "=WARMBACK.POOL.VOLUME([shape],[length],[width],[shallow],[deep])", "gal", {
    format: "#,##0",
    source: "POOL.VOLUME",
  }),
  computed("area", "Water surface", "=WARMBACK.POOL.AREA([shape],[length],[width])", "ft²", {
    format: "#,##0",
    source: "POOL.AREA",
  }),
  computed("turnover", "Turnover at this flow", "=WARMBACK.POOL.TURNOVER([volume],[flow])", "h", {
    format: "0.0",
    source: "POOL.TURNOVER",
    note: "6 to 8 h is common for small pools; codes for public pools ask for less.",
  }),
];

const heatResults: readonly Line[] = [
  heading("group", "3 Heat that the air conditioner rejects"),
  computed(
    "rejected",
    "Heat rejected at rating",
    "=WARMBACK.AIRCON.REJECTED([cooling],[power],[outdoorFan])",
    "BTU/h",
    {
      format: "#,##0",
      source: "AIRCON.REJECTED",
    },
  ),
  computed(
    "factor",
    "Heat rejected per cooling, cycle",
    "=WARMBACK.CYCLE.FACTOR([refrigerant],[evaporating],[condensing])",
    "",
    {
      format: "0.000",
      source: "CYCLE.FACTOR",
      note: "A second opinion on the line above.",
    },
  ),
  computed("coverage", "Heat rejected against the pool's loss", "=[rejected]/[loss]", "", {
    format: "0%",
    source: "quotient",
  }),
];

const exchangerResults: readonly Line[] = [
  heading("group", "4 Exchanger"),
  computed(
    "pressure",
    "Condensing pressure (gauge)",
    '=WARMBACK.REFRIG.PRESSURE([refrigerant],[condensing],"dew")',
    "psi",
    {
      format: "0.0",
      source: "REFRIG.PRESSURE",
    },
  ),
  computed("rise", "Rise of the water", "=WARMBACK.EXCHANGER.WATERRISE([rejected],[flow],[water])", "°F", {
    format: "0.0",
    source: "EXCHANGER.WATERRISE",
  }),
  computed("leaving", "Leaving water", "=[water]+[rise]", "°F", { format: "0.0", source: "sum" }),
  computed(
    "meanDifference",
    "Mean temperature difference",
    '=WARMBACK.EXCHANGER.LMTD([condensing],[condensing],[water],[leaving],"counterflow")',
    "°F",
    {
      format: "0.0",
      source: "EXCHANGER.LMTD",
      note: "Condensing temperature for both hot ends: the desuperheating part is hotter, so the area is on the safe side.",
    },
  ),
  computed("ua", "UA needed", "=[rejected]/[meanDifference]", "BTU/(h·°F)", {
    format: "#,##0",
    source: "heat over mean difference",
  }),
  computed(
    "exchangerArea",
    "Outside area needed",
    "=WARMBACK.EXCHANGER.AREA([rejected],[uValue],[meanDifference])",
    "ft²",
    {
      format: "0.0",
      source: "EXCHANGER.AREA",
      style: "Output",
    },
  ),
];

const loopResults: readonly Line[] = [
  heading("group", "5 Loop"),
  computed("velocity", "Velocity", "=WARMBACK.PIPE.VELOCITY([flow],[pipeSize],[schedule])", "ft/s", {
    format: "0.0",
    source: "PIPE.VELOCITY",
  }),
  computed(
    "headLoss",
    "Head lost in the added pipe",
    "=WARMBACK.PIPE.HEADLOSS([flow],[pipeSize],[run],[schedule],[water])",
    "ft",
    {
      format: "0.0",
      source: "PIPE.HEADLOSS",
      note: "Fittings, valve and exchanger come on top.",
    },
  ),
  computed("smallest", "Smallest pipe at 6 ft/s", "=WARMBACK.PIPE.SIZE([flow],6,[schedule])", "", {
    source: "PIPE.SIZE",
  }),
];

const warmUpResults: readonly Line[] = [
  heading("group", "6 Warm-up"),
  computed(
    "warmUp",
    "Hours to the wanted temperature",
    '=IFERROR(WARMBACK.POOL.WARMUP([volume],[start],[water],[rejected],[area],[air]),"never: see the note")',
    "h",
    {
      format: "0.0",
      source: "POOL.WARMUP",
      note: "Machine running all the time; the surface rule holds evaporation, convection and radiation.",
    },
  ),
  computed(
    "settles",
    "Where the pool settles with this heat",
    "=WARMBACK.POOL.SETTLES([area],[air],[rejected])",
    "°F",
    {
      format: "0.0",
      source: "POOL.SETTLES",
      note: "Above the wanted temperature a high limit must send the heat outdoors.",
    },
  ),
];

const moneyResults: readonly Line[] = [
  heading("group", "7 Money"),
  computed("usefulHeat", "Useful heat in a year", "=[rejected]*[fullLoad]*[usable]", "BTU", {
    format: "#,##0",
    source: "product",
  }),
  computed(
    "worthGas",
    "Worth against natural gas",
    '=WARMBACK.COST.OFHEAT([usefulHeat],"natural gas",[gasPrice])',
    "money",
    {
      format: "#,##0",
      source: "COST.OFHEAT",
    },
  ),
  computed(
    "worthPropane",
    "Worth against propane",
    '=WARMBACK.COST.OFHEAT([usefulHeat],"propane",[propanePrice])',
    "money",
    {
      format: "#,##0",
      source: "COST.OFHEAT",
    },
  ),
  computed(
    "worthHeatPump",
    "Worth against a pool heat pump",
    '=WARMBACK.COST.OFHEAT([usefulHeat],"heat pump",[powerPrice])',
    "money",
    {
      format: "#,##0",
      source: "COST.OFHEAT",
    },
  ),
  computed(
    "worthResistance",
    "Worth against electric resistance",
    '=WARMBACK.COST.OFHEAT([usefulHeat],"electric resistance",[powerPrice])',
    "money",
    { format: "#,##0", source: "COST.OFHEAT" },
  ),
  gap,
];

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
    "outWorth",
    "A year's useful heat is worth",
    "=[worthGas]",
    "money",
    "#,##0",
    "Against natural gas; pump energy not taken off.",
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
  widths: WIDTHS,
  frozenRows: FROZEN_ROWS,
  lines: [
    ...head("Recovery sizing: an air conditioner's heat into a pool", "checkPeople", "checkHead"),
    ...people("Fernhill Hall, outdoor lap pool (invented)", "Fernhill Hall is an invented example."),
    ...poolInputs,
    ...LOSS_LINES,
    ...coolerInputs,
    ...loopInputs,
    ...moneyInputs,
    ...poolResults,
    ...LOSS_RESULTS,
    ...heatResults,
    ...exchangerResults,
    ...loopResults,
    ...warmUpResults,
    ...moneyResults,
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
