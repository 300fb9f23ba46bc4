import { quantity, text } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { listResult, quantityResult } from "../../kernel/define/result";
import { drainCover } from "../network/cautions";
import { NETWORK_INPUTS, NETWORK_ROWS, NODE_ROWS_NEEDED, PUMP_ROWS_NEEDED } from "../network/networkArgs";
import { coarseSetting } from "../network/networkCautions";
import { traceNetwork } from "../network/networkWorking";
import { valveSetting } from "../network/valveSetting";

/** N05 of the solved networks: 36.275 of 73.034 gpm through the exchanger at an opening of 0.4. */
const ROWS = [
  ["pool", "s", "suction", "2 in", null, 40, "5.5"],
  ["s", "d", "pump"],
  ["d", "a", "filter", null, null, null, null, null, null, null, null, "2.5 m", "14 m³/h"],
  ["a", "b", "exchanger", null, null, null, null, null, null, null, null, "4.2 m", "11.4 m³/h"],
  ["a", "b", "bypass", null, null, null, null, "45 Kv"],
  ["b", "pool", "return", "2 in", null, 60, "9"],
];
const EXAMPLE = {
  rows: ROWS,
  pumps: [["pump", 1, null, null, "20 m", 0, "0.0306 m/(m³/h)²"]],
  nodes: [["pool", "-0.3 m", "0 m"]],
  valve: "bypass",
  exchanger: "exchanger",
};

export const pipeValveSetting = cellFunction({
  id: "PIPE.VALVESETTING",
  topic: "pipe",
  summary: "Opening of a valve that sends a wanted share of the pumps' flow through the exchanger.",
  keywords: ["bypass", "three-way valve", "diverting valve", "hand valve", "opening"],
  details: [
    "Rows, pumps, nodes and inputs as in PIPE.NETWORK. The share is the exchanger's flow over that of all pumps, or over what is fed in where there is no pump; EXCHANGER.HOLDHEAD's bypass is the rest.",
    "A valve of two rows with one name is a three-way valve: the first row gets the opening x, the second 1 − x. Openings from 0.02 are tried.",
    "An opening is a share of the stroke by the valve's own curve: makers' scales differ. Set it by a flow meter, and fix the handle.",
  ],
  args: {
    rows: NETWORK_ROWS,
    pumps: PUMP_ROWS_NEEDED.describedAs("rows as in PIPE.NETWORK: name, speed, and flow, head or H0, b, c"),
    nodes: NODE_ROWS_NEEDED.describedAs("rows as in PIPE.NETWORK: node, height, water level, demand"),
    valve: text("element of the valve's row", 80),
    exchanger: text("element of the exchanger's row", 80),
    share: quantity("fraction", "wanted share of the pumps' flow", { above: 0, to: 1 }),
    inputs: NETWORK_INPUTS,
  },
  returns: listResult("setting", {
    opening: quantityResult("fraction", "opening of the valve"),
    exchangerFlow: quantityResult("water flow", "through the exchanger"),
    pumpFlow: quantityResult("water flow", "of all pumps"),
    flowCoefficient: quantityResult("flow coefficient", "of the valve at that opening"),
    shareNearlyShut: quantityResult("fraction", "the exchanger's share with the valve nearly shut"),
    shareOpen: quantityResult("fraction", "the exchanger's share with the valve open"),
  }),
  facts: { opening: "fraction" },
  memoised: true,
  cautions: [
    { rule: drainCover, raisedBy: { ...EXAMPLE, share: 0.6 } },
    { rule: coarseSetting, raisedBy: { ...EXAMPLE, share: 0.9 } },
  ],
  checks: [
    {
      inputs: { ...EXAMPLE, share: 36.2748 / 73.0339 },
      expected: { opening: 0.4, exchangerFlow: 36.275, pumpFlow: 73.034 },
      tolerance: "0.02 %",
      source: "networkRows",
    },
    {
      inputs: { ...EXAMPLE, share: 0.02 },
      expected: "#N/A",
      source: "identity",
      remark: "open, the bypass leaves more",
    },
  ],
  example: { ...EXAMPLE, share: 0.6 },
  compute(args, { trace, recordFacts }) {
    const set = valveSetting(args, trace);
    recordFacts({ opening: set.opening });
    traceNetwork(set.network, set.solved, trace);
    return {
      opening: set.opening,
      exchangerFlow: set.exchangerFlow,
      pumpFlow: set.pumpFlow,
      flowCoefficient: set.Kv,
      shareNearlyShut: set.ends[0],
      shareOpen: set.ends[1],
    };
  },
});
