import { sumOf } from "../../numeric/series";
import { quantity, rows } from "../../kernel/define/argument";
import { cellFunction } from "../../kernel/define/cellFunction";
import { quantityResult, tableResult, wordResult } from "../../kernel/define/result";
import { NOMINAL_SIZE } from "../args";
import { solventCement } from "../cautions";
import { jointsPerQuart } from "../plastic/plastic";

/** A US quart, m³. */
const QUART = 0.003785411784 / 4;
/** Primer over cement, by volume: a quart of primer serves twice the joints (common practice; the label governs). */
const PRIMER_SHARE = 0.5;

export const pipeCement = cellFunction({
  id: "PIPE.CEMENT",
  topic: "pipe",
  summary: "Solvent cement and primer for a list of joints.",
  keywords: ["glue", "take-off", "primer"],
  details: [
    "Joints per quart as printed in plastics manuals; a quart of primer serves twice the joints (common practice). The labels govern. Sizes missing from the table count as the next larger one.",
  ],
  args: {
    joints: rows(
      { size: NOMINAL_SIZE, joints: quantity("count", "number of joints", { from: 0, whole: true }) },
      "rows of pipe size and number of joints",
      { least: 1, most: 200 },
    ),
  },
  returns: tableResult(
    "cement and primer",
    {
      size: wordResult("pipe size, and the total"),
      joints: quantityResult("count", "number of joints"),
      cement: quantityResult("daily draw", "cement"),
      primer: quantityResult("daily draw", "primer"),
    },
    { total: true },
  ),
  cautions: [{ rule: solventCement, raisedBy: { joints: [{ size: "2 in", joints: 24 }] } }],
  checks: [
    {
      inputs: {
        joints: [
          { size: "2 in", joints: 60 },
          { size: "1-1/2 in", joints: 90 },
        ],
      },
      expected: { row: "total", column: "cement", value: 0.5 },
      tolerance: 1e-6,
      source: "cementTable",
      remark: "a quart each",
    },
    {
      inputs: { joints: [{ size: "2 in", joints: 120 }] },
      expected: { row: "2 in", column: "primer", value: 0.25 },
      tolerance: 1e-9,
      source: "commonPractice",
      remark: "a quart of primer for twice the 60 joints of a quart of cement",
    },
  ],
  compute({ joints }, { trace }) {
    const lines = joints.map(({ size, joints: count }) => {
      const { joints: each, row } = jointsPerQuart(size);
      trace.lookup({
        table: "Joints per quart of cement",
        row,
        result: { value: each, kind: "count" },
        source: "cementTable",
      });
      const volume = (count / each) * QUART;
      return { size, joints: count, cement: volume, primer: volume * PRIMER_SHARE };
    });
    return [
      ...lines,
      {
        size: "total",
        joints: sumOf(lines, ({ joints }) => joints),
        cement: sumOf(lines, ({ cement }) => cement),
        primer: sumOf(lines, ({ primer }) => primer),
      },
    ];
  },
});
