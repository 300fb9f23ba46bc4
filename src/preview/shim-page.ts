import { createShim } from "./shim";
import type { Shim } from "./shim";

/** The preview page's first script: makes ready what functions.js expects of Excel. */

declare global {
  var warmbackShim: Shim | undefined;
}

const shim = createShim();
globalThis.warmbackShim = shim;
(globalThis as { CustomFunctions: unknown }).CustomFunctions = shim.CustomFunctions;
