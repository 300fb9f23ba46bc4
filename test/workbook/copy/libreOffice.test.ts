/** What another program makes of a handed-over copy: the same values, and no trace of what was left out. */
import { expect, test } from "vitest";
import { recalculated, skipsLibreOffice, titled } from "../package/libreOffice";
import { bytesOf, copyOf, formula, fullWithUs, partTexts, readSheets, sheet, VELOCITY } from "./books";

const MINUTES = 180_000;
const skipIf = test.skipIf(skipsLibreOffice);

/** Values by sheet and place, empty cells left out. */
async function valuesOf(bytes: Uint8Array): Promise<ReadonlyMap<string, unknown>> {
  const values = new Map<string, unknown>();
  for (const [name, { cells }] of await readSheets(bytes))
    for (const { row, column, value } of cells)
      if (value !== null && value !== "") values.set(`${name} ${row} ${column}`, value);
  return values;
}

/** Those of the second that the first hasn't, numbers to 1e-12 of their size. */
function differing(before: ReadonlyMap<string, unknown>, after: ReadonlyMap<string, unknown>): readonly unknown[] {
  return [...before].flatMap(([key, value]) => {
    const other = after.get(key);
    if (typeof value === "number" && typeof other === "number")
      return Math.abs(value - other) <= 1e-12 * Math.max(1, Math.abs(value)) ? [] : [[key, value, other]];
    if (typeof value === "boolean") return Number(value) === Number(other) ? [] : [[key, value, other]];
    return JSON.stringify(value) === JSON.stringify(other) ? [] : [[key, value, other]];
  });
}

skipIf(
  titled("LibreOffice recalculates a copy of the workbook with every kind of part to the same values, without a trace"),
  async () => {
    const drop = new Set(["rows:Loop:24-24", "columns:Loop:H-H"]);
    const { bytes } = await copyOf(fullWithUs(), { choice: { sheets: ["Loop"], drop } });
    const after = recalculated(bytes);
    const before = await valuesOf(bytes);
    expect(before.size).toBeGreaterThan(100);
    expect(differing(before, await valuesOf(after))).toEqual([]);
    expect(
      Object.entries(partTexts(after))
        .filter(([, text]) => /CANARY|cfg|scratch/.test(text))
        .map(([path]) => path),
    ).toEqual([]);
  },
  MINUTES,
);

skipIf(
  titled("LibreOffice recalculates a copy with 2,000 formulas, one in ten ours, to the same values"),
  async () => {
    const rows = Array.from({ length: 2_000 }, (_, row) =>
      row % 10 === 0
        ? [
            40,
            formula(`_xldudf_WARMBACK_PIPE_VELOCITY(A${row + 1},"2 in")`, VELOCITY),
            formula(`B${row + 1}*2`, VELOCITY * 2),
          ]
        : [row, formula(`A${row + 1}*2`, row * 2), formula(`A${row + 1}&"x"`, `${row}x`)],
    );
    const { bytes, summary } = await copyOf(await bytesOf([sheet("Loop", rows)]));
    expect(summary).toMatchObject({ ours: 200, dependent: 200, live: 3_600 });
    expect(differing(await valuesOf(bytes), await valuesOf(recalculated(bytes)))).toEqual([]);
  },
  MINUTES,
);
