/** Names the kind of a file from its first bytes, for those that are no zip. */
import { refusal, type PackageRefusal } from "../refusal";

/** The first bytes of a compound file: [MS-CFB] 2.2. */
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];

const startsWith = (bytes: Uint8Array, start: readonly number[]): boolean =>
  start.every((byte, at) => bytes[at] === byte);

/** Whether a compound file has a stream of this name: its directory holds names in UTF-16. */
function hasStream(bytes: Uint8Array, name: string): boolean {
  const wanted = [...name].flatMap((letter) => [letter.charCodeAt(0), 0]);
  const first = wanted[0] ?? 0;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1))
    if (wanted.every((byte, place) => bytes[at + place] === byte)) return true;
  return false;
}

export const isZip = (bytes: Uint8Array): boolean =>
  startsWith(bytes, [0x50, 0x4b, 3, 4]) || startsWith(bytes, [0x50, 0x4b, 5, 6]);

/** The refusal of a file that is no zip. */
export function notZip(bytes: Uint8Array): PackageRefusal {
  if (startsWith(bytes, COMPOUND)) {
    if (hasStream(bytes, "EncryptedPackage"))
      return refusal("encrypted", "This workbook is encrypted with a password: save it without one first.");
    return refusal(
      "other-format",
      "This is a file of the older .xls kind or of another program: save it as .xlsx in Excel first.",
    );
  }
  // A BIFF record that begins a sheet: [MS-XLS] 2.4.21.
  if (bytes[0] === 9 && [0, 2, 4, 8].includes(bytes[1] ?? -1))
    return refusal("other-format", "This is a workbook of the older .xls kind: save it as .xlsx in Excel first.");
  return refusal("no-workbook", "This file is no .xlsx workbook.");
}
