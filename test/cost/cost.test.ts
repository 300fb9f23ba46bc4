import { assert, double, integer, property, constantFrom } from "fast-check";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { HEAT_SOURCES, SOURCE_NAMES, sourceNamed } from "../../core/cost/data/heatSources";
import { heatCarbon, heatCost } from "../../core/cost/heatCost";
import { paybackOf } from "../../core/cost/simplePayback";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";
import { us } from "../../core/kernel/values/quantity";
import { goldenRows } from "../refrigerant/goldenRows";

const published = new Map(goldenRows("energy-and-money.csv").map((row) => [row.word("id"), row]));
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
const table = (out: unknown) => out as readonly (readonly (string | number)[])[];

/** Heat that costs 1 at a price of 1: the energy content of the selling unit, in BTU. */
const contentOf = (source: string): number => 1e6 / Number(run("COST.OFHEAT", 1e6, source, 1, 1));

describe("the cost of heat", () => {
  it("takes the published energy contents; propane of 2019 lies 0.13 % above that of 2012", () => {
    agrees("E01", contentOf("electric resistance"));
    agrees("E02", contentOf("natural gas"), 1e-6);
    agrees("E03", contentOf("propane"), 0.0014 * 91_333);
    expect(contentOf("fuel oil")).toBeCloseTo(138_500, 3);
    expect(contentOf("wood")).toBeCloseTo(20e6, 3);
  });

  it("the cost is the same in either system for the same price of energy", () => {
    const perTherm = Number(run("COST.OFHEAT", 1e6, "natural gas", 1.5, 0.8));
    const perKwh = Number(run("COST.OFHEAT", "1000000 BTU", "natural gas", 1.5 / 29.3071070172, 0.8, "SI"));
    expect(perKwh / perTherm).toBeCloseTo(1, 9);
    const perGallon = Number(run("COST.OFHEAT", 1e6, "propane", 2.5, 0.8));
    const perLitre = Number(run("COST.OFHEAT", "1000000 BTU", "propane", 2.5 / 3.785411784, 0.8, "SI"));
    expect(perLitre / perGallon).toBeCloseTo(1, 9);
    const perCord = Number(run("COST.OFHEAT", 1e6, "wood", 300, 0.6));
    const perCubicMetre = Number(run("COST.OFHEAT", "1000000 BTU", "wood", 300 / 3.624556363776, 0.6, "SI"));
    expect(perCubicMetre / perCord).toBeCloseTo(1, 9);
  });

  it("grows in proportion to heat and price, and falls with efficiency", () =>
    assert(
      property(
        constantFrom(...SOURCE_NAMES),
        double({ min: 1, max: 1e9, noNaN: true }),
        double({ min: 0.01, max: 0.9, noNaN: true }),
        (name, heat, share) => {
          const [least, most] = sourceNamed(name).efficiencies;
          const efficiency = least + share * (most - least);
          const cost = heatCost(name, heat, 3, efficiency);
          expect(heatCost(name, 2 * heat, 3, efficiency) / cost).toBeCloseTo(2, 9);
          expect(heatCost(name, heat, 6, efficiency) / cost).toBeCloseTo(2, 9);
          expect(heatCost(name, heat, 3, efficiency * 1.05)).toBeLessThan(cost);
        },
      ),
    ));

  it("a typical efficiency typed in gives the same cost as one left out", () => {
    for (const { name, typical, efficiencies } of HEAT_SOURCES) {
      expect(typical).toBeGreaterThanOrEqual(efficiencies[0]);
      expect(typical).toBeLessThanOrEqual(efficiencies[1]);
      expect(run("COST.OFHEAT", 1e6, name, 1)).toBe(run("COST.OFHEAT", 1e6, name, 1, typical));
    }
  });

  it("refuses what a source can't do, and says what it can", () => {
    expect(refusal(run("COST.OFHEAT", 1e6, "natural gas", 1, 80))).toMatch(
      /#VALUE! efficiency: .*natural gas.*80 % is 0.8/,
    );
    expect(refusal(run("COST.OFHEAT", 1e6, "electric resistance", 1, 3))).toContain("from 0.5 to 1");
    expect(refusal(run("COST.OFHEAT", 1e6, "heat pump", 1, 20))).toContain("from 1 to 15");
    expect(refusal(run("COST.OFHEAT", 1e6, "heat pump", 1, 0.8))).toContain("from 1 to 15");
    expect(refusal(run("COST.OFHEAT", 1e6, "coal", 1))).toContain("natural gas");
    expect(refusal(run("COST.OFHEAT", 1e6, "natural gas", -1))).toContain("#VALUE! price");
  });
});

describe("carbon dioxide", () => {
  it("agrees with the published factors", () => {
    agrees("E07", Number(run("COST.CARBON", "100000 BTU", "natural gas", 1, "SI")));
    agrees("E08", Number(run("COST.CARBON", "1 MWh", "electric resistance")));
  });

  it("a heat pump's carbon dioxide is that of resistance heating divided by its COP", () =>
    assert(
      property(double({ min: 1, max: 15, noNaN: true }), (cop) => {
        const pump = heatCarbon("heat pump", 1e9, cop);
        expect((pump * cop) / heatCarbon("electric resistance", 1e9, 1)).toBeCloseTo(1, 9);
      }),
    ));
});

describe("sources beside each other", () => {
  const prices = [
    ["natural gas", 1.4],
    ["heat pump", 0.15, 5],
    ["propane", 2.8, 0.7],
  ].map((row) => [...row, ...(row.length < 3 ? [""] : [])]);

  it("each source costs what it costs alone, in the order given", () => {
    const out = table(run("COST.COMPARE", 1e6, prices));
    expect(out.map(([name]) => name)).toEqual(["source", "natural gas", "heat pump", "propane"]);
    expect(out[1]?.[2]).toBe(run("COST.OFHEAT", 1e6, "natural gas", 1.4));
    expect(out[2]?.[2]).toBe(run("COST.OFHEAT", 1e6, "heat pump", 0.15, 5));
    expect(out[3]?.[2]).toBe(run("COST.OFHEAT", 1e6, "propane", 2.8, 0.7));
    expect(out[3]?.[4]).toBe(run("COST.CARBON", 1e6, "propane", 0.7));
    expect(Math.min(...out.slice(1).map((row) => Number(row[3])))).toBe(1);
  });

  it("the ratio is blank where the cheapest heat costs nothing", () => {
    const out = table(
      run("COST.COMPARE", 1e6, [
        ["solar", 0],
        ["wood", 200],
      ]),
    );
    expect(out.slice(1).map((row) => row[3])).toEqual(["", ""]);
  });

  it("a refusal of a wrong efficiency names its row", () => {
    expect(
      refusal(
        run("COST.COMPARE", 1e6, [
          ["natural gas", 1.2, 0.8],
          ["propane", 2, 8],
        ]),
      ),
    ).toMatch(/#VALUE! prices, row 2, efficiency: for propane/);
  });
});

describe("payback", () => {
  const RATE = double({ min: 0, max: 0.3, noNaN: true });
  const RISE = double({ min: -0.1, max: 0.2, noNaN: true });
  const YEARS = integer({ min: 1, max: 60 });
  /** The definition: every year's saving brought back to today. */
  const summed = (discount: number, escalation: number, years: number): number =>
    Array.from({ length: years }, (_, year) => ((1 + escalation) / (1 + discount)) ** (year + 1)).reduce(
      (sum, each) => sum + each,
      0,
    );

  it("uses the factor of NIST Handbook 135", () => {
    const { presentValueFactor } = paybackOf({ cost: 1, saving: 1, discount: 0.03, escalation: 0, years: 10 });
    agrees("E10", presentValueFactor);
  });

  it("takes a monthly rate that compounds to the yearly one as the published example does", () => {
    const monthly = (published.get("E11")?.number("expected") ?? 0) + 1;
    const year = paybackOf({ cost: 1, saving: 1, discount: 0.03, escalation: 0, years: 1 }).presentValueFactor;
    const months = paybackOf({ cost: 1, saving: 1, discount: monthly - 1, escalation: 0, years: 12 });
    const last = months.presentValueFactor - summed(monthly - 1, 0, 11);
    expect(last).toBeCloseTo(year, 5);
  });

  it("brings back every year's saving as the definition says", () =>
    assert(
      property(RATE, RISE, YEARS, (discount, escalation, years) => {
        const { presentValueFactor, netPresentValue } = paybackOf({
          cost: 700,
          saving: 100,
          discount,
          escalation,
          years,
        });
        const sum = summed(discount, escalation, years);
        expect(Math.abs(presentValueFactor / sum - 1)).toBeLessThan(1e-9);
        expect(Math.abs(netPresentValue - (100 * sum - 700))).toBeLessThan(1e-6 * (1 + 100 * sum));
      }),
    ));

  it("has a net present value of nothing at the discounted payback", () =>
    assert(
      property(RATE, RISE, double({ min: 0.5, max: 20, noNaN: true }), (discount, escalation, ratio) => {
        const { discounted } = paybackOf({ cost: ratio, saving: 1, discount, escalation, years: 10 });
        if (discounted === undefined) {
          const forever = paybackOf({ cost: ratio, saving: 1, discount, escalation, years: 60 });
          expect(forever.netPresentValue).toBeLessThan(1e-9);
          return;
        }
        if (discounted > 500) return;
        const there = paybackOf({ cost: ratio, saving: 1, discount, escalation, years: discounted });
        expect(Math.abs(there.netPresentValue)).toBeLessThan(1e-6 * ratio);
      }),
    ));

  it("takes longer with discounting, shorter with escalation", () =>
    assert(
      property(double({ min: 0.01, max: 0.1, noNaN: true }), double({ min: 1, max: 8, noNaN: true }), (rate, ratio) => {
        const plain = { cost: ratio, saving: 1, discount: 0, escalation: 0, years: 10 };
        const { simple, discounted } = paybackOf({ ...plain, discount: rate });
        expect(simple).toBe(ratio);
        expect(discounted ?? Infinity).toBeGreaterThan(simple ?? 0);
        expect(paybackOf({ ...plain, escalation: rate }).discounted ?? Infinity).toBeLessThan(simple ?? 0);
        expect(paybackOf(plain).discounted).toBe(simple);
      }),
    ));

  it("never pays back where the savings don't reach the cost", () => {
    const out = table(run("COST.PAYBACK", 10_000, 200, 0.05));
    expect(out[0]).toEqual(["simple payback", 50, "year"]);
    expect(out[1]).toEqual(["discounted payback", "never", "year"]);
    expect(Number(out[2]?.[1])).toBeLessThan(0);
  });

  it.each([0, -20])("answers a saving of %s: never, with its net present value", (saving) => {
    const out = table(run("COST.PAYBACK", 1000, saving, 0.03, null, 10));
    expect(out[0]).toEqual(["simple payback", "never", "year"]);
    expect(out[1]).toEqual(["discounted payback", "never", "year"]);
    // UPV at 3 %, 10 years: 8.5302 (NIST Handbook 135).
    expect(Math.abs(Number(out[2]?.[1]) - (saving * 8.5302 - 1000))).toBeLessThan(0.01);
  });

  it("counts upkeep and a replacement year by year, and tells when the sum stays positive", () => {
    const given = { cost: 500, discount: 0.03, escalation: 0.01, years: 12 };
    const plan = { ...given, saving: 100, upkeep: 10, replacement: 300, replacementYear: 8 };
    /** The definition, payment by payment. */
    const sums = [-500];
    for (let year = 1; year <= 12; year++) {
      const flow = 100 * 1.01 ** year - 10 - (year === 8 ? 300 : 0);
      sums.push((sums.at(-1) ?? 0) + flow / 1.03 ** year);
    }
    const { discounted = Number.NaN, netPresentValue } = paybackOf(plan);
    expect(netPresentValue).toBeCloseTo(sums.at(-1) ?? Number.NaN, 9);
    const last = sums.length - 1 - [...sums].reverse().findIndex((sum) => sum < 0);
    expect(last).toBe(8);
    expect(discounted).toBeGreaterThan(last);
    expect(discounted).toBeLessThan(last + 1);
    expect(sums.slice(0, 8).some((sum) => sum > 0)).toBe(true);
    expect(paybackOf({ ...plan, replacement: 3000 }).discounted).toBeUndefined();
  });

  it("refuses percent written as whole numbers, and half years", () => {
    expect(refusal(run("COST.PAYBACK", 1000, 100, 3))).toMatch(/#VALUE! discount: must be at most 0.5/);
    expect(refusal(run("COST.PAYBACK", 1000, 100, null, null, 7.5))).toContain("#VALUE! years: must be a whole number");
    expect(refusal(run("COST.PAYBACK", 1000, 100, null, null, null, null, 50))).toContain("#VALUE! replacementYear");
  });
});

describe("a price or heat in another unit", () => {
  const notices = (id: string, ...raw: readonly Cell[]): readonly string[] =>
    explain(compile(lookUp(CATALOGUE, id)!), raw, CATALOGUE)
      .cautions.filter(({ code }) => code === "UNUSUAL-INPUT")
      .map(({ text }) => text);

  it("is named with what is usual and the slip that explains it", () => {
    expect(notices("COST.OFHEAT", 50e6, "electric resistance", 15)).toEqual([
      "price: 15 money/kWh is outside the usual 0.03 money/kWh to 1 money/kWh; in cents? Then it is 0.15 money/kWh.",
    ]);
    expect(notices("COST.OFHEAT", 50e6, "heat pump", 0.0015)[0]).toContain("in hundreds? Then it is 0.15 money/kWh");
    expect(notices("COST.OFHEAT", 50e6, "natural gas", 14)[0]).toContain(
      "Mcf (about 10 therms)? Then it is 1.4 money/therm",
    );
    expect(notices("COST.OFHEAT", 78.5, "natural gas", 1.4)[0]).toContain("as MMBTU it is 78500000 BTU");
    expect(
      notices("COST.COMPARE", 50e6, [
        ["natural gas", 1.4],
        ["heat pump", 150],
      ])[0],
    ).toContain("for an MWh? Then it is 0.15");
    expect(notices("COST.CARBON", 785, "propane")[0]).toContain("as therms 78500000 BTU");
  });

  it("is not suspected where it is usual, and where power is free", () => {
    expect(notices("COST.OFHEAT", 50e6, "electric resistance", 0.15)).toEqual([]);
    expect(notices("COST.OFHEAT", 50e6, "solar", 0)).toEqual([]);
    expect(notices("COST.OFHEAT", 15_000, "natural gas", 0.05, null, "SI")).toEqual([]);
    expect(
      notices("COST.COMPARE", 50e6, [
        ["wood", 300],
        ["propane", 2.5],
        ["fuel oil", 4],
      ]),
    ).toEqual([]);
  });
});

it("the printed units of price are those that the sources are sold in", () => {
  expect(us("price of gas", 1) * us("heat", 1e5)).toBeCloseTo(1, 9);
});
