import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext, type Context } from "node:vm";

import type { FunctionsGlobal } from "../../functions/globals";
import type { FunctionsMetadata } from "./functionsMetadata";
import { createShim } from "./customFunctionsShim";
import type { FunctionSet } from "../univer/start";

/** A loaded functions script: its functions and its global. */
export interface LoadedFunctions extends FunctionSet {
  readonly warmback: FunctionsGlobal;
}

/**
 * The script as a function whose parameters are the context's own built-ins. A free name in a context asks its global
 * object each time, through Node's interceptor: a study of 64 years took four times as long so.
 */
const withLocalBuiltins = (source: string, context: Context): string => {
  const names = runInContext("Object.getOwnPropertyNames(globalThis)", context) as readonly string[];
  // "eval" can't name a parameter.
  const builtins = names.filter((name) => /^[A-Za-z]\w*$/.test(name) && name !== "eval").join(",");
  return `((${builtins})=>{${source}\n})(${builtins})`;
};

/**
 * Runs a built functions.js and its notes.js under the shim, apart from this program's own globals.
 * @param folder of functions.js and functions.json
 */
export const loadFunctions = (folder: string): LoadedFunctions => {
  const metadata = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as FunctionsMetadata;
  const shim = createShim();
  const globals: { CustomFunctions: unknown; warmback?: FunctionsGlobal } = { CustomFunctions: shim.CustomFunctions };
  const context = createContext(Object.assign(globals, { console, performance, TextEncoder, TextDecoder, URL }));
  for (const name of ["functions.js", "notes.js"]) {
    const path = join(folder, name);
    runInContext(withLocalBuiltins(readFileSync(path, "utf8"), context), context, { filename: path });
  }
  const { warmback } = globals;
  if (warmback === undefined) throw new Error(`${join(folder, "functions.js")} sets no global "warmback"`);
  return { namespace: warmback.namespace, metadata, associated: shim.associated, warmback };
};
