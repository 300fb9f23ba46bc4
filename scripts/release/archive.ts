/** The release archive of a build: everything that a web server publishes, checksums included; the same bytes every time. */
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { zipSync } from "fflate";
import { filesBelow } from "../manifest/output";
import { ROOT } from "../root";

/** The zip format begins in 1980; every entry has this time, so that only contents count. */
const ENTRY_TIME = new Date(1980, 0, 2);

/** For reading beside the published files; they aren't served. */
const PAPERS = ["LICENSE", "CHANGELOG.md", "docs/administrators.md", "docs/security.md", "docs/validation/README.md"];

/** The evaluator runs on Node and takes the sheet engine from node_modules: it is no part of the add-in. */
const isPublished = (path: string): boolean => !path.endsWith(".cjs");

const sumOf = (content: Uint8Array): string => createHash("sha256").update(content).digest("hex");

export interface Archive {
  readonly bytes: Uint8Array;
  /** Of the archive itself. */
  readonly checksum: string;
  readonly files: number;
}

/**
 * @param folder of the build
 * @param name of the archive's only folder
 */
export function releaseArchive(folder: string, name: string): Archive {
  const published = filesBelow(folder).filter(isPublished);
  const contents = new Map<string, Uint8Array>([
    ...published.map((path) => [`site/${path}`, readFileSync(join(folder, path))] as const),
    ...PAPERS.map((path) => [path, readFileSync(join(ROOT, path))] as const),
  ]);
  const paths = [...contents.keys()].sort();
  const sums = paths.map((path) => `${sumOf(contents.get(path) ?? new Uint8Array())}  ${path}\n`).join("");
  const entries = [
    ...paths.map((path) => [path, contents.get(path)] as const),
    ["SHA256SUMS", Buffer.from(sums)] as const,
  ];
  const bytes = zipSync(
    Object.fromEntries(entries.map(([path, content]) => [`${name}/${path}`, content ?? new Uint8Array()])),
    { level: 9, mtime: ENTRY_TIME },
  );
  return { bytes, checksum: sumOf(bytes), files: entries.length };
}
