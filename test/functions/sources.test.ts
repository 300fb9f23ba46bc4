import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { alone } from "../../src/functions/lock.mjs";
import { sourceHash } from "../../src/functions/sources.mjs";

let root = "";
const put = (path: string, text: string): void => {
  mkdirSync(join(root, path, ".."), { recursive: true });
  writeFileSync(join(root, path), text);
};

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "warmback-"));
  for (const path of ["package.json", "package-lock.json", "tsconfig.json", "webpack.config.ts"]) put(path, "{}");
  for (const path of ["core/a.ts", "src/b.ts", "manifest/c.ts"]) put(path, "1");
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

describe("a build's lock", () => {
  const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

  test("lets one build work at a time and passes results and faults on", async () => {
    const lock = join(root, ".cache/lock");
    let inside = 0;
    const work = async (): Promise<number> => {
      inside += 1;
      expect(inside).toBe(1);
      await wait(30);
      inside -= 1;
      return 7;
    };
    expect(await Promise.all([alone(lock, work), alone(lock, work)])).toEqual([7, 7]);
    await expect(alone(lock, () => Promise.reject(new Error("no")))).rejects.toThrow("no");
    expect(await alone(lock, work)).toBe(7);
  });

  test("the lock of a process that is gone is taken over", async () => {
    put(".cache/lock/pid", "999999999");
    expect(await alone(join(root, ".cache/lock"), () => Promise.resolve("mine"))).toBe("mine");
  });
});
