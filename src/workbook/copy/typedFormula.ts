/** A stored formula as one types it. */
import { NAMESPACE } from "../../../core";

const OUR_CALL = new RegExp(`_xldudf_${NAMESPACE}_([A-Z0-9_]{1,255})(?=\\s*\\()`, "gi");
const ANCHOR = /_xlfn\.ANCHORARRAY\(([^()]+)\)/gi;
const SINGLE = /_xlfn\.SINGLE\(([^()]+)\)/gi;
const PREFIXES = /_xlfn\.|_xlws\.|_xlpm\.|_xludf\./gi;

const typedPart = (part: string): string =>
  part
    .replace(OUR_CALL, (_, id: string) => `${NAMESPACE}.${id.replaceAll("_", ".")}`)
    .replace(ANCHOR, "$1#")
    .replace(SINGLE, "@$1")
    .replace(PREFIXES, "");

/** With "="; quoted texts stay as they are. */
export function typedFormula(stored: string): string {
  if (!/_xl/i.test(stored)) return `=${stored}`;
  const parts = stored.split(/("(?:[^"]|"")*")/);
  return `=${parts.map((part, at) => (at % 2 === 0 ? typedPart(part) : part)).join("")}`;
}
