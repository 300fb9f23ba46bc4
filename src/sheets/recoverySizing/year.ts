/**
 * The year on the sheet "Recovery sizing": an input block for POOL.YEAR that takes its values from above, twelve rows of
 * climate, and the year's totals. Fernhill Hall is invented; its climate here is that of Houston, Texas (NREL TMY3, station
 * "Houston Bush Intercontinental", 30.00° N, public data of the United States), to be replaced by the site's own.
 */
import { CATALOGUE, MONTHS, lookUp } from "../../../core";
import { computed, heading, input, type ExtraCell, type Line } from "../layout";
import { INVENTED, MONEY, above, betweenLimits, moneyPer, oneOf } from "../technicianParts";

/** As published: air °C, swing K, humidity, wind m/s, sun kWh/(m²·day), mains °C. */
const HOUSTON = [
  [10.51, 10.55, 0.7374, 3.822, 2.8273, 18.09],
  [12.77, 12.08, 0.6944, 3.851, 3.2801, 18.34],
  [16.2, 11.22, 0.692, 4.569, 4.2719, 19.97],
  [20.49, 10.21, 0.7481, 3.945, 4.9166, 22.61],
  [24.03, 9.2, 0.7452, 3.659, 5.4364, 25.55],
  [27.02, 9.2, 0.7659, 2.904, 5.9489, 27.99],
  [28.27, 10.24, 0.7405, 2.737, 6.1763, 29.27],
  [28.21, 11.41, 0.7614, 2.11, 5.4675, 29.03],
  [26.44, 11.97, 0.708, 3.527, 5.0607, 27.35],
  [20.32, 13.93, 0.7095, 2.948, 4.2498, 24.68],
  [17.1, 12.13, 0.7576, 3.741, 3.1881, 21.75],
  [12.54, 12.2, 0.6978, 3.56, 2.6079, 19.34],
] as const;

const HEADS = [
  "air (°F)",
  "swing (°F)",
  "humidity",
  "wind at 10 m (mph)",
  "sun (BTU/(ft²·day))",
  "mains (°F)",
] as const;

/** Of the columns above: the digits that a mean of a month carries. */
const FORMATS = ["0.0", "0.0", "0.00", "0.0", "#,##0", "0.0"] as const;

/** Statute miles per hour of 1 m/s, and BTU/ft² of 1 kWh/m²: exact definitions, rounded. */
const [MPH, BTU_PER_FT2] = [2.236936, 316.9983] as const;

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));

/** A month in the sheet's units, to the digits that a mean of a month carries. */
const inSheetUnits = ([air, swing, humidity, wind, sun, mains]: (typeof HOUSTON)[number]): readonly number[] => [
  rounded(air * 1.8 + 32, 1),
  rounded(swing * 1.8, 1),
  rounded(humidity, 2),
  rounded(wind * MPH, 1),
  rounded(sun * BTU_PER_FT2, 0),
  rounded(mains * 1.8 + 32, 1),
];

const beside = (values: readonly (string | number)[]): Readonly<Record<string, ExtraCell>> =>
  Object.fromEntries(
    ["C", "D", "E", "F", "G"].map((column, place) => [
      column,
      {
        content: values[place + 1] ?? "",
        ...(typeof values[0] === "number"
          ? { style: "Input", format: FORMATS[place + 1] ?? "0.0" }
          : { style: "Heading 3" }),
      },
    ]),
  );

const climateLine = (key: string, label: string, values: readonly (string | number)[]): Line => ({
  key,
  label,
  value: values[0] ?? "",
  ...(typeof values[0] === "number" ? { style: "Input", format: FORMATS[0] } : { style: "Heading 3" }),
  extra: beside(values),
});

/** Twelve rows of climate below their heads. */
export const CLIMATE_LINES: readonly Line[] = [
  heading("group", "The year: climate by month", "Houston, Texas (NREL TMY3): replace by the climate of the site."),
  climateLine("climateHead", "month", HEADS),
  ...MONTHS.map((month, place) => climateLine(`climate${month}`, month, inSheetUnits(HOUSTON[place] ?? HOUSTON[0]))),
];

/** The price of what a heat source uses, by its selling unit. */
const priceOf = (key: string, label: string, source: string): Line => {
  const by = (gas: string, propane: string, power: string): string =>
    `IF([${source}]="natural gas",${gas},IF([${source}]="propane",${propane},${power}))`;
  const unit = by('"therm"', '"gal"', '"kWh"');
  return computed(key, label, `=${by("[gasPrice]", "[propanePrice]", "[powerPrice]")}`, `=[currency]&"/"&${unit}`);
};

/** The block's labels are those of POOL.YEAR; it takes its values from the sheet above. */
export const YEAR_LINES: readonly Line[] = [
  heading("group", "The year: inputs of the hourly calculation"),
  computed("yearArea", "Pool area", "=[area]", "ft²", { format: "#,##0" }),
  computed("yearDepth", "Water depth", "=[meanDepth]", "ft", { format: "0.00" }),
  computed("yearSet", "Set point", "=[water]", "°F"),
  input("yearSeasonStart", "Season start", 4, "", {
    validation: betweenLimits(1, 12, "month, 1 to 12"),
    source: "owner",
    note: "Month, 1 to 12.",
  }),
  input("yearSeasonEnd", "Season end", 10, "", {
    validation: betweenLimits(1, 12, "month, 1 to 12"),
    source: "owner",
    note: "Month, 1 to 12.",
  }),
  input("yearLatitude", "Latitude", 30, "", {
    validation: betweenLimits(-66, 66, "-66 to 66 degrees"),
    link: "ProjectLatitude",
    source: "map",
    note: "Degrees; of the climate below.",
  }),
  computed("yearShelter", "Shelter", "=[shelter]", ""),
  computed("yearCover", "Cover", "=[cover]", ""),
  computed("yearCoverHours", "Cover hours", "=[coverHours]", "h"),
  computed("yearCooling", "Rated cooling", "=[cooling]", "BTU/h", { format: "#,##0" }),
  computed("yearPower", "Rated power", "=[power]", "kW"),
  computed("yearFan", "Outdoor fan", "=[outdoorFan]", "kW"),
  computed("yearRefrigerant", "Refrigerant", "=[refrigerant]", ""),
  input("yearType", "Machine type", "single speed", "", {
    validation: oneOf("how it meets part load", "single speed", "two stage", "variable speed"),
    source: "survey",
  }),
  input("yearLow", "Low cooling", "", "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "data sheet",
    note: "Low stage or least speed at 95 °F outdoors; blank with a single speed.",
  }),
  input("yearLowPower", "Low power", "", "kW", {
    validation: above("above 0 kW"),
    source: "data sheet",
    note: "Of the whole machine there.",
  }),
  input("yearLoad", "Design load", "", "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "load calculation of the building",
    note: "Blank: the machine's whole cooling, which overstates heat and saving.",
  }),
  input("yearShade", "Shading", 0, "", {
    validation: betweenLimits(0, 1, "0 to 1"),
    source: "survey",
    format: "0%",
    note: "Share of the sun shaded.",
  }),
  computed("yearUA", "Exchanger UA", "=[ua]", "BTU/(h·°F)", {
    format: "#,##0",
    source: "as sized below; the supplier's figure when it is there",
  }),
  computed("yearFlow", "Water flow", "=[flow]", "gpm"),
  input("yearLimit", "High limit", 88, "°F", {
    validation: betweenLimits(40, 104, "40 to 104 °F"),
    link: "ProjectHighLimit",
    source: "owner",
    note: "Above it the heat goes outdoors.",
  }),
  input("yearBackUp", "Back up source", "natural gas", "", {
    validation: oneOf("as COST.OFHEAT takes them", "natural gas", "propane", "heat pump", "electric resistance"),
    source: "what heats the pool otherwise",
  }),
  priceOf("yearGas", "Back up price", "yearBackUp"),
  computed("yearElectricity", "Electricity price", "=[powerPrice]", moneyPer("kWh")),
  input("yearSecond", "Second sink", "none", "", {
    validation: oneOf("none, or a preheat tank", "none", "preheat tank"),
    source: "owner",
    note: "A preheat tank takes heat that the pool doesn't want.",
  }),
  input("yearOrder", "Sink order", "pool first", "", {
    validation: oneOf("which is served first", "pool first", "tank first"),
    source: "owner",
  }),
  input("yearDraw", "Hot water draw", 220, "gal", {
    validation: above("above 0 gal"),
    source: "meter",
    note: `${INVENTED} A day; showers and kitchen.`,
  }),
  input("yearTank", "Tank volume", 250, "gal", { validation: above("above 0 gal"), source: "data sheet" }),
  input("yearTankUA", "Tank UA", 8000, "BTU/(h·°F)", {
    validation: above("above 0"),
    format: "#,##0",
    source: "supplier; double wall for drinking water",
    note: INVENTED,
  }),
  input("yearTankLimit", "Tank limit", 105, "°F", {
    validation: betweenLimits(40, 160, "40 to 160 °F"),
    source: "95 to 105 °F from full condensing",
  }),
  input("yearHotSource", "Hot water source", "natural gas", "", {
    validation: oneOf("as COST.OFHEAT takes them", "natural gas", "propane", "heat pump", "electric resistance"),
    source: "the main heater",
  }),
  priceOf("yearHotPrice", "Hot water price", "yearHotSource"),
  input("yearCost", "Installed cost", 4500, MONEY, {
    validation: above("above 0"),
    format: "#,##0",
    source: "offers",
    note: INVENTED,
  }),
  input("yearUpkeep", "Yearly upkeep", 100, MONEY, { source: "offers", note: INVENTED }),
  input("yearWithin", "Payback within", 15, "year", {
    validation: betweenLimits(1, 60, "1 to 60 years"),
    source: "owner",
  }),
  ...CLIMATE_LINES,
];

export const YEAR = "WARMBACK.POOL.YEAR([[yearArea:yearHotPrice]],[climateHead@A]:[climateDec@G])";

/** The block goes on with the money that only the range of the answer reads. */
export const UNCERTAIN_BLOCK = "[[yearArea:yearWithin]]";

/** The year's row follows a heading and twelve months. */
const TOTAL_ROW = 14;

const columnsOf = (id: string): readonly string[] => {
  const returns = lookUp(CATALOGUE, id)?.returns;
  return returns?.type === "table" ? Object.keys(returns.columns) : [];
};

/** The place of a column, from 1 on. */
export function columnPlace(id: string, column: string): number {
  const place = columnsOf(id).indexOf(column) + 1;
  if (place === 0) throw new Error(`${id} has no column ${column}`);
  return place;
}

interface Total {
  readonly note?: string;
  /** A million of the function's unit. */
  readonly millions?: true;
}

/** One column of the year's total; the function is memoised, so that many cells cost one run. */
const total = (key: string, label: string, column: string, unit: string, { note, millions }: Total = {}): Line =>
  computed(
    key,
    label,
    `=INDEX(${YEAR},${TOTAL_ROW},${columnPlace("POOL.YEAR", column)})${millions ? "/1000000" : ""}`,
    millions ? `MM${unit}` : unit,
    {
      format: "#,##0",
      source: `POOL.YEAR, ${LABELS[column] ?? column}`,
      ...(note === undefined ? {} : { note }),
    },
  );

/** Columns of the year in the words of this sheet's source notes. */
const LABELS: Readonly<Record<string, string>> = {
  heatRejected: "heat rejected",
  heatTaken: "heat taken",
  heatToTank: "heat to tank",
  poolWithHighest: "pool with, highest",
  warmDaysWithout: "warm days without",
  warmDaysWith: "warm days with",
  backUpWithout: "back-up without",
  backUpWith: "back-up with",
  electricityWithout: "electricity without",
  electricityWith: "electricity with",
  moneySaved: "money saved",
};

const WARMEST = `INDEX(${YEAR},0,${columnPlace("POOL.YEAR", "poolWithHighest")})`;
const MONTH_WORDS = `{${MONTHS.map((month) => `"${month}"`).join(",")}}`;

/** The totals of the year. */
export const YEAR_RESULTS: readonly Line[] = [
  heading("group", "8 The year, hour by hour"),
  total("yearRejected", "Heat rejected", "heatRejected", "Btu", {
    millions: true,
    note: "MMBtu: a million BTU, 10 therms.",
  }),
  total("yearTaken", "Of that taken by the pool, left to itself", "heatTaken", "Btu", {
    millions: true,
    note: "Without back-up heat; a pool held warm by its heater takes a little less.",
  }),
  total("yearToTank", "Of that taken by the preheat tank", "heatToTank", "Btu", {
    millions: true,
    note: "0 without a second sink.",
  }),
  computed("yearShare", "Share of the rejected heat that the pool takes", "=[yearTaken]/[yearRejected]", "", {
    format: "0%",
    source: "quotient",
    note: "The rest goes outdoors: too warm a pool in high summer, little heat in spring.",
  }),
  total("yearWarmest", "Warmest water with recovery", "poolWithHighest", "°F", {
    note: `=IF([yearWarmest]>[yearLimit],TEXT([yearWarmest]-[yearLimit],"0")&" °F above the high limit, in "&INDEX(${MONTH_WORDS},MATCH([yearWarmest],${WARMEST},0)-1)&": from sun and air alone, for recovery stops at the limit.","Within the high limit.")`,
  }),
  total("yearDaysWithout", "Warm days without recovery", "warmDaysWithout", "day"),
  total("yearDaysWith", "Warm days with recovery", "warmDaysWith", "day", {
    note: "Days of the season at the set point or above.",
  }),
  total("yearBackWithout", "Back-up heat without recovery", "backUpWithout", "Btu", {
    millions: true,
    note: "The pool's need: held at the set point through the season.",
  }),
  total("yearBackWith", "Back-up heat with recovery", "backUpWith", "Btu", {
    millions: true,
    note: "Keep the back-up heater.",
  }),
  computed("yearMet", "Share of the pool's need that recovery meets", "=1-[yearBackWith]/[yearBackWithout]", "", {
    format: "0%",
    source: "one less the quotient of the two above",
  }),
  total("yearCoolWithout", "Cooling electricity without", "electricityWithout", "kWh"),
  total("yearCoolWith", "Cooling electricity with", "electricityWith", "kWh"),
  total("yearMoney", "Money saved in the year", "moneySaved", MONEY, {
    note: "Against the back-up source, pool held at the set point; pump and cooling electricity counted.",
  }),
];
