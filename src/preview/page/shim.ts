import { createShim } from "../host/customFunctionsShim";
import type { Shim } from "../host/customFunctionsShim";

/** The preview page's first script: provides what functions.js expects of Excel. */

declare global {
  var warmbackShim: Shim | undefined;
}

const shim = createShim();
globalThis.warmbackShim = shim;
(globalThis as { CustomFunctions: unknown }).CustomFunctions = shim.CustomFunctions;
