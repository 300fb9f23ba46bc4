import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import { chargeCeiling, chargeWithoutArea, roomLimitByArea, roomLimitByVolume } from "../../core/line/room/equations";

/** Rows of LINE.ROOMLIMIT, kg or words. */
function rowsOf(refrigerant: string, floorArea: number | string, releaseHeight: number | string) {
  const definition = lookUp(CATALOGUE, "LINE.ROOMLIMIT");
  if (!definition) throw new Error("no LINE.ROOMLIMIT");
  const out = evaluate(
    compile(definition),
    [refrigerant, floorArea, releaseHeight, "", "", "", "", "", "SI"],
    CATALOGUE,
  );
  if (isFault(out)) throw new Error(out.message);
  const rows = new Map((out as [string, number | string][]).map(([label, value]) => [label, value]));
  return { kg: (label: string) => Number(rows.get(label)), governs: String(rows.get("governs")) };
}

const R32 = 0.307;

describe("the clauses of the room limit", () => {
  // Tables of manuals for R-32 (0.307 kg/m³), release height 0.6 m: the formulas alone, three digits.
  test.each([
    [10, 1.084],
    [45, 2.299],
    [28.81, 1.84],
    [53.19, 2.5],
    [104.26, 3.5],
  ])("give %s m² the %s kg that is printed by the area", (A, kg) =>
    expect(Math.abs(roomLimitByArea.code({ LFL: R32, h0: 0.6, A }) - kg)).toBeLessThan(0.002),
  );

  test("give 0.138 kg for a square metre by the volume, as printed", () =>
    expect(roomLimitByVolume.code({ LFL: R32, h0: 0.6, A: 1 })).toBeCloseTo(0.138, 3));

  test("give 1.842 kg and 15.96 kg for R-32 as the two bounds, as printed", () => {
    expect(chargeWithoutArea.code({ LFL: R32 })).toBeCloseTo(1.842, 3);
    expect(chargeCeiling.code({ LFL: R32 })).toBeCloseTo(15.96, 2);
  });
});

describe("LINE.ROOMLIMIT", () => {
  test("never passes the ceiling of 52 LFL in a large room", () => {
    for (const area of [1780, 5000, 20000]) {
      const { kg, governs } = rowsOf("R-454B", `${area} ft²`, "7.2 ft");
      expect(kg("charge limit")).toBeLessThanOrEqual(15.39 + 0.01);
      expect(governs).toMatch(area > 1780 ? /^52 LFL/ : /^2\.5 LFL|^52 LFL/);
    }
  });

  test("reaches the ceiling of R-454B at 1,780 ft² and 7.2 ft, as worked by hand", () => {
    expect(rowsOf("R-454B", "1770 ft²", "7.2 ft").governs).toBe("2.5 LFL^1.25 h0 √A");
    expect(rowsOf("R-454B", "1790 ft²", "7.2 ft").governs).toBe("52 LFL: ceiling without ventilation");
  });

  test("is never below the charge that needs no floor area, and says so", () => {
    const { kg, governs } = rowsOf("R-454B", "120 ft²", "2 ft");
    expect(kg("charge limit")).toBe(kg("charge without limit"));
    expect(governs).toBe("6 LFL: no floor area is asked");
  });

  test("keeps its rows in order whatever the room", () => {
    for (const refrigerant of ["R-32", "R-454B", "R-1234yf"])
      for (const area of [1, 8, 20, 60, 300, 3000])
        for (const height of [0.6, 1, 1.8, 2.2]) {
          const { kg } = rowsOf(refrigerant, area, height);
          expect(kg("charge without limit")).toBeLessThanOrEqual(kg("charge limit"));
          expect(kg("charge limit")).toBeLessThanOrEqual(kg("charge ceiling"));
        }
  });
});
