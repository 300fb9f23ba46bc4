/** The opening of a valve that sends a wanted share of the pumps' flow through an exchanger. */
import { normalizeKey } from "../../kernel/define/argument";
import { notAvailable, valueError } from "../../kernel/values/fault";
import { silent, type Trace } from "../../kernel/define/steps";
import { bracketedRoot } from "../../numeric/root";
import { item } from "../../numeric/series";
import { readNetwork, solveNetwork } from "./network";
import type { Network, SolvedNetwork } from "./networkTypes";
import type { LinkRow, NetworkInputs, NodeRow, PumpRow } from "./networkArgs";

export interface SettingCase {
  readonly rows: readonly LinkRow[];
  readonly pumps: readonly PumpRow[];
  readonly nodes: readonly NodeRow[];
  readonly valve: string;
  readonly exchanger: string;
  readonly share: number;
  readonly inputs: NetworkInputs;
}

export interface SetNetwork {
  readonly opening: number;
  /** Share of the pumps' flow through the exchanger. */
  readonly share: number;
  /** m³/s */
  readonly exchangerFlow: number;
  readonly pumpFlow: number;
  /** Flow coefficient of the first row of the valve, m³/h at 1 bar. */
  readonly Kv: number;
  /** Shares with the valve shut (nearly) and open. */
  readonly ends: readonly [number, number];
  readonly network: Network;
  readonly solved: SolvedNetwork;
}

/** Least opening tried: an equal-percentage valve still controls there. */
const LEAST_OPENING = 0.02;

function placesOf(rows: readonly LinkRow[], name: string, argument: string, most: number): readonly number[] {
  const places = rows.flatMap(({ element }, i) => (normalizeKey(element) === normalizeKey(name) ? [i] : []));
  if (places.length === 0) throw valueError(`${argument}: no row has the element "${name}"`);
  if (places.length > most)
    throw valueError(
      `${argument}: ${places.length} rows have the element "${name}", at most ${most} may: rename the others`,
    );
  return places;
}

/** Sets a valve to an opening; the second row of a three-way valve opens as the first one shuts. */
function opened(rows: readonly LinkRow[], places: readonly number[], opening: number): readonly LinkRow[] {
  return rows.map((row, i) => {
    const port = places.indexOf(i);
    return port < 0 ? row : { ...row, shut: false, opening: port === 0 ? opening : 1 - opening };
  });
}

/** @throws a fault with the reachable shares if the wanted one is beyond them */
export function valveSetting(given: SettingCase, trace: Trace = silent): SetNetwork {
  const { rows, pumps, nodes, valve, exchanger, share, inputs } = given;
  const ports = placesOf(rows, valve, "valve", 2);
  placesOf(rows, exchanger, "exchanger", 1);
  for (const port of ports)
    if (item(rows, port).flowCoefficient === undefined)
      throw valueError(`valve: "${valve}" has no flow coefficient in rows: its opening says nothing without`);
  let warm: ArrayLike<number> | undefined;
  const at = (opening: number): SetNetwork => {
    const network = readNetwork(opened(rows, ports, opening), pumps, nodes, inputs);
    const solved = solveNetwork(network, warm);
    warm = solved.flow;
    const place = network.links.findIndex(({ name }) => normalizeKey(name) === normalizeKey(exchanger));
    const exchangerFlow = Math.abs(item(solved.flow, place));
    const pumped = network.links.reduce((sum, { pump }, i) => sum + (pump ? item(solved.flow, i) : 0), 0);
    const fed = network.grid.demand.reduce((sum, each) => sum + Math.max(-each, 0), 0);
    const pumpFlow = network.links.some(({ pump }) => pump) ? pumped : fed;
    if (!(pumpFlow > 0)) throw notAvailable("rows: the pumps move no water: no share to set");
    const Kv = network.links.find(({ name }) => normalizeKey(name) === normalizeKey(valve))?.Kv ?? 0;
    return { opening, share: exchangerFlow / pumpFlow, exchangerFlow, pumpFlow, Kv, ends: [0, 0], network, solved };
  };
  const upper = ports.length === 2 ? 1 - LEAST_OPENING : 1;
  const [low, high] = [at(LEAST_OPENING), at(upper)];
  if ((low.share - share) * (high.share - share) > 0) throw outOfReach(share, low.share, high.share);
  const root = bracketedRoot((opening) => at(opening).share - share, LEAST_OPENING, upper, { tolerance: 1e-12 });
  trace.solution({
    unknown: "opening",
    kind: "fraction",
    solves: "the exchanger's share of the pumps' flow = the wanted share",
    bracket: root.bracket,
    iterations: root.iterations,
    residual: root.residual,
    answer: root.x,
  });
  return { ...at(root.x), ends: [low.share, high.share] };
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

function outOfReach(share: number, low: number, high: number): Error {
  return notAvailable(
    `share: ${percent(share)} is out of the valve's reach: nearly shut it gives ${percent(low)}, open ${percent(high)}; another Cv or Kv, or another valve, moves that`,
  );
}
