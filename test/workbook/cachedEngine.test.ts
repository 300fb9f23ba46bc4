import { expect, test } from "vitest";
import { sessionLog } from "../../src/workbook/callLog";
import { cachedEngine } from "../../src/workbook/scan/cachedEngine";

const CALLS = 100;

/** A scan of calls with these numbers. */
function scans() {
  const computed: number[] = [];
  const engine = cachedEngine({
    known: new Set(["PIPE.BORE"]),
    log: sessionLog(),
    call: (_, [number]) => {
      computed.push(Number(number));
      return { value: 1 };
    },
    cautionsOf: () => [],
  });
  return (numbers: readonly number[]): readonly number[] => {
    computed.length = 0;
    for (const number of numbers) engine.call("PIPE.BORE", [number]);
    engine.scanned(CALLS);
    return [...computed];
  };
}

const from = (first: number): readonly number[] => Array.from({ length: CALLS }, (_, at) => first + at);

test("a scan computes none of the calls of the scan before, however many scans there were", () => {
  const scan = scans();
  scan(from(0));
  for (let time = 1; time < 2_000; time++) expect(scan(from(time))).toEqual([time + CALLS - 1]);
});

test("calls that no cell has made for long are forgotten", () => {
  const scan = scans();
  scan(from(0));
  for (let time = 1; time <= 20; time++) scan(from(time * CALLS));
  expect(scan([20 * CALLS, 0])).toEqual([0]);
});
