import { assert, constantFrom, double, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { solveCycle } from "../../core/cycle/cycle";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { explain } from "../../core/kernel/explain/explain";
import { isFault } from "../../core/kernel/values/fault";
import { workingLines } from "../../core/kernel/explain/working";
import { meanVoid } from "../../core/line/charge/equations";
import { boilingTemperature } from "../../core/line/boiling";
import { solveLineDrop, type LineInput } from "../../core/line/lineDrop";
import { leastFlow } from "../../core/line/suctionRiser";
import { REFRIGERANTS, loadRefrigerant } from "../../core/refrigerant/refrigerant";
import { sublimationPressure } from "../../core/water/ice";

const call = (id: string, ...raw: readonly unknown[]): unknown => {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`no ${id}`);
  return evaluate(compile(definition), raw, CATALOGUE);
};

const rowsOf = (id: string, ...raw: readonly unknown[]): ReadonlyMap<string, number> => {
  const out = call(id, ...raw);
  if (isFault(out)) throw new Error(out.message);
  return new Map((out as [string, number, string][]).map(([label, value]) => [label, value]));
};

const CONDENSING_REFRIGERANTS = REFRIGERANTS.filter((name) => name !== "R-744");
const at = (name: string, subcooling = 5) =>
  solveCycle({
    refrigerant: loadRefrigerant(name),
    evaporating: 278.15,
    condensing: 318.15,
    superheat: 6,
    subcooling,
    efficiency: 0.65,
  });
const line = (change: Partial<LineInput>): LineInput => ({
  service: "suction",
  bore: 0.02,
  length: 10,
  fittingsLength: 0,
  rise: 0,
  valveDrop: 0,
  ...change,
});

describe("LINE.BOILING", () => {
  // IAPWS R14-08(2011): 8.94735 Pa at 230 K, the check value of the release (from memory).
  it("meets the release's check value over ice", () => {
    expect(sublimationPressure.code({ T: 230 })).toBeCloseTo(8.94735, 4);
  });

  it("gives -12 °F at 500 micron and 212 °F at one atmosphere", () => {
    expect(call("LINE.BOILING", 500)).toBeCloseTo(-12, 0);
    expect(call("LINE.BOILING", 760_000)).toBeCloseTo(212, 0);
  });

  it("rises with pressure without a step at the triple point", () => {
    const pressures = Array.from({ length: 200 }, (_, place) => 600 + place * 0.12);
    const temperatures = pressures.map((each) => boilingTemperature(each).temperature);
    for (const [place, each] of temperatures.entries()) {
      if (place === 0) continue;
      const rise = each - temperatures[place - 1]!;
      expect(rise).toBeGreaterThan(0);
      expect(rise).toBeLessThan(0.004);
    }
  });

  it("refuses a pressure beyond its lines in the cell's units", () => {
    const out = call("LINE.BOILING", 1e-9);
    if (!isFault(out)) throw new Error("answered");
    expect(out.message).toMatch(/vacuum \(absolute\): must be from .* micron to .* micron, got/);
  });
});

describe("LINE.DROP", () => {
  it("grows with length and flow and shrinks with bore, for every refrigerant", () => {
    assert(
      property(
        constantFrom(...CONDENSING_REFRIGERANTS),
        constantFrom("suction", "discharge", "liquid" as const),
        double({ min: 0.005, max: 0.03, noNaN: true }),
        (name, service, massFlow) => {
          const solved = at(name);
          const drop = (change: Partial<LineInput>, flow = massFlow) =>
            solveLineDrop(line({ service: service, ...change }), solved, flow).frictionDrop;
          expect(drop({ length: 20 })).toBeCloseTo(2 * drop({ length: 10 }), 6);
          expect(drop({ length: 10, fittingsLength: 10 })).toBeCloseTo(drop({ length: 20 }), 6);
          expect(drop({}, 1.2 * massFlow)).toBeGreaterThan(drop({}));
          expect(drop({ bore: 0.025 })).toBeLessThan(drop({}));
        },
      ),
      { numRuns: 60 },
    );
  });

  it("adds column and valves, and gives the column back on the way down", () => {
    const solved = at("R-410A");
    const up = solveLineDrop(line({ service: "liquid", bore: 0.01, rise: 5, valveDrop: 1e4 }), solved, 0.05);
    const down = solveLineDrop(line({ service: "liquid", bore: 0.01, rise: -5 }), solved, 0.05);
    expect(up.pressureDrop).toBeCloseTo(up.frictionDrop + up.columnDrop + 1e4, 6);
    expect(up.columnDrop).toBeCloseTo(-down.columnDrop, 6);
    expect(up.columnDrop).toBeCloseTo(solved.liquid.density * 9.80665 * 5, 6);
  });

  it("flashes as soon as the drop uses up the subcooling, and not before", () => {
    for (const name of CONDENSING_REFRIGERANTS) {
      const solved = at(name, 3);
      const lost = (valveDrop: number) =>
        solveLineDrop(line({ service: "liquid", bore: 0.02, length: 0.01, valveDrop }), solved, 0.01);
      const enough = lost(0.09 * solved.condensingPressure);
      const little = lost(0.03 * solved.condensingPressure);
      expect(little.outletQuality, name).toBe(0);
      expect(little.saturationDrop, name).toBeLessThan(3);
      expect(enough.saturationDrop, name).toBeGreaterThan(3);
      expect(enough.outletQuality, name).toBeGreaterThan(0);
    }
  });

  it("leaves the quality of gas lines empty and refuses a drop beyond the pressure", () => {
    const rows = rowsOf("LINE.DROP", "R-410A", "suction", "7/8 in", 30, 36000, 45, 105);
    expect(rows.get("outlet quality")).toBe("");
    const out = call("LINE.DROP", "R-410A", "suction", "1/4 in", 300, 90000, 45, 105);
    if (!isFault(out)) throw new Error("answered");
    expect(out.message).toMatch(/pressure drop of the suction line: must be below the absolute pressure/);
  });

  it("answers the same in SI", () => {
    const us = rowsOf("LINE.DROP", "R-410A", "liquid", "3/8 in", 30, 36000, 45, 105);
    const si = rowsOf(
      "LINE.DROP",
      ...["R-410A", "liquid", "3/8 in", 30 * 0.3048, 36000 * 2.9307107017222e-4, (45 - 32) / 1.8, (105 - 32) / 1.8],
      ...["", "", "", "", "", "", "SI"],
    );
    expect(si.get("pressure drop")).toBeCloseTo(us.get("pressure drop")! * 6.894757293168, 6);
  });
});

describe("LINE.ROOMLIMIT", () => {
  const definition = lookUp(CATALOGUE, "LINE.ROOMLIMIT");
  const told = (name: string, units: "US" | "SI") => {
    if (!definition) throw new Error("no LINE.ROOMLIMIT");
    const { cautions, steps, system } = explain(
      compile(definition),
      [name, 30, 2, "", "", "", "", "", units],
      CATALOGUE,
    );
    const notice = cautions.find(({ code }) => code === "LINE-FLAMMABILITY-SPREAD")?.text ?? "";
    return [notice, workingLines(steps, system).find(({ text }) => text.startsWith("Lower flammability"))?.text ?? ""];
  };

  it("gives every flammability limit in the units of the call, in the notice and in the working", () => {
    for (const name of ["R-32", "R-452B", "R-454B"])
      for (const text of told(name, "US")) {
        expect(text, name).toContain(" lb/ft³");
        expect(text, name).not.toContain("kg/m³");
      }
    // 0.353 kg/m³ over 16.01846 kg/m³ for each lb/ft³.
    expect(told("R-454B", "US")[0]).toContain("0.02204 lb/ft³ by ASHRAE 34");
    expect(told("R-454B", "SI")[0]).toContain("0.296 kg/m³ (0.353 kg/m³ by ASHRAE 34");
    expect(told("R-452B", "SI")[0]).toContain("(from memory; 0.311 kg/m³ also printed)");
    expect(told("R-1234yf", "US")[0]).toContain("lb/ft³ (from memory)");
  });
});

describe("LINE.BORE", () => {
  // ASTM B280: bore areas 0.363 in² of an annealed coil and 0.348 in² of a drawn length of 3/4 in.
  it("tells coils from straight lengths of 3/4 in", () => {
    const area = (form: string): number => (Math.PI / 4) * (call("LINE.BORE", "3/4 in", form) as number) ** 2;
    expect(area("coil")).toBeCloseTo(0.363, 3);
    expect(area("straight")).toBeCloseTo(0.348, 3);
  });

  it("takes a size that isn't coiled as straight, and refuses a coil of it", () => {
    expect(call("LINE.BORE", "2-1/8 in")).toBeCloseTo(1.985, 9);
    const coil = call("LINE.BORE", "2-1/8 in", "coil");
    expect(isFault(coil) && coil.message).toMatch(/not sold in coils/);
    const straight = call("LINE.BORE", "5/16 in", "straight");
    expect(isFault(straight) && straight.message).toMatch(/no straight length/);
  });
});

describe("LINE.RISER", () => {
  it("needs flow with the bore to the power 2.5", () => {
    const solved = at("R-410A");
    expect(leastFlow(solved, "suction", 0.02) / leastFlow(solved, "suction", 0.01)).toBeCloseTo(2 ** 2.5, 9);
  });

  it("needs more flow in a discharge riser than in a suction riser: denser gas", () => {
    for (const name of CONDENSING_REFRIGERANTS)
      expect(leastFlow(at(name), "discharge", 0.02), name).toBeGreaterThan(leastFlow(at(name), "suction", 0.02));
  });

  it("never needs less flow at part load", () => {
    const rows = rowsOf("LINE.RISER", "R-410A", "suction", "7/8 in", 45, 115);
    expect(rows.get("least cooling part load")).toBeGreaterThanOrEqual(rows.get("least cooling")!);
  });
});

describe("LINE.CHARGEBALANCE", () => {
  const block = (change: Readonly<Record<string, unknown>> = {}) =>
    Object.entries({
      refrigerant: "R-410A",
      "outdoor coil volume": 0.3,
      "pool exchanger volume": 0.15,
      "liquid line size": "1/2 in",
      "liquid line length": 60,
      "nameplate charge": 14,
      ...change,
    });

  it("has a void fraction that lies between 0.5 and 1 and equals a sum over the qualities", () => {
    for (const [rhoV, rhoL] of [
      [60, 1000],
      [110, 950],
      [20, 1150],
    ] as const) {
      const steps = 20_000;
      let sum = 0;
      for (let i = 0; i < steps; i++) {
        const x = (i + 0.5) / steps;
        sum += 1 / (1 + ((1 - x) / x) * (rhoV / rhoL) ** (2 / 3));
      }
      const found = meanVoid.code({ rhoV, rhoL });
      expect(found).toBeCloseTo(sum / steps, 6);
      expect(found).toBeGreaterThan(0.5);
      expect(found).toBeLessThan(1);
    }
  });

  it("the balance of needs, difference, added charge and new total closes", () => {
    const rows = rowsOf("LINE.CHARGEBALANCE", block());
    const value = (label: string): number => rows.get(label) ?? Number.NaN;
    expect(value("need pool") - value("need outdoors")).toBeCloseTo(value("difference"), 9);
    expect(value("new charge")).toBeCloseTo(14 + value("charge added"), 9);
    expect(value("outdoor coil") + value("charge added")).toBeCloseTo(
      Math.max(value("need pool"), value("need outdoors")),
      9,
    );
    expect(value("worst shortage")).toBeLessThan(value("full outdoor coil"));
  });

  it("lets no idle condenser take more liquid than the machine holds", () => {
    const small = rowsOf("LINE.CHARGEBALANCE", block({ "nameplate charge": 4 }));
    const free = rowsOf("LINE.CHARGEBALANCE", block({ "nameplate charge": "" }));
    const value = (label: string): number => small.get(label) ?? Number.NaN;
    expect(value("full outdoor coil")).toBeGreaterThan(value("new charge"));
    expect(value("worst shortage")).toBeLessThanOrEqual(value("new charge"));
    expect(free.get("worst shortage")).toBeGreaterThan(value("new charge"));
    for (const label of ["need outdoors", "need pool", "charge added", "receiver volume"])
      expect(value(label), label).toBe(free.get(label));
  });

  it("cautions where an idle condenser has room for all that the machine holds", () => {
    const definition = lookUp(CATALOGUE, "LINE.CHARGEBALANCE");
    if (!definition) throw new Error("no LINE.CHARGEBALANCE");
    const codes = (charge: number) =>
      explain(compile(definition), [block({ "nameplate charge": charge })], CATALOGUE).cautions.map(({ code }) => code);
    expect(codes(4)).toContain("LINE-CHARGE-ALL-IDLE");
    expect(codes(40)).not.toContain("LINE-CHARGE-ALL-IDLE");
  });

  it("takes a known hold-up in place of the estimate", () => {
    expect(rowsOf("LINE.CHARGEBALANCE", block({ "pool exchanger hold up": 3 })).get("pool exchanger")).toBeCloseTo(
      3,
      9,
    );
  });

  it("refuses a line with a length and no size, and shares that don't fit", () => {
    for (const [change, says] of [
      [{ "liquid line size": "" }, /needs liquid line size/],
      [{ "gas line length": 20 }, /needs gas line size/],
      [{ "gas share": 0.6, "liquid share": 0.6 }, /together must be at most 1/],
      [{ "receiver fill": 0.9 }, /at most 0.8/],
    ] as const) {
      const out = call("LINE.CHARGEBALANCE", block(change));
      if (!isFault(out)) throw new Error("answered");
      expect(out.code).toBe("#VALUE!");
      expect(out.message).toMatch(says);
    }
  });
});
