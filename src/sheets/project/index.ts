/** Starter sheet "Project": what the other sheets share. A sheet that is inserted beside it takes these values from here. */
import { gap, heading, input, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, WIDTHS, must, starterLines } from "../sections";
import {
  INVENTED,
  REFRIGERANT_NAMES,
  TUBE_SIZES,
  above,
  answer,
  betweenLimits,
  currencyInput,
  filled,
  moneyPer,
  oneOf,
} from "../technicianParts";
import type { StarterSheet } from "../sheet";

const pool: readonly Line[] = [
  heading("group", "Pool and place"),
  input("shape", "Shape", "rectangle", "", {
    validation: oneOf("rectangle, oval, round or kidney", "rectangle", "oval", "round", "kidney"),
    source: "survey",
  }),
  input("length", "Length", 75, "ft", { validation: above("a number above 0 ft"), source: "survey", note: INVENTED }),
  input("width", "Width", 15, "ft", {
    validation: filled('above 0 ft; a kidney both its widths: "12; 16 ft"'),
    source: "survey",
    note: 'Kidney: both widths, such as "12; 16 ft".',
  }),
  input("shallow", "Shallow depth", 3.5, "ft", { validation: above("a number above 0 ft"), source: "survey" }),
  input("deep", "Deep depth", 5, "ft", { validation: above("a number above 0 ft"), source: "survey" }),
  input("water", "Pool temperature wanted", 82, "°F", {
    validation: betweenLimits(40, 104, "40 to 104 °F"),
    source: "owner, within the health code",
  }),
  input("highLimit", "High limit of the pool", 88, "°F", {
    validation: betweenLimits(40, 104, "40 to 104 °F"),
    source: "owner",
    note: "Above it the heat goes outdoors.",
  }),
  input("altitude", "Altitude", 500, "ft", {
    format: "#,##0",
    validation: betweenLimits(-1500, 16000, "-1,500 to 16,000 ft"),
    source: "map",
  }),
  input("latitude", "Latitude", 30, "degrees", {
    validation: betweenLimits(-66, 66, "-66 to 66 degrees"),
    source: "map",
    note: "South of the equator negative.",
  }),
];

const machine: readonly Line[] = [
  heading("group", "Air conditioner"),
  input("refrigerant", "Refrigerant", "R-410A", "", {
    validation: oneOf("as on the nameplate", ...REFRIGERANT_NAMES),
    source: "nameplate",
    note: INVENTED,
  }),
  input("charge", "Charge on the nameplate", 14, "lb", { validation: above("above 0 lb"), source: "nameplate" }),
  input("cooling", "Net cooling at rating", 90000, "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "nameplate or data sheet",
    note: "7.5 tons of refrigeration.",
  }),
  input("power", "Power of the whole machine at rating", 8.1, "kW", {
    validation: above("above 0 kW"),
    source: "data sheet",
  }),
  input("outdoorFan", "Of that the outdoor fan", 0.6, "kW", {
    validation: betweenLimits(0, 20, "0 to 20 kW"),
    source: "data sheet",
  }),
  input("evaporating", "Evaporating temperature", 45, "°F", {
    validation: betweenLimits(-40, 70, "-40 to 70 °F"),
    source: "gauge or data sheet",
    note: "Dew temperature.",
  }),
  input("condensing", "Condensing temperature on the pool", 100, "°F", {
    validation: betweenLimits(80, 140, "80 to 140 °F"),
    source: "chosen",
    note: "Dew temperature. Below about 80 °F the metering device lacks pressure difference.",
  }),
  input("subcooling", "Subcooling wanted", 10, "°F", {
    validation: betweenLimits(0, 30, "0 to 30 °F"),
    source: "nameplate of the outdoor unit",
    note: "Typical 8 to 15 °F; the nameplate governs.",
  }),
  input("cutOut", "High-pressure cut-out", 600, "psig", {
    validation: above("above 0 psig"),
    source: "nameplate or switch",
    note: INVENTED,
  }),
];

const loopAndLines: readonly Line[] = [
  heading("group", "Loop and lines"),
  input("flow", "Water through the exchanger", 75, "gpm", {
    validation: above("above 0 gpm"),
    source: "flow meter or pump curve",
  }),
  input("pipeSize", "Pipe size", "2-1/2 in", "", {
    validation: oneOf("nominal size", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "4 in"),
    source: "survey",
  }),
  input("schedule", "Schedule", "40", "", { validation: oneOf("40 or 80", "40", "80"), source: "survey" }),
  input("pipeRun", "Straight pipe added", 60, "ft", {
    validation: betweenLimits(0, 5000, "0 to 5,000 ft"),
    source: "route on site",
  }),
  input("gasSize", "Hot gas line", "7/8 in", "", {
    validation: oneOf("outside diameter", ...TUBE_SIZES),
    source: "design",
  }),
  input("liquidSize", "Liquid line", "1/2 in", "", {
    validation: oneOf("outside diameter", ...TUBE_SIZES),
    source: "design",
  }),
  input("lineLength", "Refrigerant line, one way", 60, "ft", {
    validation: betweenLimits(0, 1000, "0 to 1,000 ft"),
    source: "tape",
  }),
  input("lineRise", "Exchanger above (+) or below (-) the machine", -6, "ft", {
    validation: betweenLimits(-200, 200, "-200 to 200 ft"),
    source: "level",
  }),
];

const prices: readonly Line[] = [
  heading("group", "Prices"),
  currencyInput(),
  input("gasPrice", "Natural gas", 1.4, moneyPer("therm"), {
    format: "0.00",
    validation: above("above 0"),
    source: "bill",
    note: INVENTED,
  }),
  input("propanePrice", "Propane", 2.9, moneyPer("gal"), {
    format: "0.00",
    validation: above("above 0"),
    source: "bill",
  }),
  input("powerPrice", "Electricity", 0.15, moneyPer("kWh"), {
    format: "0.000",
    validation: above("above 0"),
    source: "bill",
  }),
];

const results: readonly Line[] = [
  heading("part", "Results"),
  answer(
    "volume",
    "Volume of the pool",
    "=WARMBACK.POOL.VOLUME([shape],[length],[width],[shallow],[deep])",
    "gal",
    "#,##0",
  ),
  answer("area", "Water surface", "=WARMBACK.POOL.AREA([shape],[length],[width])", "ft²", "#,##0"),
  answer(
    "rejected",
    "Heat rejected at rating",
    "=WARMBACK.AIRCON.REJECTED([cooling],[power],[outdoorFan])",
    "BTU/h",
    "#,##0",
    "Net cooling and the power that the refrigerant carries away.",
  ),
  gap,
];

const NAMES = [...pool, ...machine, ...loopAndLines, ...prices, ...results].flatMap(({ key }) =>
  key === undefined ? [] : [key],
);

/** The workbook's name for a value of this sheet: ProjectWater for water. */
const nameOf = (key: string): string => `Project${key.slice(0, 1).toUpperCase()}${key.slice(1)}`;

export const project: StarterSheet = sheetOf({
  id: "project",
  name: "Project",
  summary:
    "What all sheets share: pool, machine, water flow, lines, prices. Sheets inserted after it take their values from it.",
  widths: WIDTHS,
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "Project: what the sheets share",
    project: "Fernhill Hall, outdoor lap pool (invented)",
    isShared: true,
    answer: results,
    body: [heading("part", "Inputs"), ...pool, ...machine, ...loopAndLines, ...prices, gap],
    checks: [
      must(
        "checkDepths",
        "Deep end not shallower than the shallow end",
        "[deep]>=[shallow]",
        "Else the two are swapped.",
      ),
      must(
        "checkLimit",
        "High limit not below the temperature wanted",
        "[highLimit]>=[water]",
        "Else the pool is never heated.",
      ),
    ],
  }),
  named: {
    ProjectTitle: "project",
    ProjectMadeBy: "madeBy",
    ...Object.fromEntries(NAMES.map((key) => [nameOf(key), key])),
  },
});
