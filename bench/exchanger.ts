// Times zones, coil and balance as cell calls and prints a table. Run: npx tsx bench/exchanger.ts
// Targets: EXCHANGER.ZONES and COIL under 1 ms, BALANCE with a given UA under 0.3 ms, by geometry under 15 ms.
import { CATALOGUE } from "../core/catalogue";
import { balanceOf } from "../core/exchanger/balance/balance";
import { machineOf } from "../core/exchanger/balance/machine";
import { compile, evaluate } from "../core/kernel/call/evaluate";
import { isFault } from "../core/kernel/values/fault";
import { us } from "../core/kernel/values/quantity";
import { loadRefrigerant } from "../core/refrigerant/refrigerant";

const INPUTS = 200;
const RUNS = 9;
const REFRIGERANTS = ["R-22", "R-410A", "R-407C", "R-454B"] as const;

/** Milliseconds of processor time of one call, the least of several runs, so that other work counts little. */
const least = (once: (i: number) => unknown): number => {
  for (let i = 0; i < INPUTS; i++) once(i);
  const runs = Array.from({ length: RUNS }, () => {
    const began = process.cpuUsage();
    for (let i = 0; i < INPUTS; i++) once(i);
    const { user, system } = process.cpuUsage(began);
    return (user + system) / 1000 / INPUTS;
  });
  return Math.min(...runs);
};

type Block = Readonly<Record<string, string | number>>;

/** A cell call. Cycles more inputs than the memo holds, so that every call is calculated. */
const cell = (id: string, block: (i: number) => Block): number => {
  const definition = CATALOGUE.find((each) => each.id === id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  // Without the memo: the benchmark times the calculation.
  const { memoised, ...unremembered } = definition;
  if (memoised !== true) throw new Error(`${id} is not marked as memoised`);
  const compiled = compile(unremembered);
  const inputs = Array.from({ length: INPUTS }, (__, i) => [
    Object.entries(block(i)).map(([label, value]) => [label, value]),
  ]);
  return least((i) => {
    const out = evaluate(compiled, inputs[i] ?? [], CATALOGUE);
    if (isFault(out)) throw new Error(`${id} refused: ${out.message}`);
  });
};

const duty = (name: string, i: number): Block => ({
  refrigerant: name,
  "heat rejected": 112000 + i,
  condensing: 112,
  evaporating: 45,
  "water flow": 40,
  "entering water": 82,
});
const geometry: Block = {
  "outside diameter": 0.625,
  wall: 0.028,
  tubes: 4,
  "tube length": 60,
  "coil diameter": 10,
  pitch: 1,
  "shell diameter": 12,
  "core diameter": 8,
  "outside fouling": 0.0005,
};
const withoutExchanger = (name: string): Block => ({
  refrigerant: name,
  "rated cooling": 90000,
  "water flow": 40,
  "entering water": 82,
});
const machine = (name: string, i: number): Block => ({ ...withoutExchanger(name), UA: 5000 + i });

const plain = (name: string): number => {
  const ready = machineOf({
    fluid: loadRefrigerant(name),
    cooling: us("heat rate", 90_000),
    evaporating: us("temperature", 45),
    condensing: us("temperature", 115),
    wetBulb: us("temperature", 67),
    superheat: us("temperature difference", 10),
    subcooling: us("temperature difference", 10),
    efficiency: 0.65,
    volumetricEfficiency: 0.95,
  });
  return least((i) =>
    balanceOf(ready, { ua: 2600, waterFlow: 0.0025 }, { enteringWater: 290 + i / 20, wetBulb: us("temperature", 67) }),
  );
};

const rows = REFRIGERANTS.flatMap((name) => [
  [`EXCHANGER.ZONES, ${name}`, cell("EXCHANGER.ZONES", (i) => duty(name, i)), 1] as const,
  [`EXCHANGER.COIL, ${name}`, cell("EXCHANGER.COIL", (i) => ({ ...duty(name, i), ...geometry })), 1] as const,
  [
    `EXCHANGER.BALANCE with its outdoor coil, ${name}`,
    cell("EXCHANGER.BALANCE", (i) => machine(name, i)),
    0.3,
  ] as const,
  [
    `EXCHANGER.BALANCE by its coil's geometry, ${name}`,
    cell("EXCHANGER.BALANCE", (i) => ({ ...withoutExchanger(name), ...geometry, "entering water": 82 + i / 100 })),
    15,
  ] as const,
  [`balanceOf, machine ready, ${name}`, plain(name), 0.3] as const,
]);

console.log(`${"ms per call".padEnd(52)}${"time".padStart(10)}${"target".padStart(10)}`);
for (const [what, took, target] of rows)
  console.log(
    `${what.padEnd(52)}${took.toFixed(4).padStart(10)}${String(target).padStart(10)}  ${took < target ? "met" : "MISSED"}`,
  );
