import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterAll, expect, test } from "vitest";

const folder = mkdtempSync(join(tmpdir(), "reader-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** More than a pipe holds, so that the program still writes when its reader has gone. */
const program = (first: string): string =>
  `${first}
   let left = 200;
   const more = () => { if (left-- > 0) { process.stdout.write("x".repeat(10000) + "\\n"); setImmediate(more); } };
   more();`;

async function headOf(name: string, first: string): Promise<{ readonly code: string; readonly errors: string }> {
  const path = join(folder, `${name}.mts`);
  writeFileSync(path, program(first));
  const command = `set -o pipefail; node --import tsx ${path} | head -n 1 >/dev/null; echo \${PIPESTATUS[0]}`;
  const { stdout, stderr } = await promisify(execFile)("bash", ["-c", command]);
  return { code: stdout.trim(), errors: stderr };
}

test("a program whose reader has seen enough ends in order, without a word", async () => {
  const source = join(import.meta.dirname, "../../src/preview/cli/endWithReader.ts");
  const first = `import { endWithReader } from ${JSON.stringify(source)}; endWithReader();`;
  expect(await headOf("with", first)).toEqual({ code: "0", errors: "" });
});

test("without it the program fails", async () => {
  expect((await headOf("without", "")).code).not.toBe("0");
});
