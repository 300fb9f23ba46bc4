/** From the input block to the pool of the year, and its surface by the hour. Expected values by hand. */
import { describe, expect, test } from "vitest";
import type { YearInputs } from "../../core/pool/year/inputs";
import { capacityOf, setUpYear, siteOf } from "../../core/pool/year/setUp";
import { yearSurface, type YearSurface } from "../../core/pool/year/surface";
import type { Weather } from "../../core/pool/year/weather";
import { latentHeatOfWater } from "../../core/water/latentHeat";
import { ruledSurface } from "./yearHandMade";
import { DEFAULTS, openPool, steady } from "./yearPools";

const DAY = 86_400;
const HOUR = 3600;
const KWH = 3.6e6;
/** kg/m³: 8.33 lb/gal. */
const DENSITY = 998.15;
const STEADY = {
  air: 290,
  vapour: 1200,
  dewPoint: 283,
  wind: 2,
  sun: 500,
  cloud: 3,
  pressure: 101_325,
  mains: 285,
};
const WEATHER = steady(STEADY);

const inputs = (values: Partial<YearInputs> = {}): YearInputs =>
  ({ ...DEFAULTS, poolArea: 50, waterDepth: 2, setPoint: 300, latitude: 30, altitude: 0, ...values }) as YearInputs;
const setUp = (values: Partial<YearInputs> = {}, weather: Weather = WEATHER) => setUpYear(inputs(values), weather);

describe("the place", () => {
  test("has its latitude in radians, or none", () => {
    expect(siteOf(inputs({ latitude: 30 })).latitude).toBeCloseTo(Math.PI / 6, 12);
    expect(siteOf(inputs({ latitude: undefined })).latitude).toBeUndefined();
  });
});

describe("the pool's water", () => {
  test("is drawn by splash, backwash and leak together, less the rain, for each square metre", () => {
    // 0.3 + 0.2 + 0.1 m³ a day on 50 m²; 4 mm of rain a day.
    const { surface } = setUp({ splash: 0.3, backwash: 0.2, leak: 0.1, rain: 0.004 }).run;
    expect(surface.rain / (0.004 * (DENSITY / DAY))).toBeCloseTo(1, 4);
    expect(surface.drawn / ((0.6 / 50 - 0.004) * (DENSITY / DAY))).toBeCloseTo(1, 3);
  });

  test("holds the heat of its depth", () => {
    expect(setUp().run.capacity).toBe(capacityOf(inputs()));
    expect(capacityOf(inputs()) / (2 * DENSITY * 4186.8)).toBeCloseTo(1, 4);
  });

  test("loses to a ground as warm as the year's air where no other is given", () => {
    expect(setUp({ groundCoefficient: 1 }).run.surface.groundTemperature).toBeCloseTo(290, 9);
    expect(setUp({ groundCoefficient: 1, groundTemperature: 284 }).run.surface.groundTemperature).toBe(284);
    // Floor and four walls of a square pool of 50 m², 2 m deep.
    expect(setUp({ groundCoefficient: 1 }).run.surface.ground).toBeCloseTo(1 + (4 * Math.sqrt(50) * 2) / 50, 9);
  });

  test("loses by the surface rule alone where that is asked for", () => {
    const { surface } = setUp({ lossMethod: "surface rule", surfaceCoefficient: 60 }).run;
    expect([surface.airFilm[0], surface.evaporationFilm[0], surface.emission[0], surface.sky[0]]).toEqual([
      60, 0, 0, 0,
    ]);
    expect(setUp({ surfaceCoefficient: 60 }).run.surface.evaporationFilm[0]).toBeGreaterThan(0);
  });
});

describe("the cover", () => {
  const filmShares = (values: Partial<YearInputs>): readonly number[] => {
    const { evaporationFilm } = setUp({ cover: "solid", coveredShare: 1, ...values }).run.surface;
    const open = setUp().run.surface.evaporationFilm[0] ?? NaN;
    return [...evaporationFilm.slice(0, 24)].map((each) => Number((1 - each / open).toFixed(6)));
  };
  const SOLID = 0.939;

  test("lies for twelve hours about midnight where no time is given", () => {
    expect(filmShares({})).toEqual(Array.from({ length: 24 }, (_, hour) => (hour < 6 || hour >= 18 ? SOLID : 0)));
  });

  test("lies for part of the hour in which it comes on or off", () => {
    const shares = filmShares({ coverHours: 11 * HOUR });
    expect([4, 5, 6, 17, 18, 19].map((hour) => shares[hour])).toEqual([SOLID, SOLID / 2, 0, 0, SOLID / 2, SOLID]);
    expect(filmShares({ coverHours: DAY })).toEqual(Array<number>(24).fill(SOLID));
    expect(filmShares({ coveredShare: 0.5, coverHours: DAY })).toEqual(Array<number>(24).fill(SOLID / 2));
  });

  test("cuts convection, radiation and sun while it lies", () => {
    const cover = { kind: "solid", hours: 12, covered: 1, convectionCut: 0.4, radiationCut: 0.3 } as const;
    const open = yearSurface(openPool(), WEATHER);
    const { airFilm, emission, sky, sun } = yearSurface({ ...openPool(), cover, shading: 0.2 }, WEATHER);
    const ratio = (one: Float64Array, other: Float64Array, hour: number): number =>
      (one[hour] ?? NaN) / (other[hour] ?? NaN);
    expect([0, 12].map((hour) => ratio(airFilm, open.airFilm, hour))).toEqual([0.6, 1]);
    expect([0, 12].map((hour) => ratio(emission, open.emission, hour))).toEqual([0.7, 1]);
    expect([0, 12].map((hour) => Number(ratio(sky, open.sky, hour).toFixed(12)))).toEqual([0.7, 1]);
    // Of 500 W/m²: 80 % absorbed, 30 points less under the cover, a fifth in the shade.
    expect(sun[12]).toBeCloseTo(500 * 0.8 * 0.8, 9);
    for (const hour of [0, 23]) expect(sun[hour]).toBeCloseTo(500 * 0.5 * 0.8, 9);
    const dark = yearSurface({ ...openPool(), cover, sunShare: 0.2 }, WEATHER);
    expect([dark.sun[0], dark.sun[12]]).toEqual([0, 100]);
  });
});

test("a pool without a cover has no cuts, whatever they would be", () => {
  const none = { kind: "none", hours: 24, covered: 1, convectionCut: 0.4, radiationCut: 0.3 } as const;
  const open = yearSurface(openPool(), WEATHER);
  expect(yearSurface({ ...openPool(), cover: none }, WEATHER)).toEqual(open);
});

describe("the surface by the hour", () => {
  const change = (values: Float64Array, at: number, to: number): Float64Array =>
    values.map((each, hour) => (hour >= at ? to : each));
  const at = (surface: YearSurface, hour: number): readonly (number | undefined)[] => [
    surface.evaporationFilm[hour],
    surface.airFilm[hour],
    surface.sky[hour],
  ];

  test.each([
    ["wind", 4],
    ["pressure", 80_000],
    ["dewPoint", 275],
    ["cloud", 9],
    ["air", 300],
  ] as const)("takes a change of %s at once", (name, to) => {
    const pool = openPool({ method: "Carrier", convection: "by evaporation" });
    const before = yearSurface(pool, WEATHER);
    const after = yearSurface(pool, steady({ ...STEADY, [name]: to }));
    expect(at(after, 0)).not.toEqual(at(before, 0));
    for (const hour of [7, 31, 1000]) {
      const changing = yearSurface(pool, { ...WEATHER, [name]: change(WEATHER[name], hour, to) });
      expect(at(changing, hour - 1)).toEqual(at(before, 0));
      expect(at(changing, hour)).toEqual(at(after, 0));
      expect(at(changing, hour + 1)).toEqual(at(after, 0));
      expect(at(changing, 8759)).toEqual(at(after, 0));
    }
  });

  test("evaporates more the more the water is stirred, and convects by the wind where asked", () => {
    const [calm, stirred] = [1, 1.5].map((activity) => yearSurface(openPool({ activity }), WEATHER));
    expect((stirred?.evaporationFilm[0] ?? NaN) / (calm?.evaporationFilm[0] ?? NaN)).toBeCloseTo(1.5, 12);
    // 3.1 + 4.1 × 2 m/s.
    expect(yearSurface(openPool({ convection: "by wind" }), WEATHER).airFilm[0]).toBeCloseTo(11.3, 12);
  });

  test("sees a black body in the hidden part of the sky, and the clear sky's emissivity in the rest", () => {
    // 0.787 + 0.764 ln(283/273) under no cloud.
    const clear = 0.787 + 0.764 * Math.log(283 / 273);
    const emission = 0.95 * 5.670374419e-8;
    for (const hiddenSky of [0, 0.25, 1]) {
      const { sky } = yearSurface(openPool({ hiddenSky }), steady({ ...STEADY, cloud: 0 }));
      expect(sky[0]).toBeCloseTo(emission * (hiddenSky + (1 - hiddenSky) * clear) * 290 ** 4, 9);
    }
    expect(ruledSurface(5).sky[0]).toBe(0);
  });

  test("has latent heats in a straight line, within 0.02 % of the equation between 0 and 45 °C", () => {
    const { latentHeatAt0K, latentHeatSlope } = yearSurface(openPool(), WEATHER);
    for (const T of [273.16, 283.15, 293.15, 303.15, 318.15])
      expect(Math.abs((latentHeatAt0K + T * latentHeatSlope) / latentHeatOfWater(T) - 1)).toBeLessThan(2e-4);
  });
});

describe("season, back-up heater, pump and recovery", () => {
  const months = (values: Partial<YearInputs>): string =>
    setUp(values)
      .season.map((each) => (each ? "x" : "-"))
      .join("");

  test("the season has both of its ends, and may run through New Year", () => {
    expect(months({ seasonStart: 4, seasonEnd: 9 })).toBe("---xxxxxx---");
    expect(months({ seasonStart: 5, seasonEnd: 5 })).toBe("----x-------");
    expect(months({ seasonStart: 10, seasonEnd: 2 })).toBe("xx-------xxx");
    expect(months({ seasonStart: 1, seasonEnd: 12 })).toBe("xxxxxxxxxxxx");
    expect(setUp({ seasonStart: 4, seasonEnd: 9 }).run.backUp?.months).toEqual(
      setUp({ seasonStart: 4, seasonEnd: 9 }).season,
    );
  });

  test("the back-up heater holds the set point, by its capacity over the pool's area", () => {
    expect(setUp({ backUpCapacity: 20_000 }).run.backUp).toMatchObject({ set: 300, most: 400 });
    expect(setUp().run.backUp?.most).toBe(Number.MAX_VALUE);
  });

  test("the pump of one speed runs by its hours, and of several by their energies", () => {
    const one = setUp({ pumpPower: 900, pumpStart: 8, pumpHours: 3 * HOUR, pumpHeatShare: 0.4 }).run.pump;
    expect([7, 8, 10, 11].map((hour) => one.schedule[hour])).toEqual([0, 1, 1, 0]);
    expect([one.power, one.heat]).toEqual([900, 360]);
    const speeds = { pumpStart: 0, pumpPower: 0, pumpSpeedHours: [2 * HOUR, 4 * HOUR] };
    const several = setUp({ ...speeds, pumpSpeedEnergy: [2 * KWH, 1 * KWH], pumpHeatShare: 0.5 }).run.pump;
    expect([0, 1, 2, 5, 6].map((hour) => several.schedule[hour])).toEqual([1, 1, 0.25, 0.25, 0]);
    expect([several.power, several.heat]).toEqual([1000, 500]);
    const stronger = setUp({ ...speeds, pumpSpeedEnergy: [2 * KWH, 1 * KWH], pumpPower: 2000 }).run.pump;
    expect([stronger.power, stronger.schedule[0]]).toEqual([2000, 0.5]);
    expect(setUp({ ...speeds, pumpSpeedEnergy: [0, 0] }).run.pump.schedule[0]).toBe(0);
  });

  test("recovery takes the limit, both losses on the way and the valve's times", () => {
    const machine = { ratedCooling: 26_400, ratedPower: 8100, exchangerUA: 5000 } as const;
    const values = { highLimit: 303, deadBand: 1, leastTime: 600, pumpOnCall: false, lineLoss: 300, pipeLoss: 200 };
    expect(setUp({ ...machine, ...values }).run.recovery).toEqual({
      limit: 303,
      band: 1,
      leastTime: 600,
      onCall: false,
      lost: 500,
    });
    expect(setUp().run.recovery).toBeUndefined();
    expect(setUp().run.tank).toBeUndefined();
  });
});
