/**
 * `npx tsx scripts/manifest/verify.mts [--dir dist] [--release]`: both manifests against the build; exit code 1 when a fault was found.
 * `--release` also refuses the placeholder host.
 */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { openBuild } from "./build";
import { checkManifest, type Finding } from "./check";
import { VARIANTS, type Variant } from "./manifest";

const { values } = parseArgs({
  options: { dir: { type: "string", default: "dist" }, release: { type: "boolean", default: false } },
});

const lines = (file: string, findings: readonly Finding[]): string[] =>
  findings.map(({ rule, message, line }) => `${file}${line === undefined ? "" : `:${line}`} ${rule}: ${message}`);

function verify(variant: Variant): string[] {
  const { file } = VARIANTS[variant];
  const path = join(values.dir, file);
  if (!existsSync(path)) return [`${path} is missing: npx tsx scripts/manifest/write.mts`];
  const purpose = { variant, release: values.release };
  return lines(file, checkManifest(readFileSync(path, "utf8"), openBuild(values.dir), purpose));
}

const faults = [...verify("production"), ...verify("development")];
console.log(faults.length === 0 ? `${values.dir}: both manifests agree with the build` : faults.join("\n"));
process.exitCode = faults.length === 0 ? 0 : 1;
