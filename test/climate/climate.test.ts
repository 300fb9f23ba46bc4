import { assert, double, property } from "fast-check";
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { distanceBetween } from "../../core/climate/stations";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";
import type { CellInput, CellMatrix } from "../../core/kernel/values/cellInput";
import { admitClimate } from "../../core/pool/year/climate";
import { hoursFromMonths } from "../../core/pool/year/madeHours";
import { monthlyMeans } from "../../core/pool/year/weather";
import { cellsIn, numberIn, wordIn } from "../golden/rows";

const run = (id: string, ...raw: readonly CellInput[]) => evaluate(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE);
const table = (out: unknown): CellMatrix => {
  if (isFault(out)) throw new Error(out.message);
  return out as CellMatrix;
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));
const codes = (id: string, ...raw: readonly CellInput[]): readonly string[] =>
  explain(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE, { steps: false }).cautions.map(({ code }) => code);

const ROWS = cellsIn("weather-months-22.csv");
const STATIONS = [...new Set(ROWS.map((row) => wordIn(row, "wmo")))];
const rowsOf = (wmo: string) => ROWS.filter((row) => wordIn(row, "wmo") === wmo);
const months = (...raw: readonly CellInput[]): CellMatrix => {
  const [place = "", latitude = null, longitude = null, altitude = null] = raw;
  return table(run("CLIMATE.MONTHS", place, latitude, longitude, altitude, "SI"));
};
const column = (out: CellMatrix, name: string): readonly number[] => {
  const at = (out[0] ?? []).findIndex((head) => String(head).replace(/ \(.*/, "") === name);
  return out.slice(1).map((row) => Number(row[at]));
};

describe("CLIMATE.EXTRATERRESTRIAL", () => {
  const days = cellsIn("extraterrestrial.csv").filter(({ kind }) => kind === "day");
  test("agrees with every day of the evaluated series within 0.001 MJ/m²", () => {
    expect(days.length).toBeGreaterThan(100);
    for (const row of days) {
      const got = run("CLIMATE.EXTRATERRESTRIAL", numberIn(row, "latitude_deg"), numberIn(row, "day_or_month"), "SI");
      expect(Math.abs(3.6 * Number(got) - numberIn(row, "H0_spencer_1361_MJ"))).toBeLessThan(0.001);
    }
  });

  test("refuses a latitude beyond the pole and a day of a leap year", () => {
    expect(refusal(run("CLIMATE.EXTRATERRESTRIAL", 91, 1))).toContain("#VALUE! latitude");
    expect(refusal(run("CLIMATE.EXTRATERRESTRIAL", 40, 366))).toContain("#VALUE! day");
  });
});

describe("CLIMATE.PLACES", () => {
  test("lists the 22 stations with position and altitude as in the data", () => {
    const out = table(run("CLIMATE.PLACES", "SI"));
    expect(out).toHaveLength(23);
    STATIONS.forEach((wmo, place) => {
      const [row] = rowsOf(wmo);
      const line = out[place + 1] ?? [];
      expect([line[2], line[3], line[4], line[5]]).toEqual([
        numberIn(row!, "latitude_deg"),
        numberIn(row!, "longitude_deg"),
        numberIn(row!, "altitude_m"),
        wmo,
      ]);
    });
  });
});

describe("CLIMATE.MONTHS", () => {
  const COLUMNS = [
    ["air", "air_mean_degC", 0.0051],
    ["swing", "daily_swing_mean_K", 0.0051],
    ["humidity", "humidity_mean_frac", 0.000051],
    ["wind at 10 m", "wind_mean_m_s", 0.00051],
    ["sun", "sun_kWh_m2_day", 0.0011],
    ["vapour pressure", "vapour_pressure_mean_kPa", 0.0004],
  ] as const;

  test.each(STATIONS)("station %s keeps its twelve months to the digits of the data", (wmo) => {
    const out = months(wmo);
    for (const [name, from, tolerance] of COLUMNS)
      column(out, name).forEach((got, month) =>
        expect(Math.abs(got - numberIn(rowsOf(wmo)[month]!, from)), `${name} ${month}`).toBeLessThan(tolerance),
      );
  });

  test("finds a station by part of its name, with or without its state", () => {
    const named = ["Miami", "miami, FL", "Miami Intl Ap", "722020"].map((name) => months(name)[1]?.[7]);
    expect(new Set(named)).toEqual(new Set(["Miami Intl Ap, FL"]));
    expect(months("o'hare")[1]?.[7]).toBe("Chicago Ohare Intl Ap, IL");
  });

  test("refuses a name that fits several stations or none, and says which come near", () => {
    expect(refusal(run("CLIMATE.MONTHS", "Intl Ap"))).toMatch(/#VALUE! place: .*Phoenix.*give more of the name/);
    expect(refusal(run("CLIMATE.MONTHS", "Springfield"))).toContain("latitude and longitude");
    expect(refusal(run("CLIMATE.MONTHS"))).toContain("#VALUE! place");
    expect(refusal(run("CLIMATE.MONTHS", "", 40))).toContain("longitude: is blank");
  });

  test("takes the nearest station and tells the published distance", () => {
    const near = months("", 39.83, -104.65);
    expect(near[1]?.[7]).toBe("Denver Intl Ap, CO");
    expect(Number(months("Denver", 40.13, -105.24)[1]?.[8])).toBeCloseTo(60.33, 2);
    expect(months("Somewhere of my own", 33.5, -112)[1]?.[7]).toBe("Phoenix Sky Harbor Intl Ap, AZ");
  });

  test.each([
    ["Denver to Broomfield", [39.83, -104.65], [40.13, -105.24], 60.33, 0.01],
    ["Atlanta to Miami", [33.63, -84.43], [25.82, -80.3], 955.4, 0.1],
    ["Seattle to Boston", [47.68, -122.25], [42.37, -71.02], 3994.8, 0.1],
    ["across the date line", [0, 179], [0, -179], 222.39, 0.01],
  ] as const)("the distance %s agrees with the evaluated one", (_, [a, l], [b, m], km, tolerance) => {
    const found = distanceBetween({ latitude: a, longitude: l }, { latitude: b, longitude: m }) / 1000;
    expect(Math.abs(found - km)).toBeLessThan(tolerance);
  });

  test("cautions over 300 km and refuses over 1,000 km", () => {
    expect(codes("CLIMATE.MONTHS", "", 44, -108, null, "SI")).toContain("CLIMATE-DISTANT");
    expect(codes("CLIMATE.MONTHS", "", 39.8, -104.6, null, "SI")).not.toContain("CLIMATE-DISTANT");
    expect(refusal(run("CLIMATE.MONTHS", "", 51.5, 0, null, "SI"))).toMatch(/#N\/A place: .*more than 1000 km/);
    expect(refusal(run("CLIMATE.MONTHS", "Miami", 47, -122))).toMatch(/#N\/A place: .*mi away/);
  });

  test("lowers the air by 6.5 K/km and the vapour pressure with the air's, never over saturation", () => {
    const [low, high] = [months("Denver"), months("Denver", null, null, 2650)];
    column(low, "air").forEach((air, month) => expect(air - (column(high, "air")[month] ?? 0)).toBeCloseTo(6.5, 6));
    const share = (1 - 2.25577e-5 * 2650) ** 5.25588 / (1 - 2.25577e-5 * 1650) ** 5.25588;
    expect((column(high, "vapour pressure")[6] ?? 0) / (column(low, "vapour pressure")[6] ?? 1)).toBeCloseTo(share, 6);
    expect(codes("CLIMATE.MONTHS", "Denver", null, null, 2650, "SI")).toContain("CLIMATE-ALTITUDE");
    assert(
      property(double({ min: -400, max: 4900, noNaN: true }), (z) => {
        for (const humidity of column(months("Seattle", null, null, z), "humidity")) {
          expect(humidity).toBeGreaterThan(0);
          expect(humidity).toBeLessThanOrEqual(1);
        }
      }),
    );
  });

  test("POOL.YEAR takes the rows as they spill", () => {
    const inputs = [
      ["pool area", 100],
      ["latitude", 25.82],
      ["water depth", 1.5],
    ];
    const year = table(run("POOL.YEAR", inputs, months("Miami"), "SI"));
    expect(year).toHaveLength(14);
    const us = table(run("CLIMATE.MONTHS", "Miami"));
    const again = table(run("POOL.YEAR", inputs, us, "SI"));
    expect(Number(again[13]?.[15]) / Number(year[13]?.[15])).toBeCloseTo(1, 6);
  });
});

describe("the hours made of twelve rows", () => {
  test("keep the given mean vapour pressure but for nights held at saturation, which take off up to 3.3 %", () => {
    let worst = 0;
    for (const wmo of STATIONS) {
      const made = hoursFromMonths(
        admitClimate(months(wmo), "SI"),
        numberIn(rowsOf(wmo)[0]!, "latitude_deg") / 57.2958,
      );
      monthlyMeans(made.vapour).forEach((mean, month) => {
        const given = 1000 * numberIn(rowsOf(wmo)[month]!, "vapour_pressure_mean_kPa");
        worst = Math.max(worst, Math.abs(mean / given - 1));
      });
    }
    expect(worst).toBeLessThan(0.035);
  });
});

describe("CLIMATE.CHECK", () => {
  const verdicts = (out: CellMatrix) => Object.fromEntries(out.slice(1).map((row) => [row[0], row[4]]));
  const check = (climate: CellMatrix, latitude: number) => table(run("CLIMATE.CHECK", climate, latitude, "SI"));
  const latitudeOf = (wmo: string): number => numberIn(rowsOf(wmo)[0]!, "latitude_deg");

  test.each(STATIONS)("finds the months of station %s fine at their own latitude", (wmo) => {
    const found = verdicts(check(months(wmo), latitudeOf(wmo)));
    expect(Object.keys(found).length).toBeGreaterThan(7);
    expect(new Set(Object.values(found)), JSON.stringify(found)).toEqual(new Set(["fine"]));
  });

  test.each(STATIONS)("finds the months of station %s impossible with the latitude's sign turned", (wmo) => {
    const found = verdicts(check(months(wmo), -latitudeOf(wmo)));
    expect(found["season of the sun"]).toBe("impossible");
    expect(found["clearness of the sun"]).toBe("impossible");
  });

  const changed = (wmo: string, name: string, change: (value: number, month: number) => number): CellMatrix => {
    const out = months(wmo);
    const at = (out[0] ?? []).findIndex((head) => String(head).replace(/ \(.*/, "") === name);
    return out.map((row, month) => row.map((cell, i) => (month > 0 && i === at ? change(Number(cell), month) : cell)));
  };

  test("names units that are swapped", () => {
    const mph = verdicts(
      check(
        changed("724940", "wind at 10 m", (v) => 2.237 * v),
        37.62,
      ),
    );
    expect(mph["wind at 10 m, year"]).toBe("unlikely");
    const low = check(
      changed("725650", "sun", (v) => v / 3.6),
      39.83,
    );
    expect(verdicts(low)["clearness of the sun"]).not.toBe("fine");
    expect(low.find(([name]) => name === "clearness of the sun")?.[5]).toContain("kWh/(m²·day) in a column of MJ");
    const high = changed("725650", "sun", (v) => 1.6 * v);
    expect(verdicts(check(high, 39.83))["clearness of the sun"]).toBe("impossible");
    const swing = changed("725650", "swing", (v) => 1.8 * v);
    expect(verdicts(check(swing, 39.83))["daily swing of the air"]).not.toBe("fine");
    const dry = verdicts(
      check(
        changed("725650", "humidity", (v) => v / 3),
        39.83,
      ),
    );
    expect(dry["humidity beside vapour pressure"]).toBe("impossible");
  });

  test("finds months that are shifted by half a year", () => {
    const out = months("725650");
    const shifted = [out[0]!, ...out.slice(7), ...out.slice(1, 7)];
    expect(verdicts(check(shifted, 39.83))["season of the sun"]).toBe("impossible");
    expect(codes("CLIMATE.CHECK", shifted, 39.83, "SI")).toContain("CLIMATE-IMPOSSIBLE");
  });
});
