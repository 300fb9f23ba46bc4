/**
 * `npm run package -- https://pool.example/warmback [out.zip]`: builds for the address that will serve the add-in, and packs
 * the release archive. The same sources and address give the same bytes.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { ensureBuilt } from "./ensureBuilt.mjs";
import { openBuild } from "./manifest/build";
import { checkManifest } from "./manifest/check";
import { VARIANTS } from "./manifest/manifest";
import { packageVersion } from "./manifest/output";
import { releaseArchive } from "./release/archive";
import { hostAddress } from "./release/hostAddress";
import { ROOT } from "./root";

/** What a release's manifest must not have, the placeholder of its address for one. */
function checkRelease(folder: string): void {
  const xml = readFileSync(join(folder, VARIANTS.production.file), "utf8");
  const findings = checkManifest(xml, openBuild(folder), { variant: "production", release: true });
  if (findings.length > 0) throw new Error(findings.map(({ rule, message }) => `${rule}: ${message}`).join("\n"));
}

try {
  const [address, file] = process.argv.slice(2);
  process.env["WARMBACK_HOST"] = hostAddress(address);
  const name = `warmback-${packageVersion()}`;
  const out = file === undefined ? join(ROOT, "dist-release", `${name}.zip`) : resolve(file);
  const folder = await ensureBuilt();
  checkRelease(folder);
  const { bytes, checksum, files } = releaseArchive(folder, name);
  mkdirSync(dirname(out), { recursive: true });
  writeFileSync(out, bytes);
  process.stdout.write(`${out}\n${String(files)} files, ${String(bytes.length)} bytes, SHA-256 ${checksum}\n`);
} catch (thrown) {
  process.stderr.write(`package: ${thrown instanceof Error ? thrown.message : String(thrown)}\n`);
  process.exitCode = 1;
}
