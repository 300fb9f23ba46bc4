/** The working of a network: each link at its answer, then the balances of energy and mass. */
import { item } from "../../numeric/series";
import type { Trace } from "../../kernel/define/steps";
import { traceFor } from "../../kernel/define/steps";
import { darcyWeisbach, meanVelocity } from "../equations";
import { fittingHead } from "../fitting/equations";
import { continuousFriction } from "../straight/continuousFriction";
import {
  equalPercentageOpening,
  gaugePressure,
  hazenWilliamsMetric,
  linearOpening,
  linkBalance,
  nodeBalance,
  partLoss,
  pumpAtSpeed,
  quickOpening,
  valveLoss,
} from "./gridEquations";
import { reynoldsFactor, spanOf } from "./gridLink";
import { openingOf, type ReadLink } from "./gridRead";
import { headLostIn } from "./networkTable";
import type { Network, SolvedNetwork } from "./networkTypes";

function traceValve({ row, Kv }: ReadLink, Q: number, trace: Trace): void {
  if (Kv === undefined) return;
  const x = { Kvs: row.flowCoefficient ?? 0, x: openingOf(row) };
  if (row.characteristic === "equal percentage") trace.step(equalPercentageOpening, { ...x, R: row.rangeability });
  else trace.step(row.characteristic === "linear" ? linearOpening : quickOpening, x);
  trace.step(valveLoss, { Q, Kv });
}

function tracePipe({ pipe, bore, K }: ReadLink, Q: number, viscosity: number, trace: Trace): void {
  if (bore === undefined) return;
  const v = trace.step(meanVelocity, { Q, D: bore });
  const re = Q * reynoldsFactor(bore, viscosity);
  if (pipe?.C !== undefined) trace.step(hazenWilliamsMetric, { L: pipe.L, Q, C: pipe.C, D: bore });
  else if (pipe) {
    const { f } = continuousFriction(re, pipe.roughness, bore, pipe.anchors, trace);
    trace.step(darcyWeisbach, { f, L: pipe.L, D: bore, v });
  }
  const all = K[0] + K[1] / re;
  if (all > 0) trace.step(fittingHead, { n: 1, K: all, v });
}

function traceLink(network: Network, solved: SolvedNetwork, i: number, trace: Trace): void {
  const link = item(network.links, i);
  const Q = Math.abs(item(solved.flow, i));
  const { pump, row } = link;
  if (Q === 0) return;
  if (pump) {
    const { H0, b, c } = spanOf(pump, Q / pump.speed);
    trace.step(pumpAtSpeed, { w: pump.speed, H0, b, Q, c });
  }
  tracePipe(link, Q, network.properties.viscosity, trace);
  traceValve(link, Q, trace);
  if (row.loss !== undefined && row.knownFlow !== undefined && !pump)
    trace.step(partLoss, { hk: row.loss, s: row.linearShare, Q, Qk: row.knownFlow, n: row.exponent });
  if (solved.partFull.has(i)) return;
  const [Hi, Hj] = [item(solved.head, link.from), item(solved.head, link.to)];
  trace.relation(linkBalance, { Hi, Hj, h: headLostIn(network, solved, i) });
}

function traceNode(network: Network, { flow, head }: SolvedNetwork, node: number, trace: Trace): void {
  const { grid, heights, properties, links } = network;
  let [Qin, Qout] = [Math.max(-item(grid.demand, node), 0), Math.max(item(grid.demand, node), 0)];
  links.forEach((link, i) => {
    const into = link.to === node ? item(flow, i) : link.from === node ? -item(flow, i) : 0;
    if (into > 0) Qin += into;
    else Qout -= into;
  });
  if (grid.fixed[node] === undefined) trace.relation(nodeBalance, { Qin, Qout });
  if (!Number.isNaN(item(head, node)))
    trace.step(gaugePressure, { rho: properties.rho, H: item(head, node), z: item(heights, node) });
}

export function traceNetwork(network: Network, solved: SolvedNetwork, trace: Trace): void {
  if (!trace.on) return;
  trace.remark(
    `Global gradient method, ${solved.passes} passes. Friction between Re 2,000 and 4,000 follows a cubic here, so that heads rise steadily with flow; a single pipe (PIPE.HEADLOSS) changes at Re 2,040.`,
  );
  trace.within("Links at their flows", () => {
    network.links.forEach((link, i) => traceLink(network, solved, i, traceFor(`row ${i + 1}, ${link.name}`, trace)));
  });
  trace.within("Nodes", () => {
    network.nodes.forEach((name, node) => traceNode(network, solved, node, traceFor(name, trace)));
  });
}
