/** What the survey of machine, lines and pool asks. Fernhill Hall is an invented example. */
import { gap, heading, input, type Line } from "../layout";
import { INVENTED, REFRIGERANT_NAMES, TUBE_SIZES, YES_NO, above, betweenLimits, oneOf } from "../technicianParts";

const word = (key: string, label: string, value: string, words: readonly string[], note = ""): Line =>
  input(key, label, value, "", {
    validation: oneOf(words.join(", "), ...words),
    source: "survey",
    ...(note === "" ? {} : { note }),
  });

const linked = (
  link: string,
  key: string,
  label: string,
  value: string,
  words: readonly string[],
  note = "",
): Line => ({
  ...word(key, label, value, words, note),
  link,
});

export const MACHINE_TYPES = [
  "split",
  "packaged roof unit",
  "water-cooled",
  "multi-split or VRF",
  "window unit",
] as const;

export const SURVEY_INPUTS: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Machine"),
  word("machine", "Machine type", "split", MACHINE_TYPES, INVENTED),
  word("heatPump", "Heat pump (reverses)", "no", YES_NO, "Then the pool exchanger must never become the evaporator."),
  word("device", "Metering device", "expansion valve", ["expansion valve", "fixed orifice", "electronic valve"]),
  word("stages", "Stages", "single", ["single", "two-stage", "inverter"]),
  word(
    "communicating",
    "Communicating board or thermostat",
    "no",
    YES_NO,
    "It drives fan, expansion valve and oil return by its own sensors.",
  ),
  linked("ProjectRefrigerant", "refrigerant", "Refrigerant", "R-410A", REFRIGERANT_NAMES, "As on the nameplate."),
  input("charge", "Charge on the nameplate", 14, "lb", {
    validation: above("above 0 lb"),
    source: "nameplate",
    link: "ProjectCharge",
  }),
  word("warranty", "Warranty still running", "no", YES_NO),
  word("consent", "Maker consents to the change", "not asked", ["yes", "no", "not asked"], "In writing."),
  input("cooling", "Net cooling at rating", 90000, "BTU/h", {
    validation: above("above 0 BTU/h"),
    source: "data sheet",
    link: "ProjectCooling",
  }),
  input("evaporating", "Evaporating temperature", 45, "°F", {
    validation: betweenLimits(-40, 70, "-40 to 70 °F"),
    source: "gauge",
    note: "dew",
    link: "ProjectEvaporating",
  }),
  input("condensing", "Condensing temperature on the pool", 100, "°F", {
    validation: betweenLimits(80, 140, "80 to 140 °F"),
    source: "chosen",
    link: "ProjectCondensing",
  }),
  input("coolingHours", "Hours of cooling on a summer day", 8, "h", { validation: betweenLimits(0, 24, "0 to 24 h") }),
  heading("group", "Way to the pool"),
  input("distance", "Line length, one way", 60, "ft", {
    validation: betweenLimits(0, 1000, "0 to 1,000 ft"),
    source: "tape",
    link: "ProjectLineLength",
  }),
  input("height", "Exchanger above (+) or below (-) the machine", -6, "ft", {
    validation: betweenLimits(-200, 200, "-200 to 200 ft"),
    source: "level",
    link: "ProjectLineRise",
  }),
  linked("ProjectGasSize", "gasSize", "Hot gas line", "7/8 in", TUBE_SIZES),
  linked("ProjectLiquidSize", "liquidSize", "Liquid line", "1/2 in", TUBE_SIZES),
  heading("group", "Pool"),
  input("pumpHours", "Hours the pool pump runs in a day", 10, "h", {
    validation: betweenLimits(0, 24, "0 to 24 h"),
    source: "timer",
  }),
  input("flow", "Flow through the suction fittings", 75, "gpm", {
    validation: above("above 0 gpm"),
    source: "flow meter",
    link: "ProjectFlow",
  }),
  input("coverFlow", "Rated flow of the drain cover", 100, "gpm", {
    validation: above("above 0 gpm"),
    source: "mark on the cover",
  }),
  word("coverValid", "Drain cover marked, whole, not expired", "no", YES_NO, "Covers carry a life in years."),
  word("drains", "Main drains", "two at 3 ft or more", ["two at 3 ft or more", "single with second means", "single"]),
  word("bonding", "Equipotential bonding present and checked", "no", YES_NO, "By a licensed electrician."),
  word(
    "chemistry",
    "Water kept to range (chlorine, pH, salt)",
    "yes",
    YES_NO,
    "Titanium resists it, other metals don't.",
  ),
  gap,
];
