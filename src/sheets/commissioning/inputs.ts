/** Readings, trips and dates of the commissioning. Fernhill Hall is an invented example. */
import { computed, gap, heading, input, type Line } from "../layout";
import { INVENTED, REFRIGERANT_NAMES, above, altitudeInput, betweenLimits, oneOf } from "../technicianParts";

export const MACHINE_INPUTS: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Machine"),
  input("refrigerant", "Refrigerant", "R-410A", "", {
    validation: oneOf("as on the nameplate", ...REFRIGERANT_NAMES),
    source: "nameplate",
    note: INVENTED,
    link: "ProjectRefrigerant",
  }),
  altitudeInput,
  input("subcoolingTarget", "Subcooling wanted", 10, "°F", {
    validation: betweenLimits(0, 30, "0 to 30 °F"),
    source: "nameplate of the outdoor unit",
    link: "ProjectSubcooling",
  }),
  input("ratedAmps", "Rated load amps of the compressor", 20, "A", {
    validation: above("above 0 A"),
    source: "nameplate",
  }),
  input("ratedCooling", "Net cooling at rating", 90000, "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "nameplate or data sheet",
    link: "ProjectCooling",
  }),
  input("ratedPower", "Power of the whole machine at rating", 8.1, "kW", {
    validation: above("above 0 kW"),
    source: "data sheet",
    link: "ProjectPower",
  }),
  input("fanOutdoor", "Of that the outdoor fan", 0.6, "kW", {
    validation: betweenLimits(0, 20, "0 to 20 kW"),
    source: "data sheet",
    link: "ProjectOutdoorFan",
  }),
  input("fanIndoor", "Of that the indoor fan", 0.7, "kW", {
    validation: betweenLimits(0, 20, "0 to 20 kW"),
    source: "data sheet",
  }),
  input("plannedUa", "UA of the exchanger as planned", 7000, "BTU/(h·°F)", {
    format: "#,##0",
    validation: above("above 0 BTU/(h·°F)"),
    source: "supplier, clean, at the planned flow",
    note: INVENTED,
  }),
  input("plannedFlow", "Water flow as planned", 75, "gpm", {
    validation: above("above 0 gpm"),
    source: "sheet Pool loop",
    link: "ProjectFlow",
  }),
  input("hotGasDrop", "Lost by hot-gas line and valve to the exchanger", 0, "psi", {
    validation: betweenLimits(0, 100, "0 to 100 psi"),
    source: "LINE.DROP, sheet Refrigerant side",
    note: "0 where it isn't known: the machine then condenses as low as the exchanger lets it.",
  }),
  input("nameplate", "Charge on the nameplate", 14, "lb", {
    validation: above("above 0 lb"),
    source: "nameplate",
    link: "ProjectCharge",
  }),
  input("added", "Charge weighed in", 1.5, "lb", { validation: betweenLimits(-50, 50, "by scale"), source: "scale" }),
];

/** Readings of one mode. */
const modeInputs = (
  mode: string,
  title: string,
  values: Readonly<Record<"suction" | "suctionLine" | "head" | "discharge" | "liquid" | "amps" | "power", number>>,
): readonly Line[] => [
  heading("group", title, "After 20 minutes of steady running."),
  input(`${mode}Suction`, "Suction pressure", values.suction, "psig", {
    validation: betweenLimits(-10, 400, "-10 to 400 psig"),
    source: "gauge",
    note: INVENTED,
  }),
  input(`${mode}SuctionLine`, "Suction line at the compressor", values.suctionLine, "°F", {
    validation: betweenLimits(-40, 150, "-40 to 150 °F"),
    source: "clamp",
  }),
  input(`${mode}Head`, "Condensing pressure", values.head, "psig", {
    validation: above("above 0 psig"),
    source: "gauge",
  }),
  input(`${mode}Discharge`, "Discharge line", values.discharge, "°F", {
    validation: betweenLimits(0, 350, "0 to 350 °F"),
    source: "clamp, 6 in from the compressor",
  }),
  input(`${mode}Liquid`, "Liquid line", values.liquid, "°F", {
    validation: betweenLimits(0, 200, "0 to 200 °F"),
    source: "clamp",
  }),
  input(`${mode}Amps`, "Compressor current", values.amps, "A", {
    validation: above("above 0 A"),
    source: "clamp meter",
  }),
  input(`${mode}Power`, "Compressor power", values.power, "kW", {
    validation: above("above 0 kW"),
    source: "power meter",
  }),
];

export const READINGS: readonly Line[] = [
  ...modeInputs("outdoor", "Outdoor mode", {
    suction: 130,
    suctionLine: 55,
    head: 391,
    discharge: 174,
    liquid: 105,
    amps: 19,
    power: 6.8,
  }),
  ...modeInputs("pool", "Pool mode", {
    suction: 130,
    suctionLine: 55,
    head: 318,
    discharge: 150,
    liquid: 90,
    amps: 16,
    power: 5.3,
  }),
  input("outdoorAir", "Air entering the outdoor coil", 95, "°F", {
    validation: betweenLimits(-40, 130, "-40 to 130 °F"),
    source: "thermometer in the shade of the coil",
  }),
  input("wetBulb", "Wet bulb entering the indoor coil", 67, "°F", {
    validation: betweenLimits(35, 95, "35 to 95 °F"),
    source: "psychrometer, both modes alike",
  }),
  input("restPressure", "Pressure at rest", 239, "psig", {
    validation: above("above 0 psig"),
    source: "gauge, machine off for an hour",
    note: "Both pressures equal; above saturation there are non-condensables.",
  }),
  input("restTemperature", "Condenser at rest", 81, "°F", {
    validation: betweenLimits(-40, 130, "-40 to 130 °F"),
    source: "clamp, same moment",
  }),
  input("flow", "Water through the exchanger", 75, "gpm", { validation: above("above 0 gpm"), source: "flow meter" }),
  input("waterIn", "Water in", 82, "°F", {
    validation: betweenLimits(33, 140, "33 to 140 °F"),
    source: "matched sensors, swapped once",
  }),
  input("waterOut", "Water out", 85, "°F", {
    validation: betweenLimits(33, 200, "33 to 200 °F"),
    source: "matched sensors, swapped once",
  }),
];

const TRIPS: readonly (readonly [string, string, string])[] = [
  [
    "tripHead",
    "High-pressure cut-out",
    "In outdoor mode, stop the outdoor fan; never with still water in the exchanger.",
  ],
  ["tripLow", "Low-pressure cut-out or freeze sensor", "As the maker says."],
  ["tripFlow", "Flow lost: valve to outdoor, fan on", "Close a valve of the pool loop."],
  ["tripSensor", "Failed sensor: valve to outdoor", "Unplug it."],
  ["tripHigh", "Pool at its high limit: valve to outdoor", "Lower the limit below the water."],
  ["tripLeaving", "Leaving water at its limit: valve to outdoor", "Throttle the flow."],
  ["tripPower", "Power off: valve rests at outdoor", "Open the control's breaker."],
  ["tripHeating", "Heating and defrost: pool mode locked out", "Heat pumps only."],
  ["tripTime", "Minimum time between changes", "Watch it twice."],
];

const done = (key: string, label: string, words: readonly string[], note = ""): Line =>
  input(key, label, words[0] ?? "", "", {
    validation: oneOf(words.join(", "), ...words),
    ...(note === "" ? {} : { note }),
  });

export const TRIP_INPUTS: readonly Line[] = [
  heading("group", "Safety trips, each one made to happen"),
  ...TRIPS.map(([key, label, note]) => done(key, label, ["not yet", "proven", "not fitted"], note)),
];

export const FIRST_TRIP = TRIPS[0]?.[0] ?? "";
export const LAST_TRIP = TRIPS.at(-1)?.[0] ?? "";
export const TRIP_COUNT = TRIPS.length;

export const HAND_OVER_INPUTS: readonly Line[] = [
  heading("group", "Hand-over"),
  done("label", "New label with the total charge on the machine", ["no", "yes"]),
  done("bonded", "Exchanger bonded, checked by the electrician", ["no", "yes"]),
  done("manual", "Owner has manual, diagrams, settings, this sheet", ["no", "yes"]),
  done(
    "winter",
    "Winter drain-down shown to the owner",
    ["no", "yes"],
    "Water side blown out, drains open, valve at outdoor.",
  ),
  input("winterBy", "Drain down before", "", "date", { note: "First frost of the place less a month." }),
  heading("group", "Yearly: UA as found"),
  ...[1, 2, 3, 4, 5].map((year) =>
    input(`uaYear${year}`, `UA after year ${year}`, "", "BTU/(h·°F)", {
      validation: above("above 0, or blank"),
      source: "same flow as at commissioning",
      ...(year === 1 ? { note: "Blank until measured. Clean water side at 80 % or less." } : {}),
    }),
  ),
  gap,
];

/** UA of a year on that of the commissioning. */
export const UA_TREND: readonly Line[] = [
  heading("group", "6 Yearly UA on that of today"),
  ...[1, 2, 3, 4, 5].map((year) =>
    computed(`trend${year}`, `Year ${year}`, `=IF(LEN([uaYear${year}])=0,"not yet",[uaYear${year}]/[ua])`, "", {
      format: "0%",
      source: "quotient",
    }),
  ),
  gap,
];
