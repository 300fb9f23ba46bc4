/** Inputs of the sheet "Recovery sizing", with Fernhill Hall's invented values. */
import { gap, heading, input, type Line } from "../layout";
import { INVENTED, above, betweenLimits, oneOf } from "../technicianParts";

export const poolInputs: readonly Line[] = [
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
    validation: betweenLimits(33, 104, "33 to 104 °F"),
    source: "measured",
  }),
];

export const coolerInputs: readonly Line[] = [
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
    validation: betweenLimits(0, 20, "0 kW or more"),
    source: "data sheet",
  }),
  input("evaporating", "Evaporating temperature", 45, "°F", { source: "gauge or data sheet", note: "dew" }),
  input("condensing", "Condensing temperature on the pool", 100, "°F", {
    validation: betweenLimits(70, 140, "70 to 140 °F"),
    source: "chosen",
    note: "Not below about 80 °F: the metering device needs pressure difference.",
  }),
  input("fullLoad", "Full-load cooling hours in a year", 1300, "h", {
    format: "#,##0",
    validation: betweenLimits(0, 8760, "0 to 8,760 h"),
    source: "bills, logger, or AIRCON.HOURS",
  }),
  input("usable", "Share of that heat which the pool can use", 0.6, "", {
    format: "0%",
    validation: betweenLimits(0, 1, "0 to 100 %"),
    source: "estimate: need and run time must coincide",
    note: "Too warm in high summer, little heat in spring: the hourly year decides.",
  }),
];

export const loopInputs: readonly Line[] = [
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
    validation: betweenLimits(0, 5000, "0 ft or more"),
    source: "route on site",
  }),
];

export const moneyInputs: readonly Line[] = [
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
