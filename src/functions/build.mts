/**
 * The build: bundles, metadata, help pages, manifests and headers into dist/. Run: npm run build. It is skipped where the
 * sources haven't changed since the last one.
 */
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import webpack, { type MultiStats } from "webpack";
import { openBuild } from "../../manifest/build";
import { checkManifest } from "../../manifest/check";
import { VARIANTS, type Variant } from "../../manifest/manifest";
import { filesBelow, writeOutput } from "../../manifest/output";
import { alone } from "./lock.mjs";
import { sourceHash } from "./sources.mjs";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** Where everything is built to. */
export const DIST = join(ROOT, "dist");

const CACHE = join(ROOT, ".cache");
const STAMP = join(CACHE, "build.txt");
const HEADERS = "_headers";

const say = (text: string): void => void process.stderr.write(`${text}\n`);

const bundle = async (): Promise<MultiStats> => {
  // Read late: a build that is skipped needn't load the bundler's parts and the whole catalogue.
  const { configurations } = await import("../../webpack.config");
  const compiler = webpack([...configurations]);
  if (compiler === null) throw new Error("webpack didn't start");
  const stats = await new Promise<MultiStats>((resolve, reject) => {
    compiler.run((error, done) => {
      if (error !== null || done === undefined) reject(error ?? new Error("webpack gave no result"));
      else resolve(done);
    });
  });
  await new Promise<void>((resolve) => compiler.close(() => resolve()));
  return stats;
};

const emittedBy = (stats: MultiStats): readonly string[] =>
  stats.stats.flatMap(({ compilation }) => compilation.getAssets().map(({ name }) => name));

/** Files of earlier builds go, once the new ones are there: whoever reads meanwhile misses none. */
const dropOthers = (kept: readonly string[]): void => {
  for (const path of filesBelow(DIST)) if (!kept.includes(path)) rmSync(join(DIST, path));
};

const manifestFaults = (): readonly string[] =>
  (Object.keys(VARIANTS) as Variant[]).flatMap((variant) => {
    const { file } = VARIANTS[variant];
    const xml = readFileSync(join(DIST, file), "utf8");
    const findings = checkManifest(xml, openBuild(DIST), { variant, release: false });
    return findings.map(({ rule, message }) => `${file}: ${rule}: ${message}`);
  });

const build = async (host: string | undefined): Promise<void> => {
  const stats = await bundle();
  if (stats.hasErrors()) throw new Error(stats.toString({ preset: "errors-only", colors: false }));
  if (stats.hasWarnings()) say(stats.toString({ preset: "errors-warnings", colors: false }));
  const emitted = emittedBy(stats);
  dropOthers([...emitted, HEADERS]);
  writeOutput(DIST, host);
  const faults = manifestFaults();
  if (faults.length > 0) throw new Error(`the manifests don't agree with the build:\n${faults.join("\n")}`);
};

const hostSet = (): string | undefined => process.env["WARMBACK_HOST"];

const isFresh = (hash: string): boolean =>
  existsSync(join(DIST, HEADERS)) && existsSync(STAMP) && readFileSync(STAMP, "utf8") === hash;

/**
 * Builds where the sources differ from those of the last build. Remarks go to standard error.
 * @throws Error with all that went wrong
 */
export const ensureBuilt = (): Promise<void> =>
  alone(join(CACHE, "build.lock"), async () => {
    const host = hostSet();
    const hash = sourceHash(ROOT, [host ?? "", process.version]);
    if (isFresh(hash)) return;
    const began = performance.now();
    say("building …");
    await build(host);
    mkdirSync(dirname(STAMP), { recursive: true });
    writeFileSync(STAMP, hash);
    say(`built dist/ in ${((performance.now() - began) / 1000).toFixed(1)} s`);
  });

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  ensureBuilt().catch((thrown: unknown) => {
    say(thrown instanceof Error ? thrown.message : String(thrown));
    process.exitCode = 1;
  });
}
