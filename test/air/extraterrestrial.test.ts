import { describe, expect, test } from "vitest";
import { checkMonthlySun, extraterrestrialOfDay, extraterrestrialOfMonth } from "../../core/air/extraterrestrial";
import { us } from "../../core/kernel/values/quantity";
import { cellsIn, numberIn } from "../golden/rows";

const MEGA = 1e6;
const ROWS = cellsIn("extraterrestrial.csv").map((row) => ({
  kind: row["kind"],
  latitude: numberIn(row, "latitude_deg"),
  at: numberIn(row, "day_or_month"),
  spencer: numberIn(row, "H0_spencer_1361_MJ"),
}));

describe("sun above the air", () => {
  test.each(["day", "month"])("agrees with every row of the evaluated series by the %s, to its last digit", (kind) => {
    const rows = ROWS.filter((row) => row.kind === kind);
    expect(rows.length).toBeGreaterThan(100);
    for (const { latitude, at, spencer } of rows) {
      const found = kind === "day" ? extraterrestrialOfDay(latitude, at) : extraterrestrialOfMonth(latitude, at - 1);
      expect(Math.abs(found / MEGA - spencer), `${kind} ${at} at ${latitude}°`).toBeLessThan(0.001);
    }
  });

  // FAO Irrigation and Drainage Paper 56, example 8: 20° S, 3 September: 32.2 MJ/m². Its constant is 0.4 % larger and
  // its declination 0.7° lower so near the equinox.
  test("is 32.2 MJ/m² on 3 September at 20° south, as printed, to 2 %", () =>
    expect(Math.abs(extraterrestrialOfDay(-20, 246) / MEGA / 32.2 - 1)).toBeLessThan(0.02));
});

const MIAMI = cellsIn("weather-monthly.csv")
  .filter(({ city }) => city === "miami-fl")
  .map((row) => numberIn(row, "sun_kWh_m2_day") * 3.6 * MEGA);
const LATITUDE = 25.8;

describe("monthly sun beside the sun above the air", () => {
  test("finds nothing to say about measured sun at its own latitude", () => {
    expect(MIAMI).toHaveLength(12);
    expect(checkMonthlySun(LATITUDE, MIAMI)).toMatchObject({ above: [], unlikely: [], otherHemisphere: false });
  });

  test("knows sun of the other hemisphere", () => {
    const { above, unlikely, otherHemisphere } = checkMonthlySun(-LATITUDE, MIAMI);
    expect(above.length + unlikely.length).toBeGreaterThan(0);
    expect(otherHemisphere).toBe(true);
  });

  // 1,900 BTU/(ft²·day) in June at 29.9° south, where 1,651 arrive above the air by the older 1367 W/m².
  test("refuses June sun above the air's own", () => {
    const june = us("daily sun", 1900);
    expect(Math.abs(extraterrestrialOfMonth(-29.9, 5) / us("daily sun", 1651) - 1)).toBeLessThan(0.005);
    expect(checkMonthlySun(-29.9, [...MIAMI.slice(0, 5), june, ...MIAMI.slice(6)]).above).toContain(5);
  });

  test.each([
    ["kWh/m² taken for BTU/ft²", 3.6 * MEGA, us("daily sun", 1)],
    ["W/m² taken for BTU/ft²", 86_400, us("daily sun", 1)],
  ])("finds %s unlikely in every month", (_, from, to) => {
    const taken = MIAMI.map((sun) => (sun / from) * to);
    expect(checkMonthlySun(LATITUDE, taken).unlikely).toHaveLength(12);
  });

  test("keeps quiet about the polar night and refuses sun in it", () => {
    const dark = Array.from({ length: 12 }, (_, month) => 0.5 * extraterrestrialOfMonth(80, month));
    expect(checkMonthlySun(80, dark)).toMatchObject({ above: [], unlikely: [] });
    expect(checkMonthlySun(80, [5 * MEGA, ...dark.slice(1)]).above).toEqual([0]);
  });
});
