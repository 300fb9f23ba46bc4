/**
 * Relations of evaporation from a water surface. Strict SI. Each gives the transfer coefficient k in kg/(s·m²·Pa), so that
 * evaporation is k × (pw − pa) on every relation and convection follows from the same film.
 */
import { equation, symbol } from "../../kernel/equation";

/** mmHg and inHg in Pa. */
const MMHG = 133.322387;
const INHG = 3386.389;

const v = symbol("wind speed", "wind at the water", 0, 15);
const Y = symbol("enthalpy", "latent heat at the water's temperature", 2.35e6, 2.51e6);

/** Quiet outdoor pools: (30.6 + 32.1 v)(pw − pa)[mmHg]/Y[kJ/kg], kg/(h·m²). */
export const smithLofJones = equation({
  name: "Smith, Löf and Jones: quiet outdoor pool",
  form: "k = (30.6 + 32.1 * v) / 133.322387 / (Y / 1000) / 3600",
  gives: "number",
  takes: { v, Y },
  valid: "outdoor pool without bathers, wind at the water 0 to 5 m/s",
  source: "smithLofJones1994",
  code: (x) => (30.6 + 32.1 * x.v) / MMHG / (x.Y / 1000) / 3600,
});

/** Handbook equation: (0.089 + 0.0782 v)(pw − pa)[kPa]/Y[kJ/kg], kg/(s·m²). */
export const carrier = equation({
  name: "Carrier, handbook equation",
  form: "k = (0.089 + 0.0782 * v) / Y",
  gives: "number",
  takes: { v, Y },
  valid: "busy public pool at activity 1",
  source: "carrier1918",
  code: (x) => (0.089 + 0.0782 * x.v) / x.Y,
});

/** Lakes: (3.6 + 2.5 v)(5 km²/A)^0.05 W/(m²·mbar), wind at 3 m. */
export const mcMillan = equation({
  name: "McMillan, with area term",
  form: "k = (3.6 + 2.5 * v) * (5e6 / A)^0.05 / 100 / Y",
  gives: "number",
  takes: { v: symbol("wind speed", "wind at 3 m", 0, 15), A: symbol("area", "water surface", 5, 5e6), Y },
  valid: "lakes; wind at 3 m",
  source: "mcMillan1971",
  code: (x) => ((3.6 + 2.5 * x.v) * (5e6 / x.A) ** 0.05) / 100 / x.Y,
});

/** Indoor short form: 0.1 lb/(h·ft²·inHg). */
export const ashraeIndoor = equation({
  name: "ASHRAE indoor short form",
  form: "k = 0.1 * 0.45359237 / 3600 / 0.09290304 / 3386.389",
  gives: "number",
  takes: {},
  valid: "indoor air at 10 to 30 ft/min",
  source: "ashraeApplications2011",
  code: () => (0.1 * 0.45359237) / 3600 / 0.09290304 / INHG,
});

/** Gas constant of water vapour, J/(kg·K). */
const VAPOUR = 461.52;

/** At rest: 7 m/h over Rd × mean temperature of water and air. */
export const vdi2089 = equation({
  name: "VDI 2089, water at rest",
  form: "k = 7 / 3600 / (Rd * (Tw + Ta) / 2)",
  gives: "number",
  takes: {
    Tw: symbol("temperature", "water temperature", 273.16, 322),
    Ta: symbol("temperature", "air temperature", 230, 330),
  },
  constants: { Rd: VAPOUR },
  valid: "indoor pool",
  source: "vdi2089",
  code: (x) => 7 / 3600 / ((VAPOUR * (x.Tw + x.Ta)) / 2),
});

/** Gas constant of dry air, J/(kg·K). */
const DRY_AIR = 287.042;

/** Dry air in a volume of moist air, kg/m³. */
export const dryAirDensity = equation({
  name: "Density of the dry air in moist air",
  form: "rho = (p - pv) / (Ra * T)",
  gives: "density",
  takes: {
    p: symbol("pressure", "pressure of the air", 54_000, 108_000),
    pv: symbol("pressure", "vapour pressure", 0, 12_000),
    T: symbol("temperature", "temperature", 230, 330),
  },
  constants: { Ra: DRY_AIR },
  source: "identity",
  code: (x) => (x.p - x.pv) / (DRY_AIR * x.T),
});

/** Larger of 35 ρw (ρr − ρw)^(1/3)(Ww − Wr) and 5e-5 (pw − pr), kg/(h·m²); the first divided through by pw − pr. */
export const shah = equation({
  name: "Shah: unoccupied indoor pool",
  form: "k = max(35 * rhow * cbrt(max(rhor - rhow, 0)) * 0.621945 * p / ((p - pw) * (p - pa)), 5e-5) / 3600",
  gives: "number",
  takes: {
    rhow: symbol("density", "dry air in saturated air at the water", 0.6, 1.3),
    rhor: symbol("density", "dry air in the room's air", 0.6, 1.4),
    p: symbol("pressure", "pressure of the air", 54_000, 108_000),
    pw: symbol("pressure", "vapour pressure at the water", 600, 12_000),
    pa: symbol("pressure", "vapour pressure of the air", 0, 12_000),
  },
  valid: "indoor pool, wind to 0.15 m/s",
  source: "shah2012",
  code: (x) => {
    const natural = 35 * x.rhow * Math.cbrt(Math.max(x.rhor - x.rhow, 0));
    return Math.max((natural * 0.621945 * x.p) / ((x.p - x.pw) * (x.p - x.pa)), 5e-5) / 3600;
  },
});

/** Evaporation of a surface, kg/s; negative where the air's vapour settles on the water. */
export const evaporationRate = equation({
  name: "Evaporation",
  form: "m = A * a * k * (pw - pa)",
  gives: "mass flow",
  takes: {
    A: symbol("area", "water surface", 1, 5000),
    a: symbol("number", "activity", 0.1, 10),
    k: symbol("number", "transfer coefficient, kg/(s·m²·Pa)", 1e-9, 5e-7),
    pw: symbol("pressure", "vapour pressure at the water", 600, 12_000),
    pa: symbol("pressure", "vapour pressure of the air", 0, 12_000),
  },
  source: "identity",
  code: (x) => x.A * x.a * x.k * (x.pw - x.pa),
});
