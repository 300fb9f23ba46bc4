import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { isPure, loadRefrigerant, REFRIGERANTS } from "../../core/refrigerant/refrigerant";
import { goldenRows } from "./goldenRows";

type Rows = ReadonlyMap<string, unknown>;

const call = (id: string, ...raw: readonly unknown[]): unknown => {
  const definition = lookUp(CATALOGUE, id);
  if (!definition) throw new Error(`no ${id}`);
  return evaluate(compile(definition), raw, CATALOGUE);
};

const rowsOf = (id: string, ...raw: readonly unknown[]): Rows => {
  const out = call(id, ...raw);
  if (isFault(out)) throw new Error(out.message);
  return new Map((out as [string, unknown, string][]).map(([label, value]) => [label, value]));
};

const refusal = (id: string, ...raw: readonly unknown[]): string => {
  const out = call(id, ...raw);
  if (!isFault(out)) throw new Error("answered");
  return `${out.code} ${out.message}`;
};

describe("REFRIG.STATE", () => {
  it("agrees with another program's superheated, subcooled and supercritical rows", () => {
    const rows = goldenRows("refrigerant-singlephase.csv").filter(
      (row) => row.number("dT_K") !== 0 && REFRIGERANTS.includes(row.word("fluid")),
    );
    expect(rows).toHaveLength(375);
    for (const row of rows) {
      const name = row.word("fluid");
      const found = rowsOf(
        "REFRIG.STATE",
        name,
        row.number("p_Pa") / 1000,
        row.number("T_K") - 273.15,
        "absolute",
        "SI",
      );
      const pure = isPure(loadRefrigerant(name));
      const near = (label: string, wanted: number, within: number) =>
        expect(Math.abs((found.get(label) as number) - wanted), `${name} ${label} ${row.word("T_K")}`).toBeLessThan(
          within,
        );
      near("density", row.number("rho_kg/m3"), row.number("rho_kg/m3") * (pure ? 2e-4 : 1e-3));
      near("enthalpy", row.number("h_J/kg") / 1000, pure ? 0.05 : 0.2);
      near("heat capacity", row.number("cp_J/kg/K") / 1000, (row.number("cp_J/kg/K") / 1000) * (pure ? 2e-3 : 1e-2));
    }
  });

  it("counts enthalpy from the zero of the cell's system, and differences don't depend on it", () => {
    const between = (units: "US" | "SI") => {
      const [cold, hot] = units === "US" ? [100, 180] : [(100 - 32) / 1.8, (180 - 32) / 1.8];
      const pressure = units === "US" ? 200 : 200 * 6.894757293168;
      const at = (temperature: number) =>
        rowsOf("REFRIG.STATE", "R-134a", pressure, temperature, "absolute", units).get("enthalpy") as number;
      return (at(hot) - at(cold)) * (units === "US" ? 2.326 : 1);
    };
    expect(between("US")).toBeCloseTo(between("SI"), 6);
    expect(rowsOf("REFRIG.STATE", "R-134a", 100, 150).get("enthalpy zero")).toContain("-40 °F");
    expect(rowsOf("REFRIG.STATE", "R-134a", 500, 60, "", "SI").get("enthalpy zero")).toContain("IIR");
  });

  it("gives both phases inside a glide, with rows left empty that have no meaning", () => {
    const found = rowsOf("REFRIG.STATE", "R-407C", 1650, 40, "absolute", "SI");
    expect(found.get("phase")).toBe("two-phase");
    expect(found.get("density")).toBeGreaterThan(60);
    for (const label of ["heat capacity", "speed of sound", "viscosity", "conductivity"])
      expect(found.get(label), label).toBe("");
  });

  it("refuses a pure refrigerant on its line and gives pressures in the cell's units", () => {
    const out = call("REFRIG.PRESSURE", "R-22", 100, "", "absolute") as number;
    expect(refusal("REFRIG.STATE", "R-22", out, 100, "absolute")).toMatch(/#N\/A.*psi absolute at 100 °F/);
    expect(refusal("REFRIG.STATE", "R-22", 100, 700)).toMatch(
      /R-22 temperature: must be from .* °F to .* °F, got 700 °F/,
    );
  });
});

describe("REFRIG.SATURATED", () => {
  it.each([...REFRIGERANTS])("puts the US zero of %s in its saturated liquid at -40 °F", (name) => {
    const found = rowsOf("REFRIG.SATURATED", name, -40, "bubble");
    expect(found.get("enthalpy")).toBeCloseTo(0, 6);
    expect(found.get("entropy")).toBeCloseTo(0, 8);
    expect(found.get("surface tension")).toBeGreaterThan(0);
  });

  it("refuses above the critical temperature in the cell's units", () => {
    expect(refusal("REFRIG.SATURATED", "R-744", 100)).toContain(
      "below the critical temperature, 87.7608 °F, got 100 °F",
    );
  });
});

describe("REFRIG.FACTS", () => {
  // 100-year warming potentials of AR4 as printed for the blends.
  it.each([
    ["R-410A", 2088],
    ["R-454B", 466],
    ["R-407C", 1774],
    ["R-404A", 3922],
    ["R-507A", 3985],
    ["R-513A", 631],
    ["R-452B", 698],
  ])("finds the printed warming potential of %s from its components, a whole number", (name, printed) => {
    const found = rowsOf("REFRIG.FACTS", name).get("warming potential") as number;
    expect(found).toBe(printed);
  });

  it.each([...REFRIGERANTS])("the retrofit note of %s says what its class requires", (name) => {
    const found = rowsOf("REFRIG.FACTS", name);
    const note = String(found.get("retrofit note"));
    if (found.get("safety class") === "A1") expect(note).toContain("Not flammable");
    else expect(note).toMatch(/only in equipment listed for it, never as a drop-in/);
  });

  it("leaves the boiling point of R-744 at 1 atm empty: there is no liquid", () => {
    expect(rowsOf("REFRIG.FACTS", "R-744").get("normal boiling point")).toBe("");
  });
});
