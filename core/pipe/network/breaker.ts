/**
 * Vacuum breakers at the top of roof loops. A full loop's downcomer pulls; where that would leave the top below the air's
 * pressure the breaker lets air in, the top is at the air's pressure and the downcomer runs part full.
 */
import { item } from "../../numeric/series";
import { notAvailable, valueError } from "../../kernel/values/fault";
import { quantityMark } from "../../kernel/values/quantityMark";
import type { GridFlows, HeadAndSlope } from "../../numeric/gradientNetwork";
import type { BreakerState, Network, PadGrid, SolvedNetwork } from "./networkTypes";

const MOST_ROUNDS = 60;

type Solve = (grid: PadGrid, warm?: ArrayLike<number>) => GridFlows;

/** Flow into a node over all links but one, m³/s. */
function inflow(network: Network, flow: ArrayLike<number>, node: number, except: number): number {
  let sum = 0;
  network.links.forEach((link, i) => {
    if (i === except) return;
    if (link.to === node) sum += item(flow, i);
    if (link.from === node) sum -= item(flow, i);
  });
  return sum;
}

/** The one link by which water leaves the top. */
function downcomerOf(network: Network, flow: ArrayLike<number>, node: number): number {
  const down = network.links.flatMap((link, i) => {
    const out = link.from === node ? item(flow, i) : link.to === node ? -item(flow, i) : 0;
    return out > 0 ? [i] : [];
  });
  if (down.length !== 1)
    throw valueError(
      `rows: "${network.nodes[node]}" opens its vacuum breaker with ${down.length} rows leading down from it: give it one`,
    );
  return item(down, 0);
}

function replaced<T>(values: readonly T[], at: number, value: T): readonly T[] {
  return values.map((each, i) => (i === at ? value : each));
}

function refuseFlooded(network: Network, flows: GridFlows, node: number, down: number, Q: number): void {
  const link = item(network.links, down);
  const end = link.from === node ? link.to : link.from;
  const at: HeadAndSlope = { h: 0, g: 0 };
  network.grid.loss(link, Q, at);
  if (item(flows.head, end) + at.h > item(network.heights, node))
    throw notAvailable(
      `rows: the vacuum breaker at "${network.nodes[node]}" opens, yet ${link.name} can't carry ${quantityMark("water flow", Q)} down by its height alone: the loop fills and empties by turns, no single flow`,
    );
}

/** Solves with one breaker open; the flow that falls down arrives at the downcomer's end. */
function opened(
  network: Network,
  grid: PadGrid,
  before: GridFlows,
  node: number,
  solve: Solve,
): [PadGrid, GridFlows, number[]] {
  const down = downcomerOf(network, before.flow, node);
  const link = item(grid.links, down);
  const end = link.from === node ? link.to : link.from;
  const cut: PadGrid = {
    ...grid,
    links: replaced(grid.links, down, { ...link, shut: true }),
    fixed: replaced(grid.fixed, node, item(network.heights, node)),
  };
  let [Q, flows, now] = [0, before, cut];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    now = { ...cut, demand: replaced(grid.demand, end, item(grid.demand, end) - Q) };
    flows = solve(now, flows.flow);
    const next = inflow(network, flows.flow, node, down);
    // Air can't send water back: the loop runs dry.
    if (next <= 0) {
      const dry = grid.links.map((each) => (each.from === node || each.to === node ? { ...each, shut: true } : each));
      const empty = { ...cut, links: dry };
      return [empty, solve(empty), []];
    }
    if (Math.abs(next - Q) < 1e-12) break;
    Q = next;
  }
  refuseFlooded(network, flows, node, down, Q);
  flows.flow[down] = link.from === node ? Q : -Q;
  return [now, flows, [down]];
}

/** The flows after every breaker that must open has opened. */
export function openBreakers(network: Network, full: GridFlows, solve: Solve): SolvedNetwork {
  let [grid, flows] = [network.grid, full];
  const partFull = new Map<number, number>();
  const breakerStates = network.breakers.map(({ node }): BreakerState => {
    const fullHead = item(flows.head, node) - item(network.heights, node);
    if (!(fullHead < 0)) return { open: false, fullHead };
    const [next, found, down] = opened(network, grid, flows, node, solve);
    for (const i of down) partFull.set(i, item(found.flow, i));
    [grid, flows] = [next, found];
    for (const [i, q] of partFull) flows.flow[i] = q;
    return { open: true, fullHead };
  });
  return { ...flows, breakerStates, partFull: new Set(partFull.keys()) };
}
