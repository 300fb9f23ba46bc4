/** Runs the jobs of a hand-over: the same code in a worker and, if no worker is available, on the page. */
import type { LoggedCall, SessionLog } from "../../workbook/callLog";
import {
  listHidden,
  makeCopy,
  madeCopy,
  nameValues,
  packedSurvey,
  sheetsOfCopy,
  surveyBook,
} from "../../workbook/copy";
import type { CopyWork } from "../../workbook/copy/copyWork";
import type { Survey } from "../../workbook/copy/survey";
import { panelEngine } from "../engine";
import type { CopySource, JobInput, JobResult } from "./job";
import type { JobContext } from "./jobTable";
import { rareReports } from "./rareReports";

type CopyKind = "survey" | "consequences" | "copy";

export type CopyRunners = {
  readonly [K in CopyKind]: (input: JobInput<K>, context: JobContext) => Promise<JobResult<K>>;
};

/** The session's calls that were given; notes for which functions it was asked. */
function givenLog(calls: readonly LoggedCall[], asked: Set<string>): SessionLog {
  return {
    add: () => undefined,
    of(id) {
      asked.add(id);
      return calls.filter((call) => call.id === id);
    },
    size: () => calls.length,
  };
}

const workIn = ({ report, slicing = {} }: JobContext): CopyWork => ({ ...slicing, onProgress: rareReports(report) });

/** Remembers the workbook that it looked over last, so that its copy begins with the choice. */
export function copyRunners(): CopyRunners {
  let last: { readonly key: string; readonly survey: Survey | undefined } | undefined;
  const asked = new Set<string>();
  const engineOf = ({ calls }: CopySource) => panelEngine(givenLog(calls, asked));

  async function surveyOf(source: CopySource, work: CopyWork): Promise<Survey | undefined> {
    if (last?.key === source.key) return last.survey;
    last = undefined;
    const survey = await surveyBook(source.bytes, engineOf(source), work);
    last = { key: source.key, survey };
    return survey;
  }

  async function neededSurvey(source: CopySource, work: CopyWork): Promise<Survey> {
    const survey = await surveyOf(source, work);
    if (survey === undefined) throw new Error("no cell of this workbook uses these functions");
    return survey;
  }

  return {
    async survey(source, context) {
      asked.clear();
      const work = workIn(context);
      const survey = await surveyOf(source, work);
      // The names' calls are needed for the copy, and may be in the session too.
      if (survey !== undefined) await nameValues(survey.stored, engineOf(source), work);
      return { survey: survey && packedSurvey(survey), asked: [...asked] };
    },
    async consequences({ source, choice }, context) {
      const work = workIn(context);
      const { pack, stored } = await neededSurvey(source, work);
      const steps = context.slicing ?? {};
      const { facts, frames } = stored;
      const { sheets } = await sheetsOfCopy(pack, facts, choice, steps, frames);
      return { kept: sheets, hidden: await listHidden(pack, facts, choice.sheets, steps, frames) };
    },
    async copy({ source, plan }, context) {
      const work = workIn(context);
      const finished = await makeCopy(await neededSurvey(source, work), plan, engineOf(source), work);
      context.give?.(finished.bytes);
      return madeCopy(finished);
    },
  };
}
