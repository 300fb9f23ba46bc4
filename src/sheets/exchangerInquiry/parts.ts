/** Inputs, clauses and the supplier's blanks of the sheet "Exchanger inquiry". */
import { gap, heading, input, type Line } from "../layout";
import { INVENTED, REFRIGERANT_NAMES, above, altitudeInput, betweenLimits, oneOf } from "../technicianParts";

/** The duty: its labels are those of the input block of EXCHANGER.ZONES, from refrigerant to direction. */
export const DUTY_LINES: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Duty: one block for EXCHANGER.ZONES"),
  input("refrigerant", "Refrigerant", "R-410A", "", {
    validation: oneOf("as on the nameplate", ...REFRIGERANT_NAMES),
    source: "nameplate",
    note: INVENTED,
    link: "ProjectRefrigerant",
  }),
  input("duty", "Heat rejected", 115591, "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "AIRCON.REJECTED or Recovery sizing",
    note: INVENTED,
    link: "ProjectRejected",
  }),
  input("condensing", "Condensing", 100, "°F", {
    validation: betweenLimits(70, 140, "70 to 140 °F"),
    source: "chosen",
    note: "Dew temperature in the exchanger.",
    link: "ProjectCondensing",
  }),
  input("subcooling", "Subcooling", 10, "°F", {
    validation: betweenLimits(0, 30, "0 to 30 °F"),
    source: "chosen",
    link: "ProjectSubcooling",
  }),
  input("evaporating", "Evaporating", 45, "°F", {
    validation: betweenLimits(-40, 70, "-40 to 70 °F"),
    source: "gauge or data sheet",
    note: "Dew temperature.",
    link: "ProjectEvaporating",
  }),
  input("superheat", "Superheat", 10, "°F", { validation: betweenLimits(0, 40, "0 to 40 °F"), source: "measured" }),
  input("efficiency", "Efficiency", 0.65, "", {
    validation: betweenLimits(0.3, 1, "0.3 to 1"),
    source: "compressor data",
    note: "Isentropic rise per electrical input.",
  }),
  input("flow", "Water flow", 75, "gpm", {
    validation: above("above 0 gpm"),
    source: "pump and loop",
    link: "ProjectFlow",
  }),
  input("water", "Entering water", 82, "°F", {
    validation: betweenLimits(40, 104, "40 to 104 °F"),
    source: "pool",
    link: "ProjectWater",
  }),
  input("direction", "Direction", "counterflow", "", {
    validation: oneOf("counterflow or parallel", "counterflow", "parallel"),
    source: "asked for",
  }),
];

export const LIMIT_LINES: readonly Line[] = [
  heading("group", "Limits"),
  input("marginAsked", "Margin asked on UA", 0.2, "", {
    format: "0%",
    validation: betweenLimits(0, 1, "0 to 100 %"),
    source: "chosen",
    note: "Film relations are uncertain by 20 to 30 %.",
  }),
  input("waterDropLimit", "Most water drop at that flow", 4, "psi", {
    source: "loop head",
    validation: above("above 0"),
  }),
  input("refrigerantDropLimit", "Most refrigerant drop", 5, "psi", {
    source: "about 1 °F of condensing",
    validation: above("above 0"),
  }),
  input("waterFouling", "Fouling, water side", 0.0005, "h·ft²·°F/BTU", {
    validation: betweenLimits(0, 0.1, "0 to 0.1"),
    format: "0.0000",
    source: "none tabulated for pools",
    note: "City water 0.001; 0.0005 to 0.001 is taken for pools.",
  }),
  input("oilFouling", "Fouling, refrigerant side", 0.0002, "h·ft²·°F/BTU", {
    validation: betweenLimits(0, 0.1, "0 to 0.1"),
    format: "0.0000",
    source: "oil film",
  }),
  heading("group", "Pressures"),
  altitudeInput,
  input("standing", "Warmest standing temperature", 130, "°F", {
    validation: betweenLimits(100, 150, "100 to 150 °F"),
    source: "machine off in the sun",
  }),
  input("refrigerantDesign", "Design pressure, refrigerant side", 650, "psig", {
    source: "high side of the nameplate",
    note: INVENTED,
  }),
  input("refrigerantTest", "Test pressure, refrigerant side", 715, "psig", {
    source: "code and listing",
    note: "1.1 times design here: the code that applies decides.",
  }),
  input("waterDesign", "Design pressure, water side", 50, "psig", {
    validation: above("above 0 psig"),
    source: "pump shut-off and height",
  }),
  input("waterTest", "Test pressure, water side", 75, "psig", {
    source: "1.5 times design",
    note: "With water, never with air.",
  }),
  input("waterHottest", "Design temperature, water side", 140, "°F", {
    validation: betweenLimits(60, 250, "60 to 250 °F"),
    source: "plastic's limit",
  }),
];

/** Runs over the empty cells beside it: a clause is one line of the print. */
const clause = (label: string, says: string): Line => ({ label, value: says, style: "Explanatory Text" });

export const CLAUSE_LINES: readonly Line[] = [
  heading("group", "Materials"),
  input("tube", "Tube", "titanium, grade 1 or 2", "", { source: "ASTM B338 or equal", note: "No joint under water." }),
  input("shell", "Shell", "plastic, UV-stable", "", { source: "for pool water, in the sun" }),
  input("chemistry", "Water that must be stood", "salt to 6,000 ppm", "", {
    source: "pool operator",
    note: "And chlorine to 10 ppm, pH 7.2 to 7.8.",
  }),
  heading("group", "Connections"),
  input("gasSize", "Hot gas", "7/8 in", "", { source: "copper, brazed", link: "ProjectGasSize" }),
  input("liquidSize", "Liquid", "1/2 in", "", { source: "copper, brazed", link: "ProjectLiquidSize" }),
  input("waterSize", "Water", "2 in", "", { source: "unions, both sides" }),
  heading("group", "Clauses"),
  clause(
    "1 Codes",
    "Name the pressure-vessel and refrigeration codes, listings and marks that the exchanger carries; local code decides.",
  ),
  clause(
    "2 Refrigerant class",
    "State the refrigerants and oils that it is made and listed for; mildly flammable ones only where listed for them.",
  ),
  clause("3 Wall", "State single or double wall. A single wall is for pool water only, never for potable water."),
  clause(
    "4 No flow",
    "State what happens at full hot gas and no water; flow switch and first pipe at the shell are by the buyer.",
  ),
  clause("5 Frost", "State how the shell drains, and that it must be drained before frost and before evacuation."),
  clause("6 Cleanliness", "Refrigerant side dry, capped, charged with dry nitrogen."),
  clause(
    "7 Papers",
    "Rating at the duty above with its method, drawing, test certificate, manual, warranty and its limits of chemistry.",
  ),
  gap,
];

const blank = (key: string, label: string, unit: string, note = ""): Line =>
  input(key, label, "", unit, {
    source: "supplier",
    ...(unit !== "" && { validation: above(`above 0 ${unit}`) }),
    ...(note === "" ? {} : { note }),
  });

export const ANSWER_LINES: readonly Line[] = [
  heading("part", "Supplier's answers"),
  blank("offer", "Supplier, model, date", ""),
  blank("dutyOffered", "Heat at the duty's temperatures", "BTU/h"),
  blank("uaOffered", "UA with the fouling above", "BTU/(h·°F)"),
  blank("areaOffered", "Outside area of the tube", "ft²"),
  blank("waterDropOffered", "Water drop at that flow", "psi"),
  blank("refrigerantDropOffered", "Refrigerant drop", "psi"),
  blank("refrigerantDesignOffered", "Design pressure, refrigerant side", "psig"),
  blank("refrigerantTestOffered", "Test pressure, refrigerant side", "psig"),
  blank("waterDesignOffered", "Design pressure, water side", "psig"),
  blank("waterHottestOffered", "Warmest water allowed", "°F"),
  blank("holdUpOffered", "Refrigerant held while it runs", "lb"),
  blank("volumeOffered", "Refrigerant volume", "ft³"),
  blank("tubeOffered", "Tube: material, diameter, wall", ""),
  blank("shellOffered", "Shell and seals: material", ""),
  blank("connectionsOffered", "Connections", ""),
  blank("codesOffered", "Codes, listings, marks", ""),
  blank("exceptions", "Exceptions to the clauses", ""),
  blank("delivery", "Price, delivery, warranty", ""),
  gap,
];
