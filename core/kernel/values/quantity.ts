/**
 * Kinds of quantities. A kind says what is measured and has one unit in each system. The core computes in the strict SI
 * base unit (`base`). A value is converted once, when a cell's argument comes in or its result goes out:
 * base value = (value + shift) × factor.
 *
 * Factors are exact where the definition is (international foot 0.3048 m, pound 0.45359237 kg, BTU(IT) 1055.05585262 J,
 * standard gravity 9.80665 m/s²): NIST Special Publication 811 (2008), appendix B.
 */

export type System = "US" | "SI";

export interface Unit {
  /** As printed in a cell and read back. Empty for a plain number. */
  readonly text: string;
  readonly factor: number;
  readonly shift: number;
}

export interface UnitsOfKind {
  /** The strict SI unit of computation, as a unit text; "" where there is no dimension. */
  readonly base: string;
  readonly US: Unit;
  readonly SI: Unit;
}

const FOOT = 0.3048;
const INCH = FOOT / 12;
const POUND = 0.45359237;
const BTU = 1055.05585262;
const HOUR = 3600;
const FAHRENHEIT = 5 / 9;
const GALLON = 231 * INCH ** 3;
const PSI = (POUND * 9.80665) / INCH ** 2;

const unit = (text: string, factor: number, shift = 0): Unit => ({ text, factor, shift });
const kind = (base: string, us: Unit, si: Unit = us): UnitsOfKind => ({ base, US: us, SI: si });

const TABLE = {
  temperature: kind("K", unit("°F", FAHRENHEIT, 459.67), unit("°C", 1, 273.15)),
  "temperature difference": kind("K", unit("°F", FAHRENHEIT), unit("K", 1)),
  pressure: kind("Pa", unit("psi", PSI), unit("kPa", 1000)),
  "heat rate": kind("W", unit("BTU/h", BTU / HOUR), unit("kW", 1000)),
  heat: kind("J", unit("BTU", BTU), unit("kWh", 1000 * HOUR)),
  "electric power": kind("W", unit("kW", 1000)),
  "electric energy": kind("J", unit("kWh", 1000 * HOUR)),
  "cooling rating": kind("", unit("BTU/(W·h)", BTU / HOUR), unit("W/W", 1)),
  mass: kind("kg", unit("lb", POUND), unit("kg", 1)),
  "mass flow": kind("kg/s", unit("lb/h", POUND / HOUR), unit("kg/h", 1 / HOUR)),
  /** Capacity of relief devices, as air. */
  "relief flow": kind("kg/s", unit("lb/min", POUND / 60), unit("kg/s", 1)),
  "mass flux": kind("kg/(m^2 s)", unit("lb/(h·ft²)", POUND / HOUR / FOOT ** 2), unit("kg/(m²·s)", 1)),
  "expansion coefficient": kind("1/K", unit("1/°F", 1 / FAHRENHEIT), unit("1/K", 1)),
  density: kind("kg/m^3", unit("lb/ft³", POUND / FOOT ** 3), unit("kg/m³", 1)),
  enthalpy: kind("J/kg", unit("BTU/lb", BTU / POUND), unit("kJ/kg", 1000)),
  entropy: kind("J/(kg K)", unit("BTU/(lb·°F)", BTU / POUND / FAHRENHEIT), unit("kJ/(kg·K)", 1000)),
  "heat capacity": kind("J/(kg K)", unit("BTU/(lb·°F)", BTU / POUND / FAHRENHEIT), unit("kJ/(kg·K)", 1000)),
  conductivity: kind("W/(m K)", unit("BTU/(h·ft·°F)", BTU / HOUR / FOOT / FAHRENHEIT), unit("W/(m·K)", 1)),
  "film coefficient": kind(
    "W/(m^2 K)",
    unit("BTU/(h·ft²·°F)", BTU / HOUR / FOOT ** 2 / FAHRENHEIT),
    unit("W/(m²·K)", 1),
  ),
  "heat conductance": kind("W/K", unit("BTU/(h·°F)", BTU / HOUR / FAHRENHEIT), unit("W/K", 1)),
  "fouling resistance": kind("m^2 K/W", unit("h·ft²·°F/BTU", (HOUR * FOOT ** 2 * FAHRENHEIT) / BTU), unit("m²·K/W", 1)),
  "surface tension": kind("N/m", unit("lbf/ft", (POUND * 9.80665) / FOOT), unit("mN/m", 0.001)),
  "humidity ratio": kind("", unit("lb/lb", 1), unit("kg/kg", 1)),
  "carbon dioxide": kind("kg", unit("lb", POUND), unit("kg", 1)),
  "water flow": kind("m^3/s", unit("gpm", GALLON / 60), unit("m³/h", 1 / HOUR)),
  /** Volume of air at its actual density. */
  "air flow": kind("m^3/s", unit("cfm", FOOT ** 3 / 60), unit("m³/h", 1 / HOUR)),
  head: kind("m", unit("ft", FOOT), unit("m", 1)),
  /** Head lost over the flow squared. */
  "system curve": kind("s^2/m^5", unit("ft/gpm²", FOOT / (GALLON / 60) ** 2), unit("m/(m³/h)²", HOUR ** 2)),
  "pump slope": kind("s/m^2", unit("ft/gpm", FOOT / (GALLON / 60)), unit("m/(m³/h)", HOUR)),
  /** Cv: gpm of water at 60 °F (999.016 kg/m³) at 1 psi. Kv: m³/h of water of 1,000 kg/m³ at 1 bar; the core computes in it. */
  "flow coefficient": kind(
    "",
    unit("Cv", (GALLON / 60) * HOUR * Math.sqrt((1e5 * 999.016) / (PSI * 1000))),
    unit("Kv", 1),
  ),
  /** The same of a valve in gas, by the factor that IEC 60534 rounds from water of one density: Cv = 1.1561 Kv. */
  "gas flow coefficient": kind("", unit("Cv", 1 / 1.1561), unit("Kv", 1)),
  "pressure drop": kind("Pa", unit("psi", PSI), unit("kPa", 1000)),
  velocity: kind("m/s", unit("ft/s", FOOT), unit("m/s", 1)),
  "wind speed": kind("m/s", unit("mph", (5280 * FOOT) / HOUR), unit("m/s", 1)),
  length: kind("m", unit("ft", FOOT), unit("m", 1)),
  /** Between places on the map. */
  distance: kind("m", unit("mi", 5280 * FOOT), unit("km", 1000)),
  diameter: kind("m", unit("in", INCH), unit("mm", 0.001)),
  area: kind("m^2", unit("ft²", FOOT ** 2), unit("m²", 1)),
  "pool volume": kind("m^3", unit("gal", GALLON), unit("m³", 1)),
  "vessel volume": kind("m^3", unit("ft³", FOOT ** 3), unit("L", 0.001)),
  "daily draw": kind("m^3", unit("gal", GALLON), unit("L", 0.001)),
  altitude: kind("m", unit("ft", FOOT), unit("m", 1)),
  depth: kind("m", unit("ft", FOOT), unit("m", 1)),
  "rain depth": kind("m", unit("in", INCH), unit("mm", 0.001)),
  /** Energy that a square metre receives in a day: J/m² in the core. */
  "daily sun": kind("J/m^2", unit("BTU/(ft²·day)", BTU / FOOT ** 2), unit("kWh/(m²·day)", 1000 * HOUR)),
  irradiance: kind("W/m^2", unit("BTU/(h·ft²)", BTU / HOUR / FOOT ** 2), unit("W/m²", 1)),
  viscosity: kind("Pa s", unit("cP", 0.001), unit("mPa·s", 0.001)),
  vacuum: kind("Pa", unit("micron", 101325 / 760_000), unit("Pa", 1)),
  time: kind("s", unit("h", HOUR)),
  minutes: kind("s", unit("min", 60)),
  seconds: kind("s", unit("s", 1)),
  days: kind("s", unit("day", 24 * HOUR)),
  years: kind("", unit("year", 1)),
  resistance: kind("ohm", unit("ohm", 1)),
  concentration: kind("kg/m^3", unit("lb/ft³", POUND / FOOT ** 3), unit("kg/m³", 1)),
  "mass per length": kind("kg/m", unit("oz/ft", POUND / 16 / FOOT), unit("g/m", 0.001)),
  expansion: kind("m", unit("in", INCH), unit("mm", 0.001)),
  fraction: kind("", unit("", 1)),
  "relative humidity": kind("", unit("", 1)),
  COP: kind("", unit("", 1)),
  number: kind("", unit("", 1)),
  count: kind("", unit("", 1)),
  money: kind("", unit("money", 1)),
  "yearly rate": kind("", unit("1/year", 1)),
  "price of gas": kind("1/J", unit("money/therm", 1 / (100_000 * BTU)), unit("money/kWh", 1 / (1000 * HOUR))),
  "price of liquid fuel": kind("1/m^3", unit("money/gal", 1 / GALLON), unit("money/L", 1000)),
  "price of electricity": kind("1/J", unit("money/kWh", 1 / (1000 * HOUR))),
  "price of wood": kind("1/m^3", unit("money/cord", 1 / (128 * FOOT ** 3)), unit("money/m³", 1)),
} as const satisfies Record<string, UnitsOfKind>;

export type KindName = keyof typeof TABLE;

/** Every kind by name. */
export const KINDS: Readonly<Record<KindName, UnitsOfKind>> = TABLE;

export const toBase = (value: number, unitOf: Unit): number => (value + unitOf.shift) * unitOf.factor;

export const fromBase = (value: number, unitOf: Unit): number => value / unitOf.factor - unitOf.shift;

/** A value of a kind's US unit in the core's base unit: `us("temperature", 80)` is 299.8 K. */
export const us = (name: KindName, value: number): number => toBase(value, KINDS[name].US);

/** A value of a kind's SI unit in the core's base unit: `si("pressure", 101.325)` is 101325 Pa. */
export const si = (name: KindName, value: number): number => toBase(value, KINDS[name].SI);

/** A number as messages and notes print it: six significant digits, no trailing zeros, a plain hyphen for minus. */
export const showNumber = (value: number): string => {
  if (value === 0) return "0";
  if (!Number.isFinite(value)) return Number.isNaN(value) ? "no number" : "infinity";
  const size = Math.abs(value);
  if (size >= 1e15 || size < 1e-6) return value.toPrecision(5).replace(/\.?0+e/, "e");
  const digits = size >= 1e5 ? 0 : Math.max(0, 5 - Math.floor(Math.log10(size)));
  const text = value.toFixed(Math.min(digits, 12));
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
};

/** A number to be read, not copied: four significant digits, whole numbers in full, thousands apart. */
export const readableNumber = (value: number): string => {
  const size = Math.abs(value);
  const text = showNumber(size >= 1000 && size < 1e15 ? Math.round(value) : Number(value.toPrecision(4)));
  return size < 10_000 ? text : text.replace(/\B(?=(?:\d{3})+$)/g, ",");
};

/** A base value with its unit, to be read. */
export const showReadable = (value: number, name: KindName, system: System): string => {
  const unitOf = KINDS[name][system];
  const shown = fromBase(value, unitOf);
  return withUnit(readableNumber(Math.abs(shown) < 1e-12 * Math.abs(unitOf.shift) ? 0 : shown), unitOf);
};

/** A base value with its unit in the given system: `show(299.8, "temperature", "US")` is "80 °F". */
export const show = (value: number, name: KindName, system: System): string => {
  const unitOf = KINDS[name][system];
  const shown = fromBase(value, unitOf);
  // Zero on a shifted scale returns as a rounding error of the shift.
  return withUnit(showNumber(Math.abs(shown) < 1e-12 * Math.abs(unitOf.shift) ? 0 : shown), unitOf);
};

/** The same, rounded to four digits: for sentences that are read, not copied. */
export const showBriefly = (value: number, name: KindName, system: System): string => {
  const unitOf = KINDS[name][system];
  return show(toBase(Number(fromBase(value, unitOf).toPrecision(4)), unitOf), name, system);
};

/** A number text with its unit behind it, none where the unit is empty. */
export const withUnit = (text: string, unitOf: Unit): string => (unitOf.text === "" ? text : `${text} ${unitOf.text}`);
