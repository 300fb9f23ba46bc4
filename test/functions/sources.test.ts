import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { sourceHash } from "../../scripts/sources";

let root = "";
const put = (path: string, text: string): void => {
  mkdirSync(join(root, path, ".."), { recursive: true });
  writeFileSync(join(root, path), text);
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "warmback-"));
  for (const path of ["CHANGELOG.md", "package.json", "package-lock.json", "tsconfig.json", "webpack.config.ts"])
    put(path, "{}");
  for (const path of ["core/a.ts", "src/b.ts", "scripts/c.ts", "manifest/d.ts", "test/golden/e.csv"]) put(path, "1");
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

describe("the hash of a build's sources", () => {
  test("the hash is the same for equal files and changes with content, name and settings", () => {
    const first = sourceHash(root, ["host"]);
    expect(sourceHash(root, ["host"])).toBe(first);
    expect(sourceHash(root, ["other"])).not.toBe(first);
    put("src/b.ts", "2");
    const second = sourceHash(root, ["host"]);
    expect(second).not.toBe(first);
    put("src/deep/d.ts", "");
    expect(sourceHash(root, ["host"])).not.toBe(second);
  });

  test("the hash does not change with tests", () => {
    const first = sourceHash(root, []);
    put("test/a.test.ts", "1");
    expect(sourceHash(root, [])).toBe(first);
  });
});
