/** Random formulas over the formula reader and over the evaluator: no crash, no hang, one answer each. */
import { join } from "node:path";
import fc from "fast-check";
import { expect, inject, test } from "vitest";
import { engineThread, THREAD_LIMITS } from "../../src/preview/cli/engineThread";
import type { Evaluated } from "../../src/preview/cli/evaluate";
import { evaluateLines } from "../../src/preview/cli/watchedEvaluate";
import { formulaTexts } from "../../src/preview/file/formulaTexts";
import { isRefusal, tokens } from "../../src/workbook/reader/tokens";
import { parse } from "../../src/workbook/reader/tree";
import { formulaText, RUNS, SEED, shortened } from "./formulaTexts";

/** For one formula in the reader: hundreds of times what it needs, so that a busy machine passes. */
const READER_MS = 500;
const EVALUATOR = { ...THREAD_LIMITS, formulaMs: 2_000 };

const FORMULAS = fc.sample(formulaText, { numRuns: RUNS, seed: SEED });
const texts = formulaTexts("WARMBACK", {
  functions: [{ id: "PIPE.HEADLOSS", name: "PIPE.HEADLOSS", parameters: [] }],
});

test(`${String(RUNS)} random formulas are each read or refused within ${String(READER_MS)} ms`, () => {
  let slowest = { ms: 0, formula: "" };
  for (const formula of FORMULAS) {
    const began = performance.now();
    const tree = parse(formula);
    const found = tokens(formula);
    texts.fromFile(texts.toFile(formula));
    const ms = performance.now() - began;
    if (ms > slowest.ms) slowest = { ms, formula };
    if (isRefusal(tree)) expect(tree.why, shortened(formula)).not.toBe("");
    else {
      expect(isRefusal(found), shortened(formula)).toBe(false);
      expect(tree.end, shortened(formula)).toBeLessThanOrEqual(formula.length);
    }
    expect(ms, shortened(formula)).toBeLessThan(READER_MS);
  }
  console.log(`reader, seed ${SEED}: slowest ${slowest.ms.toFixed(1)} ms, ${shortened(slowest.formula)}`);
});

const faults = ({ formula, value, error }: Evaluated): readonly string[] => {
  const cells = Array.isArray(value) ? (value as readonly (readonly unknown[])[]).flat() : [value];
  return [
    ...(error === undefined && value === undefined ? ["neither value nor error"] : []),
    ...(error !== undefined && (!/^#[A-Z/0]+[!?A]$/.test(error.code) || error.message === "")
      ? ["no code or message"]
      : []),
    ...(cells.some((cell) => typeof cell === "number" && !Number.isFinite(cell)) ? ["not finite"] : []),
  ].map((fault) => `${shortened(formula)}: ${fault}`);
};

test(
  `${String(RUNS)} random formulas have one answer each, in order, from an evaluator with a time limit`,
  { timeout: RUNS * 3_000 },
  async () => {
    const engine = engineThread(join(inject("build"), "evaluateWorker.cjs"), EVALUATOR);
    const found: Evaluated[] = [];
    let slowest = { ms: 0, formula: "" };
    try {
      await evaluateLines(engine, FORMULAS, (answers) => {
        const { place, ms } = answers.slowest;
        if (ms > slowest.ms) slowest = { ms, formula: answers.results[place]?.formula ?? "" };
        found.push(...answers.results);
      });
    } finally {
      await engine.end();
    }
    const overran = found.filter(({ error }) => error?.message.includes("the limit of") === true).length;
    console.log(
      `evaluator, seed ${SEED}: slowest answer ${slowest.ms.toFixed(1)} ms, ${shortened(slowest.formula)}; ` +
        `${overran} overran, the engine started ${engine.starts()} times`,
    );
    expect(found.map(({ formula }) => formula)).toEqual(FORMULAS);
    expect(found.flatMap(faults)).toEqual([]);
  },
);
