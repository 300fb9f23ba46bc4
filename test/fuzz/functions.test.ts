/**
 * Random calls of every cell function, by the wrapper that the host calls: 200 lists of arguments each, 20 of those that
 * take long; 5,000 and 500 with VERIFY_FULL=1. The seed is fixed and printed; FUZZ_SEED takes another.
 */
import fc from "fast-check";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { CATALOGUE, COMPILED, evaluate, isFault, type CellFunction } from "../../core";
import { reportCall } from "../../src/functions/call";
import { callCell, plain, startHost, type Shown } from "./functionsHost";
import { listsOf, type Raw } from "./functionsLists";
import { complaintsAbout, frozen, isHuge, systemIn } from "./functionsRules";
import { difference } from "./functionsSame";
import { TWINS } from "./functionsTwins";

const FULL = process.env["VERIFY_FULL"] === "1";
const SEED = Number(process.env["FUZZ_SEED"] ?? 20_260_311);
const RUNS = FULL ? { quick: 5000, long: 500 } : { quick: 200, long: 20 };
const TIME = FULL ? 900_000 : 60_000;

const runsOf = ({ memoised, slow }: CellFunction): number => (memoised || slow ? RUNS.long : RUNS.quick);

const tally = { calls: 0, values: 0, twins: new Map<string, number>(), slowest: [] as { ms: number; call: string }[] };

const printed = (list: Raw): string => fc.stringify(list).slice(0, 160);

/** A call as its cell makes it, timed. */
function timed(id: string, list: Raw): Shown {
  const start = performance.now();
  const shown = callCell(id, list);
  const ms = performance.now() - start;
  tally.calls += 1;
  if ("value" in shown) tally.values += 1;
  if (tally.slowest.length < 5 || ms > (tally.slowest.at(-1)?.ms ?? 0)) {
    tally.slowest.push({ ms, call: `${id} ${printed(list)}` });
    tally.slowest.sort((a, b) => b.ms - a.ms).splice(5);
  }
  return shown;
}

/** What the panel tells of a call is what its cell shows. */
function checkExplained(id: string, list: Raw, shown: Shown): void {
  const told = reportCall(id, list);
  if ("code" in shown) expect(told.error?.message, "explained").toBe(shown.message);
  else expect(told.value, "explained").toEqual(asTold(shown));
  if ("value" in shown && isHuge(id, list))
    expect(
      told.cautions.map(({ code }) => code),
      "a huge number raises no notice",
    ).toContain("UNUSUAL-INPUT");
}

const asTold = (shown: { readonly value: unknown }): unknown => {
  const { value } = plain(shown) as { readonly value: unknown };
  const inCell = (cell: unknown): unknown =>
    typeof cell === "object" && cell !== null && "code" in cell
      ? { code: cell.code, message: (cell as unknown as { message: string }).message }
      : cell;
  return Array.isArray(value) ? value.map((row: readonly unknown[]) => row.map(inCell)) : value;
};

/** Another way to the same result agrees. */
function checkTwin(id: string, list: Raw, name: string, salt: number): void {
  const compiled = COMPILED.get(id);
  const there = compiled && TWINS[name]?.(compiled, list, salt);
  if (compiled === undefined || there === undefined) return;
  tally.twins.set(name, (tally.twins.get(name) ?? 0) + 1);
  const here = evaluate(compiled, list, CATALOGUE);
  const system = systemIn(compiled.definition, list);
  const systems =
    name === "otherSystem" ? ([system, system === "US" ? "SI" : "US"] as const) : ([system, system] as const);
  const differs = difference(compiled, here, there, systems);
  expect(differs, `${name}: ${isFault(here) ? here.message : ""}`).toBe("");
}

beforeAll(startHost);

afterAll(() => {
  vi.unstubAllGlobals();
  const twins = [...tally.twins].map(([name, count]) => `${name} ${count}`).join(", ");
  console.log(`random calls of cell functions, seed ${SEED}: ${tally.calls}, of which ${tally.values} gave a value`);
  console.log(`the same another way: ${twins}`);
  for (const { ms, call } of tally.slowest) console.log(`slowest: ${ms.toFixed(1)} ms ${call}`);
});

test.each(CATALOGUE.map((definition) => [definition.id, definition] as const))(
  "%s keeps its word on random arguments, and gives the same another way",
  (id, definition) => {
    const twin = fc.constantFrom(...Object.keys(TWINS));
    const calls = fc.property(listsOf(definition), twin, fc.nat({ max: 63 }), (list, name, salt) => {
      frozen(list);
      const shown = timed(id, list);
      expect(complaintsAbout(id, list, shown), "code" in shown ? shown.message : "").toEqual([]);
      checkExplained(id, list, shown);
      checkTwin(id, list, name, salt);
    });
    fc.assert(calls, { seed: SEED, numRuns: runsOf(definition) });
  },
  TIME,
);
