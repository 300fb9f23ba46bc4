import { choice, quantity, rows, text } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { WATER_FLOW } from "../../kernel/define/glossary";
import { quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { GRAVITY } from "../../numeric/constants";
import { LOOP_WATER, NOMINAL_SIZE, SCHEDULE } from "../args";
import { contestedFittings } from "../cautions";
import { cleanFilter, drainCover, fastReturn, fastSuction, smallExchangerLoss } from "../network/cautions";
import { meanVelocity } from "../equations";
import { boreOf } from "../straight/bore";
import { CURVE_COLUMNS, EXPONENT, LINEAR_SHARE } from "../network/partCurve";
import { PIPE_WORD, loopLines, type LoopItem } from "../network/loop";

const ITEM = {
  what: text('"pipe", a fitting, or the name of any other part', 80),
  size: NOMINAL_SIZE.optional(),
  lengthOrCount: quantity(
    { choice: "what", kinds: { [PIPE_WORD]: "length" } },
    "length of a pipe, number of pieces of all else (1)",
    { above: 0 },
  ).optional(),
  loss: quantity("head", "head lost at the known flow", { above: 0 }).optional(),
  knownFlow: quantity("water flow", "flow at which the loss is known", { above: 0 }).optional(),
  side: choice("LoopSide", ["suction", "return"], "before or after the pump").default("return"),
  flowCoefficient: quantity("number", "flow coefficient Cv of a valve: gpm at 1 psi", { above: 0 }).optional(),
  exponent: EXPONENT,
  linearShare: LINEAR_SHARE,
  ...CURVE_COLUMNS,
};

/** 1.5 velocity heads of two 3 in ports, in and out of an exchanger's shell, m. */
function portsLossAt(flow: number): number {
  const v = meanVelocity.code({ Q: flow, D: boreOf("3 in", "40", "average") });
  return (1.5 * v ** 2) / (2 * GRAVITY);
}

const isCleanFilter = ({ what }: LoopItem): boolean => /filter/i.test(what) && !/dirty|backwash/i.test(what);

export const pipeLoop = cellFunction({
  id: "PIPE.LOOP",
  topic: "pipe",
  summary: "Head loss of a pool loop, row by row, with subtotals of suction and return and its system curve.",
  keywords: ["total dynamic head", "TDH", "system curve", "pressure drop of the loop", "take-off", "filter"],
  details: [
    "Columns: what, size, length or count, loss, known flow, side, flow coefficient, exponent, linear share, second loss, second flow, dirty rise; a header row may reorder them. A loss in psi counts as a head of water at 60 °F (62.37 lb/ft³): 1 psi is 2.309 ft.",
    "Pipe by Darcy and Weisbach, fittings by the three-constant method, both on the average bore; other parts by their loss at a known flow, which rises with the flow squared, or by their flow coefficient. A fitting with a known loss uses that.",
    "A second point of the maker's curve gives the exponent in place of 2. Dirt adds to a filter straight with flow (dirty rise). An exchanger by its geometry: EXCHANGER.COIL's water drop at the known flow, or its ports alone as entrance and exit in their size.",
    "A sum shows the highest velocity of its rows. The system curve h = k Q² is exact at this flow only: its coefficients add up; it excludes static head.",
  ],
  args: {
    items: rows(
      ITEM,
      "rows: what, size, length or count, [loss], [known flow], [side], [flow coefficient], [exponent] … (see the help)",
      {
        least: 1,
        most: 500,
      },
    ),
    flow: WATER_FLOW,
    water: LOOP_WATER,
    schedule: SCHEDULE,
  },
  returns: tableResult(
    "head by row",
    {
      what: wordResult("the part, and the sums"),
      size: wordResult("nominal size"),
      side: wordResult("suction or return"),
      head: quantityResult("head", "head lost"),
      velocity: quantityResult("velocity", "mean velocity, of a sum the highest"),
      lossCoefficient: quantityResult("number", "loss coefficient K of one piece or of the run"),
      method: wordResult("how it was found"),
      systemCurve: quantityResult("system curve", "share of the system curve's coefficient"),
    },
    { total: true },
  ),
  facts: {
    suctionVelocity: "velocity",
    returnVelocity: "velocity",
    cleanFilter: "yes/no",
    exchangerLoss: "head",
    portsLoss: "head",
  },
  cautions: [
    { rule: drainCover, raisedBy: { items: [["pipe", "2 in", 40]], flow: 40 } },
    { rule: fastSuction, raisedBy: { items: [["pipe", "2 in", 10, null, null, "suction"]], flow: 70 } },
    { rule: fastReturn, raisedBy: { items: [["pipe", "2 in", 10]], flow: 90 } },
    { rule: cleanFilter, raisedBy: { items: [["filter, clean", null, 1, 8, 50]], flow: 50 } },
    { rule: smallExchangerLoss, raisedBy: { items: [["exchanger", null, 1, 0.0014, 40]], flow: 40 } },
    { rule: contestedFittings, raisedBy: { items: [["elbow 90", "2 in", 8]], flow: 50 } },
  ],
  example: {
    items: [
      ["pipe", "2 in", 40, null, null, "suction"],
      ["elbow 90", "2 in", 3, null, null, "suction"],
      ["filter, clean", null, 1, 8, 60],
      ["exchanger", null, 1, 10, 50],
      ["pipe", "2 in", 60],
      ["elbow 90", "2 in", 6],
    ],
    flow: 50,
  },
  checks: [
    {
      inputs: { items: [["valve", null, 1, null, null, null, 22]], flow: 10 },
      expected: { row: "valve", column: "head", value: 0.476 },
      tolerance: 0.003,
      source: "hydraulicsTexts",
      remark: "0.206 psi at 10 gpm through Cv 22",
    },
    {
      inputs: {
        items: [
          ["pipe", "2 in", 100],
          ["exchanger", null, 1, 10, 50],
        ],
        flow: 40,
      },
      expected: { row: "exchanger", column: "head", value: 6.4 },
      tolerance: 1e-6,
      source: "identity",
      remark: "10 ft × (40/50)²",
    },
    {
      inputs: { items: [["pipe", "2 in", 100]], flow: 40 },
      expected: { row: "total", column: "head", value: 2.77 },
      tolerance: "5 %",
      source: "hazenWilliams",
      remark: "By the other friction formula, C = 150",
    },
    {
      inputs: { items: [["pipe", "2 in", 100]], flow: 61.7 },
      expected: { row: "total", column: "velocity", value: 6 },
      tolerance: 0.02,
      source: "poolVelocityLimits",
      remark: "61.7 gpm is 6 ft/s in 2 in Schedule 40",
    },
  ],
  compute({ items, flow, water, schedule }, { trace, recordFacts }) {
    const lines = loopLines(items, { flow, water, schedule }, trace);
    const [suction, back] = [lines.at(-3)?.velocity, lines.at(-2)?.velocity];
    const exchanger = items.findIndex(({ what }) => /exchanger/i.test(what));
    recordFacts({
      portsLoss: portsLossAt(flow),
      ...(exchanger >= 0 && { exchangerLoss: lines[exchanger]?.head ?? 0 }),
      cleanFilter: items.some(isCleanFilter),
      ...(typeof suction === "number" ? { suctionVelocity: suction } : {}),
      ...(typeof back === "number" ? { returnVelocity: back } : {}),
    });
    return lines;
  },
});
