/** Progress that comes often, passed on as often as anybody can read it. */
import type { Progress } from "./jobTable";

const EVERY = 100;

/** What a stage is called, without its numbers. */
const stageOf = (text: string): string => text.replace(/[\d,.]+/g, "");

/** Passes the first report of every stage on, and of the others one in a tenth of a second. */
export function rareReports(report: (progress: Progress) => void): (progress: Progress) => void {
  let next = 0;
  let stage: string | undefined;
  return (progress) => {
    const now = performance.now();
    const own = stageOf(progress.text);
    if (own === stage && now < next) return;
    [next, stage] = [now + EVERY, own];
    report(progress);
  };
}
