/** Every equation and relation that the core exports. Used by the build only. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const NO_FORMS = /\/(data|functions|fit|reference)\//;

const sourcesBelow = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((path) => join(folder, path))
    .filter((path) => path.endsWith(".ts") && !path.endsWith(".d.ts") && !NO_FORMS.test(path));

const formOf = (value: unknown): readonly string[] =>
  typeof value === "object" && value !== null && "form" in value && "takes" in value && typeof value.form === "string"
    ? [value.form]
    : [];

/** The printed forms of a folder's exported equations, each once, in order. */
export const printedForms = async (folder: string): Promise<readonly string[]> => {
  const found = new Set<string>();
  for (const path of sourcesBelow(folder)) {
    const exported = (await import(pathToFileURL(path).href)) as Readonly<Record<string, unknown>>;
    for (const form of Object.values(exported).flatMap(formOf)) found.add(form);
  }
  return [...found].sort();
};
