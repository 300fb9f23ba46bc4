/** Cautions of the year and of the losses about realistic mistakes: each was silent before. */
import { describe, expect, test } from "vitest";
import { MOST_OUTSIDE } from "../../core/pool/losses/cautions";
import { extraterrestrialOfMonth } from "../../core/air/extraterrestrial";
import { BALANCE_INPUTS } from "../../core/exchanger/balance/inputs";
import { compile } from "../../core/kernel/call/evaluate";
import type { BlockShape } from "../../core/kernel/define/argument";
import { lookUp } from "../../core/kernel/define/catalogue";
import { rawOfExample } from "../../core/kernel/explain/describe";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";
import { poolFunctions } from "../../core/pool";
import { MIAMI_MACHINE, MIAMI_MONTHS, MIAMI_POOL } from "../../core/pool/data/miami";
import {
  GREATEST_CONDENSING_ON_WATER,
  WARMEST_LEAVING_WATER,
  extremeOf,
  hourText,
} from "../../core/pool/year/extremes";

type Matrix = readonly (readonly (string | number)[])[];
type Block = Readonly<Record<string, string | number>>;

const explained = (id: string, raw: readonly unknown[]) => {
  const definition = lookUp(poolFunctions, id);
  if (definition === undefined) throw new Error(id);
  return explain(compile(definition), raw, poolFunctions, { steps: false });
};

const yearWith = (inputs: Block, climate: Matrix = MIAMI_MONTHS) =>
  explained("POOL.YEAR", [rawOfExample({ ...MIAMI_POOL, ...inputs }), climate, "SI"]);

const textOf = (code: string, inputs: Block, climate?: Matrix): string =>
  yearWith(inputs, climate).cautions.find((each) => each.code === code)?.text ?? "";

const refusalOf = (inputs: Block, climate: Matrix): string => {
  const { out } = yearWith(inputs, climate);
  return isFault(out) ? out.message : "";
};

/** The column of sun under another head or times a factor. */
const sunBy = (change: (sun: number) => number, head = "sun (kWh/(m²·day))"): Matrix =>
  MIAMI_MONTHS.map((line, row) =>
    line.map((cell, column) => (column !== 4 ? cell : row === 0 ? head : change(Number(cell)))),
  );

describe("a clock hour below 1", () => {
  test.each([
    ["pump start", { pumpStart: 0.3333 }, /^pump start is 0\.333, .* if 8:00 was meant, enter 8\.$/],
    // 24 is no clock hour.
    ["the day's last minute", { pumpStart: 0.9999 }, /^pump start is 1, .* if 23:59 was meant, enter 23\.98\.$/],
    [
      "draw start",
      {
        ...MIAMI_MACHINE,
        secondSink: "preheat tank",
        hotWaterDraw: 1500,
        tankVolume: 1500,
        tankUA: 3000,
        drawStart: 0.25,
      },
      /^draw start is 0\.25, .* if 6:00 was meant, enter 6\.$/,
    ],
  ])("may be a cell's time of day: %s", (_label, inputs, says) =>
    expect(textOf("POOL-YEAR-CLOCK", inputs)).toMatch(says),
  );

  test.each([{ pumpStart: 0 }, { pumpStart: 1 }, { pumpStart: 8.5 }, { drawStart: 0.25 }])(
    "isn't where it is midnight, later, or of no tank: %j",
    (inputs) => expect(textOf("POOL-YEAR-CLOCK", inputs)).toBe(""),
  );
});

describe("the machine on a pool that is too warm for its exchanger", () => {
  const HOT = { ...MIAMI_MACHINE, exchangerUA: 2000, highLimit: 36 };

  test("warns of condensing above 130 °F with the hours and the worst hour", () =>
    expect(textOf("POOL-YEAR-HOT", HOT)).toMatch(
      /^In \d+ h of the year .* above 54\.44 °C .* at worst at 5[4-9]\.\d+ °C \(\d+ \w{3}, \d+ h\)/,
    ));

  test("warns of water above 104 °F that returns to the pool", () =>
    expect(textOf("POOL-YEAR-HOT-WATER", HOT)).toMatch(/^In \d+ h .* above 40 °C, at worst at 4[0-9]/));

  test("is quiet with a larger exchanger and a lower limit", () => {
    const cool = { ...MIAMI_MACHINE, exchangerUA: 6000, highLimit: 30 };
    expect(textOf("POOL-YEAR-HOT", cool)).toBe("");
    expect(textOf("POOL-YEAR-HOT-WATER", cool)).toBe("");
  });

  test("takes the limits that EXCHANGER.BALANCE takes", () => {
    const { entries } = BALANCE_INPUTS.shape as BlockShape;
    expect(GREATEST_CONDENSING_ON_WATER).toBe(entries["greatestCondensing"]?.fallback);
    expect(WARMEST_LEAVING_WATER).toBe(entries["greatestLeavingWater"]?.fallback);
  });

  test("counts hours above a limit and names the first and the worst", () => {
    const values = [300, 305, 310, 302];
    expect(extremeOf(4, 301, (hour) => values[hour])).toEqual({
      time: 3 * 3600,
      first: "1 Jan, 1 h",
      when: "1 Jan, 2 h",
      worst: 310,
    });
    expect(hourText(8759)).toBe("31 Dec, 23 h");
  });
});

describe("the sun of a climate", () => {
  test("sun above the extraterrestrial is refused with month and ratio", () => {
    const most = extraterrestrialOfMonth(25.82, 0) / 3.6e6;
    const text = refusalOf(
      {},
      sunBy((sun) => 2 * sun),
    );
    expect(text).toContain(`climate, Jan, sun: must be at most the sun above the air at latitude 25.82`);
    expect(text).toContain(`${((3.4841 * 2) / most).toFixed(2)} times as much`);
  });

  test("sun of the other hemisphere is refused or cautioned with the latitude that it fits", () => {
    expect(textOf("POOL-YEAR-SUN", { latitude: -25.82 })).toContain("it fits latitude 25.82 (south is negative)");
    expect(refusalOf({ latitude: -35 }, MIAMI_MONTHS)).toMatch(/latitude -35/);
  });

  test("months of the other hemisphere beyond the tropics and gales in every month are refused", () => {
    const dull = sunBy((sun) => 0.5 * sun);
    expect(refusalOf({ latitude: -42 }, dull)).toMatch(/^climate, .*season of the sun: .* got -0\.\d+.*hemisphere/);
    const gales = MIAMI_MONTHS.map((row) => row.map((cell, at) => (at === 3 && typeof cell === "number" ? 25 : cell)));
    expect(refusalOf({}, gales)).toMatch(/wind at 10 m, months: .* got 25/);
  });

  test("wind of miles an hour in a column of m/s is cautioned with the number that shows it", () => {
    const mph = MIAMI_MONTHS.map((row) =>
      row.map((cell, at) => (at === 3 && typeof cell === "number" ? 2.237 * cell : cell)),
    );
    expect(textOf("POOL-YEAR-WEATHER", {}, mph)).toMatch(/^Unlikely weather: wind at 10 m, .*mph read as m\/s/);
    expect(textOf("POOL-YEAR-WEATHER", {})).toBe("");
  });

  test("kWh in a column of BTU is cautioned with the ratio and the slip", () =>
    expect(
      textOf(
        "POOL-YEAR-SUN",
        {},
        sunBy((sun) => sun, "sun (BTU/(ft²·day))"),
      ),
    ).toMatch(/^Sun: 0\.00\d+ of the sun above the air.*perhaps kWh\/\(m²·day\) in a column of BTU\/\(ft²·day\)/));

  test("measured sun at its own latitude raises nothing", () => expect(textOf("POOL-YEAR-SUN", {})).toBe(""));

  test("POOL.LOSSES names sun that is hardly any, and sun that no month has", () => {
    const losses = (sunOnWater: number) =>
      explained("POOL.LOSSES", [
        rawOfExample({
          poolArea: 800,
          poolTemperature: 82,
          airTemperature: 70,
          humidity: 0.6,
          windAtWater: 3,
          sunOnWater,
        }),
      ]).cautions.find(({ code }) => code === "POOL-SUN")?.text ?? "";
    expect(losses(5.5)).toMatch(/hardly any; as kWh.* 1,?743/);
    expect(losses(3500)).toMatch(
      /^3500 BTU\/\(ft²·day\) of sun is 0\.90 of 3901 BTU\/\(ft²·day\), the most above the air in any month at any latitude between the polar circles/,
    );
    expect(losses(1700)).toBe("");
  });

  test("the month with most sun above the air between the polar circles has 44.3 MJ/m² a day", () => {
    let most = 0;
    for (let latitude = -66; latitude <= 66; latitude++)
      for (let month = 0; month < 12; month++) most = Math.max(most, extraterrestrialOfMonth(latitude, month));
    expect(most).toBeLessThan(MOST_OUTSIDE);
    expect(most / MOST_OUTSIDE).toBeCloseTo(1, 2);
  });
});

describe("prices and load of the year", () => {
  test("electricity at 15 is taken for cents, gas at 14 for an MMBTU or Mcf", () => {
    expect(textOf("UNUSUAL-INPUT", { ...MIAMI_MACHINE, electricityPrice: 15 })).toMatch(/electricity price.*in cents/);
    const gas = { ...MIAMI_POOL, backUpSource: "natural gas", backUpPrice: 14, electricityPrice: 0.15 };
    const raw = [rawOfExample({ ...gas, poolArea: 1000, waterDepth: 5, setPoint: 82 }), MIAMI_MONTHS];
    expect(explained("POOL.YEAR", raw).cautions.find(({ code }) => code === "UNUSUAL-INPUT")?.text).toMatch(
      /back up price: 14 money\/therm.*MMBTU or Mcf/,
    );
  });

  test("a design load left out is cautioned with the load taken, a load given is not", () => {
    expect(textOf("POOL-YEAR-DESIGN-LOAD", MIAMI_MACHINE)).toContain("26.4 kW");
    expect(textOf("POOL-YEAR-DESIGN-LOAD", { ...MIAMI_MACHINE, designLoad: 20 })).toBe("");
    expect(textOf("POOL-YEAR-DESIGN-LOAD", {})).toBe("");
  });
});

describe("a high limit that the pool passes", () => {
  test("says by how much and when, and advises no limit that is set", () => {
    const limited = { ...MIAMI_MACHINE, highLimit: 29 };
    expect(textOf("POOL-YEAR-OVER-LIMIT", limited)).toMatch(
      /29 °C by up to 3\.\d+ K: for \d+ h, first on \d+ \w{3}, \d+ h/,
    );
    expect(textOf("POOL-WARM", limited)).not.toContain("Set a high limit");
  });
});

describe("heads of the climate", () => {
  const heads = (names: readonly string[]): Matrix => [names, ...MIAMI_MONTHS.slice(1)];

  test("heads as weather files write them give the same year", () => {
    const other = heads(["Tdb (°C)", "diurnal range (K)", "RH", "WS10m (m/s)", "GHI (kWh/(m²·day))", "mains (°C)"]);
    expect(yearWith({}, other).out).toEqual(yearWith({}).out);
  });

  test("high and low give mean air and swing", () => {
    const lines = MIAMI_MONTHS.map((line, row) => {
      const [air = 0, swing = 0, ...rest] = line;
      if (row === 0) return ["high (°C)", "low (°C)", ...rest];
      return [Number(air) + Number(swing) / 2, Number(air) - Number(swing) / 2, ...rest];
    });
    const [made, plain] = [
      yearWith({}, lines).out,
      yearWith({}).out,
    ] as unknown as readonly (readonly (readonly number[])[])[];
    expect(made?.at(-1)?.[13]).toBeCloseTo(plain?.at(-1)?.[13] ?? NaN, 6);
  });

  test("high below low is refused by its row", () =>
    expect(
      refusalOf({}, heads(["low (°C)", "high (°C)", "humidity", "wind", "sun (kWh/(m²·day))", "mains (°C)"])),
    ).toMatch(/climate, row 2, high: is below low/));

  test("a misspelt head suggests what it looks like, another one lists the columns", () => {
    const named = (head: string) => refusalOf({}, heads(["air (°C)", "swing (K)", head, "wind", "sun", "mains (°C)"]));
    expect(named("humidty")).toMatch(/no column "humidty" here; the nearest is "humidity"/);
    expect(named("station number")).toMatch(/columns are air, high, low/);
  });
});
