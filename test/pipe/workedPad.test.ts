/**
 * A whole pad (invented): filter, gas heater, exchanger with a hand bypass, pool returns and a raised spa, at two speeds.
 * Its losses are worked again here from the formulas of the texts, and its mass and energy balances by hand.
 */
import { describe, expect, test } from "vitest";
import { CATALOGUE } from "../../core/catalogue";
import { compile, evaluate } from "../../core/kernel/call/evaluate";
import { lookUp } from "../../core/kernel/define/catalogue";
import { isFault } from "../../core/kernel/values/fault";

const G = 9.80665;
const RHO = 996.607;
const NU = 8.601e-7;
const ROUGHNESS = 1.5e-6;

const HEAD = ["from", "to", "element", "size", "length", "K", "flow coefficient", "opening", "loss", "known flow"];
const ROWS = [
  ["pool", "pump in", "suction", "2-1/2 in", 12, "5.5", null, null, null, null],
  ["pump in", "pump out", "pump", null, null, null, null, null, null, null],
  ["pump out", "a", "filter", null, null, null, null, null, 2.5, 14],
  ["a", "b", "gas heater", null, null, null, null, null, 1.5, 14],
  ["b", "c", "exchanger", null, null, null, null, null, 3, 9],
  ["b", "c", "bypass valve", null, null, null, 45, 0.4, null, null],
  ["c", "pool", "pool returns", "2 in", 18, "6", null, null, null, null],
  ["c", "spa", "check valve, spa", "1-1/2 in", 13.7, "7.5", null, null, null, null],
];
const SPA_LEVEL = 0.6;

type Line = { readonly flow: number; readonly lost: number; readonly head: number; readonly state: string };

function pad(speed: number): ReadonlyMap<string, Line> {
  const definition = lookUp(CATALOGUE, "PIPE.NETWORK");
  if (!definition) throw new Error("no PIPE.NETWORK");
  const pumps = [["pump", speed, null, null, 20, 0, 0.0306]];
  const out = evaluate(
    compile(definition),
    [[HEAD, ...ROWS], pumps, [["spa", 0.3, SPA_LEVEL]], [["water", "80 °F"]], "SI"],
    CATALOGUE,
  );
  if (isFault(out)) throw new Error(out.message);
  const lines = (out as readonly (readonly (string | number)[])[]).slice(1);
  return new Map(
    lines.map((line) => [
      String(line[0]),
      { flow: Number(line[3]), lost: Number(line[5]), head: Number(line[6]), state: String(line[9]) },
    ]),
  );
}

/** Darcy and Weisbach with Colebrook's factor by fixed-point iteration, and minor losses; m from m³/h. */
function pipeLoss(flow: number, D: number, L: number, K: number): number {
  const v = flow / 3600 / ((Math.PI / 4) * D ** 2);
  const re = (v * D) / NU;
  let root = 7;
  for (let pass = 0; pass < 60; pass++) root = -2 * Math.log10(ROUGHNESS / D / 3.7 + (2.51 * root) / re);
  return ((L / D / root ** 2 + K) * v ** 2) / (2 * G);
}

/** Average bores of the makers' data sheets: 2.445, 2.049 and 1.592 in. */
const byHand: Readonly<Record<string, (flow: number) => number>> = {
  suction: (q) => pipeLoss(q, 0.062103, 12, 5.5),
  filter: (q) => 2.5 * (q / 14) ** 2,
  "gas heater": (q) => 1.5 * (q / 14) ** 2,
  exchanger: (q) => 3 * (q / 9) ** 2,
  "bypass valve": (q) => (1e5 / (1000 * G)) * (q / (45 * 0.4)) ** 2,
  "pool returns": (q) => pipeLoss(q, 0.0520446, 18, 6),
  "check valve, spa": (q) => (q === 0 ? 0 : pipeLoss(q, 0.0404368, 13.7, 7.5)),
};

describe.each([1, 0.4])("the worked pad at speed %d", (speed) => {
  const lines = pad(speed);
  const of = (name: string): Line => {
    const line = lines.get(name);
    if (!line) throw new Error(`no ${name}`);
    return line;
  };
  const spa = of("check valve, spa");

  test("sends as much out of every node as comes in", () => {
    const whole = of("pump").flow;
    for (const name of ["suction", "filter", "gas heater"]) expect(of(name).flow).toBeCloseTo(whole, 9);
    expect(of("exchanger").flow + of("bypass valve").flow).toBeCloseTo(whole, 9);
    expect(of("pool returns").flow + spa.flow).toBeCloseTo(whole, 9);
  });

  test("loses in every part what its formula says by hand", () => {
    for (const [name, loss] of Object.entries(byHand))
      if (of(name).flow !== 0) expect(Math.abs(of(name).lost / loss(of(name).flow) - 1), name).toBeLessThan(5e-5);
    const { flow, lost } = of("pump");
    expect(-lost).toBeCloseTo(20 * speed ** 2 - 0.0306 * flow ** 2, 9);
  });

  test("closes its rings: pump over pool, pump over spa, exchanger against bypass", () => {
    const string = of("suction").lost + of("filter").lost + of("gas heater").lost + of("exchanger").lost;
    expect(of("exchanger").lost).toBeCloseTo(of("bypass valve").lost, 9);
    expect(string + of("pool returns").lost).toBeCloseTo(-of("pump").lost, 9);
    if (spa.flow > 0) expect(string + spa.lost + SPA_LEVEL).toBeCloseTo(-of("pump").lost, 9);
    else expect(of("c").head).toBeLessThan(SPA_LEVEL);
  });

  test("turns the pump's power into losses and the lift to the spa", () => {
    const watts = (flow: number, head: number): number => (RHO * G * flow * head) / 3600;
    const pump = watts(of("pump").flow, -of("pump").lost);
    const lost = Object.keys(byHand).reduce(
      (sum, name) => sum + (of(name).flow === 0 ? 0 : watts(of(name).flow, of(name).lost)),
      0,
    );
    expect(lost + watts(spa.flow, SPA_LEVEL)).toBeCloseTo(pump, 6);
    expect(pump).toBeGreaterThan(0);
  });
});

describe("the worked pad's two speeds", () => {
  const [fast, slow] = [pad(1), pad(0.4)];

  test("feed the spa at full speed and leave its check valve shut at 40 %", () => {
    expect(fast.get("check valve, spa")?.flow).toBeGreaterThan(4);
    expect(slow.get("check valve, spa")).toMatchObject({ flow: 0, state: "check valve shut" });
  });

  test("keep the exchanger's share: both branches follow the square of their flow", () => {
    const share = (lines: typeof fast): number =>
      (lines.get("exchanger")?.flow ?? 0) / (lines.get("pump")?.flow ?? Number.NaN);
    // By hand: sqrt(k_bypass) / (sqrt(k_bypass) + sqrt(k_exchanger)), k in m/(m³/h)².
    const [own, bypass] = [3 / 81, 1e5 / (1000 * G) / 18 ** 2];
    const wanted = Math.sqrt(bypass) / (Math.sqrt(bypass) + Math.sqrt(own));
    expect(share(fast)).toBeCloseTo(wanted, 9);
    expect(share(slow)).toBeCloseTo(wanted, 9);
  });
});
