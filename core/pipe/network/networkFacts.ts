/** Facts of a solved network for its cautions. */

import { item } from "../../numeric/series";
import { risesSomewhere } from "./networkPumps";
import { reynoldsFactor } from "./gridLink";
import { TRANSITION } from "../straight/continuousFriction";
import type { Network, SolvedNetwork } from "./networkTypes";
import type { NetworkLine } from "./networkTable";

/** Links from which water reaches a pump's inlet before any free surface. */
export function suctionLinks({ links, grid }: Network): ReadonlySet<number> {
  const found = new Set<number>();
  const nodes = new Set(links.flatMap(({ pump, from }) => (pump && grid.fixed[from] === undefined ? [from] : [])));
  for (const node of nodes)
    links.forEach(({ from, to, pump }, i) => {
      if (pump || (from !== node && to !== node)) return;
      found.add(i);
      const other = from === node ? to : from;
      if (grid.fixed[other] === undefined) nodes.add(other);
    });
  return found;
}

const most = (values: readonly number[]): number | undefined => (values.length === 0 ? undefined : Math.max(...values));
const least = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : Math.min(...values);

/** Velocities, Reynolds numbers and states that cautions read; what doesn't apply is left out. */
export function networkFacts(network: Network, solved: SolvedNetwork, lines: readonly NetworkLine[]) {
  const { links, breakers, nodes } = network;
  const suction = suctionLinks(network);
  const fastest = (own: (i: number) => boolean): number | undefined =>
    most(lines.slice(0, links.length).flatMap(({ velocity }, i) => (velocity !== "" && own(i) ? [velocity] : [])));
  const between = links.find(({ pipe }, i) => {
    const re = pipe ? Math.abs(item(solved.flow, i)) * reynoldsFactor(pipe.D, network.properties.viscosity) : 0;
    return re > TRANSITION[0] && re < TRANSITION[1];
  });
  const beyond = links.find(({ pump }, i) => pump && item(solved.flow, i) > pump.end * pump.speed * 1.0001);
  const open = breakers.findIndex((_, i) => item(solved.breakerStates, i).open);
  const facts = {
    suctionVelocity: fastest((i) => suction.has(i)),
    returnVelocity: fastest((i) => !suction.has(i)),
    leastSuctionHead: least(
      lines.flatMap(({ suctionHead, flow }) => (suctionHead !== "" && flow !== 0 ? [suctionHead] : [])),
    ),
    lowestPressure: least(
      lines.slice(links.length + breakers.length).flatMap(({ gaugePressure: p }) => (p === "" ? [] : [p])),
    ),
    backwards: lines.find(({ state }) => state === "runs backwards")?.part,
    pumpWithoutFlow: lines.find(({ state }) => state.startsWith("no flow"))?.part,
    between: between?.name,
    beyondCurve: beyond?.name,
    risingCurve: links.find(({ pump }) => pump && risesSomewhere(pump))?.name,
    breakerAt: open < 0 ? undefined : nodes[item(breakers, open).node],
    zerosAreBlank: network.zerosAreBlank ? true : undefined,
  };
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as {
    readonly [K in keyof typeof facts]?: NonNullable<(typeof facts)[K]>;
  };
}
