/** A pump at the speeds of a schedule: flow, head, power, energy, turnover. */
import { BLANK_CURVE } from "./partCurve";
import { normalizeKey } from "../../kernel/define/argument";
import { notAvailable, valueError } from "../../kernel/values/fault";
import { silent, type Trace } from "../../kernel/define/steps";
import { bracketedRoot } from "../../numeric/root";
import { item } from "../../numeric/series";
import { pumpPowerEquation } from "../equations";
import { efficiencyAtSpeed, pumpAtSpeed } from "./gridEquations";
import { spanOf } from "./gridLink";
import { headLostIn } from "./networkTable";
import type { LinkRow, NetworkInputs, PumpRow } from "./networkArgs";
import { readNetwork, solveNetwork } from "./network";
import type { Network } from "./networkTypes";

export interface EfficiencyPoint {
  readonly efficiency: number;
  /** m³/s at the curve's speed */
  readonly flow: number | undefined;
}

/** Efficiency at a flow of the curve's speed, straight between the points and level beyond them. */
export function efficiencyAt(points: readonly EfficiencyPoint[], flow: number): number {
  const known = points.map(({ efficiency, flow: at }) => ({ efficiency, at: at ?? 0 }));
  for (const [i, { at, efficiency }] of known.entries()) {
    const before = known[i - 1];
    if (flow > at) continue;
    if (!before) return efficiency;
    return before.efficiency + ((efficiency - before.efficiency) * (flow - before.at)) / (at - before.at);
  }
  return known.at(-1)?.efficiency ?? 0;
}

export function checkEfficiencyPoints(points: readonly EfficiencyPoint[]): void {
  points.forEach(({ flow }, i) => {
    if (points.length > 1 && (flow === undefined || (i > 0 && !(flow > (points[i - 1]?.flow ?? 0)))))
      throw valueError("efficiency: several points need flows that rise from row to row");
  });
}

const PUMP = "pump";

const PLAIN = {
  size: undefined,
  schedule: "40",
  length: undefined,
  K: undefined,
  flowCoefficient: undefined,
  opening: undefined,
  characteristic: "linear",
  rangeability: 50,
  loss: undefined,
  knownFlow: undefined,
  ...BLANK_CURVE,
  shut: false,
} as const;

export interface SystemRow extends Omit<LinkRow, "from" | "to" | "element"> {
  readonly from: string | undefined;
  readonly to: string | undefined;
  readonly element: string | undefined;
  readonly staticHead: number;
}

interface System {
  readonly rows: readonly LinkRow[];
  /** Level at which the system ends, m. */
  readonly level: number;
}

/** One row of static head and known loss, or rows of a network with one pump. */
export function systemOf(rows: readonly SystemRow[]): System {
  const [first] = rows;
  if (first && rows.length === 1 && first.from === undefined) {
    if (first.loss === undefined || first.knownFlow === undefined)
      throw valueError("system: one row needs loss and known flow, or give the rows of a network");
    const pump = { ...PLAIN, from: "pool", to: "d", element: PUMP };
    return { rows: [pump, { ...first, from: "d", to: "end", element: "check, system" }], level: first.staticHead };
  }
  const links = rows.map(({ from, to, element, ...rest }, i): LinkRow => {
    if (from === undefined || to === undefined || element === undefined)
      throw valueError(`system, row ${i + 1}: a network's row needs from, to and element`);
    return { ...rest, from, to, element: /\bpump\b/i.test(element) && rest.loss === undefined ? PUMP : element };
  });
  const pumps = links.filter(({ element }) => element === PUMP).length;
  if (pumps !== 1) throw valueError(`system: a network needs one row with "pump" in its element, got ${pumps}`);
  return { rows: links, level: 0 };
}

export interface PumpPoint {
  readonly flow: number;
  readonly head: number;
}

/** The pump's flow and head by speed; each call starts from the last one's flows. */
export function pumpInSystem(system: System, pump: readonly Omit<PumpRow, "name" | "speed">[], inputs: NetworkInputs) {
  const isPlain = system.rows.some(({ to }) => normalizeKey(to) === "end");
  const nodes = isPlain
    ? [{ node: "end", height: Math.min(system.level, 0), waterLevel: system.level, demand: 0 }]
    : [];
  let warm: ArrayLike<number> | undefined;
  const readAt = (speed: number): Network =>
    readNetwork(
      system.rows,
      pump.map((row) => ({ ...row, name: PUMP, speed })),
      nodes,
      inputs,
    );
  return (speed: number, trace: Trace = silent): PumpPoint => {
    const network = readAt(speed);
    const solved = solveNetwork(network, warm);
    const place = network.links.findIndex((link) => link.pump);
    const flow = item(solved.flow, place);
    if (flow > 0) warm = solved.flow;
    const own = item(network.links, place).pump;
    if (own && flow > 0 && trace.on) {
      const { H0, b, c } = spanOf(own, flow / speed);
      trace.step(pumpAtSpeed, { w: speed, H0, b, Q: flow, c });
    }
    // Without flow the pump gives its shut-off head.
    const head = flow > 0 ? -headLostIn(network, solved, place) : item(network.links, place).lift;
    return { flow, head };
  };
}

/** Least speed for a flow, as a share of the curve's; undefined if even 1.2 times its speed gives less. */
export function leastSpeedFor(pointAt: (speed: number) => PumpPoint, flow: number): number | undefined {
  const excess = (speed: number): number => pointAt(speed).flow - flow;
  if (excess(1.2) < 0) return undefined;
  return excess(0.05) >= 0 ? 0.05 : bracketedRoot(excess, 0.05, 1.2, { tolerance: 1e-10 }).x;
}

/** Electric power from wire to water, W. */
export function wirePower(
  point: PumpPoint,
  speed: number,
  points: readonly EfficiencyPoint[],
  rho: number,
  trace: Trace,
): number {
  const e1 = efficiencyAt(points, point.flow / speed);
  const e = trace.step(efficiencyAtSpeed, { e1, w: speed });
  if (!(e > 0))
    throw notAvailable(
      `schedule: at ${(100 * speed).toFixed(0)} % speed the efficiency would be nothing: type measured points`,
    );
  return trace.step(pumpPowerEquation, { rho, Q: point.flow, H: point.head, e });
}
