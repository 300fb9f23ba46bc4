import { assert, double, property } from "fast-check";
import { describe, expect, it } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { lookUp } from "../../core/kernel/define/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { isFault } from "../../core/kernel/values/fault";
import type { CellInput } from "../../core/kernel/values/cellInput";

const run = (...raw: readonly CellInput[]) => evaluate(compile(lookUp(CATALOGUE, "AIRCON.FROMTABLE")!), raw, CATALOGUE);
const valuesOf = (out: unknown): Record<string, number> => {
  if (isFault(out)) throw new Error(out.message);
  return Object.fromEntries(
    (out as readonly (readonly (string | number)[])[]).map(([label, value]) => [String(label), Number(value)]),
  );
};
const refusal = (out: unknown): string => (isFault(out) ? `${out.code} ${out.message}` : JSON.stringify(out));

/** An invented two-stage machine: capacity straight in outdoor temperature, wet bulb and airflow. */
const cooling = (T: number, W: number, cfm: number, full: boolean) =>
  (full ? 1 : 0.7) * (48_000 - 250 * (T - 95) + 700 * (W - 67) + 4 * (cfm - 1600));
const power = (T: number, W: number, cfm: number, full: boolean) =>
  (full ? 1 : 0.6) * (3.9 + 0.045 * (T - 95) + 0.02 * (W - 67) + 0.0002 * (cfm - 1600));
const [OUTDOORS, BULBS, FLOWS] = [
  [75, 85, 95, 105],
  [63, 67, 72],
  [1200, 1600],
];
const keys = OUTDOORS.flatMap((T) =>
  BULBS.flatMap((W) => FLOWS.flatMap((Q) => [true, false].map((full) => ({ T, W, Q, full })))),
);
const TABLE: CellInput = [
  ["Outdoor Air (°F)", "EWB °F", "Airflow CFM", "Stage", "Total MBh", "Sens. MBh", "System kW"],
  ...keys.map(({ T, W, Q, full }) => [
    T,
    W,
    Q,
    full ? "High" : "Low",
    cooling(T, W, Q, full) / 1000,
    20,
    power(T, W, Q, full),
  ]),
];

describe("AIRCON.FROMTABLE", () => {
  it("reproduces a table that is straight in outdoor temperature, wet bulb and airflow, in both stages", () =>
    assert(
      property(
        double({ min: 75, max: 105, noNaN: true }),
        double({ min: 63, max: 72, noNaN: true }),
        double({ min: 1200, max: 1600, noNaN: true }),
        (T, W, Q) => {
          for (const full of [true, false]) {
            const found = valuesOf(run(TABLE, T, W, full ? "high" : "LOW", 0.2, Q));
            const [q, p] = [cooling(T, W, Q, full), power(T, W, Q, full)];
            expect(found["cooling"]! / q).toBeCloseTo(1, 6);
            expect(found["power"]! / p).toBeCloseTo(1, 6);
            expect(found["rejected"]! / (q + 3412.141633 * (p - 0.2))).toBeCloseTo(1, 6);
            expect(found["EER"]! / (q / p / 1000)).toBeCloseTo(1, 6);
          }
        },
      ),
      { numRuns: 30 },
    ));

  it.each([
    [
      ["ODB", "Capacity (BTU/h)", "Power (W)"],
      [75, 53_000, 3000],
      [95, 48_000, 3900],
    ],
    [
      ["Ambient temp. °F", "Total capacity, tons", "Watts"],
      [75, 53 / 12, 3000],
      [95, 4, 3900],
    ],
    [
      ["OAT [°C]", "Cooling capacity kW", "Input kW"],
      ["23.8889", 15.53277, 3],
      [35, 14.06741, 3.9],
    ],
    [
      ["Outdoor dry bulb", "MBH", "kW"],
      ["°F", "", ""],
      [75, 53, 3],
      [95, 48, 3.9],
    ],
    [
      ["kW", "Total cap. MBtuh", "T out °F", "EER"],
      [3, 53, 75, 17],
      [3.9, 48, 95, 12.3],
    ],
  ])("reads the heads %j as people write them", (...table) => {
    const found = valuesOf(run(table, 85));
    expect(found["cooling"]).toBeCloseTo(50_500, -0.5);
    expect(found["power"]).toBeCloseTo(3.45, 4);
  });

  it("fills merged keys down, mixes numbered speeds, and works where wet bulbs differ in their outdoor rows", () => {
    const table: CellInput = [
      ["Speed Hz", "Wet bulb", "Outdoor", "MBh", "kW"],
      [30, 67, 75, 20, 1],
      ["", "", 95, 18, 1.2],
      [60, 67, 75, 40, 2.4],
      ["", "", 95, 36, 3],
      ["", 71, 85, 42, 2.7],
    ];
    expect(valuesOf(run(table, 85, 67, "45"))["cooling"]).toBeCloseTo(28_500, 6);
    expect(valuesOf(run(table, 85, 69, "60"))["cooling"]).toBeCloseTo(40_000, 6);
    expect(refusal(run(table, 90, 69, "60"))).toMatch(/#N\/A outdoor: the table's rows hold from 85/);
    expect(refusal(run(table, 85, 67, "70"))).toMatch(/#N\/A stage: the table has "30", "60", got "70"/);
  });

  it("refuses what lies outside the rows and says how far they reach", () => {
    expect(refusal(run(TABLE, 74, 67, "low", 0, 1600))).toMatch(
      /#N\/A outdoor: the table's rows hold from 75 °F to 105 °F, got 74/,
    );
    expect(refusal(run(TABLE, 95, 73, "low", 0, 1600))).toMatch(/#N\/A indoorWetBulb/);
    expect(refusal(run(TABLE, 95, 67, "low", 0, 1700))).toMatch(/#N\/A airflow: the table's rows hold from 1200/);
  });

  it("asks for the key that tells rows apart", () => {
    expect(refusal(run(TABLE, 95, 67, null, 0, 1600))).toMatch(/#VALUE! stage: the table has "high", "low"/);
    expect(refusal(run(TABLE, 95, null, "low", 0, 1600))).toMatch(
      /#VALUE! indoorWetBulb: the table has 63 °F, 67 °F, 72 °F/,
    );
    expect(
      refusal(
        run(
          [
            ["outdoor", "MBh", "kW"],
            [75, 40, 3],
            [75, 41, 3],
          ],
          75,
        ),
      ),
    ).toMatch(/two rows at 75 °F outdoors differ/);
  });

  it("names a missing column, a second one, a wrong unit and a blank", () => {
    expect(
      refusal(
        run(
          [
            ["outdoor", "MBh"],
            [75, 40],
          ],
          75,
        ),
      ),
    ).toMatch(/no column reads as power/);
    expect(
      refusal(
        run(
          [
            ["outdoor", "MBh", "comp kW", "system kW"],
            [75, 40, 2, 3],
          ],
          75,
        ),
      ),
    ).toMatch(/both read as power/);
    expect(
      refusal(
        run(
          [
            ["outdoor", "capacity", "kW"],
            [75, 40, 3],
          ],
          75,
        ),
      ),
    ).toMatch(/don't fit: name the units/);
    expect(
      refusal(
        run(
          [
            ["outdoor", "MBh", "kW"],
            [75, null, 3],
          ],
          75,
        ),
      ),
    ).toMatch(/row 2, capacity: is blank/);
    expect(refusal(run([["outdoor", "MBh", "kW"]], 75))).toMatch(/no rows below/);
    expect(
      refusal(
        run(
          [
            ["outdoor", "MBh", "kW"],
            [75, 40, 3],
          ],
          75,
          67,
        ),
      ),
    ).toMatch(/no column of indoor wet bulb/);
  });
});
