import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { expect, test } from "vitest";
import { ROOT } from "../../scripts/root";

test("the full verification starts, and names its parts", () => {
  const program = join(ROOT, "test/verifyFull/run.mts");
  const parts = execFileSync(process.execPath, [join(ROOT, "node_modules/tsx/dist/cli.mjs"), program, "--list"], {
    encoding: "utf8",
  });
  expect(parts.trim().split("\n")).toEqual([
    "Excel commands stopped at every action, large workbooks, master checks, soaks",
    "Random calls",
    "Random workbooks",
    "Mutation testing",
  ]);
});
