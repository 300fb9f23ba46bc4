/** The list of packages as CycloneDX 1.5 JSON (software bill of materials), from package-lock.json. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../root";
import type { ShippedPackage } from "./shippedPackages";

interface Locked {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly license?: string;
  readonly link?: boolean;
}

export interface LockFile {
  readonly packages: Readonly<Record<string, Locked>>;
}

interface Hash {
  readonly alg: string;
  readonly content: string;
}

export interface SbomComponent {
  readonly type: "library";
  readonly "bom-ref": string;
  readonly name: string;
  readonly version: string;
  /** "required" is shipped; "excluded" is used to build and test only. */
  readonly scope: "required" | "excluded";
  readonly purl: string;
  readonly hashes?: readonly Hash[];
  readonly licenses?: readonly { readonly expression: string }[];
  readonly externalReferences?: readonly { readonly type: "distribution"; readonly url: string }[];
}

export function readLock(): LockFile {
  return JSON.parse(readFileSync(join(ROOT, "package-lock.json"), "utf8")) as LockFile;
}

/** A package's name by its place in the lock file. */
export const lockedName = (path: string): string => path.slice(path.lastIndexOf("node_modules/") + 13);

const ALGORITHMS: Readonly<Record<string, string>> = { sha512: "SHA-512", sha256: "SHA-256", sha1: "SHA-1" };

function hashesOf(integrity: string): readonly Hash[] {
  return integrity.split(/\s+/).flatMap((one) => {
    const [algorithm = "", content = ""] = one.split(/-(.*)/s);
    const alg = ALGORITHMS[algorithm];
    return alg === undefined ? [] : [{ alg, content: Buffer.from(content, "base64").toString("hex") }];
  });
}

function componentOf(
  name: string,
  { version = "", resolved, integrity, license }: Locked,
  isShipped: boolean,
): SbomComponent {
  const purl = `pkg:npm/${name.replace("@", "%40")}@${version}`;
  return {
    type: "library",
    "bom-ref": purl,
    name,
    version,
    scope: isShipped ? "required" : "excluded",
    purl,
    ...(integrity !== undefined && { hashes: hashesOf(integrity) }),
    ...(license !== undefined && { licenses: [{ expression: license }] }),
    ...(resolved?.startsWith("https:") === true && {
      externalReferences: [{ type: "distribution" as const, url: resolved }],
    }),
  };
}

/** All locked packages, each version once; those of `shipped` are marked. @throws Error if a shipped one isn't locked */
export function componentsOf(
  lock: LockFile,
  shipped: readonly Pick<ShippedPackage, "name" | "version">[],
): readonly SbomComponent[] {
  const keys = new Set(shipped.map(({ name, version }) => `${name}@${version}`));
  const found = new Map<string, SbomComponent>();
  for (const [path, locked] of Object.entries(lock.packages)) {
    if (path === "" || locked.link === true) continue;
    const name = lockedName(path);
    const key = `${name}@${locked.version ?? ""}`;
    found.set(key, componentOf(name, locked, keys.has(key)));
  }
  const missing = [...keys].filter((key) => !found.has(key));
  if (missing.length > 0)
    throw new Error(`shipped, but in another version than package-lock.json: ${missing.join(", ")}`);
  return [...found.keys()].sort().flatMap((key) => found.get(key) ?? []);
}

/** The serial number of a list is its content's: the same sources give the same file. */
function serialNumber(content: string): string {
  const hex = createHash("sha256").update(content).digest("hex");
  const parts = [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `5${hex.slice(13, 16)}`,
    `8${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ];
  return `urn:uuid:${parts.join("-")}`;
}

/** @param version of the add-in */
export function sbomText(version: string, components: readonly SbomComponent[]): string {
  const serial = serialNumber(JSON.stringify([version, components]));
  const sbom = {
    bomFormat: "CycloneDX",
    specVersion: "1.5",
    serialNumber: serial,
    version: 1,
    metadata: {
      component: {
        type: "application",
        "bom-ref": `warmback@${version}`,
        name: "warmback",
        version,
        licenses: [{ expression: "MIT" }],
      },
    },
    components,
  };
  return `${JSON.stringify(sbom, null, 1)}\n`;
}
