import { describe, expect, test } from "vitest";
import { DAYS } from "../../core/aircon/models/fullLoadHours";
import { heldExactly } from "../../core/pool/year/lossesAt";
import { repeatingYear } from "../../core/pool/year/repeat";
import type { Held, PoolYear } from "../../core/pool/year/results";
import type { PoolRun } from "../../core/pool/year/run";
import { totalOf } from "../../core/pool/year/sums";
import { yearSurface, type YearSurface } from "../../core/pool/year/surface";
import { vapourPressureAt } from "../../core/pool/year/vapourTable";
import type { Weather } from "../../core/pool/year/weather";
import { cellsIn, numberIn, type GoldenCells } from "../golden/rows";
import { bareRun, openPool } from "./yearPools";

const KWH = 3.6e6;
const CITIES = ["miami-fl", "chicago-il"] as const;
const golden = cellsIn("year.csv");

const weatherOf = (city: string, windFactor: number): Weather => {
  const rows = cellsIn(`weather-${city}.csv`);
  const column = (name: string): Float64Array => Float64Array.from(rows, (row) => numberIn(row, name));
  const dewPoint = column("dewpoint_degC").map((t) => t + 273.15);
  return {
    hours: 8760,
    air: column("air_degC").map((t) => t + 273.15),
    dewPoint,
    vapour: dewPoint.map(vapourPressureAt),
    wind: column("wind_m_s").map((v) => v * windFactor),
    sun: column("global_horizontal_W_m2"),
    cloud: column("cloud_tenths"),
    pressure: column("pressure_Pa"),
    mains: new Float64Array(8760).fill(290),
  };
};

/** The other program let the water go on cooling below 0 °C, and knew no make-up water. */
const runOf = (surface: YearSurface): PoolRun => ({
  ...bareRun(surface),
  capacity: 997 * 4180 * 1.5,
  freezing: 100,
});

const surfaceOf = (city: string, method: string, wind: number): YearSurface =>
  yearSurface(openPool({ method: method === "Carrier" ? "Carrier" : "Smith-Lof-Jones" }), weatherOf(city, wind));

const rowsOf = (city: string, kind: string, method: string, wind: string): readonly GoldenCells[] =>
  golden.filter(
    (row) =>
      row["city"] === city &&
      row["case"] === kind &&
      row["evaporation_method"] === method &&
      row["wind_factor"] === wind,
  );

const cases = CITIES.flatMap((city) =>
  ["SLJ1994", "Carrier"].flatMap((method) => ["0.3", "0.1"].map((wind) => [city, method, wind] as const)),
);

/** Within 0.5 % of the row, or of 3 % of the evaporation where a part is a small difference of large heats. */
const close = (got: number, row: GoldenCells, column: string): void => {
  const expected = numberIn(row, column);
  const scale = Math.max(Math.abs(expected), 0.03 * Math.abs(numberIn(row, "evap_kWh_m2")), 1);
  expect(Math.abs(got - expected), `${column} of ${row["month"]}: ${got} against ${expected}`).toBeLessThan(
    0.005 * scale + 0.02,
  );
};

const figure = (values: Float64Array, month: string): number =>
  (month === "year" ? totalOf(values) : (values[Number(month) - 1] ?? NaN)) / KWH;

const checkLosses = (year: Pick<PoolYear, "sums">, row: GoldenCells): void => {
  const month = row["month"] ?? "";
  close(figure(year.sums.evaporation, month), row, "evap_kWh_m2");
  close(figure(year.sums.convection, month), row, "convection_kWh_m2");
  close(figure(year.sums.radiation, month), row, "radiation_kWh_m2");
  close(figure(year.sums.sun, month), row, "sun_absorbed_kWh_m2");
};

const checkTemperatures = (year: PoolYear, row: GoldenCells): void => {
  if (row["month"] === "year") return;
  const month = Number(row["month"]) - 1;
  const mean = (year.sums.warmth[month] ?? NaN) / (86_400 * (DAYS[month] ?? NaN)) - 273.15;
  expect(Math.abs(mean - numberIn(row, "T_mean_degC")), `mean of ${row["month"]}`).toBeLessThan(0.05);
  expect(Math.abs((year.lowest[month] ?? NaN) - 273.15 - numberIn(row, "T_min_degC"))).toBeLessThan(0.1);
  expect(Math.abs((year.highest[month] ?? NaN) - 273.15 - numberIn(row, "T_max_degC"))).toBeLessThan(0.1);
};

const checkHeld = (held: Held, row: GoldenCells): void => {
  const month = row["month"] ?? "";
  checkLosses({ sums: held.losses }, row);
  close(figure(held.hourly, month), row, "need_hourly_kWh_m2");
  close(figure(held.balance, month), row, "loss_less_sun_signed_kWh_m2");
  close(
    figure(
      held.balance.map((each) => Math.max(0, each)),
      month,
    ),
    row,
    "need_month_balance_kWh_m2",
  );
};

describe.each(cases)("a pool in %s by %s, wind factor %s, against another program", (city, method, wind) => {
  const surface = surfaceOf(city, method, Number(wind));

  test("a pool held at 27 °C loses, gains and needs the same, month by month", () => {
    const rows = rowsOf(city, "a_hold27", method, wind);
    expect(rows).toHaveLength(13);
    const held = heldExactly(surface, 300.15);
    for (const row of rows) checkHeld(held, row);
  });

  test("a pool left to itself has the same temperatures within 0.05 K and heats within 0.5 %", () => {
    const rows = rowsOf(city, "b_float", method, wind);
    expect(rows).toHaveLength(13);
    const year = repeatingYear(runOf(surface), 293.15);
    for (const row of rows) {
      checkTemperatures(year, row);
      checkLosses(year, row);
    }
  });

  test("a pool given 80 W/m² in hours above 24 °C has the same temperatures and heats", () => {
    const rows = rowsOf(city, "c_heat80", method, wind);
    expect(rows).toHaveLength(13);
    const extra = surface.weather.air.map((T) => (T - 273.15 > 24 + 1e-9 ? 80 : 0));
    const year = repeatingYear({ ...runOf(surface), extra }, 293.15);
    for (const row of rows) {
      checkTemperatures(year, row);
      checkLosses(year, row);
    }
  });
});

test("every row of the golden file is used", () => {
  expect(golden).toHaveLength(cases.length * 3 * 13);
});
