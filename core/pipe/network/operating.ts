/** The operating point of pump and system. */
import { notAvailable } from "../../kernel/values/fault";
import { silent, type Trace } from "../../kernel/define/steps";
import { cubicAt, monotoneCubic, spanAt, type MonotoneCubic } from "../../numeric/monotoneCubic";
import { bracketedRoot, type Root } from "../../numeric/root";
import { quantityMark } from "../../kernel/values/quantityMark";
import { pumpCurveSpan, curveCoefficient, flowOfOnePump, pumpMeetsSystem, systemHead } from "./equations";

export const PUMP_SETS = ["one", "two in series", "two in parallel"] as const;
export type PumpSet = (typeof PUMP_SETS)[number];

export interface PumpAndSystem {
  /** Flow m³/s and head m, ascending in flow. */
  readonly pumpCurve: readonly { readonly flow: number; readonly head: number }[];
  /** m */
  readonly staticHead: number;
  /** m³/s */
  readonly knownFlow: number;
  /** m, static head included, above it. */
  readonly knownHead: number;
  /** Share of the curve's speed. */
  readonly speed: number;
  readonly pumps: PumpSet;
}

export interface OperatingPoint {
  /** m³/s */
  readonly flow: number;
  /** m */
  readonly head: number;
  readonly frictionHead: number;
  /** s²/m⁵ */
  readonly systemCurve: number;
  readonly flowOfEachPump: number;
  readonly headOfEachPump: number;
  /** A second flow at which they meet, on the rising part of the pump curve: unstable. */
  readonly otherFlow: number | undefined;
  /** Position of the operating point between the curve's first and last flow, 0 to 1. */
  readonly placeOnCurve: number;
}

/** Parts checked in each span between two points: a rising pump curve may cross the system twice. */
const PARTS = 4;

interface PumpsAtSpeed {
  readonly curve: MonotoneCubic;
  readonly series: number;
  readonly parallel: number;
}

/** Head of the pumps less head of the system, m, by flow. */
const excessOf = (x: PumpAndSystem, { curve, series, parallel }: PumpsAtSpeed): ((flow: number) => number) => {
  const { staticHead: Hs, knownHead: Hk, knownFlow: Qk, speed: s } = x;
  const share = series * s ** 2;
  return (Q) => share * cubicAt(curve, flowOfOnePump.code({ Q, s, n: parallel })) - systemHead.code({ Hs, Hk, Q, Qk });
};

/** Total flows of all pumps at which to compare pump and system. */
const flowsToTry = ({ curve, parallel }: PumpsAtSpeed, speed: number): readonly number[] => {
  const { xs } = curve;
  const flows: number[] = [];
  for (let i = 1; i < xs.length; i++) {
    const from = xs[i - 1] ?? 0;
    const step = ((xs[i] ?? 0) - from) / PARTS;
    for (let part = 0; part < PARTS; part++) flows.push((from + step * part) * speed * parallel);
  }
  flows.push((xs.at(-1) ?? 0) * speed * parallel);
  return flows;
};

const noMeeting = (flows: readonly number[], excess: readonly number[], x: PumpAndSystem): Error => {
  const [first = 0, last = 0] = [flows[0], flows.at(-1)];
  const pumpAt = (place: number): string => {
    const flow = flows.at(place) ?? 0;
    const head = (excess.at(place) ?? 0) + systemHead.code({ ...symbols(x), Q: flow });
    return quantityMark("head", head);
  };
  if ((excess.at(-1) ?? 0) > 0)
    return notAvailable(
      `pumpCurve: ends at ${quantityMark("water flow", last)}, where the pump still gives ${pumpAt(-1)}, more than the system takes: they meet beyond it; give points at more flow`,
    );
  if (first > 0)
    return notAvailable(
      `pumpCurve: begins at ${quantityMark("water flow", first)}, where the system already takes more than the pump's ${pumpAt(0)}: give points at less flow`,
    );
  return notAvailable(
    `staticHead: ${quantityMark("head", x.staticHead)} is not below the pump's ${pumpAt(0)} at no flow: pump and system never meet, no water moves`,
  );
};

const symbols = ({ staticHead, knownHead, knownFlow }: PumpAndSystem) => ({
  Hs: staticHead,
  Hk: knownHead,
  Qk: knownFlow,
});

/** Records the solved point: one pass through the equations at the answer. */
const tracePoint = (x: PumpAndSystem, set: PumpsAtSpeed, root: Root, trace: Trace): void => {
  trace.solution({
    unknown: "flow",
    kind: "water flow",
    solves: "head of the pump = head that the system takes",
    bracket: root.bracket,
    iterations: root.iterations,
    residual: root.residual,
    answer: root.x,
  });
  const q = trace.step(flowOfOnePump, { Q: root.x, s: x.speed, n: set.parallel });
  const span = spanAt(set.curve, q);
  const { x0, width: w, y0: H0, y1: H1, m0, m1 } = span;
  const Hp = trace.step(pumpCurveSpan, { t: (q - x0) / w, w, H0, H1, m0, m1 });
  trace.relation(pumpMeetsSystem, { c: set.series, s: x.speed, Hp, Q: root.x, ...symbols(x) });
};

const rootIn = (flows: readonly number[], place: number, excessAt: (flow: number) => number): Root =>
  bracketedRoot(excessAt, flows[place] ?? 0, flows[place + 1] ?? 0, { tolerance: 1e-13 });

/** Place of the last crossing by rising flow at which the pump falls below the system, or climbs above it; −1: none. */
const lastCrossing = (excess: readonly number[], falling: boolean): number => {
  for (let i = excess.length - 2; i >= 0; i--) {
    const [here, next] = [excess[i] ?? 0, excess[i + 1] ?? 0];
    if (falling ? here > 0 && next <= 0 : here <= 0 && next > 0) return i;
  }
  return -1;
};

/**
 * The stable meeting point of pump and system: the one at the most flow.
 *
 * @throws a fault with the reason if they don't meet within the curve
 */
export const operatingPoint = (x: PumpAndSystem, trace: Trace = silent): OperatingPoint => {
  const set: PumpsAtSpeed = {
    curve: monotoneCubic(
      x.pumpCurve.map(({ flow }) => flow),
      x.pumpCurve.map(({ head }) => head),
    ),
    series: x.pumps === "two in series" ? 2 : 1,
    parallel: x.pumps === "two in parallel" ? 2 : 1,
  };
  const excessAt = excessOf(x, set);
  const flows = flowsToTry(set, x.speed);
  const excess = flows.map(excessAt);
  const at = lastCrossing(excess, true);
  if (at < 0 || (excess.at(-1) ?? 0) > 0) throw noMeeting(flows, excess, x);
  const root = rootIn(flows, at, excessAt);
  if (trace.on) tracePoint(x, set, root, trace);
  const head = trace.step(systemHead, { ...symbols(x), Q: root.x });
  const rising = lastCrossing(excess, false);
  const [first = 0, last = 1] = [flows[0], flows.at(-1)];
  return {
    flow: root.x,
    head,
    frictionHead: head - x.staticHead,
    systemCurve: trace.step(curveCoefficient, { h: x.knownHead - x.staticHead, Q: x.knownFlow }),
    flowOfEachPump: root.x / set.parallel,
    headOfEachPump: head / set.series,
    otherFlow: rising >= 0 && rising < at ? rootIn(flows, rising, excessAt).x : undefined,
    placeOnCurve: (root.x - first) / (last - first),
  };
};
