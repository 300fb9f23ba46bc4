/** A solved network as rows: links in their order, then nodes. */
import { GRAVITY } from "../../numeric/constants";
import { item } from "../../numeric/series";
import { standardAtmosphere } from "../../kernel/define/pressureBasis";
import { NO_VALUE } from "../../kernel/define/result";
import { vapourPressureOfWater } from "../../water/saturation";
import { meanVelocity, suctionHead } from "../equations";
import { gaugePressure } from "./gridEquations";
import type { HeadAndSlope } from "../../numeric/gradientNetwork";
import type { Network, SolvedNetwork } from "./networkTypes";
import type { NetworkInputs } from "./networkArgs";

export interface NetworkLine {
  readonly part: string;
  readonly from: string;
  readonly to: string;
  readonly flow: number | "";
  readonly velocity: number | "";
  readonly headLost: number | "";
  readonly head: number | "";
  readonly gaugePressure: number | "";
  readonly suctionHead: number | "";
  readonly state: string;
}

/** Head that a link loses at its flow; a link held shut takes the difference of its ends. */
export function headLostIn(network: Network, { flow, head, held }: SolvedNetwork, i: number): number {
  const link = item(network.links, i);
  if (held[i] === true) return item(head, link.from) - item(head, link.to);
  const at: HeadAndSlope = { h: 0, g: 0 };
  network.grid.loss(link, item(flow, i), at);
  return at.h;
}

function stateOf(network: Network, solved: SolvedNetwork, i: number): string {
  const link = item(network.links, i);
  if (link.shut) return link.pump ? "off" : "shut";
  if (solved.held[i] === true) return link.pump ? "no flow: too little head" : "check valve shut";
  if (solved.partFull.has(i)) return "part full";
  if (Number.isNaN(item(solved.head, link.from))) return "cut off";
  return item(solved.flow, i) < 0 ? "runs backwards" : "open";
}

/** Net positive suction head at the inlet of a pump, m. */
function suctionAt(network: Network, { head }: SolvedNetwork, node: number, inputs: NetworkInputs): number {
  return suctionHead.code({
    pa: standardAtmosphere.code({ z: inputs.altitude }),
    pv: vapourPressureOfWater.code({ T: inputs.water }),
    rho: network.properties.rho,
    z: item(network.heights, node) - item(head, node),
    hs: 0,
  });
}

/** Whether a link's ends have heads that tell what it loses. */
function isKnown(network: Network, solved: SolvedNetwork, i: number): boolean {
  const { shut, from } = item(network.links, i);
  return solved.partFull.has(i) || (!shut && !Number.isNaN(item(solved.head, from)));
}

function linkLine(network: Network, solved: SolvedNetwork, i: number, inputs: NetworkInputs): NetworkLine {
  const { name, from, to, bore, pump } = item(network.links, i);
  const flow = item(solved.flow, i);
  const known = isKnown(network, solved, i);
  return {
    part: name,
    from: item(network.nodes, from),
    to: item(network.nodes, to),
    flow,
    velocity: bore === undefined ? NO_VALUE : meanVelocity.code({ Q: Math.abs(flow), D: bore }),
    headLost: known ? headLostIn(network, solved, i) : NO_VALUE,
    head: NO_VALUE,
    gaugePressure: NO_VALUE,
    suctionHead: pump && known ? suctionAt(network, solved, from, inputs) : NO_VALUE,
    state: stateOf(network, solved, i),
  };
}

const endLine = (
  part: string,
  head: number | "",
  gauge: number | "",
  state: string,
  from = "",
  to = "",
): NetworkLine => ({
  part,
  from,
  to,
  flow: NO_VALUE,
  velocity: NO_VALUE,
  headLost: NO_VALUE,
  head,
  gaugePressure: gauge,
  suctionHead: NO_VALUE,
  state,
});

export function networkLines(network: Network, solved: SolvedNetwork, inputs: NetworkInputs): readonly NetworkLine[] {
  const { nodes, links, breakers, heights, properties, grid } = network;
  const { rho } = properties;
  const vents = breakers.map(({ row, node }, i): NetworkLine => {
    const { fullHead, open } = item(solved.breakerStates, i);
    const state = open ? "open: this pressure if it stayed full" : "shut";
    return endLine(row.element, NO_VALUE, rho * GRAVITY * fullHead, state, item(nodes, node), row.to);
  });
  const ends = nodes.map((name, node): NetworkLine => {
    const H = item(solved.head, node);
    if (Number.isNaN(H)) return endLine(name, NO_VALUE, NO_VALUE, "cut off by shut valves");
    const gauge = gaugePressure.code({ rho, H, z: item(heights, node) });
    return endLine(name, H, gauge, grid.fixed[node] === undefined ? "node" : "water level");
  });
  return [...links.map((_, i) => linkLine(network, solved, i, inputs)), ...vents, ...ends];
}
