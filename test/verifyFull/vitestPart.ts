/** A part of the full verification that vitest runs: its counts, and what its tests print. */
import { startVitest } from "vitest/node";

export interface Part {
  readonly name: string;
  readonly held: boolean;
  readonly seconds: number;
  /** Counts and figures. */
  readonly lines: readonly string[];
}

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
  const passed = vitest.state.getFiles().length > 0;
  const failed = vitest.state.getCountOfFailedTests();
  const errors = vitest.state.getUnhandledErrors().length;
  await vitest.close();
  const held = passed && failed === 0 && errors === 0;
  const seconds = (performance.now() - began) / 1000;
  return {
    name,
    held,
    seconds,
    lines: [...lines, `${String(failed)} tests failed, ${String(errors)} errors beside tests`],
  };
}
