import type { CustomFunction } from "./hostValues";

/**
 * The part of Excel's `CustomFunctions` global that a functions script uses. It replaces Microsoft's runtime in the
 * preview page and in Node, so that both run the same script as Excel.
 */

const ERROR_CODES = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
  invalidName: "#NAME?",
  invalidReference: "#REF!",
} as const;

/** As Excel's: an error value with an optional message. */
export class CustomFunctionError extends Error {
  readonly code: string;
  constructor(code: string, message?: string) {
    super(message ?? "");
    this.name = "CustomFunctions.Error";
    this.code = code;
  }
}

export interface CustomFunctionsShim {
  readonly Error: typeof CustomFunctionError;
  readonly ErrorCode: typeof ERROR_CODES;
  associate(idOrMap: string | Readonly<Record<string, CustomFunction>>, call?: CustomFunction): void;
}

export interface Shim {
  readonly CustomFunctions: CustomFunctionsShim;
  /** The functions that a script has associated so far, by id in capitals. */
  readonly associated: ReadonlyMap<string, CustomFunction>;
}

/** A fresh shim with no function in it. */
export const createShim = (): Shim => {
  const associated = new Map<string, CustomFunction>();
  const associate: CustomFunctionsShim["associate"] = (idOrMap, call) => {
    const pairs = typeof idOrMap === "string" ? [[idOrMap, call] as const] : Object.entries(idOrMap);
    for (const [id, implementation] of pairs) {
      if (typeof implementation !== "function") throw new Error(`CustomFunctions.associate: ${id} is not a function`);
      associated.set(id.toUpperCase(), implementation);
    }
  };
  return { CustomFunctions: { Error: CustomFunctionError, ErrorCode: ERROR_CODES, associate }, associated };
};
