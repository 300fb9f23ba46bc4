/** Years of pools in cities whose monthly climate is at hand, for comparison with published results. */
import { admitClimate, type Climate } from "../../core/pool/year/climate";
import type { YearInputs } from "../../core/pool/year/inputs";
import type { Year } from "../../core/pool/year/results";
import { yearOf } from "../../core/pool/year/year";
import { cellsIn, numberIn } from "../golden/rows";
import { DEFAULTS } from "./yearPools";

const HEAD = ["air (°C)", "swing (K)", "humidity", "wind at 10 m (m/s)", "sun (kWh/m²/day)"];
const COLUMNS = [
  "air_mean_degC",
  "daily_swing_mean_K",
  "humidity_mean_frac",
  "wind_mean_m_s",
  "sun_kWh_m2_day",
] as const;

const WEATHER = [...cellsIn("weather-monthly.csv"), ...cellsIn("weather-dallas-atlanta.csv")];

/** Shares by which a column is changed, for values that the source of the weather leaves in doubt. */
export type Changed = Readonly<Partial<Record<(typeof COLUMNS)[number], number>>>;

const climateOf = (city: string, changed: Changed): Climate =>
  admitClimate(
    [
      HEAD,
      ...WEATHER.filter((row) => row["city"] === city).map((row) =>
        COLUMNS.map((column) => numberIn(row, column) * (changed[column] ?? 1)),
      ),
    ],
    "SI",
  );

const PLACES: Readonly<Record<string, Partial<YearInputs>>> = {
  "miami-fl": { latitude: 25.82, altitude: 11 },
  "phoenix-az": { latitude: 33.45, altitude: 337 },
  "dallas-tx": { latitude: 32.68, altitude: 201 },
  "atlanta-ga": { latitude: 33.62, altitude: 308 },
};

/** The year of a pool in a city; what isn't given stands at its default. */
export const yearAt = (city: string, values: Partial<YearInputs>, changed: Changed = {}): Year =>
  yearOf({ ...DEFAULTS, ...PLACES[city], ...values } as YearInputs, climateOf(city, changed));
