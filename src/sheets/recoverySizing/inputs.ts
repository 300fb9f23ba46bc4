/** Inputs of the sheet "Recovery sizing", with Fernhill Hall's invented values. */
import { gap, heading, input, type Line } from "../layout";
import { INVENTED, above, betweenLimits, currencyInput, filled, moneyPer, oneOf } from "../technicianParts";

export const poolInputs: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Pool"),
  input("shape", "Shape", "rectangle", "", {
    validation: oneOf("rectangle, oval, round or kidney", "rectangle", "oval", "round", "kidney"),
    source: "survey",
    link: "ProjectShape",
  }),
  input("length", "Length", 75, "ft", {
    validation: above("above 0 ft"),
    source: "survey",
    note: INVENTED,
    link: "ProjectLength",
  }),
  input("width", "Width", 15, "ft", {
    validation: filled('above 0 ft; a kidney both its widths: "12; 16 ft"'),
    source: "survey",
    note: 'Kidney: both widths, such as "12; 16 ft".',
    link: "ProjectWidth",
  }),
  input("shallow", "Shallow depth", 3.5, "ft", {
    validation: above("above 0 ft"),
    source: "survey",
    link: "ProjectShallow",
  }),
  input("deep", "Deep depth", 5, "ft", { validation: above("above 0 ft"), source: "survey", link: "ProjectDeep" }),
  input("start", "Water before warm-up", 68, "°F", {
    validation: betweenLimits(33, 104, "33 to 104 °F"),
    source: "measured",
  }),
];

export const coolerInputs: readonly Line[] = [
  heading("group", "Air conditioner"),
  input("refrigerant", "Refrigerant", "R-410A", "", {
    validation: oneOf("as on the nameplate", "R-22", "R-32", "R-134a", "R-407C", "R-410A", "R-454B"),
    source: "nameplate",
    link: "ProjectRefrigerant",
  }),
  input("cooling", "Net cooling at rating", 90000, "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "nameplate or data sheet",
    note: "7.5 tons of refrigeration. " + INVENTED,
    link: "ProjectCooling",
  }),
  input("power", "Power of the whole machine at rating", 8.1, "kW", {
    validation: above("above 0 kW"),
    source: "data sheet",
    link: "ProjectPower",
  }),
  input("outdoorFan", "Of that the outdoor fan", 0.6, "kW", {
    validation: betweenLimits(0, 20, "0 kW or more"),
    source: "data sheet",
    link: "ProjectOutdoorFan",
  }),
  input("evaporating", "Evaporating temperature", 45, "°F", {
    validation: betweenLimits(-40, 70, "-40 to 70 °F"),
    source: "gauge or data sheet",
    note: "dew",
    link: "ProjectEvaporating",
  }),
  input("condensing", "Condensing temperature on the pool", 100, "°F", {
    validation: betweenLimits(70, 140, "70 to 140 °F"),
    source: "chosen",
    note: "Not below about 80 °F: the metering device needs pressure difference.",
    link: "ProjectCondensing",
  }),
  input("cutOut", "High-pressure cut-out", 600, "psig", {
    validation: above("above 0 psig"),
    source: "nameplate or switch",
    note: INVENTED,
    link: "ProjectCutOut",
  }),
  input("surveyed", "What the survey decided", "not surveyed", "", {
    validation: oneOf(
      "GO, GO WITH CONDITIONS, NO-GO or not surveyed",
      "GO",
      "GO WITH CONDITIONS",
      "NO-GO",
      "not surveyed",
    ),
    source: "sheet Survey and decision",
    note: "The maker's consent is one of its points.",
    link: "Decision",
  }),
];

export const loopInputs: readonly Line[] = [
  heading("group", "Exchanger and loop"),
  input("flow", "Water through the exchanger", 75, "gpm", {
    validation: above("above 0 gpm"),
    source: "flow meter or pump curve",
    link: "ProjectFlow",
  }),
  input("uValue", "Overall coefficient, outside area", 120, "BTU/(h·ft²·°F)", {
    validation: above("above 0"),
    source: "supplier; estimate 70 to 175 for titanium coils",
    note: "No published value for titanium coils in a shell: ask the supplier.",
  }),
  input("pipeSize", "Pipe size", "2-1/2 in", "", {
    validation: oneOf("nominal size", "1-1/2 in", "2 in", "2-1/2 in", "3 in", "4 in"),
    source: "survey",
    link: "ProjectPipeSize",
  }),
  input("schedule", "Schedule", "40", "", {
    validation: oneOf("40 or 80", "40", "80"),
    source: "survey",
    link: "ProjectSchedule",
  }),
  input("run", "Straight pipe added", 60, "ft", {
    validation: betweenLimits(0, 5000, "0 ft or more"),
    source: "route on site",
    link: "ProjectPipeRun",
  }),
];

export const moneyInputs: readonly Line[] = [
  heading("group", "Money"),
  currencyInput("ProjectCurrency"),
  input("gasPrice", "Natural gas", 1.4, moneyPer("therm"), {
    validation: above("above 0"),
    source: "bill",
    note: INVENTED,
    link: "ProjectGasPrice",
  }),
  input("propanePrice", "Propane", 2.9, moneyPer("gal"), {
    validation: above("above 0"),
    source: "bill",
    note: INVENTED,
    link: "ProjectPropanePrice",
  }),
  input("powerPrice", "Electricity", 0.15, moneyPer("kWh"), {
    validation: above("above 0"),
    source: "bill",
    note: INVENTED,
    link: "ProjectPowerPrice",
  }),
  gap,
];
