import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";

import type { FunctionsGlobal } from "../../functions/globals";
import type { FunctionsMetadata } from "./functionsMetadata";
import { createShim } from "./customFunctionsShim";
import type { FunctionSet } from "../univer/start";

/** A loaded functions script: its functions and its global. */
export interface LoadedFunctions extends FunctionSet {
  readonly warmback: FunctionsGlobal;
}

/**
 * Runs a built functions.js under the shim, apart from this program's own globals.
 * @param folder of functions.js and functions.json
 */
export const loadFunctions = (folder: string): LoadedFunctions => {
  const metadata = JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as FunctionsMetadata;
  const shim = createShim();
  const globals: { CustomFunctions: unknown; warmback?: FunctionsGlobal } = { CustomFunctions: shim.CustomFunctions };
  const context = createContext(Object.assign(globals, { console, performance, TextEncoder, TextDecoder, URL }));
  const path = join(folder, "functions.js");
  runInContext(readFileSync(path, "utf8"), context, { filename: path });
  const { warmback } = globals;
  if (warmback === undefined) throw new Error(`${path} sets no global "warmback"`);
  return { namespace: warmback.namespace, metadata, associated: shim.associated, warmback };
};
