import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { admitClimate } from "../../../core";
import { readEpw } from "../../../src/workbook/weather/epw";
import { readWeather } from "../../../src/workbook/weather/weather";
import { cellsIn, numberIn } from "../../golden/rows";

interface Hour {
  readonly month: number;
  readonly day: number;
  /** The hour that ends then, 1 to 24. */
  readonly hour: number;
  readonly air: number;
  readonly dewPoint: number;
  readonly humidity: number;
  readonly wind: number;
  readonly sun: number;
  readonly pressure: number;
  readonly cloud: number;
}

/** The typical year of Chicago, hour by hour. */
const CHICAGO: readonly Hour[] = cellsIn("weather-chicago-il.csv").map((row) => ({
  month: numberIn(row, "month"),
  day: numberIn(row, "day"),
  hour: numberIn(row, "hour"),
  air: numberIn(row, "air_degC"),
  dewPoint: numberIn(row, "dewpoint_degC"),
  humidity: numberIn(row, "humidity_frac"),
  wind: numberIn(row, "wind_m_s"),
  sun: numberIn(row, "global_horizontal_W_m2"),
  pressure: numberIn(row, "pressure_Pa"),
  cloud: numberIn(row, "cloud_tenths"),
}));
const MONTHS = cellsIn("weather-months-22.csv").filter(({ wmo }) => wmo === "725300");

const PLACE = { latitude: 41.98, longitude: -87.92, utc: -6, altitude: 201 };
const HEADER = (place: typeof PLACE): readonly string[] => [
  `LOCATION,Fernhill (invented),IL,USA,TMY3,725300,${place.latitude},${place.longitude},${place.utc},${place.altitude}`,
  "DESIGN CONDITIONS,0",
  "TYPICAL/EXTREME PERIODS,0",
  "GROUND TEMPERATURES,0",
  "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
  'COMMENTS 1,"quoted, with a comma"',
  "COMMENTS 2",
  "DATA PERIODS,1,1,Data,Sunday, 1/ 1,12/31",
];
const epwRow = (h: Hour): string =>
  `1990,${h.month},${h.day},${h.hour},0,?,${h.air},${h.dewPoint},${100 * h.humidity},${h.pressure},9999,0,300,${h.sun},0,0,0,0,0,0,180,${h.wind},${h.cloud},${h.cloud},16,700,9,999999999`;
const epw = (hours: readonly Hour[], place: Partial<typeof PLACE> = {}): string =>
  [...HEADER({ ...PLACE, ...place }), ...hours.map(epwRow)].join("\r\n");

/** Each hour changed by its place in the year. */
const changed = (change: (hour: Hour, at: number) => Partial<Hour>): readonly Hour[] =>
  CHICAGO.map((hour, at) => ({ ...hour, ...change(hour, at) }));

/** The hours with the sun of `by` hours later. */
const sunMoved = (by: number, from = 0, to = 8760): readonly Hour[] =>
  changed((hour, at) => ({ sun: at >= from && at < to ? (CHICAGO[(at + by + 8760) % 8760]?.sun ?? 0) : hour.sun }));

const faults = (text: string): string => readWeather(text, false).faults.join("\n");

const compareMonths = (rows: readonly (readonly (string | number)[])[], slack = 1): void => {
  const columns = [
    ["air_mean_degC", 1, 0.006],
    ["daily_swing_mean_K", 2, 0.006],
    ["humidity_mean_frac", 3, 0.0001],
    ["wind_mean_m_s", 4, 0.001],
    ["sun_kWh_m2_day", 5, 0.0002],
    ["vapour_pressure_mean_kPa", 6, 0.002],
  ] as const;
  expect(rows).toHaveLength(13);
  for (const [name, at, tolerance] of columns)
    MONTHS.forEach((month, place) =>
      expect(Math.abs(Number(rows[place + 1]?.[at]) - numberIn(month, name)), `${name} ${place}`).toBeLessThan(
        slack * tolerance,
      ),
    );
};

describe("an EPW file", () => {
  const read = readWeather(epw(CHICAGO), false);

  test("gives the published monthly means of its station", () => {
    expect(MONTHS).toHaveLength(12);
    compareMonths(read.rows);
  });

  test("gives station, position and source, and no fault where there is none", () => {
    expect(read).toMatchObject({
      station: "Fernhill (invented), IL, USA",
      latitude: 41.98,
      longitude: -87.92,
      altitude: 201,
    });
    expect(read.source).toContain("TMY3");
    expect(read.faults).toEqual([]);
  });

  test("gives 8,760 hours that POOL.YEAR admits, in order", () => {
    const { rows } = readWeather(epw(CHICAGO), true);
    expect(rows).toHaveLength(8761);
    const { monthly, columns } = admitClimate(rows, "SI");
    expect(monthly).toBe(false);
    expect(columns.air?.[4000]).toBeCloseTo((CHICAGO[4000]?.air ?? 0) + 273.15, 6);
    expect(columns.sun?.[4000]).toBe(CHICAGO[4000]?.sun);
    expect(columns.pressure?.[4000]).toBe(CHICAGO[4000]?.pressure);
  });

  test("of the first three days of a published file has their values and header", () => {
    const lines = readFileSync(new URL("../../golden/epw-denver-cut.epw", import.meta.url), "utf8").split("\n");
    const { hours, ...place } = readEpw(lines);
    expect(place).toMatchObject({
      station: "Denver Intl Ap, CO, USA",
      latitude: 39.83,
      longitude: -104.65,
      utc: -7,
      altitude: 1650,
    });
    expect([hours.air?.[0], hours.dewPoint?.[0], hours.humidity?.[0], hours.pressure?.[0]]).toEqual([
      -18, -19.7, 0.85, 83.7,
    ]);
    expect([hours.wind?.[0], hours.cloud?.[0], hours.air?.[1]]).toEqual([0, 2, -16.6]);
    expect(hours.air?.[72]).toBeNaN();
    expect(() => readWeather(lines.join("\n"), false)).toThrow(/air, .*missing for a year/);
  });

  test("drops 29 February and says so", () => {
    const leap = Array.from({ length: 24 }, (_, hour) => ({
      ...CHICAGO[0]!,
      month: 2,
      day: 29,
      hour: hour + 1,
      air: 60,
    }));
    const at = 24 * 59;
    const read = readWeather(epw([...CHICAGO.slice(0, at), ...leap, ...CHICAGO.slice(at)]), false);
    expect(read.faults.join()).toContain("29 February left out (24 hours)");
    compareMonths(read.rows);
  });

  test("names gaps, their length and how they were filled", () => {
    const short = faults(epw(changed((_, at) => (at >= 1000 && at < 1004 ? { air: 99.9 } : {}))));
    expect(short).toContain("air: 4 hours missing in 1 gaps, the longest 4 h; filled by a straight line");
    const long = faults(epw(changed((_, at) => (at >= 1000 && at < 1100 ? { sun: 9999 } : {}))));
    expect(long).toMatch(/sun: 100 hours missing .* filled by the same hour of the nearest days/);
    const rows = faults(epw(CHICAGO.filter((_, at) => at < 5000 || at >= 5002)));
    expect(rows).toContain("wind: 2 hours missing in 1 gaps");
  });

  test("leaves out a cloud column without values, and says what takes its place", () => {
    const found = readWeather(epw(changed(() => ({ cloud: 99 }))), true);
    expect(found.rows[0]).not.toContain("cloud");
    expect(found.faults.join()).toContain("cloud: no hour has a value");
  });

  test("without sun is refused", () => {
    expect(() => readWeather(epw(changed(() => ({ sun: 9999 }))), false)).toThrow("sun on a level surface: missing");
  });

  test.each([
    [1, "early", "1.0"],
    [-1, "late", "1.0"],
    [6, "early", "6.0"],
  ])("with its sun %d hours off is told that it stands %s", (by, word, hours) => {
    expect(faults(epw(sunMoved(by)))).toMatch(new RegExp(`the sun is (${hours}\\d|0.9\\d|5.9\\d) h ${word}`));
  });

  test("on a daylight-saving clock is found", () => {
    expect(faults(epw(sunMoved(-1, 24 * 90, 24 * 300)))).toContain("daylight-saving clock");
  });

  test("whose altitude contradicts its pressure is told both", () => {
    expect(faults(epw(CHICAGO, { altitude: 67 }))).toMatch(
      /the altitude says 67 m, but the mean pressure 99\.\d+ kPa fits 1[78]\d m/,
    );
    expect(
      faults(
        epw(
          changed(() => ({ pressure: 101_300 })),
          { altitude: 700 },
        ),
      ),
    ).toContain("pressure at sea level?");
  });

  test("of the other hemisphere by its latitude's sign is found", () => {
    expect(faults(epw(CHICAGO, { latitude: -41.98 }))).toMatch(/season of the sun .*impossible/);
  });

  test("with the wrong sign of its longitude is found", () => {
    expect(faults(epw(CHICAGO, { longitude: 87.92 }))).toContain("contradict longitude 87.92");
  });

  test("with a dew point above the air, or a humidity that isn't the dew point's, is found", () => {
    expect(faults(epw(changed((h) => ({ dewPoint: h.air + 1 }))))).toContain(
      "dew point is above the air in 8760 hours",
    );
    expect(faults(epw(changed((h) => ({ humidity: h.humidity / 2 }))))).toMatch(/disagree by \d+\.\d points/);
  });

  test("with a sensor that sticks is found", () => {
    expect(faults(epw(changed((_, at) => (at > 3000 && at < 3100 ? { air: 21.3 } : {}))))).toContain(
      "doesn't change for 99 hours",
    );
  });
});

const two = (value: number): string => String(value).padStart(2, "0");

describe("a TMY3 file", () => {
  const HEADS =
    "Date (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),GHI (W/m^2),GHI source,GHI uncert (%),TotCld (tenths),OpqCld (tenths),Dry-bulb (C),Dew-point (C),RHum (%),Pressure (mbar),Wdir (degrees),Wspd (m/s)";
  const row = (h: Hour): string =>
    `${two(h.month)}/${two(h.day)}/1988,${two(h.hour)}:00,0,${h.sun},1,8,10,${h.cloud},${h.air},${h.dewPoint},${100 * h.humidity},${h.pressure / 100},180,${h.wind}`;
  const text = ['725300,"FERNHILL (INVENTED)",IL,-6.0,41.980,-87.920,201', HEADS, ...CHICAGO.map(row)].join("\n");

  test("gives the published monthly means, its station and no fault", () => {
    const read = readWeather(text, false);
    compareMonths(read.rows);
    expect(read).toMatchObject({ station: "FERNHILL (INVENTED), IL", latitude: 41.98, altitude: 201, faults: [] });
  });

  test("marks -9900 as missing", () => {
    expect(faults(text.replace(",-12.2,", ",-9900,"))).toContain("air: 1 hours missing");
  });
});

describe("another table", () => {
  const start = (h: Hour): string => `${two(h.hour - 1)}`;

  test("of NSRDB with stamps at half past keeps the means", () => {
    const text = [
      "Source,Location ID,City,State,Country,Latitude,Longitude,Time Zone,Elevation,Local Time Zone",
      "NSRDB,1,-,-,-,41.98,-87.92,-6,201,-6",
      "Year,Month,Day,Hour,Minute,Temperature,Dew Point,Relative Humidity,GHI,Wind Speed,Pressure",
      ...CHICAGO.map(
        (h) =>
          `2019,${h.month},${h.day},${h.hour - 1},30,${h.air},${h.dewPoint},${100 * h.humidity},${h.sun},${h.wind},${h.pressure / 100}`,
      ),
    ].join("\n");
    const read = readWeather(text, false);
    compareMonths(read.rows);
    expect(read).toMatchObject({ latitude: 41.98, longitude: -87.92, altitude: 201 });
    expect(read.faults.join()).not.toContain("the sun is");
  });

  test("in universal time is shifted to the place's own", () => {
    const utc = CHICAGO.map((h, at) => {
      const clock = CHICAGO[(at + 6) % 8760]!;
      return `2018${two(clock.month)}${two(clock.day)}:${start(clock)}00,${h.air},${100 * h.humidity},${h.sun},${h.wind},${h.pressure}`;
    });
    const text = [
      "Latitude (decimal degrees): 41.980",
      "Longitude (decimal degrees): -87.920",
      "Elevation (m): 201",
      "time(UTC),T2m,RH,G(h),WS10m,SP",
      ...utc,
      "T2m: air at 2 m",
    ].join("\n");
    const read = readWeather(text, false);
    expect(read.faults.join()).toContain("shifted by -6 h");
    expect(read.faults.join()).toContain("stamps on the hour are its start, by the sun");
    expect(read.faults.join()).not.toContain("the sun is");
    compareMonths(
      read.rows
        .map((row) => row.slice(0, 6))
        .map((row, at) => [...row, at === 0 ? "" : numberIn(MONTHS[at - 1]!, "vapour_pressure_mean_kPa")]),
    );
  });

  test("of a logger in half hours, °F, mph and inHg, with AM and PM, keeps the means", () => {
    const F = (c: number): string => (1.8 * c + 32).toFixed(3);
    const text = [
      '"Plot Title: roof"',
      "Date & Time,Outdoor Temp (F),Hum (%),Solar Rad. (W/m2),Wind Speed (mph),Barometer (in)",
      ...CHICAGO.flatMap((h) =>
        [30, 0].map((minute) => {
          const hour = minute === 0 ? h.hour : h.hour - 1;
          const day = hour === 24 ? CHICAGO[(CHICAGO.indexOf(h) + 1) % 8760]! : h;
          const civil = hour % 24;
          const time = `${civil % 12 === 0 ? 12 : civil % 12}:${two(minute)} ${civil < 12 ? "AM" : "PM"}`;
          const year = day.month === 1 && day.day === 1 && hour === 24 ? 24 : 23;
          return `${day.month}/${day.day}/${year} ${time},${F(h.air)},${100 * h.humidity},${h.sun},${(h.wind / 0.44704).toFixed(4)},${(h.pressure / 3386.389).toFixed(4)}`;
        }),
      ),
    ].join("\n");
    const read = readWeather(text, false);
    compareMonths(
      read.rows.map((row, at) =>
        at === 0 ? row : [...row.slice(0, 6), numberIn(MONTHS[at - 1]!, "vapour_pressure_mean_kPa")],
      ),
      1.5,
    );
    expect(read.faults.join()).toContain("latitude is missing");
  });

  test("with units behind underscores keeps the means and guesses none", () => {
    const text = [
      "month,day,hour,air_degF,dewpoint_degC,humidity_frac,wind_m_s,global_horizontal_W_m2,pressure_Pa",
      ...CHICAGO.map(
        (h) =>
          `${h.month},${h.day},${h.hour},${1.8 * h.air + 32},${h.dewPoint},${h.humidity},${h.wind},${h.sun},${h.pressure}`,
      ),
    ].join("\n");
    const read = readWeather(text, false);
    compareMonths(read.rows);
    expect(read.source + read.faults.join()).not.toContain("no unit");
  });

  test("with semicolons, decimal commas and the day first keeps the means", () => {
    const comma = (value: number): string => String(value).replace(".", ",");
    const text = [
      "Datum;Station",
      "date;time;temperature (°C);dew point (°C);rh (%);ghi (W/m²);wind speed (km/h)",
      ...CHICAGO.map(
        (h) =>
          `${two(h.day)}.${two(h.month)}.2021;${two(h.hour)}:00;${comma(h.air)};${comma(h.dewPoint)};${comma(Math.round(100 * h.humidity))};${comma(h.sun)};${comma(3.6 * h.wind)}`,
      ),
    ].join("\r\n");
    compareMonths(readWeather(text, false).rows);
  });

  const table = CHICAGO.map(
    (h) =>
      `${new Date(Date.UTC(2021, h.month - 1, h.day, h.hour - 1, 30)).toISOString()},${h.air},60,${h.sun},${h.wind}`,
  );
  const HEAD = "date,temp,rh,ghi,ws";

  test("with the newest row first gives the same rows", () => {
    const rows = (lines: readonly string[]): unknown => readWeather([HEAD, ...lines].join("\n"), true).rows;
    expect(rows([...table].reverse())).toEqual(rows(table));
  });

  test("with the same time twice says so", () => {
    expect(faults([HEAD, ...table].join("\n"))).not.toMatch(/twice/);
    expect(faults([HEAD, ...table, ...table.slice(0, 24)].join("\n"))).toMatch(
      /24 times appear twice: their mean was taken/,
    );
  });

  test("that covers part of a year is refused with what it lacks", () => {
    const text = [
      "date,temp,rh,ghi,ws",
      ...CHICAGO.slice(0, 500).map((h) => `2021-01-${two(h.day)} ${start(h)}:00,${h.air},60,${h.sun},${h.wind}`),
    ].join("\n");
    expect(() => readWeather(text, false)).toThrow(/missing for a year/);
  });

  test.each([
    ["", "no EPW, no TMY3"],
    ["a,b\n1,2", "no EPW, no TMY3"],
    ["date,temp,rh\nyesterday,1,2", "no row has a date"],
    ["LOCATION,x\n1,2", "no line DATA PERIODS"],
  ])("that is no weather is refused: %j", (text, says) => expect(() => readWeather(text, false)).toThrow(says));
});
