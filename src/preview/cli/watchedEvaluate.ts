import type { OpeningReport } from "../file/openingReport";
import { isEnded } from "./engineThread";
import type { Ended, EngineThread } from "./engineThread";
import type { Evaluated, EvaluatedError, SkippedFormula } from "./evaluate";
import type { Reply, Slowest } from "./messages";

/** Every formula gets an answer, whatever it does to the sheet engine. */

/** Formulas in one request. */
const BATCH = 500;

export interface Answers {
  readonly results: readonly Evaluated[];
  readonly slowest: Slowest;
}

const NOTHING_SLOW: Slowest = { place: 0, ms: 0 };

/** Excel's code for what can't be calculated; the message says why. */
const errorOf = ({ message }: Ended): EvaluatedError => ({ code: "#CALC!", message });

const unexpected = (reply: Reply): Error =>
  new Error(reply.kind === "failed" ? reply.message : `the sheet engine answered with "${reply.kind}"`);

const slower = (one: Slowest, other: Slowest, from = 0): Slowest =>
  other.ms > one.ms ? { place: other.place + from, ms: other.ms } : one;

/** A formula that ended the engine, or made it fail, while it was alone. */
const alone = (formula: string, ended: Ended | Reply): Answers => {
  const error = isEnded(ended) ? errorOf(ended) : { code: "#CALC!", message: unexpected(ended).message };
  return { results: [{ formula, error, cautions: [] }], slowest: NOTHING_SLOW };
};

/** Answers one after the other. */
const joined = async (engine: EngineThread, parts: readonly (readonly string[])[]): Promise<Answers> => {
  const results: Evaluated[] = [];
  let slowest = NOTHING_SLOW;
  for (const part of parts) {
    const answers = await answersTo(engine, part);
    slowest = slower(slowest, answers.slowest, results.length);
    results.push(...answers.results);
  }
  return { results, slowest };
};

/**
 * Answers a batch. Where it ends the engine, the formula at work then is dealt with by itself, with what was before and after
 * it as batches of their own; where no formula was at work, the batch is halved.
 */
const answersTo = async (engine: EngineThread, lines: readonly string[]): Promise<Answers> => {
  if (lines.length === 0) return { results: [], slowest: NOTHING_SLOW };
  const answer = await engine.ask({ kind: "formulas", lines });
  if (answer.kind === "results") return answer;
  const [formula = ""] = lines;
  if (lines.length === 1) return alone(formula, answer);
  const place = isEnded(answer) ? answer.place : undefined;
  if (place === undefined) {
    const half = Math.ceil(lines.length / 2);
    return joined(engine, [lines.slice(0, half), lines.slice(half)]);
  }
  const before = await answersTo(engine, lines.slice(0, place));
  const culprit = lines[place] ?? "";
  // Time was measured at this formula alone; a crash may have its cause in another one.
  const own = isEnded(answer) && answer.why === "time" ? alone(culprit, answer) : await answersTo(engine, [culprit]);
  const after = await answersTo(engine, lines.slice(place + 1));
  const slowest = slower(slower(before.slowest, own.slowest, place), after.slowest, place + 1);
  return { results: [...before.results, ...own.results, ...after.results], slowest };
};

/** Evaluates formulas in order, one answer each; `onAnswers` gets them batch by batch, and may ask to wait. */
export const evaluateLines = async (
  engine: EngineThread,
  lines: readonly string[],
  onAnswers: (answers: Answers) => void | Promise<void>,
): Promise<void> => {
  for (let from = 0; from < lines.length; from += BATCH)
    await onAnswers(await answersTo(engine, lines.slice(from, from + BATCH)));
};

export interface EvaluatedFile {
  readonly results: readonly Evaluated[];
  readonly report: OpeningReport;
}

/** Evaluates a workbook; formulas that end the engine are errors on which others depend. */
export const evaluateFile = async (engine: EngineThread, path: string): Promise<EvaluatedFile> => {
  const skipped: SkippedFormula[] = [];
  for (;;) {
    const answer = await engine.ask({ kind: "workbook", path, skipped });
    if (answer.kind === "workbook") return answer;
    if (!isEnded(answer)) throw unexpected(answer);
    const { place } = answer;
    // A formula that is skipped already can't be at work: then it is the workbook as a whole.
    if (place === undefined || skipped.some((known) => known.place === place))
      throw new Error(`${path}: ${answer.message}`);
    skipped.push({ place, error: errorOf(answer) });
  }
};
