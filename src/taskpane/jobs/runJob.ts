/** Runs a job: the same code in a worker and, if no worker is available, on the page. */
import { CATALOGUE, cite, type Compiled, COMPILED, explain, type CheckResult, runCheck } from "../../../core";
import { picturesOf, PICTURED } from "../../../core/pictures";
import { outcomeOf } from "../../functions/outcome";
import { readRecordedFile } from "../../workbook/weather/readFile";
import { callDescription } from "../model/callRecord";
import { explainedOf } from "../model/explanationData";
import { studyCall } from "./studyCall";
import type { CopyRunners } from "./copyRunner";
import type { JobCall, CheckedValue, ExplainedCall, JobResult, JobKind, JobInput, CallReport, JobTypes } from "./job";
import type { JobContext, JobRunner } from "./jobTable";

const compiledOf = (id: string): Compiled => {
  const compiled = COMPILED.get(id);
  if (compiled === undefined) throw new Error(`there is no function ${id}`);
  return compiled;
};

const reportCall = ({ id, args }: JobCall): CallReport => {
  const { out, cautions } = explain(compiledOf(id), args, CATALOGUE, { steps: false });
  return { outcome: outcomeOf(out), cautions };
};

const explainCall = async ({ id, args }: JobCall, { report, yieldTurn }: JobContext): Promise<ExplainedCall> => {
  const compiled = compiledOf(id);
  const drawn = PICTURED.includes(id);
  const total = drawn ? 2 : 1;
  report({ done: 0, total, text: drawn ? "result and working, then pictures" : "result and working" });
  await yieldTurn();
  const explained = explainedOf(explain(compiled, args, CATALOGUE));
  if (!drawn) return explained;
  report({ done: 1, total, text: "pictures" });
  await yieldTurn();
  return { ...explained, pictures: picturesOf(compiled, args) };
};

const checkedOf = ({ id, what, expected, agrees, check }: CheckResult): CheckedValue => ({
  id,
  what,
  expected,
  agrees,
  source: cite(check.source),
});

const checkAll = async ({ report, yieldTurn }: JobContext): Promise<readonly CheckedValue[]> => {
  const found: CheckedValue[] = [];
  const total = CATALOGUE.length;
  for (const [done, definition] of CATALOGUE.entries()) {
    report({ done, total, text: `${String(done)} of ${String(total)} functions` });
    await yieldTurn();
    for (const check of definition.checks) found.push(...runCheck(definition, check, CATALOGUE).map(checkedOf));
  }
  return found;
};

type Runners = {
  readonly [K in JobKind]: (needs: JobInput<K>, context: JobContext) => JobResult<K> | Promise<JobResult<K>>;
};

const CALCULATIONS: Omit<Runners, keyof CopyRunners> = {
  report: reportCall,
  describe: ({ id, args }) => callDescription(explain(compiledOf(id), args, CATALOGUE)),
  explain: explainCall,
  study: ({ id, args }, context) => studyCall(compiledOf(id), args, context),
  weather: async ({ bytes, hourly }, { report, yieldTurn }) => {
    report({ done: 0, total: 1, text: "reading, checking, filling gaps" });
    await yieldTurn();
    return readRecordedFile(bytes, hourly);
  },
  check: (_, context) => checkAll(context),
  stored: async ({ bytes }, context) =>
    (await import(/* webpackChunkName: "stored" */ "./readStored")).readStored(bytes, context),
};

/** Jobs throw an Error where there is no such function; refused calls are results. */
export function jobRunner(): JobRunner<JobTypes> {
  let copying: Promise<CopyRunners> | undefined;
  // What reads and writes files is loaded when it is first needed.
  const copies = (): Promise<CopyRunners> =>
    (copying ??= import(/* webpackChunkName: "copy" */ "./copyRunner").then(({ copyRunners }) => copyRunners()));
  const runners: Runners = {
    ...CALCULATIONS,
    survey: async (input, context) => (await copies()).survey(input, context),
    consequences: async (input, context) => (await copies()).consequences(input, context),
    copy: async (input, context) => (await copies()).copy(input, context),
  };
  return async (kind, input, context) => runners[kind](input, context);
}
