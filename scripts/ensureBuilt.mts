/**
 * The build: bundles, metadata, help pages, manifests and headers. Each state of the sources has a folder of its own, which
 * is filled once and never changed; `dist/` is a copy of the newest.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import webpack, { type MultiStats } from "webpack";
import { freshFolder, keepNewest, replaceFolder } from "./freshFolder";
import { openBuild } from "./manifest/build";
import { checkManifest } from "./manifest/check";
import { VARIANTS, type Variant } from "./manifest/manifest";
import { writeOutput } from "./manifest/output";
import { ROOT } from "./root";
import type { BuildSettings } from "./settings";
import { sourceHash } from "./sources";

/** The newest build, for whoever publishes or looks at it. */
export const DIST = join(ROOT, "dist");

const BUILDS = join(ROOT, ".cache/builds");
/** Which build `dist/` is a copy of. */
const DIST_NOTE = join(ROOT, ".cache/dist.txt");
/** A server that has run for a while reads an older one. */
const BUILDS_KEPT = 8;
const HASH_LENGTH = 12;

const say = (text: string): void => void process.stderr.write(`${text}\n`);

async function bundle(settings: BuildSettings): Promise<MultiStats> {
  // Read late: a build that is there needn't load the bundler's parts and the whole catalogue.
  const { configurations } = await import("../webpack.config");
  const compiler = webpack([...configurations(settings)]);
  if (compiler === null) throw new Error("webpack didn't start");
  const stats = await new Promise<MultiStats>((resolve, reject) => {
    compiler.run((error, done) => {
      if (error !== null || done === undefined) reject(error ?? new Error("webpack gave no result"));
      else resolve(done);
    });
  });
  await new Promise<void>((resolve) => compiler.close(() => resolve()));
  return stats;
}

const manifestFaults = (folder: string): readonly string[] =>
  (Object.keys(VARIANTS) as Variant[]).flatMap((variant) => {
    const { file } = VARIANTS[variant];
    const xml = readFileSync(join(folder, file), "utf8");
    const findings = checkManifest(xml, openBuild(folder), { variant, release: false });
    return findings.map(({ rule, message }) => `${file}: ${rule}: ${message}`);
  });

async function build(settings: BuildSettings): Promise<void> {
  const began = performance.now();
  say("building …");
  const stats = await bundle(settings);
  if (stats.hasErrors()) throw new Error(stats.toString({ preset: "errors-only", colors: false }));
  if (stats.hasWarnings()) say(stats.toString({ preset: "errors-warnings", colors: false }));
  writeOutput(settings.folder, settings.host);
  const faults = manifestFaults(settings.folder);
  if (faults.length > 0) throw new Error(`the manifests don't agree with the build:\n${faults.join("\n")}`);
  say(`built in ${((performance.now() - began) / 1000).toFixed(1)} s`);
}

/** The host that help addresses lead to: the environment's WARMBACK_HOST, else the production manifest's. */
const productionHost = (): string => (process.env["WARMBACK_HOST"] ?? VARIANTS.production.host).replace(/\/+$/, "");

const holds = (hash: string): boolean =>
  existsSync(DIST) && existsSync(DIST_NOTE) && readFileSync(DIST_NOTE, "utf8") === hash;

/**
 * Builds where these sources were never built, and brings `dist/` up to date. Remarks go to standard error.
 * @returns the build's own folder, which stays as it is while others build
 * @throws Error with all that went wrong
 */
export async function ensureBuilt(): Promise<string> {
  const host = productionHost();
  const hash = sourceHash(ROOT, [host, process.version]);
  const folder = join(BUILDS, hash);
  await freshFolder(folder, (into) => build({ folder: into, host, build: hash.slice(0, HASH_LENGTH) }));
  if (!holds(hash)) {
    replaceFolder(DIST, folder);
    writeFileSync(DIST_NOTE, hash);
    keepNewest(BUILDS, BUILDS_KEPT);
  }
  return folder;
}
