import { describe, expect, test } from "vitest";
import { commissioning } from "../../src/sheets/commissioning";
import { refrigerantSide } from "../../src/sheets/refrigerantSide";
import type { StarterSheet } from "../../src/sheets/sheet";
import { survey } from "../../src/sheets/survey";
import { rowsOf, valuesOf, withInputs } from "./calculated";

describe("Survey and decision", () => {
  test("the survey says for Fernhill Hall: go, but settle the points first", async () => {
    const found = await valuesOf(survey);
    expect(found.get("Decision")).toBe("GO WITH CONDITIONS");
    expect(found.get("Stopped by")).toBe("nothing");
    expect(found.get("To settle first")).toBe("Warranty and listing; Drain covers; Bonding");
  });

  test("the survey stops where the machine, the refrigerant's class or a single drain forbids it, and names each", async () => {
    const found = await valuesOf(
      withInputs(survey, { "Machine type": "window unit", Refrigerant: "R-32", "Main drains": "single" }),
    );
    expect(found.get("Decision")).toBe("NO-GO");
    expect(found.get("Stopped by")).toBe("Machine type; Safety class; Drain covers");
  });

  test("the survey says go where every point is settled", async () => {
    const found = await valuesOf(
      withInputs(survey, {
        "Maker consents to the change": "yes",
        "Drain cover marked, whole, not expired": "yes",
        "Equipotential bonding present and checked": "yes",
        "Made by": "AB",
        "Checked by": "CD",
      }),
    );
    expect(found.get("Decision")).toBe("GO");
    expect(found.get("Master check")).toBe("OK");
  });
});

/** Every gauge pressure lower by so much. */
function withLess(sheet: StarterSheet, less: number): StarterSheet {
  const cells = { ...sheet.cells };
  for (const [place, { content }] of Object.entries(sheet.cells)) {
    const beside = `B${place.slice(1)}`;
    const cell = cells[beside];
    if (/^A\d/.test(place) && /^(Suction|Condensing) pressure$/.test(String(content)) && cell)
      cells[beside] = { ...cell, content: Number(cell.content) - less };
    // The block of the plan has the same label, and nothing of the gauge in it.
    if (content === "Subcooling" && !String(cell?.content).includes("REFRIG.")) delete cells[place];
  }
  return { ...sheet, cells };
}

describe("Commissioning", () => {
  test("finds water side and refrigerant side of Fernhill Hall within 15 %, and a yearly UA that has fallen", async () => {
    const found = await valuesOf(withInputs(commissioning, { "UA after year 1": 5000 }));
    expect(found.get("The two duties agree within 15 %")).toBe("OK");
    expect(Math.abs(found.get("Water side against refrigerant side") as number)).toBeLessThan(0.06);
    expect(found.get("Year 1")).toBeLessThan(0.8);
    expect(found.get("No year's UA at 80 % or less")).toBe("LOOK");
    expect(found.get("Every safety trip proven or not fitted")).toBe("FAILS");
  });

  // U.S. Standard Atmosphere 1976, table IV: 12.23 psi at 5,000 ft, 14.70 psi at sea level; from memory.
  test("counts the readings of both modes from the air at the altitude", async () => {
    const at = (altitude: number, less: number) =>
      valuesOf(withLess(withInputs(commissioning, { Altitude: altitude }), less));
    const low = await at(0, 0);
    const high = await at(5000, 0);
    const sameAbsolute = await at(5000, 12.23 - 14.7);
    const read = [
      "Superheat at the compressor",
      "Subcooling",
      "Condensing temperature (dew)",
      "Discharge enthalpy",
      "Heat rejected, refrigerant side",
    ];
    for (const label of read) {
      expect(high.get(label), label).not.toBe(low.get(label));
      expect((sameAbsolute.get(label) as number) / (low.get(label) as number), label).toBeCloseTo(1, 3);
    }
    expect(high.get("Superheat at the compressor")).toBeGreaterThan(low.get("Superheat at the compressor") as number);
    // The values above are those of the pool mode, which comes last; the outdoor mode has the same formulas.
    const calls = Object.values(commissioning.cells).flatMap(({ content }) =>
      typeof content === "string" ? (content.match(/REFRIG\.(?!.*REFRIG)[^)]*\)/g) ?? []) : [],
    );
    expect(calls).toHaveLength(15);
    for (const call of calls) expect(call).toMatch(/\$?B\$?\d+&" ft"\)$/);
  });

  test("never asks for still water in an exchanger that condenses", () => {
    const text = JSON.stringify(commissioning);
    expect(text).toContain("In outdoor mode, stop the outdoor fan; never with still water in the exchanger.");
    expect(text).not.toMatch(/stop the water/i);
  });

  test("sets each reading beside the model, and names a fouled exchanger and non-condensables", async () => {
    const found = await valuesOf(commissioning);
    expect(found.get("Readings beside the model")).toBe("agrees");
    expect(Math.abs(Number(found.get("Pool: condensing")) - Number(found.get("Pool condensing")))).toBeLessThan(4);
    const fouled = await rowsOf(withInputs(commissioning, { "UA of the exchanger as planned": 14000 }));
    expect(fouled.get("Readings beside the model")?.slice(1)).toEqual(
      expect.arrayContaining(["differs", expect.stringContaining("fouling or scale")]),
    );
    const air = await rowsOf(withInputs(commissioning, { "Pressure at rest": 280 }));
    expect(air.get("Readings beside the model")?.[4]).toContain("non-condensables");
    expect(air.get("Readings agree with the model")?.[1]).toBe("LOOK");
  });

  test("expects more power where line and valve hold up the hot gas", async () => {
    const found = await valuesOf(commissioning);
    const held = await valuesOf(withInputs(commissioning, { "Lost by hot-gas line and valve to the exchanger": 30 }));
    const power = "Pool: power with the indoor fan";
    expect(Number(held.get(power)) / Number(found.get(power))).toBeGreaterThan(1.02);
  });

  test("reports duties that don't agree", async () => {
    const found = await valuesOf(withInputs(commissioning, { "Water through the exchanger": 35 }));
    expect(found.get("The two duties agree within 15 %")).toBe("LOOK");
  });
});

describe("Refrigerant side", () => {
  // Printed tables of NIST REFPROP origin: R-410A dew 118.4 psig at 40 °F; R-22 84.1 psig at 50 °F.
  test("charts the chosen refrigerant and reads superheat and subcooling", async () => {
    const found = await valuesOf(refrigerantSide);
    expect(found.get("40")).toBeCloseTo(118.4, 0);
    expect(found.get("Subcooling")).toBeCloseTo(10, 0);
    const other = await valuesOf(withInputs(refrigerantSide, { Refrigerant: "R-22" }));
    expect(other.get("50")).toBeCloseTo(84.1, 0);
  });

  // U.S. Standard Atmosphere 1976, table IV: 12.23 psi at 5,000 ft, 14.70 psi at sea level; from memory.
  test("counts gauge pressures from the air at the altitude", async () => {
    const at = (altitude: number) => valuesOf(withInputs(refrigerantSide, { Altitude: altitude }));
    const low = await at(0);
    const high = await at(5000);
    expect((high.get("40") as number) - (low.get("40") as number)).toBeCloseTo(14.7 - 12.23, 1);
    // The same reading is a lower absolute pressure there, and a lower dew temperature.
    expect(high.get("Superheat")).toBeGreaterThan(low.get("Superheat") as number);
  });

  test("never lets a mildly flammable refrigerant pass in a machine that isn't listed for it", async () => {
    const found = await valuesOf(withInputs(refrigerantSide, { Refrigerant: "R-454B" }));
    expect(found.get("Flammable class only in listed equipment")).toBe("FAILS");
  });
});
