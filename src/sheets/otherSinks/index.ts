/** Starter sheet "Other sinks": where the heat can go that the pool doesn't take, for the invented Fernhill Hall. */
import { computed, gap, heading, input, sheetOf, type Line } from "../layout";
import { FROZEN_ROWS, WIDTHS, check, must, starterLines } from "../sections";
import { INVENTED, above, answer, betweenLimits, oneOf, warning } from "../technicianParts";
import type { StarterSheet } from "../sheet";

const heatInputs: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Heat to be had"),
  input("cooling", "Net cooling at rating", 90000, "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "nameplate or data sheet",
    note: INVENTED,
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
  input("hours", "Hours that it runs on the day looked at", 9, "h", {
    validation: betweenLimits(0, 24, "0 to 24 h"),
    source: "logger, or AIRCON.HOURS",
  }),
  input("poolShare", "Share of that heat which the pool takes", 0.6, "", {
    format: "0%",
    validation: betweenLimits(0, 1, "0 to 100 %"),
    source: "Recovery sizing, or POOL.YEAR",
    note: "The pool comes first, then the tank, then the space.",
    link: "PoolShare",
  }),
];

const tankInputs: readonly Line[] = [
  heading("group", "Hot water"),
  input("draw", "Hot water drawn in a day", 220, "gal", {
    validation: above("above 0 gal"),
    source: "meter; a shower takes about 10 gal",
    note: INVENTED,
  }),
  input("cold", "Cold water", 60, "°F", { validation: betweenLimits(32, 100, "32 to 100 °F"), source: "measured" }),
  input("hot", "Stored hot", 140, "°F", {
    validation: betweenLimits(60, 200, "60 to 200 °F"),
    source: "water management plan",
    note: "140 °F or more against Legionella; at most 120 °F at the fixtures.",
  }),
  input("preheat", "Recovered heat warms it to", 98, "°F", {
    validation: betweenLimits(33, 160, "33 to 160 °F"),
    source: "condensing temperature less approach",
    note: "95 to 105 °F from full condensing.",
  }),
];

/** Labels are those of the input block of SINK.SPACE. */
const spaceInputs: readonly Line[] = [
  heading("group", "Space heat (input block of SINK.SPACE)"),
  input("emitter", "Emitter", "floor loop", "", {
    validation: oneOf("air coil or floor loop", "air coil", "floor loop"),
    source: "survey",
  }),
  computed("recoveredHeat", "Recovered heat", "=[left]", "BTU/h", {
    format: "#,##0",
    source: "what pool and tank leave, below",
  }),
  input("heatNeeded", "Heat needed", 18000, "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "changing rooms, at the same hours",
    note: INVENTED,
  }),
  input("supplyWater", "Supply water", 98, "°F", {
    validation: betweenLimits(60, 180, "60 to 180 °F"),
    source: "as preheat",
  }),
  input("spaceFlow", "Water flow", 6, "gpm", { validation: above("above 0 gpm"), source: "design" }),
  input("room", "Room", 72, "°F", { validation: betweenLimits(30, 100, "30 to 100 °F"), source: "design" }),
  input("airFlow", "Air flow", 1200, "cfm", { validation: above("above 0 cfm"), source: "air coil only" }),
  input("effectiveness", "Effectiveness", 0.6, "", {
    validation: betweenLimits(0.01, 1, "0 to 1"),
    source: "air coil only; maker's figure",
  }),
  input("floorArea", "Floor area", 900, "ft²", { validation: above("above 0 ft²"), source: "floor loop only" }),
  input("floorResistance", "Floor resistance", 0.6, "h·ft²·°F/BTU", {
    validation: above("above 0"),
    source: "floor loop only; maker's figure",
    note: "0.6 suits tiles on screed (common practice).",
  }),
];

/** Labels are those of the input block of SINK.RACK. */
const rackInputs: readonly Line[] = [
  heading("group", "Refrigeration rack next door (input block of SINK.RACK)"),
  input("compressor", "Compressor", "suction-cooled hermetic", "", {
    validation: oneOf("kind of compressor", "suction-cooled hermetic", "open"),
    source: "nameplate",
  }),
  input("mediumLoad", "Medium load", 60000, "BTU/h", {
    format: "#,##0",
    validation: betweenLimits(0, 1e9, "0 BTU/h or more"),
    source: "load at the same hours",
    note: INVENTED,
  }),
  input("mediumEvaporating", "Medium evaporating", 20, "°F", {
    validation: betweenLimits(-31, 50, "-31 to 50 °F"),
    source: "gauge",
  }),
  input("lowLoad", "Low load", 20000, "BTU/h", {
    format: "#,##0",
    validation: betweenLimits(0, 1e9, "0 BTU/h or more"),
    source: "load at the same hours",
  }),
  input("lowEvaporating", "Low evaporating", -20, "°F", {
    validation: betweenLimits(-31, 50, "-31 to 50 °F"),
    source: "gauge",
  }),
  input("rackCondensing", "Condensing", 95, "°F", {
    validation: betweenLimits(86, 140, "86 to 140 °F"),
    source: "gauge",
  }),
  input("reclaim", "Reclaim", "desuperheating", "", {
    validation: oneOf("what the heat is taken from", "desuperheating", "full condensing"),
    source: "design",
  }),
  input("desuperheatingShare", "Desuperheating share", 0.15, "", {
    format: "0%",
    validation: betweenLimits(0, 1, "0 to 100 %"),
    source: "CYCLE.SPLIT",
  }),
  input("heldCondensing", "Held condensing", 105, "°F", {
    validation: betweenLimits(86, 140, "86 to 140 °F"),
    source: "asked for by the heat user",
    note: "Contested: it usually costs more than it yields.",
  }),
  gap,
];

const BTU = "#,##0";
const TANK = "WARMBACK.SINK.TANK([draw],[cold],[hot],[preheat])";
const SPACE = "WARMBACK.SINK.SPACE([[emitter:floorResistance]])";
const RACK = "WARMBACK.SINK.RACK([[compressor:heldCondensing]])";

const calculation: readonly Line[] = [
  heading("part", "Calculation"),
  heading("group", "1 Heat of the day"),
  computed(
    "rejected",
    "Heat rejected at rating",
    "=WARMBACK.AIRCON.REJECTED([cooling],[power],[outdoorFan])",
    "BTU/h",
    {
      format: BTU,
      source: "AIRCON.REJECTED",
    },
  ),
  computed("ofTheDay", "On the day", "=[rejected]*[hours]", "BTU", { format: BTU, source: "product" }),
  computed("poolTakes", "The pool takes", "=[ofTheDay]*[poolShare]", "BTU", { format: BTU, source: "first in order" }),
  heading("group", "2 Hot water"),
  computed("load", "Hot-water load of the day", `=INDEX(${TANK},1,2)`, "BTU", { format: BTU, source: "SINK.TANK" }),
  computed("preheatable", "Of that can be preheated", `=INDEX(${TANK},2,2)`, "BTU", {
    format: BTU,
    source: "SINK.TANK",
    note: "With a tank that holds the draw between the hours of cooling.",
  }),
  computed("tankTakes", "The tank takes", "=MIN([preheatable],[ofTheDay]-[poolTakes])", "BTU", {
    format: BTU,
    source: "second in order",
  }),
  heading("group", "3 Space"),
  computed(
    "left",
    "Left for the space, while the machine runs",
    "=MAX([ofTheDay]-[poolTakes]-[tankTakes],1)/MAX([hours],1)",
    "BTU/h",
    {
      format: BTU,
      source: "rest over the hours",
    },
  ),
  computed("spaceTakes", "The space takes", `=INDEX(${SPACE},2,2)`, "BTU/h", { format: BTU, source: "SINK.SPACE" }),
  computed("limitedBy", "Limited by", `=INDEX(${SPACE},3,2)`, "", { source: "SINK.SPACE" }),
  computed("floorSurface", "Floor surface", `=INDEX(${SPACE},9,2)`, "°F", {
    format: "0.0",
    source: "SINK.SPACE",
    note: "At most 84 °F where people stay; blank for an air coil.",
  }),
  heading("group", "4 Rack"),
  computed("rackRejects", "The rack rejects", `=INDEX(${RACK},3,2)`, "BTU/h", { format: BTU, source: "SINK.RACK" }),
  computed("rackGives", "To be had by this reclaim", `=INDEX(${RACK},6,2)`, "BTU/h", {
    format: BTU,
    source: "SINK.RACK",
  }),
  computed("rackExtra", "More heat with the head held up", `=INDEX(${RACK},8,2)`, "BTU/h", {
    format: BTU,
    source: "SINK.RACK",
  }),
  computed("rackPenalty", "It costs more power, by the table", `=INDEX(${RACK},9,2)`, "kW", {
    format: "0.0",
    source: "SINK.RACK",
  }),
  computed("rackPenaltyMost", "Or, at 2 % for each °F", `=INDEX(${RACK},11,2)`, "kW", {
    format: "0.0",
    source: "SINK.RACK",
    note: "Contested: 0.5 to 2 %.",
  }),
  gap,
];

const results: readonly Line[] = [
  heading("part", "Results"),
  answer(
    "outTank",
    "Recovered share of the hot water",
    "=[tankTakes]/[load]",
    "",
    "0%",
    "The main heater does the rest and the hygiene temperature.",
  ),
  answer("outSpace", "Heat to the space", "=[spaceTakes]", "BTU/h", BTU),
  answer(
    "outUsed",
    "Heat of the day used in all",
    "=([poolTakes]+[tankTakes]+[spaceTakes]*[hours])/[ofTheDay]",
    "",
    "0%",
  ),
  answer(
    "outHeld",
    "Heat won for each unit of extra power, head held up",
    '=IF([rackPenalty]>0,[rackExtra]/([rackPenalty]*3412.14),"not held up")',
    "",
    "0.00",
    "Below 1 electric resistance would do better.",
  ),
  answer("outRack", "The rack could add", "=[rackGives]", "BTU/h", BTU),
  gap,
];

const checks: readonly Line[] = [
  must("checkHot", "Stored at 140 °F or more", "[hot]>=140", "Legionella; mixing valves to 120 °F at the fixtures."),
  check("checkPreheat", "Preheat below condensing", "[preheat]<=105", "Full condensing gives 95 to 105 °F."),
  must("checkFloor", "Floor surface within 84 °F", "N([floorSurface])<=84.2", "Where people stay."),
  check("checkUsed", "No more used than there is", "[outUsed]<=1.0001", "The order is pool, tank, space."),
];

export const otherSinks: StarterSheet = sheetOf({
  id: "other-sinks",
  name: "Other sinks",
  summary: "Hot-water preheat, space heat and a refrigeration rack: where heat goes that the pool doesn't take.",
  widths: WIDTHS,
  frozenRows: FROZEN_ROWS,
  lines: starterLines({
    title: "Other sinks: where the heat can go besides the pool",
    warnings: [
      warning("Hot water: double-wall exchanger, Legionella, scald. A licensed plumber's work, by the plumbing code."),
    ],
    project: "Fernhill Hall, changing rooms and kitchen (invented)",
    answer: results,
    body: [...heatInputs, ...tankInputs, ...spaceInputs, ...rackInputs, ...calculation],
    checks,
  }),
  named: { HeatToSpace: "spaceTakes" },
});
