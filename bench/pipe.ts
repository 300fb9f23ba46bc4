// Times the loop and the pump's operating point as cell calls and prints a table. Run: npx tsx bench/pipe.ts
// Targets: PIPE.NETWORK of 60 links under 2 ms, PIPE.LOOP of 60 rows under 1 ms, PIPE.OPERATING on a curve of 10 points under 0.1 ms.
import { CATALOGUE } from "../core/catalogue";
import { compile, evaluate } from "../core/kernel/call/evaluate";
import { isFault } from "../core/kernel/values/fault";

const INPUTS = 64;
const RUNS = 9;

/** Without the memo: the benchmark times the calculation. */
const compiledOf = (id: string) => {
  const definition = CATALOGUE.find((each) => each.id === id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  const unremembered = { ...definition };
  delete unremembered.memoised;
  return compile(unremembered);
};

/** Milliseconds of processor time of one call, the least of several runs; inputs are cycled so that no call repeats the last. */
const time = (id: string, raw: (i: number) => readonly unknown[]): number => {
  const compiled = compiledOf(id);
  const inputs = Array.from({ length: INPUTS }, (_, i) => raw(i));
  const once = (i: number): void => {
    if (isFault(evaluate(compiled, inputs[i % INPUTS] ?? [], CATALOGUE))) throw new Error(`${id} refused`);
  };
  for (let i = 0; i < 500; i++) once(i);
  const runs = Array.from({ length: RUNS }, () => {
    const began = process.cpuUsage();
    for (let i = 0; i < 400; i++) once(i);
    const { user, system } = process.cpuUsage(began);
    return (user + system) / 1000 / 400;
  });
  return Math.min(...runs);
};

const part = (i: number): readonly unknown[] =>
  [
    ["pipe", "2 in", 12 + i, null, null, i < 20 ? "suction" : "return"],
    ["elbow 90", "2 in", 2, null, null, i < 20 ? "suction" : "return"],
    ["filter, dirty", null, 1, 20, 50],
    ["valve", "2 in", 1, null, null, null, 80],
    ["tee branch", "2-1/2 in", 1],
  ][i % 5] ?? [];
const items = Array.from({ length: 60 }, (_, i) => part(i));
const curve = Array.from({ length: 10 }, (_, i) => [10 * i, 62 - 0.0055 * (10 * i) ** 2]);

/** 60 links: suction, pump, then 19 rungs with a branch, a valve and a rail each. */
const rungs = Array.from({ length: 19 }, (_, i) => [
  [`a${i}`, `b${i}`, "branch", "1-1/2 in", null, 10 + i, "2 elbow 90"],
  [`a${i}`, `a${i + 1}`, "rail", "2 in", null, 8],
  [`b${i}`, `b${i + 1}`, "valve", null, null, null, null, 60, 0.5 + i / 40],
])
  .flat()
  .slice(0, 56);
const network = (i: number): readonly unknown[] => [
  [
    ["pool", "s", "suction", "2-1/2 in", null, 40, "4 elbow 90"],
    ["s", "a0", "pump"],
    ...rungs,
    ["a19", "b19", "last", "2 in", null, 5],
    ["b19", "pool", "return", "2-1/2 in", null, 60 + i],
  ],
  [["pump", 1, null, null, "20 m", 0, "0.0306 m/(m³/h)²"]],
  [["a19", 1]],
];

const rows = [
  ["PIPE.NETWORK, 60 links", time("PIPE.NETWORK", (i) => network(i)), 2],
  ["PIPE.LOOP, 60 rows", time("PIPE.LOOP", (i) => [items, 40 + i / 4]), 1],
  ["PIPE.OPERATING, curve of 10 points", time("PIPE.OPERATING", (i) => [curve, 0, 45, 22 + i / 9]), 0.1],
  [
    "PIPE.OPERATING, two in parallel at 80 % speed",
    time("PIPE.OPERATING", (i) => [curve, 2, 45, 22 + i / 9, 0.8, "two in parallel"]),
    0.1,
  ],
] as const;

console.log(`${"ms per call".padEnd(48)}${"time".padStart(10)}${"target".padStart(10)}`);
for (const [what, took, target] of rows)
  console.log(
    `${what.padEnd(48)}${took.toFixed(4).padStart(10)}${String(target).padStart(10)}  ${took < target ? "met" : "MISSED"}`,
  );
