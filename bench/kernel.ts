// Times a cell call against its bare equation and prints a table. Run: npx tsx bench/kernel.ts
// Target: evaluate without steps costs under 2 µs more than the bare calculation.
import { CATALOGUE } from "../core/catalogue";
import { compile, evaluate } from "../core/kernel/call/evaluate";
import { explain } from "../core/kernel/explain/explain";
import { darcyWeisbach, meanVelocity } from "../core/pipe/equations";
import { headLossOf, type StraightRun } from "../core/pipe/straight/headLoss";
import { boreOf } from "../core/pipe/straight/bore";
import { us } from "../core/kernel/values/quantity";

const POINTS = 64;
const RUNS = 15;
const TARGET = 2000;

let sink = 0;

/**
 * Time of one call in nanoseconds, the least of several runs: other work on the machine can only add to it. Inputs are
 * cycled, so that no call repeats the last.
 */
const time = (call: (i: number) => unknown): number => {
  let loops = POINTS;
  for (;;) {
    const began = performance.now();
    for (let i = 0; i < loops; i++) sink += call(i % POINTS) === undefined ? 1 : 0;
    if (performance.now() - began > 40) break;
    loops *= 2;
  }
  const runs = Array.from({ length: RUNS }, () => {
    const began = performance.now();
    for (let i = 0; i < loops; i++) sink += call(i % POINTS) === undefined ? 1 : 0;
    return ((performance.now() - began) * 1e6) / loops;
  });
  return Math.min(...runs);
};

interface Case {
  readonly what: string;
  readonly bare: (i: number) => number;
  readonly id: string;
  readonly raw: (i: number) => readonly unknown[];
}

const flows = Array.from({ length: POINTS }, (_, i) => 30 + i / 3);

const runAt = (i: number, method: StraightRun["method"]): StraightRun => ({
  flow: us("water flow", flows[i]!),
  size: "2 in",
  length: us("length", 100),
  schedule: "40",
  water: us("temperature", 80),
  method,
  bore: "average",
});

const cases: readonly Case[] = [
  {
    what: "PIPE.VELOCITY, 2 arguments",
    id: "PIPE.VELOCITY",
    bare: (i) => meanVelocity.code({ Q: us("water flow", flows[i]!), D: boreOf("2 in", "40", "average") }),
    raw: (i) => [flows[i], "2 in"],
  },
  {
    what: "PIPE.HEADLOSS, 6 arguments, Hazen-Williams",
    id: "PIPE.HEADLOSS",
    bare: (i) => headLossOf(runAt(i, "Hazen-Williams")).head,
    raw: (i) => [flows[i], "2 in", 100, "40", 80, "Hazen-Williams"],
  },
  {
    what: "PIPE.HEADLOSS, 5 arguments, Darcy-Weisbach",
    id: "PIPE.HEADLOSS",
    bare: (i) => headLossOf(runAt(i, "Darcy-Weisbach")).head,
    raw: (i) => [flows[i], "2 in", 100, "40", 80],
  },
];

const compiledOf = (id: string) => {
  const definition = CATALOGUE.find((each) => each.id === id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  return compile(definition);
};

const pad = (cells: readonly string[]): string =>
  cells.map((cell, place) => (place === 0 ? cell.padEnd(46) : cell.padStart(14))).join("");

const rows = cases.map(({ what, id, bare, raw }) => {
  const compiled = compiledOf(id);
  const inputs = Array.from({ length: POINTS }, (_, i) => raw(i));
  const at = (i: number): readonly unknown[] => inputs[i] ?? [];
  return {
    what,
    bare: time(bare),
    plain: time((i) => evaluate(compiled, at(i), CATALOGUE)),
    cautions: time((i) => explain(compiled, at(i), CATALOGUE, { steps: false })),
    steps: time((i) => explain(compiled, at(i), CATALOGUE)),
  };
});

const equation = time((i) => darcyWeisbach.code({ f: 0.02, L: 30, D: 0.05, v: 0.5 + i / 64 }));

console.log(`ns per call, least of ${RUNS} runs`);
console.log(pad(["", "bare", "evaluate", "over bare", "with cautions", "with steps"]));
for (const { what, bare, plain, cautions, steps } of rows)
  console.log(pad([what, ...[bare, plain, plain - bare, cautions, steps].map((value) => value.toFixed(0))]));
console.log(pad(["one equation alone (Darcy–Weisbach)", equation.toFixed(1)]));
const worst = Math.max(...rows.map(({ plain, bare }) => plain - bare));
console.log(`most over bare: ${worst.toFixed(0)} ns (target under ${TARGET} ns): ${worst < TARGET ? "met" : "MISSED"}`);
if (sink < 0) console.log(sink);
