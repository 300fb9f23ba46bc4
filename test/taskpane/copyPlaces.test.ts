/** A hand-over in a worker and on the page: the same copy from both, progress in words, Cancel, and this session's calls. */
import { describe, expect, test } from "vitest";
import { panelEngine } from "../../src/taskpane/engine";
import type { JobQueue } from "../../src/taskpane/jobs/jobQueue";
import type { Progress } from "../../src/taskpane/jobs/jobTable";
import { startPanelJobs } from "../../src/taskpane/jobs/panelJobs";
import { jobRunner } from "../../src/taskpane/jobs/runJob";
import { draftCopy, type CopyDraft } from "../../src/taskpane/model/handOver";
import { sessionLog } from "../../src/workbook/callLog";
import { addressText } from "../../src/workbook/reader/reference";
import { bytesOf, copyOf, engine, FACTS, formula, fullWithUs, sheet, surveyOf, VELOCITY } from "../workbook/copy/books";
import { CANCELLED } from "../../src/workbook/timeSlices";
import { workersHere } from "./workersHere";

const inWorker = () => {
  const { start, started } = workersHere(jobRunner);
  return { jobs: startPanelJobs(start), started };
};
const onPage = (): JobQueue =>
  startPanelJobs(() => {
    throw new Error("refused by the page's policy");
  });

async function draft(jobs: JobQueue, bytes: Uint8Array, work = {}): Promise<CopyDraft> {
  const found = await draftCopy({ engine, jobs }, bytes, work);
  if (found === undefined) throw new Error("nothing uses us");
  return found;
}

const planOf = ({ survey }: CopyDraft) =>
  ({ choice: { sheets: survey.proposed, drop: new Set<string>() }, others: "live", facts: FACTS }) as const;

const text = (bytes: Uint8Array): string => Buffer.from(bytes).toString("latin1");

test.each(["worker", "page"] as const)(
  "a copy made in the %s is the one that is made here, byte for byte",
  async (place) => {
    const bytes = fullWithUs();
    const here = await copyOf(bytes);
    const survey = await surveyOf(bytes);
    const jobs = place === "worker" ? inWorker().jobs : onPage();
    const found = await draft(jobs, bytes);
    expect(found.survey).toEqual({
      sheets: survey.sheets,
      proposed: survey.proposed,
      failing: survey.stored.failing,
      differing: survey.differing.map(({ sheet: name, row, column }) => ({ sheet: name, row, column })),
      unreadable: survey.unreadable.map(({ sheet: name, row, column }) => ({ sheet: name, row, column })),
    });
    const { kept, hidden } = await found.consequences(planOf(found).choice);
    expect(kept).toEqual(here.report.sheets);
    expect(hidden.length).toBeGreaterThan(3);
    const made = await found.make(planOf(found), {});
    expect(text(made.bytes) === text(here.bytes)).toBe(true);
    expect(made.titles).toEqual([...here.summary.sheets, ...here.added]);
    expect(made).toMatchObject({ ours: here.summary.ours, frozen: { count: here.report.frozen.length } });
    expect(jobs.place()).toBe(place);
    // The page has its own bytes still.
    expect(text(bytes)).toBe(text(fullWithUs()));
  },
);

const ending = (when: RegExp) => {
  const controller = new AbortController();
  const said = new Set<string>();
  return {
    said,
    signal: controller.signal,
    onProgress({ text: words }: Progress) {
      said.add(words.replace(/\d+/g, "n"));
      if (when.test(words)) controller.abort();
    },
  };
};

describe.each(["worker", "page"] as const)("A hand-over in the %s", (place) => {
  const places = () => (place === "worker" ? inWorker() : { jobs: onPage(), started: [] });

  test("is cancelled while it looks through the workbook, and can begin again", async () => {
    const { jobs, started } = places();
    const work = ending(/^opening the workbook$/);
    await expect(draftCopy({ engine, jobs }, fullWithUs(), work)).rejects.toBe(CANCELLED);
    expect([...work.said]).toEqual(["opening the workbook"]);
    expect(started.map(({ ended }) => ended)).toEqual(place === "worker" ? [true] : []);
    expect((await draft(jobs, fullWithUs())).survey.proposed).toEqual((await surveyOf(fullWithUs())).proposed);
  });

  test("is cancelled while it makes the copy, and makes the same copy then", async () => {
    const { jobs } = places();
    const found = await draft(jobs, fullWithUs());
    const work = ending(/^packing the copy$/);
    await expect(found.make(planOf(found), work)).rejects.toBe(CANCELLED);
    expect([...work.said]).toEqual(expect.arrayContaining(["writing the copy", "packing the copy"]));
    const made = await found.make(planOf(found), {});
    expect(text(made.bytes) === text((await copyOf(fullWithUs())).bytes)).toBe(true);
  });

  test("takes arguments that can't be read from the calls of this session", async () => {
    const log = sessionLog();
    const own = panelEngine(log);
    const rows = [[40, formula('_xldudf_WARMBACK_PIPE_VELOCITY(XLOOKUP(1,A1:A9,A1:A9),"2 in")', VELOCITY)]];
    const bytes = await bytesOf([sheet("Loop", rows)]);
    const { jobs } = places();
    const unknown = await draftCopy({ engine: own, jobs }, bytes, {});
    expect(unknown?.survey.unreadable.map(addressText)).toEqual(["Loop!B1"]);
    log.add("PIPE.VELOCITY", [40, "2 in"], own.call("PIPE.VELOCITY", [40, "2 in"]));
    const known = await draftCopy({ engine: own, jobs }, bytes, {});
    expect(known?.survey.unreadable).toEqual([]);
  });
});

test("A worker that breaks off fails the copy with a sentence; the next one gets a new worker, which looks through again", async () => {
  const { jobs, started } = inWorker();
  const found = await draft(jobs, fullWithUs());
  const broken = found.make(planOf(found), { onProgress: () => started[0]?.crash() });
  await expect(broken).rejects.toThrow("the calculation stopped");
  const made = await found.make(planOf(found), {});
  expect(text(made.bytes) === text((await copyOf(fullWithUs())).bytes)).toBe(true);
  expect(started).toHaveLength(2);
});
