import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { headersFor } from "../../manifest/headers";
import { openBuild, pngSize } from "../../scripts/manifest/build";
import { checkManifest } from "../../scripts/manifest/check";
import { ICON_SIZES, iconPath } from "../../scripts/manifest/icons";
import { checkedHost, helpPage, manifestVersion, manifestXml, PAGES, VARIANTS } from "../../scripts/manifest/manifest";
import { filesBelow, packageVersion, writeOutput } from "../../scripts/manifest/output";
import { headerRules, sentHeaders } from "./headerRules";
import { sampleBuild, sampleMetadata, sampleXml } from "./sample";

test("the production manifest has no fault", () => {
  expect(checkManifest(sampleXml(), sampleBuild())).toEqual([]);
});

test("the development manifest has no fault", () => {
  const purpose = { variant: "development", release: false } as const;
  expect(checkManifest(sampleXml("development"), sampleBuild(), purpose)).toEqual([]);
});

test("the development manifest is refused as a production one and the other way round", () => {
  const asProduction = checkManifest(sampleXml("development"), sampleBuild());
  expect(asProduction.map(({ message }) => message).join("\n")).toContain("must not point at this computer");
  const asDevelopment = checkManifest(sampleXml(), sampleBuild(), { variant: "development", release: false });
  expect(asDevelopment.map(({ message }) => message).join("\n")).toContain("points at https://localhost:3000");
});

test("changed white space, comments and attribute order leave a good manifest good", () => {
  const spread = sampleXml()
    .replaceAll("><", ">\n\n\t<")
    .replaceAll(/\n\s*/g, "\r\n      ")
    .replace("<Version>1.0.1.0<", "<Version>\n  1.0.1.0\n<")
    .replace("<Hosts>", "<!-- Excel -->\n<Hosts >")
    .replace('resid="Pane.Url" lifetime="long"', "lifetime = 'long'  resid='Pane.Url'");
  expect(spread).not.toBe(sampleXml());
  expect(checkManifest(spread, sampleBuild())).toEqual([]);
});

test("other prefixes for the same namespaces leave a good manifest good", () => {
  const renamed = sampleXml()
    .replaceAll("bt:", "kinds:")
    .replace("xmlns:bt", "xmlns:kinds")
    .replaceAll("xsi:", "i:")
    .replace("xmlns:xsi", "xmlns:i");
  expect(checkManifest(renamed, sampleBuild())).toEqual([]);
});

test("a release is refused while the host is the placeholder and passes with a real one", () => {
  const release = { variant: "production", release: true } as const;
  const messages = checkManifest(sampleXml(), sampleBuild(), release).map(({ message }) => message);
  expect(messages.join("\n")).toContain("warmback.example is a placeholder");
  const host = "https://files.fernhill-hall.test/warmback";
  const metadata = sampleMetadata();
  for (const entry of metadata.functions) entry.helpUrl = `${host}/${helpPage(entry.id)}`;
  const xml = manifestXml({ variant: "production", packageVersion: "2.10.3", host });
  expect(checkManifest(xml, sampleBuild({ metadata }), release)).toEqual([]);
});

test("the two variants have different identities, so both can be installed", () => {
  expect(VARIANTS.production.id).not.toBe(VARIANTS.development.id);
  expect(VARIANTS.production.name).not.toBe(VARIANTS.development.name);
});

test("a package version becomes four numbers that are never below 1.0", () => {
  expect(manifestVersion("0.1.0")).toBe("1.0.1.0");
  expect(manifestVersion("12.3.45")).toBe("1.12.3.45");
  expect(() => manifestVersion("1.0.0-beta")).toThrow('version: expected three numbers like 0.1.0, got "1.0.0-beta"');
  expect(() => manifestVersion("")).toThrow("version: expected three numbers");
});

test.each([
  "http://warmback.example",
  "warmback.example",
  "https://a.example/?x=1",
  "https://a.example/#x",
  "",
  "https://u@a.example",
])("the host %j is refused", (host) => {
  expect(() => checkedHost(host)).toThrow("host: expected an https address");
});

test("a host loses its closing slash and keeps its path", () => {
  expect(checkedHost("https://a.example/")).toBe("https://a.example");
  expect(checkedHost("https://a.example/warmback//")).toBe("https://a.example/warmback");
});

test("a host with a sign that XML reserves is written escaped and still passes", () => {
  const xml = manifestXml({ variant: "production", packageVersion: "0.1.0", host: "https://a.example/x&y" });
  expect(xml).toContain("https://a.example/x&amp;y/taskpane.html");
  const addresses = checkManifest(xml, sampleBuild()).filter(({ rule }) => rule === "url" || rule === "well-formed");
  expect(addresses).toEqual([]);
});

test("the committed icons have the sizes in their names", () => {
  for (const size of ICON_SIZES) {
    const bytes = readFileSync(new URL(`../../manifest/icons/icon-${size}.png`, import.meta.url));
    expect(pngSize(bytes)).toEqual({ width: size, height: size });
  }
});

test("what the writer puts into a build passes the checker on the real files", () => {
  const out = mkdtempSync(join(tmpdir(), "warmback-manifest-"));
  try {
    const place = (path: string, text: string): void => {
      mkdirSync(dirname(join(out, path)), { recursive: true });
      writeFileSync(join(out, path), text);
    };
    const metadata = sampleMetadata();
    for (const path of Object.values(PAGES)) place(path, "");
    for (const { id } of metadata.functions) place(helpPage(id), "");
    place(PAGES.metadata, JSON.stringify(metadata));
    const written = writeOutput(out);
    expect(written).toEqual([...ICON_SIZES.map(iconPath), "manifest.xml", "manifest.dev.xml", "_headers"]);
    const build = openBuild(out);
    const xml = readFileSync(join(out, "manifest.xml"), "utf8");
    expect(checkManifest(xml, build)).toEqual([]);
    expect(xml).toContain(`<Version>1.${packageVersion()}</Version>`);
    const rules = headerRules(readFileSync(join(out, "_headers"), "utf8"));
    for (const path of filesBelow(out).filter((file) => file !== "_headers"))
      expect(sentHeaders(rules, `/${path}`), path).toEqual(headersFor(path));
  } finally {
    rmSync(out, { recursive: true });
  }
});

test("a build without a readable functions.json is a fault, not a crash", () => {
  const findings = checkManifest(sampleXml(), openBuild(join(tmpdir(), "warmback-no-such-folder")));
  expect(findings.map(({ message }) => message)).toContain("functions.json: has no list of functions");
});
