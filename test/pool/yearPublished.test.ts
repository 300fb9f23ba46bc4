/** The year beside published results: bands are wide, as pools, weather and wind of the sources are known in part only. */
import { describe, expect, test } from "vitest";
import type { ArgData, BlockShape } from "../../core/kernel/argument";
import { us } from "../../core/kernel/quantity";
import { admitClimate, type Climate } from "../../core/pool/climate";
import { yearOf, type Year } from "../../core/pool/models/year";
import { totalOfYear } from "../../core/pool/models/yearRows";
import type { YearInputs } from "../../core/pool/models/yearSetUp";
import { YEAR_INPUTS } from "../../core/pool/yearInputs";
import { cellsIn, numberIn, type GoldenCells } from "../golden/rows";

const HEAD = ["air (°C)", "swing (K)", "humidity", "wind at 10 m (m/s)", "sun (kWh/m²/day)"];
const COLUMNS = [
  "air_mean_degC",
  "daily_swing_mean_K",
  "humidity_mean_frac",
  "wind_mean_m_s",
  "sun_kWh_m2_day",
] as const;

const climateOf = (city: string): Climate =>
  admitClimate(
    [
      HEAD,
      ...cellsIn("weather-monthly.csv")
        .filter((row) => row["city"] === city)
        .map((row) => COLUMNS.map((column) => numberIn(row, column))),
    ],
    "SI",
  );

const PLACES: Readonly<Record<string, Partial<YearInputs>>> = {
  "miami-fl": { latitude: 25.82, altitude: 11 },
  "phoenix-az": { latitude: 33.45, altitude: 337 },
};

const defaults = Object.fromEntries(
  Object.entries((YEAR_INPUTS.shape as BlockShape).entries).map(([key, arg]: [string, ArgData]) => [key, arg.fallback]),
);

const yearAt = (city: string, values: Partial<YearInputs>): Year =>
  yearOf({ ...defaults, ...PLACES[city], ...values } as YearInputs, climateOf(city));

describe("heat pump costs of the US Department of Energy", () => {
  const POOL = { poolArea: us("area", 1000), waterDepth: us("depth", 5) };
  const COST_OF_HEAT = 0.085 / 5 / 3.6e6;
  const HOUR = 3600;

  /** $ a season; a suburban pool with every other input left at its default. */
  const costOf = (row: GoldenCells, cover: Partial<YearInputs> = {}): number => {
    const found = yearAt(row["city"] ?? "", {
      ...POOL,
      ...cover,
      setPoint: us("temperature", numberIn(row, "set_degF")),
      seasonStart: numberIn(row, "season_start"),
      seasonEnd: numberIn(row, "season_end"),
    });
    return totalOfYear(found).backUpWithout * COST_OF_HEAT;
  };

  const rows = cellsIn("pool-published-costs.csv").map((row) => ({
    row,
    title: `${row["city"]}, ${row["set_degF"]} °F`,
  }));

  test.each(rows)("without a cover lie within a factor of 1.5 in Miami and 1.75 in Phoenix: $title", ({ row }) => {
    const ratio = costOf(row) / numberIn(row, "uncovered_dollars");
    const factor = row["city"] === "miami-fl" ? 1.5 : 1.75;
    expect(ratio).toBeGreaterThan(1 / factor);
    expect(ratio).toBeLessThan(factor);
  });

  test("rise with the set point as the table's do, within 5 %", () => {
    for (let i = 1; i < rows.length; i++) {
      const [a, b] = [rows[i - 1]?.row, rows[i]?.row];
      if (a === undefined || b === undefined || a["city"] !== b["city"]) continue;
      const published = numberIn(b, "uncovered_dollars") / numberIn(a, "uncovered_dollars");
      expect(Math.abs(costOf(b) / costOf(a) / published - 1)).toBeLessThan(0.05);
    }
  });

  test.each(rows)("a cover by night saves 45 to 70 %, as the guidance's 50 to 70: $title", ({ row }) => {
    const saved = 1 - costOf(row, { cover: "bubble" }) / costOf(row);
    expect(saved).toBeGreaterThan(0.45);
    expect(saved).toBeLessThan(0.7);
  });

  test.each(rows)("a cover for 18 h saves 70 to 90 %, as the tables' 79 to 93; cost within 4: $title", ({ row }) => {
    const covered = costOf(row, { cover: "bubble", coverHours: 18 * HOUR });
    const saved = 1 - covered / costOf(row);
    expect(saved).toBeGreaterThan(0.7);
    expect(saved).toBeLessThan(0.9);
    const ratio = covered / numberIn(row, "covered_dollars");
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(4);
  });
});

describe("a house's pool as the heat sink of its air conditioner, in a hot dry climate", () => {
  // Assumed: 450 ft² of water, 5 ft deep; 3.5 tons of net cooling at EER 10.5; load met at 95 °F; exchanger of 2.5 kW/K.
  const cooling = us("heat rate", 42_000);
  const HOUSE = {
    poolArea: us("area", 450),
    waterDepth: us("depth", 5),
    ratedCooling: cooling,
    ratedPower: (cooling * 3.412) / 10.5,
    outdoorFan: 250,
    indoorFan: 450,
    exchangerUA: 2500,
  };
  const found = yearAt("phoenix-az", HOUSE);
  const total = totalOfYear(found);
  const published = (source: string, what: string): number => {
    const row = cellsIn("pool-field-and-model.csv").find((each) => each["source"] === source && each["what"] === what);
    if (row === undefined) throw new Error(`no ${what} of ${source}`);
    return numberIn(row, "expected");
  };
  const changeOf = (after: number, before: number): number => 100 * (after / before - 1);

  test("cools with less energy, 5 to 40 %: between half of the field test's 13 and the modelled 30", () => {
    const change = changeOf(total.electricityWith, total.electricityWithout);
    expect(change).toBeLessThan(Math.min(-5, published("ET22SWE0052", "cooling energy") / 2));
    expect(change).toBeGreaterThan(Math.max(-40, published("Woolley", "cooling energy")));
  });

  test("warms the pool by 0.5 to 6 °F in the year's mean, within a factor of 3 of the field test's 2.3", () => {
    const rise = 1.8 * (Number(total.poolWith) - Number(total.poolWithout));
    const field = published("ET22SWE0052", "mean pool temperature");
    expect(rise).toBeGreaterThan(Math.max(0.5, field / 3));
    expect(rise).toBeLessThan(Math.min(6, field * 3));
  });

  test("above 95 °F outdoors saves power between half of the field test's figure and the modelled peak's 40 %", () => {
    const { without, with: recovered } = found.free;
    const hot = us("temperature", 95);
    /** Over the hours in which all the heat goes to the pool. */
    const change = (of: (air: number) => boolean): number => {
      let [before, after] = [0, 0];
      found.weather.air.forEach((air, hour) => {
        if (!of(air) || (recovered.taken[hour] ?? 0) === 0 || (recovered.outdoors[hour] ?? 0) > 0) return;
        before += without.electricity[hour] ?? 0;
        after += recovered.electricity[hour] ?? 0;
      });
      return changeOf(after, before);
    };
    const above = change((air) => air > hot);
    // An efficiency so much greater is a power so much less for the same cooling.
    const field = changeOf(1, 1 + published("ET22SWE0052", "efficiency above 95 F outdoors") / 100);
    expect(above).toBeLessThan(field / 2);
    expect(above).toBeGreaterThan(published("Woolley", "peak cooling power"));
    expect(above).toBeLessThan(change((air) => air <= hot));
  });
});
