/** Profiles out of what the probe of docs/acceptance.md prints. */
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { measuredProfiles, profileOf } from "./measured";

const PRINTED = {
  platform: "Mac",
  version: "16.100",
  sets: { ExcelApi: "1.20", SharedRuntime: "1.1" },
  blank: 0,
  errorsInTables: true,
};

it("a printed profile is one of the stand-in's", () => {
  const folder = mkdtempSync(join(tmpdir(), "acceptance-"));
  writeFileSync(join(folder, "mac.json"), JSON.stringify(PRINTED));
  writeFileSync(join(folder, "notes.md"), "no profile");
  expect(measuredProfiles(folder)).toMatchObject([
    { name: "measured mac 16.100 (mac.json)", platform: "mac", api: "1.20", payload: undefined, blank: 0 },
  ]);
});

it("a folder that isn't there holds no profile", () => {
  expect(measuredProfiles("/no/such/folder")).toEqual([]);
});

it("a file that the probe didn't print is refused by its name", () => {
  expect(() => profileOf("{}", "web.json")).toThrow("web.json: platform");
});
