/** The sources of a build; their hash shows whether the last build is still valid. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, sep } from "node:path";

/** The reference values go into the validation report. */
const FOLDERS = ["core", "src", "scripts", "manifest", "test/golden"];
const FILES = ["CHANGELOG.md", "package.json", "package-lock.json", "tsconfig.json", "webpack.config.ts"];

const filesBelow = (root: string, folder: string): readonly string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .map((path) => join(folder, path))
    .filter((path) => statSync(join(root, path)).isFile());

/** A hash over all sources by name and content, and over the settings that a build depends on. */
export const sourceHash = (root: string, settings: readonly string[]): string => {
  const hash = createHash("sha256").update(settings.join("\n"));
  const paths = [...FOLDERS.flatMap((folder) => filesBelow(root, folder)), ...FILES];
  for (const path of paths.map((each) => each.split(sep).join("/")).sort())
    hash.update(`\n${path}\n`).update(readFileSync(join(root, path)));
  return hash.digest("hex");
};
