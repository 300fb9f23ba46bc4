import { quantity, rows } from "../../kernel/argument";
import { cellFunction } from "../../kernel/cellFunction";
import { of, table, word } from "../../kernel/result";
import { NOMINAL_SIZE } from "../args";
import { solventCement } from "../cautions";
import { jointsPerQuart } from "../models/plastic";

/** A US quart, m³. */
const QUART = 0.003785411784 / 4;
/** Primer over cement, by volume: a quart of primer serves twice the joints (common practice; the label governs). */
const PRIMER_SHARE = 0.5;

export const cement = cellFunction({
  id: "PIPE.CEMENT",
  topic: "pipe",
  summary: "Solvent cement and primer for a list of joints.",
  finds: ["glue", "take-off", "primer"],
  remarks: [
    "Joints per quart as printed in plastics manuals; a quart of primer serves twice the joints (common practice). The labels govern. Sizes that the table lacks count as the next larger one.",
  ],
  args: {
    joints: rows(
      { size: NOMINAL_SIZE, joints: quantity("count", "number of joints", { from: 0, whole: true }) },
      "rows of pipe size and number of joints",
      { least: 1, most: 200 },
    ),
  },
  gives: table(
    "cement and primer",
    {
      size: word("pipe size, and the total"),
      joints: of("count", "number of joints"),
      cement: of("daily draw", "cement"),
      primer: of("daily draw", "primer"),
    },
    { total: true },
  ),
  cautions: [{ rule: solventCement, fires: { joints: [{ size: "2 in", joints: 24 }] } }],
  checks: [
    {
      at: {
        joints: [
          { size: "2 in", joints: 60 },
          { size: "1-1/2 in", joints: 90 },
        ],
      },
      gives: { row: "total", column: "cement", is: 0.5 },
      within: 1e-6,
      from: "cementTable",
      remark: "a quart each",
    },
    {
      at: { joints: [{ size: "2 in", joints: 120 }] },
      gives: { row: "2 in", column: "primer", is: 0.25 },
      within: 1e-9,
      from: "commonPractice",
      remark: "a quart of primer for twice the 60 joints of a quart of cement",
    },
  ],
  work({ joints }, { trace }) {
    const lines = joints.map(({ size, joints: count }) => {
      const { joints: each, row } = jointsPerQuart(size);
      trace.lookup({
        table: "Joints per quart of cement",
        row,
        gives: { value: each, kind: "count" },
        source: "cementTable",
      });
      const volume = (count / each) * QUART;
      return { size, joints: count, cement: volume, primer: volume * PRIMER_SHARE };
    });
    const sum = (of: (line: (typeof lines)[number]) => number): number =>
      lines.reduce((total, line) => total + of(line), 0);
    return [
      ...lines,
      { size: "total", joints: sum((l) => l.joints), cement: sum((l) => l.cement), primer: sum((l) => l.primer) },
    ];
  },
});
