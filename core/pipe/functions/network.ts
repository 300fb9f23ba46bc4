import { cellFunction } from "../../kernel/define/cellFunction";
import { us } from "../../kernel/values/quantity";
import { quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { drainCover, fastReturn, fastSuction } from "../network/cautions";
import { readNetwork, solveNetwork } from "../network/network";
import { NETWORK_INPUTS, NETWORK_ROWS, NODE_ROWS, PUMP_ROWS } from "../network/networkArgs";
import {
  backwardsFlow,
  beyondPumpCurve,
  blankOpenings,
  cavitatingPump,
  vacuumAtNode,
  openBreaker,
  pumpHeldShut,
  risingCurve,
  transitionInNetwork,
} from "../network/networkCautions";
import { PARALLEL, PUMP, SHORT, SPA, SPA_NODES, roof, withPump } from "../network/networkExamples";
import { networkFacts } from "../network/networkFacts";
import { networkLines } from "../network/networkTable";
import { traceNetwork } from "../network/networkWorking";

/** Net positive suction head that a pool pump is assumed to need if none is given, m. */
const ASSUMED_SUCTION_HEAD = us("head", 8);

export const pipeNetwork = cellFunction({
  id: "PIPE.NETWORK",
  topic: "pipe",
  summary: "Flows and pressures of a pool's whole pipework: branches, bypass, valves, pumps, spa, roof loop.",
  keywords: [
    "hydraulic network",
    "branches",
    "bypass",
    "spa",
    "solar loop",
    "parallel pipes",
    "global gradient",
    "two pumps",
  ],
  details: [
    "Columns: from, to, element, size, schedule, length, K, flow coefficient, opening, characteristic, rangeability, loss, known flow, exponent, linear share, shut, second loss, second flow, dirty rise; a header row may leave out and reorder them.",
    'One row a link, from node to node, as the pad is drawn; a node exists by being named. Losses in a row add up: pipe, K or fittings ("3 elbow 90; 1 union"), valve by Cv or Kv at its opening, part by its loss at a known flow. A three-way valve is two rows, with openings x and 1 − x.',
    "A second point of the maker's curve gives the exponent in place of 2; dirt adds to a filter straight with flow (dirty rise). The ports of an exchanger are \"1 entrance; 1 exit\" in their size; EXCHANGER.COIL's water drop counts them and its bundle.",
    'An element with "check" in its name lets water through forwards only. A pump is a row whose element is named in pumps; speed 0 is off. Points of a curve are joined by straight lines. A vacuum breaker is a row from the top of a roof loop to "air".',
    "Levels and heights have one zero: a node with a water level is a free surface, pool is one at 0 by itself. Demand takes flow away, fed in it is negative.",
    "Global gradient method to 1e-12. Darcy and Weisbach with Colebrook's factor above Re 4,000, 64/Re below 2,000, a cubic between (continuous, unlike PIPE.HEADLOSS); or Hazen and Williams, C = 150. Average bores, roughness 0.0015 mm.",
    "Links first: flow (negative: against the row), velocity, head lost (a pump's is negative), a pump's suction head; then vacuum breakers, with the pressure that a full loop would have; then nodes: total head, gauge pressure.",
  ],
  args: { rows: NETWORK_ROWS, pumps: PUMP_ROWS, nodes: NODE_ROWS, inputs: NETWORK_INPUTS },
  returns: tableResult("links and nodes", {
    part: wordResult("element of the row, or node"),
    from: wordResult("node where it begins"),
    to: wordResult("node where it ends"),
    flow: quantityResult("water flow", "flow"),
    velocity: quantityResult("velocity", "mean velocity"),
    headLost: quantityResult("head", "head lost"),
    head: quantityResult("head", "total head"),
    gaugePressure: quantityResult("pressure drop", "gauge pressure"),
    suctionHead: quantityResult("head", "net positive suction head available"),
    state: wordResult("state"),
  }),
  facts: {
    suctionVelocity: "velocity",
    returnVelocity: "velocity",
    leastSuctionHead: "head",
    neededHead: "head",
    lowestPressure: "pressure drop",
    backwards: "word",
    pumpWithoutFlow: "word",
    between: "word",
    beyondCurve: "word",
    risingCurve: "word",
    breakerAt: "word",
    zerosAreBlank: "yes/no",
  },
  memoised: true,
  cautions: [
    { rule: drainCover, raisedBy: withPump },
    { rule: fastSuction, raisedBy: withPump },
    { rule: fastReturn, raisedBy: withPump },
    { rule: cavitatingPump, raisedBy: { ...withPump, nodes: [["s", "6 m"]] } },
    { rule: openBreaker, raisedBy: roof(0.62) },
    { rule: vacuumAtNode, raisedBy: { ...withPump, nodes: [["s", "6 m"]] } },
    {
      rule: backwardsFlow,
      raisedBy: {
        rows: SPA.map((row) => row.map((cell) => (cell === "check valve, spa" ? "spa branch" : cell))),
        pumps: [["pump", 0.3, ...PUMP.slice(2)]],
        nodes: SPA_NODES,
      },
    },
    {
      rule: pumpHeldShut,
      raisedBy: {
        rows: [...SHORT.slice(0, 2), ["d", "spa", "rise", "2 in", null, 60]],
        pumps: [["pump", 0.25, ...PUMP.slice(2)]],
        nodes: [["spa", "1.4 m", "1.6 m"]],
      },
    },
    {
      rule: beyondPumpCurve,
      raisedBy: {
        rows: SHORT,
        pumps: [
          ["pump", 1, 0, 60],
          ["pump", 1, 20, 58],
        ],
      },
    },
    {
      rule: risingCurve,
      raisedBy: {
        rows: SHORT,
        pumps: [
          ["pump", 1, 0, 50],
          ["pump", 1, 20, 55],
          ["pump", 1, 100, 20],
        ],
      },
    },
    {
      rule: transitionInNetwork,
      raisedBy: { rows: [["A", "pool", "line", "1 in", null, 40]], nodes: [["A", 0, null, -1.1]] },
    },
    {
      rule: blankOpenings,
      raisedBy: { rows: SHORT.map((row) => [...row, ...Array<null>(8 - row.length).fill(null), 0]), pumps: [PUMP] },
    },
  ],
  example: { rows: SPA, pumps: [PUMP], nodes: SPA_NODES },
  checks: [
    {
      inputs: PARALLEL,
      expected: { row: "pipe 2 in", column: "flow", value: 36.1664 },
      tolerance: "0.01 %",
      source: "networkRows",
    },
    {
      inputs: { rows: SPA, pumps: [PUMP], nodes: SPA_NODES },
      expected: { row: "check valve, spa", column: "flow", value: 30.684 },
      tolerance: "0.01 %",
      source: "networkRows",
    },
    {
      inputs: { rows: SPA, pumps: [["pump", 0.3, ...PUMP.slice(2)]], nodes: SPA_NODES },
      expected: { row: "check valve, spa", column: "state", value: "check valve shut" },
      source: "networkRows",
      remark: "at 30 % speed",
    },
    { inputs: { rows: SHORT }, expected: "#VALUE!", source: "identity", remark: "a pump without curve" },
  ],
  compute({ rows, pumps, nodes, inputs }, { trace, recordFacts }) {
    const network = readNetwork(rows, pumps, nodes, inputs);
    const solved = solveNetwork(network);
    const lines = networkLines(network, solved, inputs);
    recordFacts({
      ...networkFacts(network, solved, lines),
      neededHead: inputs.neededSuctionHead ?? ASSUMED_SUCTION_HEAD,
    });
    traceNetwork(network, solved, trace);
    return lines;
  },
});
