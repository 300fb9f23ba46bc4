/** A pool's network: rows read, checked and solved, with the vacuum breakers of its roof loops. */
import { normalizeKey } from "../../kernel/define/argument";
import { notAvailable, valueError } from "../../kernel/values/fault";
import { nearest } from "../../kernel/call/nearest";
import { solveGrid, type GridFlows } from "../../numeric/gradientNetwork";
import { lossAt } from "./gridLink";
import { isBreaker, propertiesAt, readLink, readPump, rowFault, type ReadLink } from "./gridRead";
import { checkNetwork } from "./networkCheck";
import { openBreakers } from "./breaker";
import type { Network, PadGrid, SolvedNetwork } from "./networkTypes";
import type { LinkRow, NetworkInputs, NodeRow, PumpRow } from "./networkArgs";
import { pumpsOf } from "./networkPumps";

/** Gives every new name a place. */
function namedPlaces(): { readonly names: string[]; at: (name: string) => number } {
  const names: string[] = [];
  const places = new Map<string, number>();
  return {
    names,
    at: (name) => {
      const key = normalizeKey(name);
      const known = places.get(key) ?? names.push(name.trim()) - 1;
      places.set(key, known);
      return known;
    },
  };
}

/**
 * Some hosts pass blank cells as 0. No pump row needs an opening, so a 0 there tells that the zeros beside it are blanks;
 * without a pump row, an opening of 0 in every row does.
 */
function zeroIsBlank(rows: readonly LinkRow[], pumps: ReadonlyMap<string, unknown>): boolean {
  const own = rows.filter(({ element }) => pumps.has(normalizeKey(element)));
  const telling = own.length > 0 ? own : rows;
  return telling.every(({ opening }) => opening === 0);
}

interface NodeFacts {
  readonly heights: number[];
  readonly fixed: (number | undefined)[];
  readonly demand: number[];
}

function nodeFacts(names: readonly string[], rows: readonly NodeRow[]): NodeFacts {
  const keys = names.map(normalizeKey);
  const facts: NodeFacts = {
    heights: names.map(() => 0),
    fixed: keys.map((key) => (key === "pool" ? 0 : undefined)),
    demand: names.map(() => 0),
  };
  const seen = new Set<number>();
  for (const { node, height, waterLevel, demand } of rows) {
    const at = keys.indexOf(normalizeKey(node));
    if (at < 0) throw valueError(`nodes: no row names "${node}"; the nearest is "${nearest(node, names)}"`);
    if (seen.has(at)) throw valueError(`nodes: "${node}" appears twice`);
    seen.add(at);
    facts.heights[at] = height;
    facts.demand[at] = demand;
    // A surface is never below its node: a 0 there is a blank cell.
    const level = waterLevel === 0 && height > 0 ? undefined : waterLevel;
    if (level !== undefined && level < height)
      throw valueError(`nodes, ${node}: the water level must be at the node's height or above it`);
    if (level !== undefined) facts.fixed[at] = level;
    if (facts.fixed[at] !== undefined && demand !== 0)
      throw valueError(`nodes, ${node}: has a water level, which supplies any flow: leave its demand blank`);
  }
  return facts;
}

/** Reads and checks a network. */
export function readNetwork(
  rows: readonly LinkRow[],
  pumpRows: readonly PumpRow[],
  nodeRows: readonly NodeRow[],
  inputs: NetworkInputs,
): Network {
  const properties = propertiesAt(inputs.water);
  const pumps = pumpsOf(pumpRows);
  const zerosAreBlank = zeroIsBlank(rows, pumps);
  const { names, at } = namedPlaces();
  const breakers: Network["breakers"][number][] = [];
  const links: ReadLink[] = [];
  rows.forEach((given, place) => {
    const row = zerosAreBlank && given.opening === 0 ? { ...given, opening: undefined } : given;
    const from = at(row.from);
    if (isBreaker(row)) return void breakers.push({ row, node: from });
    const to = at(row.to);
    if (from === to) throw rowFault(place, row, "begins and ends at the same node");
    const pump = pumps.get(normalizeKey(row.element));
    if (pump) return void links.push(readPump(row, from, to, pump));
    if (/\bpump\b/i.test(row.element) && row.loss === undefined && row.size === undefined)
      throw rowFault(place, row, "no pump of that name in pumps");
    return void links.push(readLink(row, place, from, to, inputs, properties));
  });
  const { heights, fixed, demand } = nodeFacts(names, nodeRows);
  const { viscosity } = properties;
  const grid: PadGrid = { links, fixed, demand, loss: (link, q, into) => lossAt(link, q, viscosity, into) };
  const network = { nodes: names, heights, links, breakers, grid, properties, zerosAreBlank };
  checkNetwork(network);
  return network;
}

/** Solves a grid, or refuses it with the reason. */
export function flowsOf(grid: PadGrid, warm?: ArrayLike<number>): GridFlows {
  const found = solveGrid(grid, warm);
  if (found) return found;
  throw notAvailable(
    "rows: the flows don't settle, or a check valve finds no state that agrees with itself; look for a pump curve that rises, or for rows without loss in a ring",
  );
}

/** Flows and heads, with breakers open where a full loop would be below the air's pressure. */
export function solveNetwork(network: Network, warm?: ArrayLike<number>): SolvedNetwork {
  return openBreakers(network, flowsOf(network.grid, warm), flowsOf);
}
