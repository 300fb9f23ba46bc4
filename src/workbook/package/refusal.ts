/** Why a file or a change is refused. The message is a plain sentence for the user. */

export type RefusalCode =
  /** Larger than the limits allow. */
  | "too-large"
  /** Encrypted with a password. */
  | "encrypted"
  /** The binary formats .xls and .xlsb. */
  | "other-format"
  /** No zip, or a zip that holds no workbook. */
  | "no-workbook"
  /** A zip or a part of it that is damaged. */
  | "broken"
  /** A change that the file can't take. */
  | "change";

export interface PackageRefusal extends Error {
  readonly name: "PackageRefusal";
  readonly code: RefusalCode;
}

export function refusal(code: RefusalCode, message: string): PackageRefusal {
  return Object.assign(new Error(message), { name: "PackageRefusal" as const, code });
}

export function isPackageRefusal(error: unknown): error is PackageRefusal {
  return error instanceof Error && error.name === "PackageRefusal";
}

export function brokenFile(what: string): PackageRefusal {
  return refusal("broken", `This file is damaged and can't be read: ${what}.`);
}
