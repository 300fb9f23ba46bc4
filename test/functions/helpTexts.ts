/** All texts that stay out of the functions script, and the sources that hold them. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { CATALOGUE } from "../../core";
import { type AnyEquation, HELP_KEYS } from "../../core/help";

const CORE = join(import.meta.dirname, "../../core");
/** A word or two may stand anywhere. */
const LEAST = 12;

const textsIn = (value: unknown): readonly string[] => {
  if (typeof value === "string") return value.length < LEAST ? [] : [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(textsIn) : [];
};

const under = (keys: readonly string[], value: object): readonly string[] =>
  Object.entries(value).flatMap(([key, each]) => (keys.includes(key) ? textsIn(each) : []));

type Printed = Pick<AnyEquation, "form" | "takes" | "valid">;

/** Equations and relations by their printed form. */
const printed = async (): Promise<readonly Printed[]> => {
  const found = new Map<unknown, Printed>();
  for (const path of readdirSync(CORE, { recursive: true, encoding: "utf8" })) {
    if (!path.endsWith(".ts") || /(^|\/)(data|fit)\//.test(path)) continue;
    const exported = Object.values((await import(join(CORE, path))) as Readonly<Record<string, unknown>>);
    for (const each of exported)
      if (typeof each === "object" && each !== null && "form" in each && "takes" in each)
        found.set(each.form, each as Printed);
  }
  return [...found.values()];
};

/** Each help text with the number of places that declare it: a symbol that many equations share is one. */
export async function helpTexts(): Promise<ReadonlyMap<string, number>> {
  const symbols = new Set((await printed()).flatMap(({ takes }) => Object.values(takes)));
  const texts = [
    ...CATALOGUE.flatMap((definition) => [
      ...under(HELP_KEYS.cellFunction, definition),
      ...definition.checks.flatMap((check) => under(HELP_KEYS.checks, check)),
    ]),
    ...(await printed()).flatMap(({ valid }) => textsIn(valid)),
    ...[...symbols].flatMap(textsIn),
  ];
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  return counts;
}

/** All sources of the core in one text. */
export const coreSources = (): string =>
  readdirSync(CORE, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts"))
    .map((path) => readFileSync(join(CORE, path), "utf8"))
    .join("\n");
