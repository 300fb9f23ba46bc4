/** The schematic of a network: its branches in the order of the water, as data. */
import { networkLines, readNetwork, solveNetwork } from "../index";
import type { LinkRow, NetworkInputs, NodeRow, PumpRow } from "../pipe/network/networkArgs";
import type { NetworkLine } from "../pipe/network/networkTable";
import type { Network } from "../pipe/network/networkTypes";
import type { System } from "../kernel/values/quantity";
import { lanesOf, type LaneRow } from "./lanes";
import { inUnit, roundedForTable, type InUnit } from "./picture";
import { symbolNamed, type Scheme, type SchemePart } from "./schemeParts";

export interface NetworkCall {
  readonly rows: readonly LinkRow[];
  readonly pumps: readonly PumpRow[];
  readonly nodes: readonly NodeRow[];
  readonly inputs: NetworkInputs;
}

interface Units {
  readonly head: InUnit;
  readonly velocity: InUnit;
  readonly flow: InUnit;
  readonly pressure: InUnit;
}

const shown = ({ of, unit }: InUnit, base: number | "", digits: number): readonly string[] =>
  base === "" ? [] : [`${of(base).toFixed(digits)} ${unit}`];

/** What a link's row of the table says of it. */
const detailsOf = (
  { flow, headLost, velocity, state }: NetworkLine,
  isPump: boolean,
  units: Units,
): readonly string[] => [
  ...shown(units.flow, flow === "" ? "" : Math.abs(flow), 1),
  ...shown(units.head, headLost === "" ? "" : Math.abs(headLost), 1).map((head) => (isPump ? `adds ${head}` : head)),
  ...shown(units.velocity, velocity, 1),
  ...(state === "open" ? [] : [state]),
];

function linkPart({ links }: Network, lines: readonly NetworkLine[], at: number, units: Units): SchemePart | undefined {
  const [link, line] = [links[at], lines[at]];
  if (link === undefined || line === undefined) return undefined;
  const { size } = link.row;
  const symbol = link.pump
    ? "pump"
    : (symbolNamed(link.name) ?? (link.pipe || link.bore !== undefined ? "run" : "part"));
  return {
    symbol,
    name: link.name,
    details: [...(size === undefined ? [] : [size]), ...detailsOf(line, link.pump !== undefined, units)],
  };
}

function nodePart(network: Network, lines: readonly NetworkLine[], node: number, units: Units): SchemePart | undefined {
  const { links, breakers, nodes, grid } = network;
  const line = lines[links.length + breakers.length + node];
  if (line === undefined) return undefined;
  const vent = breakers.findIndex((each) => each.node === node);
  const breaker = lines[links.length + vent];
  return {
    symbol: grid.fixed[node] === undefined ? "node" : "pool",
    name: nodes[node] ?? "",
    details: [
      ...shown(units.pressure, line.gaugePressure, 1),
      ...(vent < 0 || breaker === undefined
        ? []
        : [`vacuum breaker ${breaker.state.startsWith("open") ? "open" : "shut"}`]),
    ],
  };
}

const sentence = ({ name, details }: SchemePart): string =>
  `${name}${details.length === 0 ? "" : ` (${details.join(", ")})`}`;

export function networkScheme({ rows, pumps, nodes, inputs }: NetworkCall, system: System): Scheme {
  const units: Units = {
    head: inUnit("head", system),
    velocity: inUnit("velocity", system),
    flow: inUnit("water flow", system),
    pressure: inUnit("pressure drop", system),
  };
  const network = readNetwork(rows, pumps, nodes, inputs);
  const lines = networkLines(network, solveNetwork(network), inputs);
  const directed = network.links.map(({ from, to }, i) =>
    Number(lines[i]?.flow) < 0 ? { from: to, to: from } : { from, to },
  );
  const lanes = lanesOf(directed, (node) => network.grid.fixed[node] !== undefined);
  const parts = lanes.rows.flatMap((row: LaneRow) => {
    const part = "link" in row ? linkPart(network, lines, row.link, units) : nodePart(network, lines, row.node, units);
    return part === undefined ? [] : [part];
  });
  return {
    title: "Schematic of the network",
    description: `The network in the order of its water: ${parts.map(sentence).join("; ")}.`,
    parts,
    lanes: { at: lanes.at, lines: lanes.lines, count: lanes.count },
    head: ["part", "from", "to", `flow, ${units.flow.unit}`, `head lost, ${units.head.unit}`, "state"],
    rows: lines
      .slice(0, network.links.length)
      .map(({ part, from, to, flow, headLost, state }) => [
        part,
        from,
        to,
        flow === "" ? "" : roundedForTable(units.flow.of(flow)),
        headLost === "" ? "" : roundedForTable(units.head.of(headLost)),
        state,
      ]),
  };
}
