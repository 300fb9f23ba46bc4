/** The calculation of the sheet "Recovery sizing", in the order of the job. */
import { MONEY } from "../technicianParts";
import { computed, gap, heading, type Line } from "../layout";

export const poolResults: readonly Line[] = [
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

export const heatResults: readonly Line[] = [
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

export const exchangerResults: readonly Line[] = [
  heading("group", "4 Exchanger"),
  computed("pressure", "Condensing pressure", '=WARMBACK.REFRIG.PRESSURE([refrigerant],[condensing],"dew")', "psig", {
    format: "0.0",
    source: "REFRIG.PRESSURE",
  }),
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

export const loopResults: readonly Line[] = [
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

export const warmUpResults: readonly Line[] = [
  heading("group", "6 Warm-up"),
  computed(
    "warmUp",
    "Hours to the wanted temperature",
    '=IFNA(WARMBACK.POOL.WARMUP([volume],[start],[water],[rejected],[area],[air]),"never: see the note")',
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

export const moneyResults: readonly Line[] = [
  heading("group", "7 Money"),
  computed("usefulHeat", "Heat that the pool takes in a year", "=[yearTaken]", "MMBtu", {
    format: "#,##0",
    source: "the year, hour by hour, below",
    note: "Gross: what the same heat would cost otherwise. The saving below counts pump and cooling electricity too.",
  }),
  computed(
    "worthGas",
    "Worth against natural gas",
    '=WARMBACK.COST.OFHEAT([usefulHeat]*1000000,"natural gas",[gasPrice])',
    MONEY,
    {
      format: "#,##0",
      source: "COST.OFHEAT",
    },
  ),
  computed(
    "worthPropane",
    "Worth against propane",
    '=WARMBACK.COST.OFHEAT([usefulHeat]*1000000,"propane",[propanePrice])',
    MONEY,
    {
      format: "#,##0",
      source: "COST.OFHEAT",
    },
  ),
  computed(
    "worthHeatPump",
    "Worth against a pool heat pump",
    '=WARMBACK.COST.OFHEAT([usefulHeat]*1000000,"heat pump",[powerPrice])',
    MONEY,
    {
      format: "#,##0",
      source: "COST.OFHEAT",
    },
  ),
  computed(
    "worthResistance",
    "Worth against electric resistance",
    '=WARMBACK.COST.OFHEAT([usefulHeat]*1000000,"electric resistance",[powerPrice])',
    MONEY,
    { format: "#,##0", source: "COST.OFHEAT" },
  ),
  gap,
];
