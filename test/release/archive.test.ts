/** The release archive: complete, checked by its own sums, and the same bytes every time. */
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { cpSync, mkdtempSync, rmSync, utimesSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { afterAll, beforeAll, expect, inject, test } from "vitest";
import { releaseArchive, type Archive } from "../../scripts/release/archive";
import { hostAddress } from "../../scripts/release/hostAddress";
import { ROOT } from "../../scripts/root";

let copy: string;
let archive: Archive;
beforeAll(() => {
  copy = mkdtempSync(join(tmpdir(), "warmback-"));
  cpSync(inject("build"), copy, { recursive: true });
  archive = releaseArchive(inject("build"), "warmback-1.2.3");
});
afterAll(() => rmSync(copy, { recursive: true }));

test("Two archives of the same build are equal byte for byte, whenever and wherever its files were written", () => {
  utimesSync(join(copy, "functions.js"), new Date(2001, 1, 1), new Date(2001, 1, 1));
  const again = releaseArchive(copy, "warmback-1.2.3");
  expect(again.checksum).toBe(archive.checksum);
  expect(Buffer.compare(again.bytes, archive.bytes)).toBe(0);
});

test("The archive holds add-in, manifests, headers, help, licences and papers, and no evaluator", () => {
  const names = Object.keys(unzipSync(archive.bytes)).map((path) => path.replace("warmback-1.2.3/", ""));
  for (const path of ["manifest.xml", "functions.js", "functions.json", "taskpane.html", "_headers", "licences.txt"])
    expect(names).toContain(`site/${path}`);
  for (const path of [
    "site/sbom.json",
    "site/help/index.html",
    "site/help/validation.html",
    "docs/administrators.md",
    "LICENSE",
  ])
    expect(names).toContain(path);
  expect(names.filter((path) => path.endsWith(".cjs"))).toEqual([]);
});

test("Every file agrees with its line in SHA256SUMS", () => {
  const { "warmback-1.2.3/SHA256SUMS": sums, ...files } = unzipSync(archive.bytes);
  const lines = strFromU8(sums!).trimEnd().split("\n");
  expect(lines).toHaveLength(Object.keys(files).length);
  for (const line of lines) {
    const [sum = "", path = ""] = line.split("  ");
    expect(createHash("sha256").update(files[`warmback-1.2.3/${path}`]!).digest("hex"), path).toBe(sum);
  }
});

test.each(["", "http://pool.example", "pool.example", "https://pool.example/?a=1"])(
  "An address that can't serve an add-in is refused: %j",
  (address) => {
    expect(() => hostAddress(address)).toThrow(
      `give the https address that will serve the add-in, and optionally the file to write; got "${address}"`,
    );
  },
);

test("An address may have a folder, and loses slashes at its end", () =>
  expect(hostAddress("https://pool.example/warmback//")).toBe("https://pool.example/warmback"));

test("The command ends with the refusal and status 1", () => {
  const run = spawnSync(join(ROOT, "node_modules/.bin/tsx"), [join(ROOT, "scripts/package.mts")]);
  expect(run.status).toBe(1);
  expect(run.stderr.toString()).toMatch(/^package: give the https address .*; got ""/);
});
