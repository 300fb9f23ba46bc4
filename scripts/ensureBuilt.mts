/**
 * Builds on demand. Each state of the sources has a build folder, which is written once and never changed; `dist/` is a copy
 * of the newest.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { freshFolder, keepNewest, replaceFolder } from "./freshFolder";
import { VARIANTS } from "./manifest/manifest";
import { ROOT } from "./root";
import { sourceHash } from "./sources";

/** A copy of the newest build, for publishing. */
const DIST = join(ROOT, "dist");

const BUILDS = join(ROOT, ".cache/builds");
/** Which build `dist/` is a copy of. */
const DIST_NOTE = join(ROOT, ".cache/dist.txt");
/** Builds to keep: a server that has run for a while still reads an older one. */
const BUILDS_KEPT = 8;
const HASH_LENGTH = 12;

/** The host of the help addresses: the environment's WARMBACK_HOST, else the production manifest's. */
const productionHost = (): string => (process.env["WARMBACK_HOST"] ?? VARIANTS.production.host).replace(/\/+$/, "");

const holds = (hash: string): boolean =>
  existsSync(DIST) && existsSync(DIST_NOTE) && readFileSync(DIST_NOTE, "utf8") === hash;

/**
 * Builds these sources unless that was done before, and updates `dist/`. Remarks go to standard error.
 * @returns the build's own folder, which later builds don't change
 * @throws Error with all messages
 */
export async function ensureBuilt(): Promise<string> {
  const host = productionHost();
  const hash = sourceHash(ROOT, [host, process.version]);
  const folder = join(BUILDS, hash);
  await freshFolder(folder, async (into) => {
    // Imported late: an existing build needs neither the bundler nor the catalogue.
    const { build } = await import("./makeBuild.mjs");
    await build({ folder: into, host, build: hash.slice(0, HASH_LENGTH) });
  });
  if (!holds(hash)) {
    replaceFolder(DIST, folder);
    writeFileSync(DIST_NOTE, hash);
    keepNewest(BUILDS, BUILDS_KEPT);
  }
  return folder;
}
