import { describe, expect, test, vi } from "vitest";
import { cellLabels } from "../../src/taskpane/model/cellLabels";
import type { Area, Block, CellValue } from "../../src/workbook/port";

const ROWS: readonly (readonly CellValue[])[] = [
  ["Evaporation", null, "BTU/h", 4, "note"],
  ["Sky", 12, null, { code: "#N/A" }],
  [null, null, null, 7],
];

const read = (areas: readonly Area[]): Promise<readonly Block[]> =>
  Promise.resolve(
    areas.map((area) => ({
      area,
      formulas: [[]],
      values: [(ROWS[area.row] ?? []).slice(area.column, area.column + area.columns)],
    })),
  );

const at = (row: number, column: number) => ({ sheet: "Losses", row, column });

describe("A cell's label", () => {
  test("is the nearest text to the left in its row", async () => {
    const labels = cellLabels({ read });
    expect(await labels.of(at(0, 1))).toBe("Evaporation");
    expect(await labels.of(at(0, 3))).toBe("BTU/h");
    expect(await labels.of(at(1, 3))).toBe("Sky");
    expect(await labels.of(at(2, 3))).toBe("");
    expect(await labels.of(at(0, 0))).toBe("");
  });

  test("is read together with the others asked for, in one read", async () => {
    const once = vi.fn(read);
    const labels = cellLabels({ read: once });
    await Promise.all([labels.of(at(0, 1)), labels.of(at(1, 1)), labels.of(at(2, 1))]);
    expect(once).toHaveBeenCalledTimes(1);
  });

  test("is left out where the cells can't be read", async () => {
    const labels = cellLabels({ read: () => Promise.reject(new Error("no such sheet")) });
    expect(await labels.of(at(0, 1))).toBe("");
  });
});
