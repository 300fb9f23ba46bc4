/** Which packages of other people a build ships, by the modules that the bundlers put into it. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { MultiStats } from "webpack";

export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  /** SPDX expression of its package.json, or of its licence file. */
  readonly licence: string;
  readonly author: string;
  /** Its licence and notice files; none where it carries none. */
  readonly texts: readonly string[];
}

const MODULES = "/node_modules/";

/** The folder of the package that a module's path lies in; undefined for our own files. */
export function packageFolder(path: string): string | undefined {
  const plain = path.replaceAll("\\", "/");
  const at = plain.lastIndexOf(MODULES);
  if (at < 0) return undefined;
  const parts = plain.slice(at + MODULES.length).split("/");
  return plain.slice(0, at + MODULES.length) + parts.slice(0, parts[0]?.startsWith("@") === true ? 2 : 1).join("/");
}

interface Described {
  readonly name?: string;
  readonly version?: string;
  readonly license?: string | { readonly type?: string };
  readonly author?: string | { readonly name?: string };
}

const TEXT_FILE = /^(licen[cs]e|copying|notice)([.-].*)?$/i;

/** For a package whose package.json names no licence. */
const licenceIn = (texts: readonly string[]): string | undefined =>
  texts.some((text) => /^\s*Apache License\s+Version 2\.0/.test(text)) ? "Apache-2.0" : undefined;

function readPackage(folder: string): ShippedPackage {
  const described = JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as Described;
  const { name, version, license, author } = described;
  const files = readdirSync(folder)
    .filter((file) => TEXT_FILE.test(file))
    .sort();
  const texts = files.map((file) => readFileSync(join(folder, file), "utf8").replaceAll("\r\n", "\n").trim());
  const licence = (typeof license === "string" ? license : license?.type) ?? licenceIn(texts);
  if (name === undefined || version === undefined || licence === undefined)
    throw new Error(`${folder}: name, version and licence are needed to ship a package`);
  const holder = typeof author === "string" ? author : (author?.name ?? "");
  return { name, version, licence, author: holder.replace(/\s*[<(].*$/, ""), texts };
}

interface BundledModule {
  nameForCondition?(): string | null;
  readonly modules?: Iterable<BundledModule>;
}

/** Paths of all modules in the chunks of webpack's bundles, those that it joined into one included. */
export function bundledPaths({ stats }: MultiStats): readonly string[] {
  const paths: string[] = [];
  const add = (one: BundledModule): void => {
    const path = one.nameForCondition?.();
    if (typeof path === "string") paths.push(path);
    for (const inner of one.modules ?? []) add(inner);
  };
  for (const { compilation } of stats) {
    for (const chunk of compilation.chunks)
      for (const one of compilation.chunkGraph.getChunkModulesIterable(chunk)) add(one);
  }
  return paths;
}

/** The packages that modules come from, each version once, by name. */
export function shippedPackages(paths: Iterable<string>): readonly ShippedPackage[] {
  const folders = new Set([...paths].flatMap((path) => packageFolder(path) ?? []));
  const found = new Map<string, ShippedPackage>();
  for (const folder of folders) {
    // A folder inside a package may hold a package.json that only sets the module type.
    if (!existsSync(join(folder, "package.json"))) throw new Error(`${folder}: has no package.json`);
    const one = readPackage(folder);
    found.set(`${one.name}@${one.version}`, one);
  }
  return [...found.keys()].sort().flatMap((key) => found.get(key) ?? []);
}
