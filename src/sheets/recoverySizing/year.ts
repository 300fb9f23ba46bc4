/**
 * The year on the sheet "Recovery sizing": an input block for POOL.YEAR that takes its values from above, twelve rows of
 * climate, and the year's totals. Fernhill Hall is invented; its climate here is that of Houston, Texas (NREL TMY3, station
 * "Houston Bush Intercontinental", 30.00° N, public data of the United States), to be replaced by the site's own.
 */
import { CATALOGUE, lookUp } from "../../../core";
import { computed, gap, heading, input, type ExtraCell, type Line } from "../layout";
import { INVENTED, oneOf } from "../technicianParts";

/** Air °C, swing K, humidity, wind m/s, sun kWh/(m²·day), mains °C. */
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

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

const HEADS = ["air (°C)", "swing (K)", "humidity", "wind at 10 m (m/s)", "sun (kWh/(m²·day))", "mains (°C)"] as const;

const beside = (values: readonly (string | number)[]): Readonly<Record<string, ExtraCell>> =>
  Object.fromEntries(
    ["C", "D", "E", "F", "G"].map((column, place) => [column, { content: values[place + 1] ?? "", style: "Input" }]),
  );

const climateLine = (key: string, label: string, values: readonly (string | number)[]): Line => ({
  key,
  label,
  value: values[0] ?? "",
  style: "Input",
  extra: beside(values),
});

/** The block's labels are those of POOL.YEAR; it takes its values from the sheet above. */
export const YEAR_LINES: readonly Line[] = [
  heading("group", "Year: inputs of the hourly reckoning"),
  computed("yearArea", "Pool area", "=[area]", "ft²", { format: "#,##0" }),
  computed("yearDepth", "Water depth", "=[meanDepth]", "ft", { format: "0.00" }),
  computed("yearSet", "Set point", "=[water]", "°F"),
  input("yearSeasonStart", "Season start", 4, "", { source: "owner", note: "Month, 1 to 12." }),
  input("yearSeasonEnd", "Season end", 10, "", { source: "owner", note: "Month, 1 to 12." }),
  input("yearLatitude", "Latitude", 30, "", { source: "map", note: "Degrees; of the climate below." }),
  computed("yearShelter", "Shelter", "=[shelter]", ""),
  computed("yearCover", "Cover", "=[cover]", ""),
  computed("yearCoverHours", "Cover hours", "=[coverHours]", "h"),
  computed("yearCooling", "Rated cooling", "=[cooling]", "BTU/h", { format: "#,##0" }),
  computed("yearPower", "Rated power", "=[power]", "kW"),
  computed("yearFan", "Outdoor fan", "=[outdoorFan]", "kW"),
  computed("yearRefrigerant", "Refrigerant", "=[refrigerant]", ""),
  computed("yearUA", "Exchanger UA", "=[ua]", "BTU/(h·°F)", {
    format: "#,##0",
    source: "as sized below; the supplier's figure when it is there",
  }),
  computed("yearFlow", "Water flow", "=[flow]", "gpm"),
  input("yearLimit", "High limit", 88, "°F", { source: "owner", note: "Above it the heat goes outdoors." }),
  input("yearBackUp", "Back up source", "natural gas", "", { source: "what heats the pool otherwise" }),
  computed("yearGas", "Back up price", "=[gasPrice]", "money/therm"),
  computed("yearElectricity", "Electricity price", "=[powerPrice]", "money/kWh"),
  input("yearSecond", "Second sink", "none", "", {
    validation: oneOf("none, or a preheat tank", "none", "preheat tank"),
    source: "owner",
    note: "A preheat tank takes heat that the pool doesn't want.",
  }),
  input("yearOrder", "Sink order", "pool first", "", {
    validation: oneOf("which is served first", "pool first", "tank first"),
    source: "owner",
  }),
  input("yearDraw", "Hot water draw", 220, "gal", { source: "meter", note: `${INVENTED} A day; showers and kitchen.` }),
  input("yearTank", "Tank volume", 250, "gal", { source: "data sheet" }),
  input("yearTankUA", "Tank UA", 8000, "BTU/(h·°F)", {
    format: "#,##0",
    source: "supplier; double wall for drinking water",
    note: INVENTED,
  }),
  input("yearTankLimit", "Tank limit", 105, "°F", { source: "95 to 105 °F from full condensing" }),
  input("yearHotSource", "Hot water source", "natural gas", "", { source: "the main heater" }),
  computed("yearHotPrice", "Hot water price", "=[gasPrice]", "money/therm"),
  heading("group", "Year: climate by month", "Houston, Texas (NREL TMY3): replace by the climate of the site."),
  climateLine("climateHead", "month", HEADS),
  ...MONTHS.map((month, place) => climateLine(`climate${month}`, month, HOUSTON[place] ?? [])),
];

const YEAR = "WARMBACK.POOL.YEAR([[yearArea:yearHotPrice]],[climateHead@A]:[climateDec@G])";

/** The year's row follows a heading and twelve months. */
const TOTAL_ROW = 14;

const columnsOfYear = (): readonly string[] => {
  const gives = lookUp(CATALOGUE, "POOL.YEAR")?.returns;
  return gives?.type === "table" ? Object.keys(gives.columns) : [];
};

/** One column of the year's total; the function is remembered, so that many cells cost one run. */
const total = (key: string, label: string, column: string, unit: string, note = ""): Line => {
  const place = columnsOfYear().indexOf(column) + 1;
  if (place === 0) throw new Error(`POOL.YEAR has no column ${column}`);
  return computed(key, label, `=INDEX(${YEAR},${TOTAL_ROW},${place})`, unit, {
    format: "#,##0",
    source: `POOL.YEAR, column ${place}`,
    ...(note === "" ? {} : { note }),
  });
};

/** The totals of the year. */
export const YEAR_RESULTS: readonly Line[] = [
  heading("group", "8 The year, hour by hour"),
  total("yearRejected", "Heat rejected", "heatRejected", "BTU"),
  total("yearTaken", "Of that taken by the pool", "heatTaken", "BTU"),
  total("yearToTank", "Of that taken by the preheat tank", "heatToTank", "BTU", "0 without a second sink."),
  computed("yearShare", "Share that coincides with the pool's need", "=[yearTaken]/[yearRejected]", "", {
    format: "0%",
    source: "quotient",
    note: "The rest goes outdoors: too warm a pool in high summer, little heat in spring.",
  }),
  total("yearWarmest", "Warmest water with recovery", "poolWithHighest", "°F"),
  total("yearDaysWithout", "Warm days without recovery", "warmDaysWithout", "day"),
  total(
    "yearDaysWith",
    "Warm days with recovery",
    "warmDaysWith",
    "day",
    "Days of the season at the set point or above.",
  ),
  total("yearBackWithout", "Back-up heat without recovery", "backUpWithout", "BTU"),
  total("yearBackWith", "Back-up heat with recovery", "backUpWith", "BTU", "Keep the back-up heater."),
  total("yearCoolWithout", "Cooling electricity without", "electricityWithout", "kWh"),
  total("yearCoolWith", "Cooling electricity with", "electricityWith", "kWh"),
  total(
    "yearMoney",
    "Money saved in the year",
    "moneySaved",
    "money",
    "Against natural gas, pump and cooling electricity counted; ±30 % by wind and use.",
  ),
  gap,
];
