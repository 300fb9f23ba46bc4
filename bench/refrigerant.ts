// Times the refrigerant core and prints a table. Run: npx tsx bench/refrigerant.ts
// Another program's times belong beside ours only where both ran in one process, in turn: none is printed from elsewhere.
import { solveCycle } from "../core/cycle/cycle";
import { loadRefrigerant } from "../core/refrigerant/refrigerant";
import {
  saturatedState,
  refrigerantSaturationPressure,
  saturationTemperature,
} from "../core/refrigerant/saturation/saturation";
import { stateAt } from "../core/refrigerant/state/state";
import { stateByEnthalpy, stateByEntropy } from "../core/refrigerant/state/stateBy";

const POINTS = 64;
const RUNS = 9;

interface Row {
  readonly what: string;
  readonly median: number;
  readonly least: number;
  readonly target: number | undefined;
}

let sink = 0;

/** Median and least time of one call in microseconds over nine runs: a loop of about 0.1 s, inputs cycled so that no call repeats the last. */
function time(call: (i: number) => number): { median: number; least: number } {
  let loops = POINTS;
  for (;;) {
    const began = performance.now();
    for (let i = 0; i < loops; i++) sink += call(i % POINTS);
    if (performance.now() - began > 50) break;
    loops *= 2;
  }
  const runs = Array.from({ length: RUNS }, () => {
    const began = performance.now();
    for (let i = 0; i < loops; i++) sink += call(i % POINTS);
    return ((performance.now() - began) * 1e3) / loops;
  });
  runs.sort((a, b) => a - b);
  return { median: runs[(RUNS - 1) / 2]!, least: runs[0]! };
}

function rows(name: string): Row[] {
  const fluid = loadRefrigerant(name);
  const blend = fluid.mixture !== undefined;
  const T = Array.from({ length: POINTS }, (_, i) => 263.15 + ((i * 29) % POINTS) * (40 / POINTS));
  const p = T.map((t) => refrigerantSaturationPressure(fluid, t, "dew"));
  const pb = T.map((t) => refrigerantSaturationPressure(fluid, t, "bubble"));
  const gas = T.map((t, i) => stateAt(fluid, p[i]!, t + 12));
  const row = (what: string, target: number | undefined, call: (i: number) => number) => ({
    what: `${name} ${what}`,
    ...time(call),
    target,
  });
  const hot = { evaporating: 278.15, superheat: 6, subcooling: 5, efficiency: 0.65, refrigerant: fluid };
  const state = blend ? 12 : 5;
  // R-744 condenses only below its critical temperature.
  const condensing = T.map((t) => (name === "R-744" ? 284 + 0.3 * (t - 263) : t + 36));
  return [
    row("pressure from T (bubble)", 0.5, (i) => refrigerantSaturationPressure(fluid, T[i]!, "bubble")),
    row("pressure from T (dew)", 0.5, (i) => refrigerantSaturationPressure(fluid, T[i]!, "dew")),
    row("T from pressure (dew)", 1, (i) => saturationTemperature(fluid, p[i]!, "dew")),
    row("saturated vapour, all properties", undefined, (i) => saturatedState(fluid, T[i]!, "dew").enthalpy),
    row("gas at (p, T), all properties", state, (i) => stateAt(fluid, p[i]!, T[i]! + 12).enthalpy),
    row("liquid at (p, T), all properties", state, (i) => stateAt(fluid, pb[i]!, T[i]! - 6).enthalpy),
    row("gas at (p, s)", undefined, (i) => stateByEntropy(fluid, p[i]!, gas[i]!.entropy).enthalpy),
    row("gas at (p, h)", undefined, (i) => stateByEnthalpy(fluid, p[i]!, gas[i]!.enthalpy).temperature),
    row("cycle", 60, (i) => solveCycle({ ...hot, condensing: condensing[i]! }).cop),
    ...(blend
      ? [row("inside the glide at (p, T)", 500, (i) => stateAt(fluid, 0.5 * (p[i]! + pb[i]!), T[i]!).enthalpy)]
      : []),
  ];
}

const names = process.argv.slice(2);
const wanted = names.length > 0 ? names : ["R-134a", "R-32", "R-744", "R-407C", "R-410A", "R-454B", "R-452B"];
console.log("call".padEnd(44), "median us".padStart(9), "least".padStart(8), "target".padStart(7));
for (const name of wanted) {
  for (const { what, median, least, target } of rows(name)) {
    const cells = [median.toFixed(3).padStart(9), least.toFixed(3).padStart(8), `${target ?? ""}`.padStart(7)];
    const miss = target !== undefined && median > target ? "  over" : "";
    console.log(what.padEnd(44), ...cells, miss);
  }
}
if (!Number.isFinite(sink)) throw new Error("a timed call gave no number");
