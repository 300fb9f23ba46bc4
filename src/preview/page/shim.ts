import { createShim } from "../host/customFunctionsShim";
import type { Shim } from "../host/customFunctionsShim";

/** The preview page's first script: provides what functions.js expects of Excel. */

declare global {
  var warmbackShim: Shim | undefined;
}

const shim = createShim();
globalThis.warmbackShim = shim;
(globalThis as { CustomFunctions: unknown }).CustomFunctions = shim.CustomFunctions;

/** A script of the page that doesn't come leaves it as it is: this says so. Later scripts speak for themselves. */
addEventListener(
  "error",
  ({ target }) => {
    if (!(target instanceof HTMLScriptElement)) return;
    const file = new URL(target.src).pathname.split("/").at(-1) ?? "";
    const sentence = `${file} didn't load. Check the connection, then reload the page.`;
    const says = { status: sentence, said: sentence, panel: "The panel needs the sheet." };
    for (const [id, text] of Object.entries(says)) {
      const place = document.getElementById(id);
      if (place !== null) place.textContent = text;
    }
  },
  { capture: true },
);
