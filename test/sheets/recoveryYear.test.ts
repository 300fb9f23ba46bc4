import { describe, expect, test } from "vitest";
import { recoverySizing } from "../../src/sheets/recoverySizing";
import { isCellFault } from "../../src/workbook/port";
import { rowsOf, withInputs } from "./calculated";

describe("the year on the sizing sheet", () => {
  test("the year serves a preheat tank when asked to, and the pool as before when the pool comes first", async () => {
    const alone = await rowsOf(recoverySizing);
    const beside = await rowsOf(withInputs(recoverySizing, { "Second sink": "preheat tank" }));
    for (const [label, row] of beside) expect(row.some(isCellFault), label).toBe(false);
    const both = (label: string): readonly [number, number] => [
      Number(alone.get(label)?.[1]),
      Number(beside.get(label)?.[1]),
    ];
    const [none, tank] = both("Of that taken by the preheat tank");
    expect(none).toBe(0);
    expect(tank).toBeGreaterThan(1);
    const [pool, stillPool] = both("Of that taken by the pool, left to itself");
    expect(stillPool).toBe(pool);
    const [money, more] = both("Money saved in the year");
    expect(more).toBeGreaterThan(money);
  });
});
