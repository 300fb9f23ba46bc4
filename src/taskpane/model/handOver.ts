/** A hand-over as the panel runs it: its jobs, and what the panel keeps between them. */
import type { LoggedCall } from "../../workbook/callLog";
import type { CopyPlan } from "../../workbook/copy/handOver";
import { surveyFacts, type MadeCopy, type SurveyFacts } from "../../workbook/copy/surveyFacts";
import type { CopyChoice } from "../../workbook/package";
import type { CopySource, JobResult } from "../jobs/job";
import type { JobOptions } from "../jobs/jobTable";
import type { PanelServices } from "../services";

type Services = Pick<PanelServices, "engine" | "jobs">;
type Work = Pick<JobOptions, "signal" | "onProgress">;

/** A workbook that was looked over. */
export interface CopyDraft {
  readonly survey: SurveyFacts;
  /** What a choice of sheets comes to. */
  consequences(choice: CopyChoice): Promise<JobResult<"consequences">>;
  make(plan: CopyPlan, work: Work): Promise<MadeCopy>;
}

/** Another one for every question, so that an answer that is kept belongs to it. */
const newKey = (): string => `${performance.now()} ${Math.random()}`;

/**
 * @param bytes the workbook's own
 * @returns undefined if no cell of the workbook uses us
 * @throws a sentence where the file can't be read or Excel is still calculating; CANCELLED once the signal is aborted
 */
export async function draftCopy(
  { engine, jobs }: Services,
  bytes: Uint8Array,
  work: Work,
): Promise<CopyDraft | undefined> {
  const sourceWith = (calls: readonly LoggedCall[]): CopySource => ({ key: newKey(), bytes, calls });
  let source = sourceWith([]);
  let found = await jobs.run("survey", source, work);
  // Arguments that can't be read from a formula may be in this session's calls, which only the page has.
  const calls = found.asked.flatMap((id) => engine.log.of(id));
  if (calls.length > 0) {
    source = sourceWith(calls);
    found = await jobs.run("survey", source, work);
  }
  const { survey } = found;
  if (survey === undefined) return undefined;
  return {
    survey: surveyFacts(survey),
    consequences: (choice) => jobs.run("consequences", { source, choice }),
    make: (plan, options) => jobs.run("copy", { source, plan }, options),
  };
}
