/** The order of test files: in each project the slow ones come first, so that its two workers end at about the same time. */
import { relative } from "node:path";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Files that take long, the longest first. A fresh checkout has no times of its own: vitest then goes by the size of files. */
const SLOW: readonly string[] = [
  "functions/helpLayout",
  "e2e/page",
  "taskpane/longWork",
  "taskpane/pictures",
  "e2e/preview",
  "taskpane/panel",
  "taskpane/slowHost",
  "uncertainty/poolUncertainty",
  "fuzz/functions",
  "sheets/paper",
  "workbook/weather/weatherSheet",
  "preview/watchedEvaluate",
  "workbook/excelFaults",
  "sheets/sheets",
  "sheets/linked",
].map((name) => `test/${name}.test.ts`);

/** The place of a file in the list; behind it for all others. */
function rankOf(path: string): number {
  const at = SLOW.indexOf(path);
  return at < 0 ? SLOW.length : at;
}

export class SlowFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const usual = await super.sort(files);
    const rank = ({ moduleId }: TestSpecification): number => rankOf(relative(this.ctx.config.root, moduleId));
    const projects = [...new Set(usual.map(({ project }) => project))];
    return projects.flatMap((each) =>
      usual.filter(({ project }) => project === each).sort((a, b) => rank(a) - rank(b)),
    );
  }
}
