import { assert, constantFrom, double, pre, property, record } from "fast-check";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { us } from "../../core/kernel/values/quantity";
import { recorder, type Step } from "../../core/kernel/define/steps";
import { workingLines } from "../../core/kernel/explain/working";
import { isFault } from "../../core/kernel/values/fault";
import { balanceOf } from "../../core/exchanger/balance/balance";
import { coilBalanceOf, coilDuty, type CoilExchanger } from "../../core/exchanger/balance/withCoil";
import { bothSides } from "../../core/exchanger/balance/bothSides";
import { rateCoil } from "../../core/exchanger/coil/coil";
import type { CoolingMachine } from "../../core/exchanger/balance/compressor";
import { machineOf, machineState } from "../../core/exchanger/balance/machine";
import { zonesInputOf, zonesOf } from "../../core/exchanger/zones/working";
import { tryMatchStreams } from "../../core/exchanger/zones/zones";
import { loadRefrigerant } from "../../core/refrigerant/refrigerant";

const NAMES = ["R-22", "R-410A", "R-407C", "R-454B"] as const;
const degF = (value: number): number => us("temperature", value);

const rating = {
  cooling: us("heat rate", 90_000),
  evaporating: degF(45),
  condensing: degF(115),
  wetBulb: degF(67),
  superheat: 5.6,
  subcooling: 5.6,
  efficiency: 0.65,
  volumetricEfficiency: 0.95,
} as const;

const readyFor = (name: string): CoolingMachine => machineOf({ ...rating, fluid: loadRefrigerant(name) });

const exchangerOf = (tubeLength: number, waterFlow: number): CoilExchanger => ({
  coil: {
    outsideDiameter: us("diameter", 0.625),
    wall: us("diameter", 0.028),
    conductivity: 16,
    tubes: 4,
    tubeLength,
    coilDiameter: us("diameter", 10),
    pitch: us("diameter", 1),
    shellDiameter: us("diameter", 12),
    coreDiameter: us("diameter", 8),
    insideFouling: 0,
    outsideFouling: 0.0001,
  },
  waterFlow,
  direction: "counterflow",
});

const cases = record({
  name: constantFrom(...NAMES),
  tubeLength: double({ min: 10, max: 60, noNaN: true }),
  waterFlow: double({ min: 0.001, max: 0.006, noNaN: true }),
  enteringWater: double({ min: 282, max: 307, noNaN: true }),
});

const wetBulb = degF(67);

/** Undefined where the refrigerant's range or the machine's ends first. */
const tried = <T>(work: () => T): T | undefined => {
  try {
    return work();
  } catch (error) {
    if (isFault(error)) return undefined;
    throw error;
  }
};

const settledOn = (name: string, tubeLength: number, waterFlow: number, enteringWater: number) =>
  tried(() => coilBalanceOf(readyFor(name), exchangerOf(tubeLength, waterFlow), { enteringWater, wetBulb }));

describe("a machine that settles on a coil known by its geometry", () => {
  it("closes its energy, leaves the coil no margin, and agrees with the conductance that it gives", () => {
    assert(
      property(cases, ({ name, tubeLength, waterFlow, enteringWater }) => {
        const machine = readyFor(name);
        const exchanger = exchangerOf(tubeLength, waterFlow);
        const found = settledOn(name, tubeLength, waterFlow, enteringWater);
        pre(found !== undefined);
        const taken = found.capacityRate * (found.leavingWater - enteringWater);
        expect(Math.abs(taken / (found.cooling + found.power) - 1)).toBeLessThan(1e-6);
        const streams = zonesOf(coilDuty(machine, found, exchanger, enteringWater));
        expect(Math.abs(streams.total.duty / found.rejected - 1)).toBeLessThan(1e-6);
        // Where a large coil leaves the streams next to touching, its margin turns on less than the search resolves;
        // elsewhere it may rest on the small jump where a film's relation goes over into the next.
        const { margin } = rateCoil(machine.rating.fluid, streams, exchanger.coil, waterFlow);
        if (streams.total.least.difference > 0.05) expect(Math.abs(margin)).toBeLessThan(0.01);
        const { ua } = found;
        pre(ua !== undefined);
        const given = balanceOf(machine, { ua, waterFlow }, { enteringWater, wetBulb });
        expect(Math.abs(given.condensing - found.condensing)).toBeLessThan(1e-4);
        for (const key of ["rejected", "cooling", "power", "massFlow"] as const)
          expect(Math.abs(given[key] / found[key] - 1), key).toBeLessThan(1e-4);
      }),
      { numRuns: 30, maxSkipsPerRun: 30 },
    );
  }, 60_000);

  /** Condensing without spare area by halving alone, K: 60 ratings. */
  const byHalving = (machine: CoolingMachine, exchanger: CoilExchanger, enteringWater: number): number => {
    let [low, high] = [enteringWater + 1, machine.rating.fluid.warmestSaturated - 1];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      const state = machineState(machine, middle, wetBulb, machine.rating.evaporating);
      const streams = tryMatchStreams(zonesInputOf(coilDuty(machine, state, exchanger, enteringWater)));
      const spare = streams && rateCoil(machine.rating.fluid, streams, exchanger.coil, exchanger.waterFlow).margin > 0;
      if (spare === true) high = middle;
      else low = middle;
    }
    return (low + high) / 2;
  };

  it.each(NAMES)("rates a coil of %s four times, five at most, and settles where halving ends", (name) => {
    const machine = readyFor(name);
    const ratings: number[] = [];
    for (const [feet, waterFlow, water] of [
      [60, 40, 82],
      [75, 45, 88],
      [90, 50, 60],
    ] as const) {
      const exchanger = exchangerOf(us("length", feet), us("water flow", waterFlow));
      const found = coilBalanceOf(machine, exchanger, { enteringWater: degF(water), wetBulb });
      ratings.push(found.search.iterations);
      const condensing = byHalving(machine, exchanger, degF(water));
      expect(Math.abs(found.condensing - condensing)).toBeLessThan(1e-6);
      const there = machineState(machine, condensing, wetBulb, found.evaporating);
      for (const key of ["rejected", "cooling", "power", "massFlow", "evaporating"] as const)
        expect(Math.abs(found[key] / there[key] - 1), key).toBeLessThan(1e-6);
    }
    // A fifth where the relation of a film changes on the way.
    expect(Math.max(...ratings)).toBeLessThanOrEqual(5);
    expect(ratings.filter((each) => each > 4).length).toBeLessThanOrEqual(1);
  });

  it("condenses lower and takes less power on a coil twice as long", () => {
    for (const name of NAMES) {
      const [short, long] = [9, 18].map((length) => settledOn(name, length, 0.0025, degF(82)));
      if (short === undefined || long === undefined) throw new Error(`${name} is refused`);
      expect(short.condensing - long.condensing, name).toBeGreaterThan(2);
      expect(long.power / short.power, name).toBeLessThan(0.97);
      expect(long.cooling, name).toBeGreaterThan(short.cooling);
    }
  });

  it("never condenses higher or takes more power on a longer coil", () => {
    assert(
      property(
        cases,
        double({ min: 1.05, max: 2, noNaN: true }),
        ({ name, tubeLength, waterFlow, enteringWater }, more) => {
          const short = settledOn(name, tubeLength, waterFlow, enteringWater);
          const long = settledOn(name, tubeLength * more, waterFlow, enteringWater);
          pre(short !== undefined && long !== undefined);
          // A coil that is long already gains less than the search resolves.
          expect(long.condensing).toBeLessThan(short.condensing + 1e-6);
          expect(long.power).toBeLessThan(short.power * (1 + 1e-7));
          expect(long.cooling).toBeGreaterThan(short.cooling * (1 - 1e-7));
        },
      ),
      { numRuns: 20, maxSkipsPerRun: 30 },
    );
  }, 60_000);

  it("never condenses higher on colder water", () => {
    assert(
      property(
        cases,
        double({ min: 0.1, max: 8, noNaN: true }),
        ({ name, tubeLength, waterFlow, enteringWater }, colder) => {
          const now = settledOn(name, tubeLength, waterFlow, enteringWater);
          const then = settledOn(name, tubeLength, waterFlow, enteringWater - colder);
          pre(now !== undefined && then !== undefined);
          expect(then.condensing).toBeLessThanOrEqual(now.condensing);
        },
      ),
      { numRuns: 20, maxSkipsPerRun: 30 },
    );
  }, 60_000);

  it("gives no conductance where counterflow water leaves above the mean condensing temperature", () => {
    const found = settledOn("R-410A", 18, 0.0002, degF(82));
    expect(found?.leavingWater).toBeGreaterThan(found?.meanCondensing ?? Number.NaN);
    expect(found?.ua).toBeUndefined();
  });

  it("settles where a large coil's streams still differ though they all but touch, with the coil's rating there", () => {
    const machines = NAMES.map((name) => machineOf({ ...rating, cooling: 3500, fluid: loadRefrigerant(name) }));
    let touching = 0;
    for (const machine of machines)
      for (const enteringWater of [288, 294, degF(82), 306]) {
        const exchanger = exchangerOf(us("length", 200), 0.0025);
        const found = coilBalanceOf(machine, exchanger, { enteringWater, wetBulb });
        // Refused where the streams cross.
        const { total } = zonesOf(coilDuty(machine, found, exchanger, enteringWater));
        if (total.least.difference < 1e-6) touching++;
        expect(found.rating.margin).toBe(found.search.residual);
        const { hottestFilm, waterVelocity, refrigerantDrop, saturationDrop } = found.rating;
        for (const told of [hottestFilm, waterVelocity, refrigerantDrop, saturationDrop])
          expect(Number.isFinite(told)).toBe(true);
      }
    expect(touching).toBeGreaterThan(8);
  });

  it("refuses a coil too short for any pressure", () => {
    expect(() => coilBalanceOf(readyFor("R-410A"), exchangerOf(0.3, 0.0025), { enteringWater: 300, wetBulb })).toThrow(
      /no condensing temperature up to/,
    );
  });

  it("shows the search, its residual and the coil's rating in the working", () => {
    const { trace, steps } = recorder();
    bothSides(
      {
        machine: readyFor("R-410A"),
        exchanger: exchangerOf(18, 0.0025),
        coil: { ratedOutdoor: degF(95) },
        conditions: { enteringWater: 300, wetBulb, outdoor: degF(95) },
        outdoorFan: 0,
        indoorFan: 0,
        leastCondensing: 300,
      },
      trace,
    );
    const flat = (each: readonly Step[]): readonly Step[] =>
      each.flatMap((step) => (step.type === "group" ? flat(step.steps) : [step]));
    const pool = flat(steps.filter((step) => step.type === "group" && step.title === "On the pool"));
    const solution = pool.find((step) => step.type === "solution" && step.unknown === "condensing dew temperature");
    expect(solution).toMatchObject({ solves: "Margin of the area" });
    if (solution?.type !== "solution") throw new Error("no solution is told");
    expect(Math.abs(solution.residual)).toBeLessThan(1e-5);
    expect(solution.iterations).toBeLessThan(20);
    expect(solution.answer).toBeGreaterThanOrEqual(solution.bracket[0]);
    expect(solution.answer).toBeLessThanOrEqual(solution.bracket[1]);
    const told = pool.flatMap((step) => (step.type === "equation" ? [step.equation.name] : []));
    expect(told).toContain("Conductance for this heat at one condensing temperature");
  });
});

describe("the block of EXCHANGER.BALANCE", () => {
  const streams = { refrigerant: "R-410A", "water flow": 40, "entering water": 82 };
  const machine = { ...streams, "rated cooling": 90_000 };
  const coil = {
    "outside diameter": 0.625,
    wall: 0.028,
    tubes: 4,
    "tube length": 60,
    "coil diameter": 10,
    pitch: 1,
    "shell diameter": 12,
  };
  const definition = lookUp(CATALOGUE, "EXCHANGER.BALANCE");
  const called = (block: Readonly<Record<string, string | number>>) => {
    if (definition === undefined) throw new Error("no EXCHANGER.BALANCE");
    return evaluate(compile(definition), [Object.entries(block)], CATALOGUE);
  };
  const message = (block: Readonly<Record<string, string | number>>): string => {
    const out = called(block);
    return isFault(out) ? `${out.code} ${out.message}` : "accepted";
  };

  it("takes UA or a coil's geometry, and refuses both, neither and half a geometry in words", () => {
    expect(message({ ...machine, UA: 5000 })).toBe("accepted");
    expect(message({ ...machine, ...coil })).toBe("accepted");
    expect(message({ ...machine, ...coil, UA: 5000 })).toMatch(
      /#VALUE! inputs: give one of UA and the coil's geometry, got UA and outside diameter, wall, tubes/,
    );
    expect(message({ ...machine, UA: 5000, tubes: 4 })).toMatch(/got UA and tubes$/);
    expect(message(machine)).toBe("#VALUE! inputs: give one of UA and the coil's geometry, got none");
    expect(message({ ...machine, wall: 0.028, pitch: 1 })).toBe(
      "#VALUE! inputs: the coil's geometry also needs outside diameter, tube length, coil diameter, shell diameter, which are blank",
    );
    expect(message({ ...machine, ...coil, pitch: 0.3 })).toMatch(/#VALUE! pitch: must be at least outside diameter/);
  });

  describe("the cautions of EXCHANGER.BALANCE", () => {
    const COILS = [
      "EXCHANGER-HOT-FILM",
      "EXCHANGER-CONDENSING-DATA",
      "EXCHANGER-FAST-WATER",
      "EXCHANGER-REFRIGERANT-DROP",
      "EXCHANGER-CLEAN-COIL",
      "EXCHANGER-ATTACKED-METAL",
      "EXCHANGER-CHEMISTRY",
      "EXCHANGER-FREEZE",
      "EXCHANGER-SINGLE-WALL",
    ];
    type Block = Readonly<Record<string, string | number>>;
    const explained = (id: string, block: Block) => {
      const found = lookUp(CATALOGUE, id);
      if (found === undefined) throw new Error(`no ${id}`);
      return explain(compile(found), [Object.entries(block)], CATALOGUE, { steps: false });
    };
    const coilsOf = (id: string, block: Block) =>
      explained(id, block)
        .cautions.filter(({ code }) => COILS.includes(code))
        .map(({ code, text }) => `${code} ${text}`);

    it("equal those of EXCHANGER.COIL at the duty found, each once", () => {
      const bad = { ...coil, tubes: 1, "tube length": 200, material: "copper" };
      for (const [given, expected] of [
        [{ ...coil, "outside fouling": 0.0005 }, ["CHEMISTRY", "FREEZE", "SINGLE-WALL"]],
        [{ ...bad, "water flow": 12 }, ["ATTACKED-METAL", "CLEAN-COIL", "CONDENSING-DATA", "REFRIGERANT-DROP"]],
        [{ ...coil, "water flow": 6 }, ["HOT-FILM", "CLEAN-COIL"]],
      ] as const) {
        const block = { ...machine, ...given };
        const out = called(block);
        if (isFault(out) || !Array.isArray(out)) throw new Error(message(block));
        const row = (label: string) => Number(out.find(([first]: readonly unknown[]) => first === label)?.[1]);
        const raised = coilsOf("EXCHANGER.BALANCE", block);
        const rated = coilsOf("EXCHANGER.COIL", {
          ...streams,
          ...given,
          "heat rejected": row("heat into pool"),
          condensing: row("condensing"),
          evaporating: row("evaporating"),
        });
        expect(raised).toEqual(rated);
        for (const name of expected)
          expect(
            raised.filter((each) => each.startsWith(`EXCHANGER-${name} `)),
            name,
          ).toHaveLength(1);
      }
    });

    it("the largest coils, where the streams all but touch, have their cautions and a working", () => {
      const block = { ...machine, ...coil, "rated cooling": 12_000, "tube length": 200, material: "copper" };
      const codes = explained("EXCHANGER.BALANCE", block).cautions.map(({ code }) => code);
      for (const name of ["SINGLE-WALL", "CHEMISTRY", "FREEZE", "CLEAN-COIL", "ATTACKED-METAL", "BALANCE-FILMS"])
        expect(codes).toContain(`EXCHANGER-${name}`);
      if (definition === undefined) throw new Error("no EXCHANGER.BALANCE");
      const { out, steps } = explain(compile(definition), [Object.entries(block)], CATALOGUE);
      expect(out).toEqual(called(block));
      expect(workingLines(steps, "US").filter(({ text }) => text.includes("almost touch"))).toHaveLength(1);
    });

    it("a given conductance raises none of a coil's cautions", () => {
      expect(coilsOf("EXCHANGER.BALANCE", { ...machine, UA: 5000 })).toEqual([]);
    });
  });
});
