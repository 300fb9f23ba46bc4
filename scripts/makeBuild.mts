/** Fills a folder with one build: bundles, metadata, help pages, manifests and headers. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import webpack, { type MultiStats } from "webpack";
import { configurations } from "../webpack.config";
import { measuredFunctions } from "./bundle";
import { openBuild } from "./manifest/build";
import { checkManifest } from "./manifest/check";
import { VARIANTS, type Variant } from "./manifest/manifest";
import { packageVersion, writeOutput } from "./manifest/output";
import { licencesText } from "./release/licences";
import { componentsOf, readLock, sbomText } from "./release/sbom";
import { bundledPaths, shippedPackages } from "./release/shippedPackages";
import type { BuildSettings } from "./settings";

const say = (text: string): void => void process.stderr.write(`${text}\n`);

async function bundle(settings: BuildSettings): Promise<MultiStats> {
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

/** Licence texts and list of the packages that the bundles hold. */
async function writePackages({ folder, build }: BuildSettings, stats: MultiStats): Promise<void> {
  const { parts } = await measuredFunctions(build);
  const packages = shippedPackages([...bundledPaths(stats), ...Object.keys(parts.inputs)]);
  writeFileSync(join(folder, "licences.txt"), licencesText(packages));
  const shipped = componentsOf(readLock(), packages).filter(({ scope }) => scope === "required");
  writeFileSync(join(folder, "sbom.json"), sbomText(packageVersion(), shipped));
}

const manifestFaults = (folder: string): readonly string[] =>
  (Object.keys(VARIANTS) as Variant[]).flatMap((variant) => {
    const { file } = VARIANTS[variant];
    const xml = readFileSync(join(folder, file), "utf8");
    const findings = checkManifest(xml, openBuild(folder), { variant, release: false });
    return findings.map(({ rule, message }) => `${file}: ${rule}: ${message}`);
  });

/**
 * Remarks go to standard error.
 * @throws Error with all messages
 */
export async function build(settings: BuildSettings): Promise<void> {
  const began = performance.now();
  say("building …");
  const stats = await bundle(settings);
  if (stats.hasErrors()) throw new Error(stats.toString({ preset: "errors-only", colors: false }));
  if (stats.hasWarnings()) say(stats.toString({ preset: "errors-warnings", colors: false }));
  await writePackages(settings, stats);
  writeOutput(settings.folder, settings.host);
  const faults = manifestFaults(settings.folder);
  if (faults.length > 0) throw new Error(`the manifests don't agree with the build:\n${faults.join("\n")}`);
  say(`built in ${((performance.now() - began) / 1000).toFixed(1)} s`);
}
