/** The core's files and what they export. Loads nothing by itself. */
import { readdirSync } from "node:fs";
import { join } from "node:path";

/** Core files below a folder that match, as paths from the repository's root. */
export function coreFiles(matches: RegExp, folder = "core"): readonly string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return coreFiles(matches, path);
    return matches.test(path) ? [path] : [];
  });
}

/** Everything that a core file exports. */
export async function exportsOf(path: string): Promise<Readonly<Record<string, unknown>>> {
  return (await import(/* @vite-ignore */ `../../${path}`)) as Record<string, unknown>;
}
