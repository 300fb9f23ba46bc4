import { expect, test } from "vitest";
import { withScores } from "../verifyFull/mutationScores";

const PAGE = "# Mutation testing\n\nText.\n\n## Scores\n\n| File | Date |\n\n## Survivors\n\nThe list.\n";
const SCORE = { file: "core/a.ts", date: "2026-01-02", killed: 2, survived: 1, uncovered: 1 };

test("new scores join those of files that weren't run again, and the rest of the page stays", () => {
  const once = withScores(PAGE, [SCORE, { ...SCORE, file: "core/b.ts", killed: 0, survived: 0, uncovered: 0 }]);
  const twice = withScores(once, [{ ...SCORE, date: "2026-02-03", killed: 4, survived: 0, uncovered: 0 }]);
  expect(once).toMatch(/\| `core\/a\.ts` \| 2026-01-02 \| 2 +\| 1 +\| 1 +\| 50\.0 % +\|/);
  expect(twice).toMatch(/\| `core\/a\.ts` \| 2026-02-03 \| 4 +\| 0 +\| 0 +\| 100\.0 % +\|/);
  expect(twice).toMatch(/\| `core\/b\.ts` \| 2026-01-02 \| 0 +\| 0 +\| 0 +\| no mutant \|/);
  expect(twice.match(/`core\/a\.ts`/g)).toHaveLength(1);
  expect(twice.startsWith("# Mutation testing\n\nText.\n\n## Scores\n\n| File")).toBe(true);
  expect(twice.endsWith("|\n\n## Survivors\n\nThe list.\n")).toBe(true);
});

test("a page without its table's heading is refused", () => {
  expect(() => withScores("# Mutation testing\n", [SCORE])).toThrow('no heading "## Scores"');
});
