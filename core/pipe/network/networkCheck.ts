/** What makes a network unsolvable, found before it is solved. */
import { item } from "../../numeric/series";
import { valueError } from "../../kernel/values/fault";
import { rowFault } from "./gridRead";
import type { Network } from "./networkTypes";

/** Nodes that rows join to a fixed level, shut or not. */
function joined({ links, grid }: Network): readonly boolean[] {
  const found = grid.fixed.map((level) => level !== undefined);
  for (let grew = true; grew;) {
    grew = false;
    for (const { from, to } of links)
      if (found[from] !== found[to]) {
        found[from] = found[to] = true;
        grew = true;
      }
  }
  return found;
}

/** Whether a pump's outlet leads back to its inlet through pumps alone. */
function pumpRing({ links }: Network, first: number): boolean {
  const pumps = links.filter(({ pump }) => pump);
  const seen = new Set([item(links, first).to]);
  for (const node of seen) for (const each of pumps) if (each.from === node) seen.add(each.to);
  return seen.has(item(links, first).from);
}

/** @throws a fault that names the row or node */
export function checkNetwork(network: Network): void {
  const { links, nodes, grid, breakers } = network;
  if (!grid.fixed.some((level) => level !== undefined))
    throw valueError('nodes: no node has a water level: name one "pool", or give a level in nodes');
  const rowsOf = nodes.map((_, node) => links.filter(({ from, to }) => from === node || to === node));
  nodes.forEach((name, node) => {
    const [only, second] = item(rowsOf, node);
    if (second || grid.fixed[node] !== undefined || grid.demand[node] !== 0) return;
    if (breakers.some((each) => each.node === node) && only) return;
    throw valueError(
      `rows: "${name}" hangs free: ${only ? `only ${only.name} leads to it` : "no row leads to it"}; check its spelling, or give it a level or demand`,
    );
  });
  const found = joined(network);
  links.forEach((link, place) => {
    if (!found[link.from])
      throw rowFault(place, link.row, "is cut off: no row joins its part to a node with a water level");
    if (link.pump && pumpRing(network, place)) throw rowFault(place, link.row, "pumps in a ring with nothing between");
  });
}
