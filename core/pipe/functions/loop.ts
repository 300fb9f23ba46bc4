import { choice, quantity, rows, text } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { WATER_FLOW } from "../../kernel/glossary";
import { of, table, word } from "../../kernel/result";
import { GRAVITY } from "../../numeric/constants";
import { LOOP_WATER, NOMINAL_SIZE, SCHEDULE } from "../args";
import { contestedFittings } from "../cautions";
import { cleanFilter, drainCover, fastReturn, fastSuction, smallExchangerLoss } from "../loopCautions";
import { meanVelocity } from "../equations";
import { boreOf } from "../models/bore";
import { PIPE_WORDS, loopLines, type LoopItem } from "../models/loop";

const ITEM = {
  what: text('"pipe", a fitting, or the name of any other part', 80),
  size: NOMINAL_SIZE.optionally(),
  lengthOrCount: quantity(
    { choice: "what", kinds: Object.fromEntries(PIPE_WORDS.map((each) => [each, "length"])) },
    "length of a pipe, number of pieces of all else (1)",
    { above: 0 },
  ).optionally(),
  loss: quantity("head", "head lost at the known flow", { above: 0 }).optionally(),
  knownFlow: quantity("water flow", "flow at which the loss is known", { above: 0 }).optionally(),
  side: choice("LoopSide", ["suction", "return"], "before or behind the pump").otherwise("return"),
  flowCoefficient: quantity("number", "flow coefficient Cv of a valve: gpm at 1 psi", { above: 0 }).optionally(),
};

/** 1.5 velocity heads of two 3 in ports, in and out of an exchanger's shell, m. */
function portsLossAt(flow: number): number {
  const v = meanVelocity.code({ Q: flow, D: boreOf("3 in", "40", "average") });
  return (1.5 * v ** 2) / (2 * GRAVITY);
}

const isCleanFilter = ({ what }: LoopItem): boolean => /filter/i.test(what) && !/dirty|backwash/i.test(what);

export const loop = cellFunction({
  id: "PIPE.LOOP",
  topic: "pipe",
  summary: "Head that a pool loop takes, row by row, with subtotals of suction and return and its system curve.",
  finds: ["total dynamic head", "TDH", "system curve", "pressure drop of the loop", "take-off", "filter"],
  remarks: [
    "Columns: what, size, length or count, loss, known flow, side, flow coefficient; a header row may put them in another order. A loss in psi counts as a head of water at 60 °F (62.37 lb/ft³): 1 psi is 2.309 ft.",
    "Pipe by Darcy and Weisbach, fittings by the three-constant method, both on the average bore; other parts by their loss at a known flow, which rises with the flow squared, or by their flow coefficient. A fitting with a known loss of its own takes that.",
    "The velocity of a sum is the highest of its rows. The system curve h = k Q² is exact at this flow only: its coefficients add up, static head is not in it.",
  ],
  args: {
    items: rows(ITEM, "rows: what, size, length or count, [loss], [known flow], [side], [flow coefficient]", {
      least: 1,
      most: 500,
    }),
    flow: WATER_FLOW,
    water: LOOP_WATER,
    schedule: SCHEDULE,
  },
  gives: table(
    "head by row",
    {
      what: word("the part, and the sums"),
      size: word("nominal size"),
      side: word("suction or return"),
      head: of("head", "head lost"),
      velocity: of("velocity", "mean velocity, of a sum the highest"),
      lossCoefficient: of("number", "loss coefficient K of one piece or of the run"),
      method: word("how it was found"),
      systemCurve: of("system curve", "share of the system curve's coefficient"),
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
    { rule: drainCover, fires: { items: [["pipe", "2 in", 40]], flow: 40 } },
    { rule: fastSuction, fires: { items: [["pipe", "2 in", 10, null, null, "suction"]], flow: 70 } },
    { rule: fastReturn, fires: { items: [["pipe", "2 in", 10]], flow: 90 } },
    { rule: cleanFilter, fires: { items: [["filter, clean", null, 1, 8, 50]], flow: 50 } },
    { rule: smallExchangerLoss, fires: { items: [["exchanger", null, 1, 0.0014, 40]], flow: 40 } },
    { rule: contestedFittings, fires: { items: [["elbow 90", "2 in", 8]], flow: 50 } },
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
      at: { items: [["valve", null, 1, null, null, null, 22]], flow: 10 },
      gives: { row: "valve", column: "head", is: 0.476 },
      within: 0.003,
      from: "hydraulicsTexts",
      remark: "0.206 psi at 10 gpm through Cv 22",
    },
    {
      at: {
        items: [
          ["pipe", "2 in", 100],
          ["exchanger", null, 1, 10, 50],
        ],
        flow: 40,
      },
      gives: { row: "exchanger", column: "head", is: 6.4 },
      within: 1e-6,
      from: "identity",
      remark: "10 ft × (40/50)²",
    },
    {
      at: { items: [["pipe", "2 in", 100]], flow: 40 },
      gives: { row: "total", column: "head", is: 2.77 },
      within: "5 %",
      from: "hazenWilliams",
      remark: "By the other friction formula, C = 150",
    },
    {
      at: { items: [["pipe", "2 in", 100]], flow: 61.7 },
      gives: { row: "total", column: "velocity", is: 6 },
      within: 0.02,
      from: "poolVelocityLimits",
      remark: "61.7 gpm is 6 ft/s in 2 in Schedule 40",
    },
  ],
  work({ items, flow, water, schedule }, { trace, note }) {
    const lines = loopLines(items, { flow, water, schedule }, trace);
    const [suction, back] = [lines.at(-3)?.velocity, lines.at(-2)?.velocity];
    const exchanger = items.findIndex(({ what }) => /exchanger/i.test(what));
    note({
      portsLoss: portsLossAt(flow),
      ...(exchanger >= 0 && { exchangerLoss: lines[exchanger]?.head ?? 0 }),
      cleanFilter: items.some(isCleanFilter),
      ...(typeof suction === "number" ? { suctionVelocity: suction } : {}),
      ...(typeof back === "number" ? { returnVelocity: back } : {}),
    });
    return lines;
  },
});
