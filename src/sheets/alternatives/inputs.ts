/** Inputs of the sheet "Alternatives", with Fernhill Hall's invented values. */
import { heading, input, type Line } from "../layout";
import { CLIMATE_LINES } from "../recoverySizing/year";
import { INVENTED, above, betweenLimits, currencyInput, moneyPer, oneOf } from "../technicianParts";
import { COST_LINES, EQUIPMENT_LINES } from "./ways";

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
  ...COST_LINES,
  ...EQUIPMENT_LINES,
  ...ranges,
];
