import { execFile } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { freshFolder, keepNewest, replaceFolder } from "../../scripts/freshFolder";

let root = "";
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "warmback-"));
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

const put = (into: string, name: string, text: string): void => writeFileSync(join(into, name), text);

describe("a fresh folder", () => {
  test("comes into place whole, and is not filled again", async () => {
    const folder = join(root, "builds/one");
    await freshFolder(folder, async (into) => {
      put(into, "a", "1");
      expect(existsSync(folder)).toBe(false);
    });
    await freshFolder(folder, () => Promise.reject(new Error("filled again")));
    expect(readdirSync(folder)).toEqual(["a"]);
    expect(readdirSync(join(root, "builds"))).toEqual(["one"]);
  });

  test("isn't there where filling it failed, and leaves nothing behind", async () => {
    const folder = join(root, "builds/one");
    await expect(freshFolder(folder, () => Promise.reject(new Error("no")))).rejects.toThrow("no");
    expect(readdirSync(join(root, "builds"))).toEqual([]);
  });

  test("serves two processes that are started at the same time", async () => {
    const program = join(import.meta.dirname, "fillSlowly.mts");
    const command = ["--import", "tsx", program, join(root, "builds/one"), join(root, "dist")];
    const start = (name: string, other: string) => promisify(execFile)(process.execPath, [...command, name, other]);
    const both = await Promise.all([start("a", "b"), start("b", "a")]);
    for (const { stdout } of both) expect(JSON.parse(stdout)).toEqual({ filled: 1, texts: 40 });
    expect(readdirSync(join(root, "builds"))).toEqual(["one"]);
    expect(readdirSync(join(root, "dist"))).toHaveLength(40);
  });
});

test("A replaced folder holds the copy alone", () => {
  for (const name of ["dist", "builds/two"]) mkdirSync(join(root, name), { recursive: true });
  put(join(root, "dist"), "old", "");
  put(join(root, "builds/two"), "new", "");
  replaceFolder(join(root, "dist"), join(root, "builds/two"));
  expect(readdirSync(join(root, "dist"))).toEqual(["new"]);
  expect(readdirSync(join(root, "builds"))).toEqual(["two"]);
});

test("The newest folders are kept, and unfinished ones while somebody may be filling them", () => {
  const made = (name: string, hoursAgo: number): void => {
    mkdirSync(join(root, name));
    const at = Date.now() / 1000 - hoursAgo * 3600;
    utimesSync(join(root, name), at, at);
  };
  for (const [name, hours] of Object.entries({ a: 5, b: 1, c: 3, ".unfinished-x": 0.1, ".unfinished-y": 9 }))
    made(name, hours);
  keepNewest(root, 2);
  expect(readdirSync(root).sort()).toEqual([".unfinished-x", "b", "c"]);
});
