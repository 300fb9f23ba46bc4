/** What a build says about the packages of other people in it. CycloneDX 1.5: cyclonedx.org/docs/1.5/json. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, inject, test } from "vitest";
import { licencesText } from "../../scripts/release/licences";
import { componentsOf, readLock } from "../../scripts/release/sbom";
import type { SbomComponent } from "../../scripts/release/sbom";
import { packageFolder, type ShippedPackage } from "../../scripts/release/shippedPackages";
import { ROOT } from "../../scripts/root";

const built = (name: string): string => readFileSync(join(inject("build"), name), "utf8");

const shipped = () => (JSON.parse(built("sbom.json")) as { components: readonly SbomComponent[] }).components;

const some = (more: Partial<ShippedPackage>): ShippedPackage => ({
  name: "some",
  version: "1.0.0",
  licence: "MIT",
  author: "Ann Example",
  texts: [],
  ...more,
});

test("Every package that a build ships has its licence text in licences.txt, and nothing else has", () => {
  const headings = built("licences.txt").match(/^\S+ \d\S* \([^)]+\)$/gm) ?? [];
  expect(headings.map((line) => line.split(" ").slice(0, 2).join("@"))).toEqual(
    shipped().map(({ name, version }) => `${name}@${version}`),
  );
  // Bundled for certain: the panel's controls, the charts, the reader of files, the sheet engine and its drawing.
  const names = shipped().map(({ name }) => name);
  expect(names).toEqual(
    expect.arrayContaining([
      "@fluentui/web-components",
      "@observablehq/plot",
      "fflate",
      "saxes",
      "@univerjs/core",
      "react",
    ]),
  );
  // For building and testing only.
  for (const name of ["webpack", "typescript", "vitest", "mathjs", "temml", "exceljs"])
    expect(names).not.toContain(name);
});

test("licences.txt holds Warmback's own licence and the texts as the packages carry them", () => {
  const text = built("licences.txt");
  expect(text).toContain(readFileSync(join(ROOT, "LICENSE"), "utf8").trim());
  const fflate = readFileSync(join(ROOT, "node_modules/fflate/LICENSE"), "utf8").trim();
  expect(text).toContain(fflate.replaceAll("\r\n", "\n"));
});

test("A licence that nobody decided about ends the build, and so does a missing text", () => {
  expect(() => licencesText([some({ licence: "GPL-3.0" })])).toThrow(/needs a decision: some \(GPL-3\.0\)/);
  expect(() => licencesText([some({ licence: "BSD-3-Clause" })])).toThrow("some: names BSD-3-Clause and carries no");
  expect(licencesText([some({ licence: "(GPL-3.0 OR MIT)", texts: ["the text"] })])).toContain("the text");
  expect(licencesText([some({})])).toContain("Copyright (c) Ann Example");
});

test("The list of packages states the versions, licences and hashes of package-lock.json", () => {
  const { packages } = readLock();
  for (const { name, version, scope, hashes, purl, licenses } of shipped()) {
    const locked = Object.entries(packages).filter(([path]) => path.endsWith(`node_modules/${name}`));
    expect(locked.map(([, { version: known }]) => known)).toContain(version);
    expect(scope).toBe("required");
    expect(purl).toBe(`pkg:npm/${name.replace("@", "%40")}@${version}`);
    expect(hashes?.[0]?.content, name).toMatch(/^[0-9a-f]{128}$/);
    if (name !== "@univerjs/telemetry") expect(licenses, name).toBeDefined();
  }
  expect(() => componentsOf(readLock(), [some({})])).toThrow("some@1.0.0");
});

test("A module belongs to the innermost package of its path", () => {
  expect(packageFolder("/a/node_modules/rxjs/dist/index.js")).toBe("/a/node_modules/rxjs");
  expect(packageFolder("C:\\a\\node_modules\\@x\\y\\node_modules\\z\\i.js")).toBe(
    "C:/a/node_modules/@x/y/node_modules/z",
  );
  expect(packageFolder("/a/core/index.ts")).toBeUndefined();
});

test("package.json states exact versions only", () => {
  const { devDependencies, dependencies = {} } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as Record<
    string,
    Record<string, string> | undefined
  >;
  for (const [name, version] of Object.entries({ ...devDependencies, ...dependencies }))
    expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
});
