/** Every equation and relation that the core exports. Used by the build only. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { AnyEquation, AnyRelation } from "../../core/help";

import { holdsInAnyUnits } from "./anyUnits";

const NO_FORMS = /\/(data|functions|fit|reference)\//;

const sourcesBelow = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .map((path) => join(folder, path))
    .filter((path) => path.endsWith(".ts") && !path.endsWith(".d.ts") && !NO_FORMS.test(path));

type Printed = AnyEquation | AnyRelation;

const isPrinted = (value: unknown): value is Printed =>
  typeof value === "object" &&
  value !== null &&
  "form" in value &&
  "symbols" in value &&
  typeof value.form === "string";

/** A folder's exported equations by their printed forms, each form once, in order. */
export const printedEquations = async (folder: string): Promise<ReadonlyMap<string, Printed>> => {
  const found = new Map<string, Printed>();
  for (const path of sourcesBelow(folder)) {
    const exported = (await import(pathToFileURL(path).href)) as Readonly<Record<string, unknown>>;
    for (const one of Object.values(exported)) if (isPrinted(one) && !found.has(one.form)) found.set(one.form, one);
  }
  return new Map([...found].sort(([a], [b]) => (a < b ? -1 : 1)));
};

/** What each symbol of each form is, for calculation notes: form → symbol → [kind, description]; "=" where any units do. */
export const symbolsByForm = (
  printed: ReadonlyMap<string, Printed>,
): Readonly<Record<string, Readonly<Record<string, readonly [string, string]>>>> =>
  Object.fromEntries(
    [...printed].map(([form, one]) => [
      form,
      {
        ...Object.fromEntries(
          Object.entries(one.symbols).map(([name, { kind, description }]) => [name, [kind, description]]),
        ),
        ...(holdsInAnyUnits(one) && { "=": ["number", "holds in any units"] }),
      },
    ]),
  );
