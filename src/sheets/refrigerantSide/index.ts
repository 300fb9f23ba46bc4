/** Starter sheet "Refrigerant side": gauges to superheat and subcooling, pressure test, vacuum, added charge. */
import { gap, heading, input, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, WIDTHS, check, must, starterLines } from "../sections";
import {
  INVENTED,
  REFRIGERANT_NAMES,
  TUBE_SIZES,
  YES_NO,
  above,
  altitudeInput,
  answer,
  betweenLimits,
  oneOf,
} from "../technicianParts";
import { REFRIGERANT_WARNINGS } from "./cautions";
import { PRESSURE_CHART, PRESSURE_PICTURE, READING_RESULTS, WORK_RESULTS } from "./results";
import type { StarterSheet } from "../sheet";

const machineInputs: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Machine"),
  input("refrigerant", "Refrigerant", "R-410A", "", {
    validation: oneOf("as on the nameplate", ...REFRIGERANT_NAMES),
    source: "nameplate",
    note: INVENTED,
    link: "ProjectRefrigerant",
  }),
  altitudeInput,
  input("device", "Metering device", "expansion valve", "", {
    validation: oneOf("expansion valve or fixed orifice", "expansion valve", "fixed orifice"),
    source: "survey",
  }),
  input("mode", "Mode while reading", "outdoor", "", {
    validation: oneOf("outdoor or pool", "outdoor", "pool"),
    note: "Read in BOTH modes: one sheet each.",
  }),
  input("listed", "Machine listed for this refrigerant", "no", "", {
    validation: oneOf("yes or no", ...YES_NO),
    source: "nameplate",
  }),
];

const readingInputs: readonly Line[] = [
  heading("group", "Readings"),
  input("suctionPressure", "Suction pressure", 130, "psig", {
    validation: betweenLimits(-10, 400, "-10 to 400 psig"),
    source: "gauge",
    note: "At the service port.",
  }),
  input("suctionLine", "Suction line", 56, "°F", {
    validation: betweenLimits(-40, 150, "-40 to 150 °F"),
    source: "clamp, insulated",
  }),
  input("liquidPressure", "Liquid pressure", 342, "psig", { validation: above("above 0 psig"), source: "gauge" }),
  input("liquidLine", "Liquid line", 95, "°F", {
    validation: betweenLimits(0, 200, "0 to 200 °F"),
    source: "clamp, insulated",
  }),
  input("wetBulb", "Indoor wet bulb", 66, "°F", {
    validation: betweenLimits(32, 90, "32 to 90 °F"),
    source: "psychrometer at the return",
  }),
  input("outdoor", "Outdoor dry bulb", 90, "°F", {
    validation: betweenLimits(0, 130, "0 to 130 °F"),
    source: "in the shade at the coil",
  }),
  input("subcoolingTarget", "Subcooling wanted", 10, "°F", {
    validation: betweenLimits(0, 30, "0 to 30 °F"),
    source: "nameplate of the outdoor unit",
    note: "Typical 8 to 15 °F; the nameplate governs.",
    link: "ProjectSubcooling",
  }),
];

const workInputs: readonly Line[] = [
  heading("group", "Pressure test, vacuum, added line"),
  input("testStart", "Nitrogen at the start", 400, "psig", {
    validation: above("above 0 psig"),
    source: "design pressure of the weakest part",
  }),
  input("testThen", "Temperature at the start", 95, "°F", { validation: betweenLimits(-40, 150, "-40 to 150 °F") }),
  input("testNow", "Temperature now", 80, "°F", { validation: betweenLimits(-40, 150, "-40 to 150 °F") }),
  input("testReading", "Nitrogen now", 389, "psig", { validation: above("above 0 psig"), source: "gauge" }),
  input("vacuum", "Vacuum reached", 450, "micron", { validation: above("above 0 micron"), source: "vacuum gauge" }),
  input("vacuumHeld", "Vacuum 10 minutes after closing", 600, "micron", { validation: above("above 0 micron") }),
  input("coldest", "Coldest part of the system", 70, "°F", {
    validation: betweenLimits(-40, 150, "-40 to 150 °F"),
    source: "clamp",
  }),
  input("lineSize", "Added liquid line", "1/2 in", "", {
    validation: oneOf("outside diameter", ...TUBE_SIZES),
    link: "ProjectLiquidSize",
  }),
  input("lineLength", "Length of it", 60, "ft", {
    validation: betweenLimits(0, 500, "0 to 500 ft"),
    link: "ProjectLineLength",
  }),
  input("gasSize", "Hot gas line", "7/8 in", "", {
    validation: oneOf("outside diameter", ...TUBE_SIZES),
    link: "ProjectGasSize",
  }),
  input("gasRise", "Exchanger above (+) or below (-) the machine", -6, "ft", {
    validation: betweenLimits(-200, 200, "-200 to 200 ft"),
    link: "ProjectLineRise",
  }),
  input("gasCooling", "Net cooling at full capacity", 90000, "BTU/h", {
    validation: above("above 0 BTU/h"),
    source: "data sheet",
    link: "ProjectCooling",
  }),
  input("leastShare", "Least stage or speed, share of it", 1, "", {
    validation: betweenLimits(0.05, 1, "0.05 to 1"),
    source: "data sheet",
    note: "1: single speed. Two stages: about 0.7.",
    format: "0%",
  }),
  input("gasEvaporating", "Evaporating temperature", 45, "°F", {
    validation: betweenLimits(-40, 70, "-40 to 70 °F"),
    link: "ProjectEvaporating",
  }),
  input("gasCondensing", "Condensing temperature on the pool", 100, "°F", {
    validation: betweenLimits(80, 140, "80 to 140 °F"),
    link: "ProjectCondensing",
  }),
  input("liquidTemperature", "Liquid temperature", 95, "°F", { validation: betweenLimits(-40, 150, "-40 to 150 °F") }),
];

const ruleInputs: readonly Line[] = [
  heading("group", "Before work"),
  ...(
    [
      ["certified", "Technician certified for this refrigerant"],
      ["recovered", "Refrigerant recovered before opening"],
      ["nitrogenOnly", "Nitrogen only, regulator and relief fitted"],
      ["waterSide", "Water flows through the exchanger, or it is drained"],
      ["noFlame", "No flame or spark near the refrigerant"],
    ] as const
  ).map(([key, label]) => input(key, label, "no", "", { validation: oneOf("yes or no", ...YES_NO) })),
  gap,
];

const results: readonly Line[] = [
  heading("part", "Results"),
  answer("outSuperheat", "Superheat", "=[superheat]", "°F", "0.0"),
  answer("outSubcooling", "Subcooling", "=[subcooling]", "°F", "0.0"),
  answer("outTest", "Pressure lost in the test", "=[lost]", "psi", "0.0"),
  answer(
    "outCharge",
    "Liquid to add for the line",
    "=[lineCharge]",
    "lb",
    "0.00",
    "Label the machine with the new total.",
  ),
  gap,
];

const yes = (key: string, label: string, line: string, note: string): Line => must(key, label, `[${line}]="yes"`, note);

const checks: readonly Line[] = [
  yes("checkCertified", "Certified technician", "certified", "Section 608 or the local rule."),
  yes("checkRecovered", "Recovered before opening", "recovered", "Venting is prohibited."),
  yes("checkNitrogen", "Nitrogen only", "nitrogenOnly", "Oxygen explodes."),
  yes(
    "checkWater",
    "Water flows or exchanger drained",
    "waterSide",
    "Otherwise recovery, vacuum and pump-down freeze it.",
  ),
  yes("checkFlame", "No flame near refrigerant", "noFlame", "Toxic gas; class 2L and 3 burn."),
  must(
    "checkListed",
    "Flammable class only in listed equipment",
    'OR([safetyClass]="A1",[listed]="yes")',
    "Never as a drop-in.",
  ),
  check("checkSuperheat", "Superheat 5 °F or more", "[superheat]>=5", "Less: liquid may reach the compressor."),
  check(
    "checkTarget",
    "Superheat within 5 °F of the target",
    "IF(ISNUMBER([superheatTarget]),ABS([superheat]-[superheatTarget])<=5,TRUE)",
    "Where a target exists.",
  ),
  check(
    "checkSubcooling",
    "Subcooling within 3 °F of the one wanted",
    'OR([device]="fixed orifice",ABS([offTarget])<=3)',
    "Expansion valves only.",
  ),
  must("checkTest", "Pressure held within 1 %", "[lost]<=0.01*[testExpected]", "Else find the leak."),
  check("checkVacuum", "Vacuum to 500 micron", "[vacuum]<=500", "The maker's limit governs."),
  check("checkHold", "Vacuum holds below 1,000 micron", "[vacuumHeld]<=1000", "Levels off: moisture. Runs on: a leak."),
  check("checkOilFull", "Oil rises at full capacity", "OR([gasRise]<=0,[oilFull]>=1)", "Else a smaller riser."),
  check(
    "checkOilLeast",
    "Oil rises at the least stage",
    "OR([gasRise]<=0,[oilLeast]>=1)",
    "Else a smaller or a double riser; the maker's limits govern.",
  ),
  check("checkDry", "Coldest part above the boiling point", "[coldest]>[boils]", "Else ice remains: warm it."),
];

export const refrigerantSide: StarterSheet = sheetOf({
  id: "refrigerant-side",
  name: "Refrigerant side",
  summary: "For the technician: pressure chart, superheat and subcooling, pressure test, vacuum, added charge.",
  widths: [...WIDTHS, 8, 9],
  charts: [PRESSURE_PICTURE],
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "Refrigerant side: readings, test, vacuum, charge",
    warnings: REFRIGERANT_WARNINGS,
    project: "Fernhill Hall, outdoor lap pool (invented)",
    answer: results,
    body: [
      ...machineInputs,
      ...readingInputs,
      ...workInputs,
      ...ruleInputs,
      ...PRESSURE_CHART,
      ...READING_RESULTS,
      ...WORK_RESULTS,
    ],
    checks,
  }),
  named: { Superheat: "superheat", Subcooling: "subcooling" },
});
