/**
 * Which modules the panel's script takes from the functions script instead of holding them again: catalogue and memory
 * exist once. The functions script lays them out under these names on `warmback.modules`.
 */
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

export const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** Folders whose scripts make up the panel's bundle; pictures are drawn by it alone. */
const PANEL_SIDE = ["src/taskpane", "src/workbook", "src/sheets", "core/picture"];
const PICTURES = /^core\/pictures?(\/|$)/;
const SHARED = /^(core|src\/functions)\//;

/** "core/kernel/quantity" for an import that leads to a shared module; undefined for any other. */
export const sharedModule = (folder: string, request: string): string | undefined => {
  if (!request.startsWith(".")) return undefined;
  const id = relative(ROOT, join(folder, request)).split(sep).join("/");
  return SHARED.test(id) && !PICTURES.test(id) ? id : undefined;
};

/** Values are imported by it; a line of types alone leaves nothing in a script. */
const IMPORT = /^(?:import|export)\s+(?!type\b)[^"]*?\bfrom "([^"]+)"|\bimport\("([^"]+)"\)/gm;

const scriptsBelow = (folder: string): readonly string[] =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .map((path) => join(ROOT, folder, path))
    .filter((path) => path.endsWith(".ts") && statSync(path).isFile());

/** Every shared module that the panel asks for, in order. */
export const sharedModules = (): readonly string[] => {
  const scripts = [...PANEL_SIDE.flatMap(scriptsBelow), join(ROOT, "core/pictures.ts")];
  const found = scripts.flatMap((path) =>
    [...readFileSync(path, "utf8").matchAll(IMPORT)].flatMap(([, plain, lazy]) => {
      const id = sharedModule(dirname(path), plain ?? lazy ?? "");
      return id !== undefined && existsSync(join(ROOT, `${id}.ts`)) ? [id] : [];
    }),
  );
  return [...new Set(found)].sort();
};
