/** Signatures as workbooks have them, spellings that people type, and refusals as they read. */
import { describe, expect, test } from "vitest";
import { lookUp } from "../../core/kernel/define/catalogue";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";
import { placedArgs } from "../../core/kernel/define/unitsArgument";

const definitionOf = (id: string) => {
  const found = lookUp(CATALOGUE, id);
  if (!found) throw new Error(`no function ${id}`);
  return found;
};

const value = (id: string, ...raw: readonly unknown[]) => evaluate(compile(definitionOf(id)), raw, CATALOGUE);
const refusal = (id: string, ...raw: readonly unknown[]): string => {
  const out = value(id, ...raw);
  return isFault(out) ? `${out.code} ${out.message}` : `answered ${JSON.stringify(out)}`;
};
const cautionsOf = (id: string, ...raw: readonly unknown[]) =>
  explain(compile(definitionOf(id)), raw, CATALOGUE, { steps: false }).cautions;

/** Id and arguments in order; those in brackets may be left out. */
const FORMS: readonly (readonly [string, string])[] = [
  ["REFRIG.PRESSURE", "refrigerant, temperature, [curve], [basis], [units]"],
  ["REFRIG.TEMPERATURE", "refrigerant, pressure, [curve], [basis], [units]"],
  ["REFRIG.GLIDE", "refrigerant, pressure, [basis], [units]"],
  ["REFRIG.SUPERHEAT", "refrigerant, pressure, lineTemperature, [basis], [units]"],
  ["REFRIG.SUBCOOLING", "refrigerant, pressure, lineTemperature, [basis], [units]"],
  ["REFRIG.LATENT", "refrigerant, pressure, [basis], [units]"],
  ["REFRIG.STATE", "refrigerant, pressure, temperature, [basis], [units]"],
  ["REFRIG.SATURATED", "refrigerant, temperature, [curve], [units]"],
  ["REFRIG.CHART", "refrigerant, from, to, step, [basis], [units]"],
  ["REFRIG.FACTS", "refrigerant, [units]"],
  ["REFRIG.LIST", ""],
  ["CYCLE.STATES", "refrigerant, evaporating, condensing, [superheat], [subcooling], [efficiency], [units]"],
  ["CYCLE.COP", "refrigerant, evaporating, condensing, [superheat], [subcooling], [efficiency], [units]"],
  ["CYCLE.DISCHARGE", "refrigerant, evaporating, condensing, [superheat], [subcooling], [efficiency], [units]"],
  ["CYCLE.FACTOR", "refrigerant, evaporating, condensing, [superheat], [subcooling], [efficiency], [units]"],
  ["CYCLE.SPLIT", "refrigerant, evaporating, condensing, [superheat], [subcooling], [efficiency], [units]"],
  ["CYCLE.MASSFLOW", "cooling, refrigerant, evaporating, condensing, [superheat], [subcooling], [efficiency], [units]"],
  ["AIRCON.REJECTED", "cooling, power, [outdoorFan], [units]"],
  ["AIRCON.REJECTEDBYRATING", "cooling, rating, [outdoorFan], [units]"],
  ["AIRCON.ATOUTDOOR", "ratedCooling, ratedPower, outdoor, [indoorWetBulb], [outdoorFan], [units]"],
  [
    "AIRCON.GAIN",
    "refrigerant, evaporating, condensingOutdoors, condensingPool, [superheat], [subcooling], [efficiency], [units]",
  ],
  ["AIRCON.HOURS", "monthlyMeans, balance, design, [yearlySpread], [units]"],
  ["POOL.VOLUME", "shape, length, width, shallow, [deep], [units]"],
  ["POOL.AREA", "shape, length, width, [units]"],
  ["POOL.EVAPORATION", "area, water, air, humidity, wind, [method], [activity], [altitude], [units]"],
  ["POOL.WINDATWATER", "wind10m, shelter, [units]"],
  ["POOL.SURFACELOSS", "area, water, air, [coefficient], [units]"],
  ["POOL.HEAT", "volume, rise, [units]"],
  ["POOL.LOSSES", "inputs, [units]"],
  ["POOL.WARMUP", "volume, from, to, heat, [area], [air], [coefficient], [units]"],
  ["POOL.SETTLES", "area, air, heat, [coefficient], [sunAbsorbed], [units]"],
  ["POOL.TURNOVER", "volume, flow, [units]"],
  ["POOL.YEAR", "inputs, climate, [units]"],
  ["POOL.SPREAD", "inputs, climate, label, values, [units]"],
  ["POOL.HOURS", "inputs, climate, month, [units]"],
  ["AIR.DEWPOINT", "air, humidity, [units]"],
  ["AIR.WETBULB", "air, humidity, [altitude], [units]"],
  ["AIR.HUMIDITYRATIO", "air, humidity, [altitude], [units]"],
  ["AIR.VAPORPRESSURE", "air, humidity, [units]"],
  ["AIR.BAROMETER", "altitude, [units]"],
  ["WATER.PROPERTIES", "temperature, [units]"],
  ["EXCHANGER.LMTD", "hotIn, hotOut, coldIn, coldOut, [arrangement], [units]"],
  ["EXCHANGER.CORRECTION", "hotIn, hotOut, coldIn, coldOut, [shellPasses], [units]"],
  ["EXCHANGER.EFFECTIVENESS", "ntu, capacityRatio, [arrangement]"],
  ["EXCHANGER.NTU", "effectiveness, capacityRatio, [arrangement]"],
  ["EXCHANGER.DUTY", "ua, hotIn, hotOut, coldIn, coldOut, [arrangement], [correction], [units]"],
  ["EXCHANGER.UA", "duty, hotIn, hotOut, coldIn, coldOut, [arrangement], [correction], [units]"],
  ["EXCHANGER.AREA", "duty, u, lmtd, [correction], [units]"],
  [
    "EXCHANGER.OVERALL",
    "insideFilm, outsideFilm, outsideDiameter, wall, material, [insideFouling], [outsideFouling], [units]",
  ],
  ["EXCHANGER.WATERRISE", "duty, flow, [waterTemperature], [units]"],
  ["EXCHANGER.WATERFLOW", "duty, rise, [units]"],
  ["EXCHANGER.WATERDUTY", "flow, in, out, [units]"],
  ["EXCHANGER.HOLDHEAD", "heat, ua, water, leastCondensing, flow, [waterFilmShare], [units]"],
  ["EXCHANGER.ZONES", "inputs, [units]"],
  ["EXCHANGER.BALANCE", "inputs, [units], [hotGasDrop]"],
  ["EXCHANGER.COIL", "inputs, [units]"],
  ["PIPE.BORE", "size, [schedule], [bore], [units]"],
  ["PIPE.VELOCITY", "flow, size, [schedule], [bore], [units]"],
  ["PIPE.HEADLOSS", "flow, size, length, [schedule], [water], [method], [bore], [units]"],
  ["PIPE.FITTING", "fitting, size, flow, [count], [schedule], [water], [method], [bore], [units]"],
  ["PIPE.EQUIVALENT", "fitting, size, [units]"],
  ["PIPE.LOOP", "items, flow, [water], [schedule], [units]"],
  ["PIPE.OPERATING", "pumpCurve, staticHead, knownFlow, knownHead, [speed], [pumps], [units]"],
  ["PIPE.SIZE", "flow, velocityLimit, [schedule], [bore], [units]"],
  ["PIPE.PUMPPOWER", "flow, head, efficiency, [units]"],
  ["PIPE.NPSH", "altitude, water, lift, suctionLoss, [units]"],
  ["PIPE.RATING", "size, water, [schedule], [units]"],
  ["PIPE.EXPANSION", "length, rise, [units]"],
  ["PIPE.SUPPORT", "size, water, [schedule], [units]"],
  ["PIPE.CURE", "size, air, pressure, humidity, [units]"],
  ["PIPE.CEMENT", "joints, [units]"],
  ["LINE.BORE", "size, [form], [units]"],
  [
    "LINE.DROP",
    "refrigerant, service, size, length, cooling, evaporating, condensing, [superheat], [subcooling], [efficiency], [rise], [fittingsLength], [valveDrop], [units]",
  ],
  [
    "LINE.RISER",
    "refrigerant, service, size, evaporating, condensing, [superheat], [subcooling], [efficiency], [units]",
  ],
  ["LINE.CHARGE", "refrigerant, size, length, [liquidTemperature], [units]"],
  ["LINE.CHARGEBALANCE", "inputs, [units]"],
  ["LINE.TESTPRESSURE", "pressure, then, now, [units]"],
  ["LINE.BOILING", "vacuum, [units]"],
  ["LINE.TARGETSUPERHEAT", "indoorWetBulb, outdoorDryBulb, [units]"],
  [
    "LINE.ROOMLIMIT",
    "refrigerant, floorArea, releaseHeight, [charge], [method], [ceilingHeight], [flammabilityLimit], [altitude], [units]",
  ],
  [
    "LINE.ROOMAREA",
    "refrigerant, charge, releaseHeight, [method], [ceilingHeight], [flammabilityLimit], [altitude], [units]",
  ],
  ["LINE.VALVE", "refrigerant, flowCoefficient, massFlow, condensing, [superheat], [criticalRatio], [units]"],
  ["PRESSURE.DESIGN", "refrigerant, side, [summerDryBulb], [leavingWater], [rule], [units]"],
  ["PRESSURE.TUBE", "outsideDiameter, wall, material, temperature, [temper], [joint], [sizes], [units]"],
  ["PRESSURE.WALL", "outsideDiameter, pressure, material, temperature, [temper], [joint], [sizes], [units]"],
  ["PRESSURE.RELIEF", "refrigerant, diameter, length, [combustiblesNear], [units]"],
  ["PRESSURE.TRAPPED", "refrigerant, filledAt, warmedTo, [units]"],
  ["PRESSURE.TABLE", "inputs, [units]"],
  ["CONTROL.SENSORTEMP", "ohms, [sensor], [units]"],
  ["CONTROL.SENSOROHMS", "temperature, [sensor], [units]"],
  [
    "CONTROL.DIVERT",
    "pool, setPoint, band, coolingCalls, flowProven, highLimit, [was], [minutesInMode], [minimumMinutes], [heatingOrDefrost], [sensorGood], [leavingWater], [leavingLimit], [headPressureTrip], [units]",
  ],
  ["COST.OFHEAT", "heat, source, price, [efficiency], [units]"],
  ["COST.COMPARE", "heat, prices, [units]"],
  ["COST.CARBON", "heat, source, [efficiency], [units]"],
  [
    "COST.PAYBACK",
    "cost, saving, [discount], [escalation], [years], [upkeep], [replacement], [replacementYear], [units]",
  ],
  ["SINK.TANK", "draw, cold, hot, preheat, [units]"],
  ["SINK.SPACE", "inputs, [units]"],
  ["SINK.RACK", "inputs, [units]"],
  ["NOTE.WORKING", "function, arguments"],
  ["NOTE.CAUTIONS", "function, arguments"],
  ["NOTE.SOURCES", "function"],
  ["NOTE.INPUTS", "function, [units]"],
  ["NOTE.AGREES", "byHand, computed, [tolerance]"],
  ["NOTE.VERDICT", "[byHand], [computed], [tolerance]"],
  ["NOTE.EDITION", ""],
  ["NOTE.SELFTEST", ""],
];

test.each(FORMS)("%s takes its arguments in the order that workbooks have", (id, form) => {
  const now = placedArgs(definitionOf(id)).map(([name, { presence }]) =>
    presence === "required" ? name : `[${name}]`,
  );
  const then = form === "" ? [] : form.split(", ");
  // Arguments may be added at the end, before none of those that stand here.
  expect(now.slice(0, then.length)).toEqual(then);
});

describe("A word may be spelled as people spell it", () => {
  test.each([
    ["REFRIG.PRESSURE", ["R-410A", 105], ["410A", 105]],
    ["REFRIG.PRESSURE", ["R-22", 105], [22, 105]],
    ["REFRIG.PRESSURE", ["R-1234ze(E)", 105], ["r1234ze", 105]],
    ["REFRIG.PRESSURE", ["R-22", 105, "dew", "absolute"], ["r22", 105, "Dew", "psia"]],
    ["LINE.BORE", ["3/8 in"], ["3/8"]],
    ["LINE.BORE", ["3/8 in"], [0.375]],
    ["LINE.BORE", ["3/8 in"], ["9.52 mm"]],
    ["LINE.BORE", ["3/8 in"], ["9.53 mm"]],
    ["LINE.BORE", ["1-1/8 in"], ["28.6 mm"]],
    ["PIPE.BORE", ["2 in", "80"], ["DN50", "Sch. 80"]],
    ["PIPE.BORE", ["1-1/2 in", "40"], [1.5, 40]],
    ["PIPE.BORE", ["2 in", "40", "minimum wall"], [2, "schedule 40", "minimum"]],
    ["PIPE.FITTING", ["elbow 90", "2 in", 60], ["90 elbow", "2", 60]],
  ])("%s %j gives the same as %j", (id, plain, spelled) => {
    const out = value(id, ...plain);
    expect(typeof out).toBe("number");
    expect(value(id, ...spelled)).toBe(out);
  });
});

describe("A refusal reads as a sentence", () => {
  test.each([
    [
      "REFRIG.PRESSURE",
      ["R-744", 100],
      /^#N\/A R-744 saturation temperature: must be below the critical temperature, /,
    ],
    ["REFRIG.TEMPERATURE", ["R-22"], /^#VALUE! pressure: is blank, but it is needed \(/],
    ["REFRIG.CHART", ["R-22", 140, 0, 20], /^#VALUE! to: must be at least from \(140 °F\), got 0 °F$/],
    ["AIRCON.HOURS", [[[68], [70]], 65, 95], /^#VALUE! monthlyMeans: expected 12 rows, one below the other, got 2$/],
    ["COST.PAYBACK", [6000, 900, 3], /type 3% or 0\.03/],
    ["POOL.LOSSES", [[["area", 500]]], /the nearest is "pool area"$/],
    ["POOL.SETTLES", [500, 70, 5e6], /^#N\/A heat: .* where water boils/],
    [
      "EXCHANGER.HOLDHEAD",
      [33.7, 4, 15, 30, 4, 0.4, "SI"],
      /^#N\/A ua: too small: .*°C, above every refrigerant's critical temperature/,
    ],
  ])("the refusal of %s %j reads as a sentence", (id, raw, says) => {
    expect(refusal(id, ...raw)).toMatch(says);
  });
});

describe("What is usual of a gauge reading", () => {
  const unusual = (...raw: readonly unknown[]) =>
    cautionsOf("LINE.TESTPRESSURE", ...raw).filter(({ code }) => code === "UNUSUAL-INPUT");

  test("a gauge reading is judged usual as the gauge shows it", () => {
    expect(unusual(700, 80, 70)).toEqual([]);
    expect(unusual(50, 80, 70)).toEqual([]);
    expect(unusual(750, 80, 70)[0]?.text).toMatch(/^pressure: 750 psi is outside the usual 50 psi to 700 psi/);
  });
});

describe("A chart's temperatures", () => {
  test("a chart's temperatures are those asked for, to rounding", () => {
    const rows = value("REFRIG.CHART", "R-410A", 0, 140, 20) as readonly (readonly number[])[];
    for (const [place, row] of rows.slice(1).entries())
      expect(Math.abs((row[0] ?? NaN) - 20 * place)).toBeLessThan(1e-12 * 600);
  });
});

describe("Cautions that belong to some calls only", () => {
  const codes = (id: string, ...raw: readonly unknown[]) => cautionsOf(id, ...raw).map(({ code }) => code);

  test("a two-phase blend shows no transport properties, and so none of their doubts", () => {
    expect(codes("REFRIG.STATE", "R-407C", 130, 71)).not.toContain("REFRIG-BLEND-TRANSPORT");
    expect(codes("REFRIG.STATE", "R-407C", 130, 120)).toContain("REFRIG-BLEND-TRANSPORT");
  });

  test("an electric heater's efficiency raises no caution about a typical one", () => {
    expect(codes("COST.OFHEAT", 1e6, "electric resistance", 0.15)).not.toContain("COST-TYPICAL-EFFICIENCY");
  });

  test("a reading near the atmosphere raises the caution about compound gauges", () => {
    expect(codes("LINE.BOILING", "29 inHg")).toContain("LINE-COMPOUND-GAUGE");
    expect(codes("LINE.BOILING", 23_400)).not.toContain("LINE-COMPOUND-GAUGE");
  });

  test("a condenser that is too small raises a caution", () => {
    expect(codes("EXCHANGER.HOLDHEAD", 115_000, 1500, 80, 85, 60)).toContain("EXCHANGER-HOT-CONDENSING");
    expect(codes("EXCHANGER.HOLDHEAD", 115_000, 8000, 80, 85, 60)).not.toContain("EXCHANGER-HOT-CONDENSING");
  });
});

describe("The working of a gauge pressure", () => {
  test.each([
    ["REFRIG.PRESSURE", ["R-22", 100]],
    ["LINE.TESTPRESSURE", [150, 95, 75]],
  ])("the working of %s ends with what the gauge shows", (id, raw) => {
    const rows = value("NOTE.WORKING", id, ...raw) as readonly (readonly unknown[])[];
    expect(rows.at(-2)?.[3]).toBeCloseTo(value(id, ...raw) as number, 9);
    expect(rows.at(-2)?.[4]).toBe("psig");
  });
});
