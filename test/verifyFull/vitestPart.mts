/** A part of the full verification that vitest runs: its counts, and what its tests print. */
import { startVitest } from "vitest/node";
import type { Part } from "./part";

type Options = Parameters<typeof startVitest>[2];
type ViteOptions = Parameters<typeof startVitest>[3];

export async function runVitestPart(
  name: string,
  files: readonly string[],
  options: Options = {},
  viteOptions: ViteOptions = {},
): Promise<Part> {
  const began = performance.now();
  const lines: string[] = [];
  const collector = {
    onUserConsoleLog: ({ content }: { readonly content: string }) => void lines.push(...content.trim().split("\n")),
  };
  const vitest = await startVitest(
    "test",
    [...files],
    { ...options, watch: false, reporters: ["default", collector] },
    viteOptions,
  );
  const states = vitest.state
    .getTestModules()
    .flatMap((one) => [...one.children.allTests()].map((test) => test.result().state));
  const [passed = 0, failed = 0] = (["passed", "failed"] as const).map(
    (state) => states.filter((one) => one === state).length,
  );
  // A file that can't be loaded has no test.
  const unloaded = vitest.state.getFiles().filter(({ result }) => result?.state === "fail").length;
  const errors = vitest.state.getUnhandledErrors().length;
  await vitest.close();
  const held = passed > 0 && failed === 0 && unloaded === 0 && errors === 0;
  const seconds = (performance.now() - began) / 1000;
  return {
    name,
    held,
    seconds,
    lines: [
      ...lines,
      `${String(passed)} tests passed, ${String(failed)} failed; ${String(errors)} errors beside tests`,
    ],
  };
}
