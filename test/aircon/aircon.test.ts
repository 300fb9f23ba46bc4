import { standardDeviation } from "../../core/numeric/series";
import { assert, double, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { capacityCurve, inputCurve } from "../../core/cycle/machine/equations";
import { performanceAtOutdoor } from "../../core/cycle/machine/outdoorRating";
import { yearOfLoad, type LoadModel } from "../../core/aircon/fullLoadHours";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";
import { us } from "../../core/kernel/values/quantity";
import { goldenRows } from "../refrigerant/goldenRows";

const published = new Map(goldenRows("air-conditioner.csv").map((row) => [row.word("id"), row]));
const agrees = (id: string, got: unknown, slack = 0): void => {
  const row = published.get(id);
  expect(row, id).toBeDefined();
  expect(Math.abs(Number(got) - (row?.number("expected") ?? Number.NaN)), id).toBeLessThanOrEqual(
    (row?.number("tolerance") ?? 0) + slack,
  );
};

type Cell = string | number | null | readonly (readonly (string | number)[])[];
const run = (id: string, ...raw: readonly Cell[]) => evaluate(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE);
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));
const degF = (value: number): number => us("temperature", value);

describe("heat rejected", () => {
  it("agrees with condenser selection practice, whose round 3,413 and 2,545 BTU differ by 0.01 %", () => {
    agrees("H15", run("AIRCON.REJECTED", 36000, 3), 2);
    agrees("H16", run("AIRCON.REJECTED", 36000, "4 hp"), 2);
  });

  it("heat rejected is the cooling times 1 + 1/COP, or 1 + 3.412/EER", () => {
    agrees("H17", Number(run("AIRCON.REJECTEDBYRATING", 100, 4, null, "SI")) / 100);
    agrees("H18", Number(run("AIRCON.REJECTEDBYRATING", 36000, 12)) / 36000);
  });

  it("heat rejected is the same by power and by rating", () =>
    assert(
      property(
        double({ min: 5000, max: 500_000, noNaN: true }),
        double({ min: 6, max: 20, noNaN: true }),
        double({ min: 0, max: 0.2, noNaN: true }),
        (cooling, rating, fan) => {
          const power = cooling / rating / 1000;
          const byPower = Number(run("AIRCON.REJECTED", cooling, power, fan * power));
          expect(Number(run("AIRCON.REJECTEDBYRATING", cooling, rating, fan * power)) / byPower).toBeCloseTo(1, 9);
          expect(byPower).toBeGreaterThan(cooling);
        },
      ),
    ));

  it("is the same quantity by AIRCON.ATOUTDOOR at its rating condition, outdoor fan and all", () => {
    const rows = run("AIRCON.ATOUTDOOR", 48_000, 4.17, 95, null, 0.25) as readonly (readonly (string | number)[])[];
    const rejected = Number(rows.find(([label]) => label === "rejected")?.[1]);
    expect(rejected / Number(run("AIRCON.REJECTED", 48_000, 4.17, 0.25))).toBeCloseTo(1, 9);
  });

  it("suspects a seasonal rating from 13 on, the least that is sold, and names the EER beside it", () => {
    const caution = (rating: number): string =>
      explain(compile(lookUp(CATALOGUE, "AIRCON.REJECTEDBYRATING")!), [48_000, rating], CATALOGUE).cautions.find(
        ({ code }) => code === "AIRCON-MAY-BE-SEER",
      )?.text ?? "";
    for (const rating of [13, 13.4, 16]) expect(caution(rating), String(rating)).toContain("may be a SEER");
    expect(caution(13.4)).toContain("10.59 BTU/(W·h) to 11.52 BTU/(W·h)");
    for (const rating of [9, 11.5, 12.9]) expect(caution(rating), String(rating)).toBe("");
    // Published pairs: SEER 13 with EER 11.2, SEER 16 to 21 with 0.79 to 0.82 of it.
    expect(caution(13)).toContain("11.18 BTU/(W·h)");
  });

  it("refuses a fan that takes more than the machine", () => {
    expect(refusal(run("AIRCON.REJECTED", 36000, 3, 3))).toMatch(/#VALUE! outdoorFan: must be below power \(3 kW\)/);
    expect(refusal(run("AIRCON.REJECTEDBYRATING", 36000, 12, 4))).toContain("#VALUE! outdoorFan");
    expect(refusal(run("AIRCON.ATOUTDOOR", 36000, 3, 95, null, 3))).toContain("below ratedPower (3 kW), got 3 kW");
  });
});

describe("a single-speed machine by outdoor temperature", () => {
  const at = (outdoor: number) => ({ Twb: degF(67), To: degF(outdoor) });

  it("follows the published curves", () => {
    agrees("H22", capacityCurve.code(at(82)));
    agrees("H24", capacityCurve.code(at(95)));
    agrees("H28", capacityCurve.code(at(115)));
    agrees("H25", inputCurve.code(at(95)));
    agrees("H27", inputCurve.code(at(105)));
  });

  it("reads its rating at the rating condition", () => {
    const machine = performanceAtOutdoor({ cooling: 26_000, power: 8000 }, degF(95), degF(67));
    expect(machine.cooling).toBeCloseTo(26_000, 6);
    expect(machine.power).toBeCloseTo(8000, 6);
  });

  it("cools less, takes more power and rejects its cooling and power when it is hotter outdoors", () =>
    assert(
      property(
        double({ min: 65, max: 114, noNaN: true }),
        double({ min: 60, max: 72, noNaN: true }),
        (outdoor, wetBulb) => {
          const rated = { cooling: 26_000, power: 8000 };
          const here = performanceAtOutdoor(rated, degF(outdoor), degF(wetBulb));
          const hotter = performanceAtOutdoor(rated, degF(outdoor + 1), degF(wetBulb));
          expect(hotter.cooling).toBeLessThan(here.cooling);
          expect(hotter.COP).toBeLessThan(here.COP);
          expect(here.rejected).toBeCloseTo(here.cooling + here.power, 6);
        },
      ),
    ));

  it("takes 1.3 to 1.6 % more power for each degree near the rating condition", () => {
    const power = (outdoor: number) => performanceAtOutdoor({ cooling: 1, power: 1 }, degF(outdoor), degF(67)).power;
    const slope = (power(100) - power(90)) / 10 / power(95);
    expect(slope).toBeGreaterThan(0.013);
    expect(slope).toBeLessThan(0.016);
  });

  it("refuses conditions outside the curves, with their range", () => {
    expect(refusal(run("AIRCON.ATOUTDOOR", 90000, 8, 60))).toMatch(/#N\/A outdoor: .*65 °F to 115 °F, got 60 °F/);
    expect(refusal(run("AIRCON.ATOUTDOOR", 90000, 8, 90, 80))).toMatch(/#N\/A indoorWetBulb: .*57 °F to 75 °F/);
    expect(refusal(run("AIRCON.ATOUTDOOR", 90000, 8, 65))).not.toContain("#");
    expect(refusal(run("AIRCON.ATOUTDOOR", 90000, 8, 115, 75))).not.toContain("#");
  });
});

const climate = goldenRows("monthly-climate.csv");
const cities = [...new Set(climate.map((row) => row.word("city")))];
const meansOf = (city: string): number[] =>
  climate.filter((row) => row.word("city") === city).map((row) => row.number("air_mean_degC") + 273.15);
const model = (means: readonly number[], design: number, balance = 65): LoadModel => ({
  balance: degF(balance),
  design: degF(design),
  yearlySpread: standardDeviation(means),
});
const hoursOf = (means: readonly number[], used: LoadModel): number =>
  yearOfLoad(means, used).reduce((sum, { time }) => sum + time / 3600, 0);

describe("equivalent full-load hours", () => {
  it("the degree-days behind the hours agree with ten typical years within 10 %, or 100 K·days where there are few", () => {
    expect(cities).toHaveLength(10);
    for (const city of cities) {
      const counted = climate
        .filter((row) => row.word("city") === city)
        .reduce((sum, row) => sum + row.number("cdd_mean24_Kd"), 0);
      const means = meansOf(city);
      // A design temperature out of reach leaves the degree-days alone.
      const used = model(means, 230);
      const degreeDays = (hoursOf(means, used) / 24) * (used.design - used.balance);
      expect(Math.abs(degreeDays - counted), city).toBeLessThanOrEqual(Math.max(0.1 * counted, 100));
    }
  });

  it("the published hours of offices are 50 to 80 % of these round-the-clock ones, those of schools 30 to 50 %", () => {
    const design: Readonly<Record<string, number>> = { "miami-fl": 91, "houston-tx": 95, "phoenix-az": 108 };
    const places = [
      ["H35", "miami-fl", "office"],
      ["H37", "houston-tx", "office"],
      ["H41", "miami-fl", "school"],
      ["H42", "phoenix-az", "school"],
    ] as const;
    for (const [id, city, use] of places) {
      const means = meansOf(city);
      const share = (published.get(id)?.number("expected") ?? 0) / hoursOf(means, model(means, design[city] ?? 95));
      expect(share, `${id} ${city} ${use}`).toBeGreaterThan(use === "office" ? 0.5 : 0.3);
      expect(share, `${id} ${city} ${use}`).toBeLessThan(use === "office" ? 0.8 : 0.5);
    }
  });

  it("the hours rank cities as the published tables do: the longer the season, the more hours", () => {
    const [miami, houston, boston] = ["miami-fl", "houston-tx", "boston-ma"].map((city) => {
      const means = meansOf(city);
      return hoursOf(means, model(means, 93));
    });
    expect(miami).toBeGreaterThan(houston ?? 0);
    expect(houston).toBeGreaterThan(boston ?? 0);
    expect(published.get("H35")!.number("expected")).toBeGreaterThan(published.get("H37")!.number("expected"));
    expect(published.get("H39")!.number("expected")).toBeGreaterThan(published.get("H38")!.number("expected"));
  });

  it("the hours never exceed those of the year, fall with a higher balance or design, and rise with warmth", () =>
    assert(
      property(
        double({ min: 240, max: 300, noNaN: true }),
        double({ min: 0, max: 15, noNaN: true }),
        double({ min: 50, max: 80, noNaN: true }),
        double({ min: 10, max: 45, noNaN: true }),
        (coldest, swing, balance, span) => {
          const means = Array.from(
            { length: 12 },
            (_, month) => coldest + swing * (month < 6 ? month / 6 : 2 - month / 6),
          );
          const used = model(means, balance + span, balance);
          const hours = hoursOf(means, used);
          expect(hours).toBeGreaterThanOrEqual(0);
          expect(hours).toBeLessThanOrEqual(8760);
          expect(hoursOf(means, { ...used, balance: used.balance + 1 })).toBeLessThanOrEqual(hours);
          expect(hoursOf(means, { ...used, design: used.design + 1 })).toBeLessThanOrEqual(hours);
          expect(
            hoursOf(
              means.map((mean) => mean + 1),
              used,
            ),
          ).toBeGreaterThanOrEqual(hours);
        },
      ),
    ));

  it("AIRCON.HOURS spills twelve months and the year", () => {
    const out = run(
      "AIRCON.HOURS",
      meansOf("miami-fl").map((mean) => [mean - 273.15]),
      "65 degF",
      "91 degF",
      null,
      "SI",
    );
    const table = out as readonly (readonly (string | number)[])[];
    expect(table).toHaveLength(14);
    expect(table[0]).toEqual([
      "month",
      "mean (°C)",
      "mean load",
      "full load hours (h)",
      "low stage hours (h)",
      "higher hours (h)",
      "electricity (kWh)",
    ]);
    const sum = table.slice(1, 13).reduce((total, row) => total + Number(row[3]), 0);
    expect(table[13]?.[0]).toBe("Year");
    expect(table[13]?.[3]).toBeCloseTo(sum, 9);
  });

  it("AIRCON.HOURS refuses eleven months, and a design at the balance temperature", () => {
    const year = Array.from({ length: 12 }, () => [70]);
    expect(refusal(run("AIRCON.HOURS", year.slice(1), 65, 95))).toContain("expected 12");
    expect(refusal(run("AIRCON.HOURS", year, 65, 66))).toMatch(/#VALUE! design: must be at least 5 °F above balance/);
  });
});
