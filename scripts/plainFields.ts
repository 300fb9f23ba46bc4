/**
 * Sets the fields of the sheet engine's classes by assignment. Its packages call a helper for each field of each object,
 * which costs a third of the time of a calculation: a formula makes dozens of objects.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import webpack, { type WebpackPluginInstance } from "webpack";
import { ROOT } from "./root";

const FIELD = /\b_defineProperty\(this, "([A-Za-z_$][\w$]*)", /g;
const ACCESSOR = /^\s*(?:static )?[gs]et ([\w$]+)\(/gm;
const ENGINE = join("node_modules", "@univerjs");

/** @param accessors names that a class may inherit as a getter or setter: those fields keep the helper */
export function plainFields(source: string, accessors: ReadonlySet<string>): string {
  return source.replace(FIELD, (call, name: string) => (accessors.has(name) ? call : `(this.${name} = `));
}

export function accessorsIn(source: string): readonly string[] {
  return [...source.matchAll(ACCESSOR)].map(([, name = ""]) => name);
}

/** Getters and setters of all of the engine's packages, which extend each other's classes. */
export function engineAccessors(): ReadonlySet<string> {
  const folder = join(ROOT, ENGINE);
  const files = readdirSync(folder).map((name) => join(folder, name, "lib/es/index.js"));
  return new Set(files.filter(existsSync).flatMap((file) => accessorsIn(readFileSync(file, "utf8"))));
}

export function withPlainFields(): WebpackPluginInstance {
  return {
    apply(compiler) {
      const accessors = engineAccessors();
      compiler.hooks.compilation.tap("plain fields", (compilation) => {
        webpack.NormalModule.getCompilationHooks(compilation).processResult.tap("plain fields", (result, module) => {
          const [source, ...rest] = result;
          return module.resource.includes(ENGINE) ? [plainFields(String(source), accessors), ...rest] : result;
        });
      });
    },
  };
}
