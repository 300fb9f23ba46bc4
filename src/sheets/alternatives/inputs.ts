/** Inputs of the sheet "Alternatives", with Fernhill Hall's invented values. */
import { heading, input, type ExtraCell, type Line } from "../layout";
import { CLIMATE_LINES } from "../recoverySizing/year";
import { INVENTED, above, betweenLimits, currencyInput, moneyPer, oneOf } from "../technicianParts";

/** Key, name and, invented, first cost, upkeep a year and life of each way to heat the pool; the first is the base. */
export const WAYS = [
  ["gas", "Gas heater", 5200, 250, 12],
  ["electric", "Electric heater", 3800, 60, 12],
  ["pump", "Pool heat pump", 8200, 220, 12],
  ["solar", "Unglazed solar, gas", 11200, 280, 15],
  ["cover", "Cover, gas", 7200, 450, 12],
  ["recovered", "Recovered heat, gas", 14800, 350, 15],
] as const;

/** The block's labels are those of POOL.YEAR: the pool without a cover, on its machine. */
const yearInputs: readonly Line[] = [
  heading("part", "Inputs"),
  heading("group", "Pool and machine (input block of POOL.YEAR)"),
  input("poolArea", "Pool area", 1125, "ft²", {
    format: "#,##0",
    validation: above("above 0 ft²"),
    source: "sheet Project",
    note: INVENTED,
    link: "ProjectArea",
  }),
  input("depth", "Water depth", 4.25, "ft", { validation: above("above 0 ft"), source: "mean depth" }),
  input("setPoint", "Set point", 82, "°F", {
    validation: betweenLimits(40, 104, "40 to 104 °F"),
    source: "owner",
    link: "ProjectWater",
  }),
  input("seasonStart", "Season start", 4, "", {
    validation: betweenLimits(1, 12, "month, 1 to 12"),
    source: "owner",
  }),
  input("seasonEnd", "Season end", 10, "", { validation: betweenLimits(1, 12, "month, 1 to 12"), source: "owner" }),
  input("latitude", "Latitude", 30, "", {
    validation: betweenLimits(-66, 66, "-66 to 66 degrees"),
    source: "map",
    link: "ProjectLatitude",
  }),
  input("shelter", "Shelter", "suburban", "", {
    validation: oneOf("open, suburban or sheltered", "open", "suburban", "sheltered"),
    source: "survey",
  }),
  input("ratedCooling", "Rated cooling", 90000, "BTU/h", {
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    source: "data sheet",
    link: "ProjectCooling",
  }),
  input("ratedPower", "Rated power", 8.1, "kW", {
    validation: above("above 0 kW"),
    source: "data sheet",
    link: "ProjectPower",
  }),
  input("outdoorFan", "Outdoor fan", 0.6, "kW", {
    validation: betweenLimits(0, 20, "0 to 20 kW"),
    source: "data sheet",
    link: "ProjectOutdoorFan",
  }),
  input("refrigerant", "Refrigerant", "R-410A", "", {
    validation: oneOf("as on the nameplate", "R-22", "R-32", "R-134a", "R-407C", "R-410A", "R-454B"),
    source: "nameplate",
    link: "ProjectRefrigerant",
  }),
  input("exchangerUa", "Exchanger UA", 7000, "BTU/(h·°F)", {
    format: "#,##0",
    validation: above("above 0"),
    source: "supplier",
  }),
  input("highLimit", "High limit", 88, "°F", {
    validation: betweenLimits(40, 104, "40 to 104 °F"),
    source: "owner",
    link: "ProjectHighLimit",
  }),
];

const money: readonly Line[] = [
  heading("group", "Prices and years"),
  currencyInput("ProjectCurrency"),
  input("gasPrice", "Natural gas", 1.4, moneyPer("therm"), {
    validation: above("above 0"),
    source: "bill",
    link: "ProjectGasPrice",
  }),
  input("powerPrice", "Electricity", 0.15, moneyPer("kWh"), {
    validation: above("above 0"),
    source: "bill",
    link: "ProjectPowerPrice",
  }),
  input("efficiency", "Efficiency of the gas heater", 0.82, "", {
    format: "0%",
    validation: betweenLimits(0.3, 1, "30 to 100 %"),
    source: "data sheet",
  }),
  input("gasRise", "Yearly rise of the gas price", 0.01, "", {
    format: "0.0%",
    validation: betweenLimits(-0.2, 0.3, "-20 to 30 %"),
    source: "forecast, without inflation",
  }),
  input("powerRise", "Yearly rise of the electricity price", 0.005, "", {
    format: "0.0%",
    validation: betweenLimits(-0.2, 0.3, "-20 to 30 %"),
    source: "forecast, without inflation",
  }),
  input("powerCarbon", "Carbon dioxide of electricity", 1.54, "lb/kWh", {
    validation: betweenLimits(0, 5, "0 to 5 lb/kWh"),
    source: "US EPA, marginal, delivered, 2021",
    note: "Savings count at the margin; the US average is about half of it.",
  }),
];

const columns = (heads: Readonly<Record<string, string>>): Readonly<Record<string, ExtraCell>> =>
  Object.fromEntries(Object.entries(heads).map(([column, content]) => [column, { content, style: "Heading 3" }]));

/** A row of heads above a table. */
export const headsOf = (label: string, value: string, heads: Readonly<Record<string, string>>): Line => ({
  label,
  labelStyle: "Heading 3",
  value,
  style: "Heading 3",
  extra: columns(heads),
});

const typed = (content: number, validation: NonNullable<ExtraCell["validation"]>): ExtraCell => ({
  content,
  style: "Input",
  format: "#,##0",
  validation,
});

const costs: readonly Line[] = [
  heading("group", "What each way costs", INVENTED),
  headsOf("Way", "First cost", { C: "Upkeep a year", D: "Life, years" }),
  ...WAYS.map(([key, name, first, upkeep, life]): Line => ({
    key: `cost${key}`,
    label: name,
    value: first,
    style: "Input",
    format: "#,##0",
    validation: betweenLimits(0, 1e7, "0 or more"),
    extra: {
      C: typed(upkeep, betweenLimits(0, 1e6, "0 or more")),
      D: typed(life, betweenLimits(1, 60, "1 to 60 years")),
    },
  })),
];

const equipment: readonly Line[] = [
  heading(
    "group",
    "Pool heat pump: its tested points",
    "Water entering at 80 °F; a COP without its point means nothing.",
  ),
  headsOf("Air", "Heat, BTU/h", { C: "COP" }),
  ...(
    [
      ["pumpHumid", "80 °F, 80 % humidity", 108000, 5.9],
      ["pumpWarm", "80 °F, 63 %", 102000, 5.5],
      ["pumpCool", "50 °F, 63 %", 68000, 3.9],
    ] as const
  ).map(([key, label, heat, cop]): Line => ({
    key,
    label,
    value: heat,
    style: "Input",
    format: "#,##0",
    validation: above("above 0 BTU/h"),
    extra: { C: { content: cop, style: "Input", format: "0.0", validation: betweenLimits(1, 15, "1 to 15") } },
  })),
  input("pumpDay", "Hours a day that it may run", 14, "h", {
    validation: betweenLimits(1, 24, "1 to 24 h"),
    source: "with the pool's pump",
  }),
  heading("group", "Unglazed solar collectors"),
  input("collector", "Collector area", 800, "ft²", {
    format: "#,##0",
    validation: above("above 0 ft²"),
    source: "50 to 100 % of the pool's surface",
  }),
  input("collectorWind", "Wind at the collectors, share of the station's", 0.4, "", {
    format: "0%",
    validation: betweenLimits(0.01, 1, "1 to 100 %"),
    source: "common practice",
  }),
  input("sky", "Net sky radiation", -60, "W/m²", {
    validation: betweenLimits(-120, 0, "-120 to 0 W/m²"),
    source: "common practice",
    note: "-40 to -100 under a clear sky.",
  }),
  input("solarPump", "Power of their pump", 0.4, "kW", {
    validation: betweenLimits(0, 20, "0 to 20 kW"),
    source: "data sheet",
  }),
];

const ranges: readonly Line[] = [
  heading("group", "How far each may be off, one way"),
  ...(
    [
      ["offNeed", "Heat needed", 0.3, "weather, wind and use; common practice"],
      ["offGas", "Gas price", 0.15, "official forecasts moved by 5 to 16 % in two years"],
      ["offPower", "Electricity price", 0.15, "official forecasts moved by 15 % in two years"],
      ["offFirst", "First costs", 0.2, "offers; common practice"],
    ] as const
  ).map(([key, label, value, source]) =>
    input(key, label, value, "", { format: "0%", validation: betweenLimits(0, 1, "0 to 100 %"), source }),
  ),
];

export const INPUT_LINES: readonly Line[] = [
  ...yearInputs,
  ...CLIMATE_LINES,
  ...money,
  ...costs,
  ...equipment,
  ...ranges,
];
