/** The proper names of functions whose calls were damaged. */
import { NAMESPACE } from "../../../core";

/** What files put before a name that they don't know. */
const PREFIXES = /^(?:_xlfn\.|_xlws\.|_xludf\.|_xldudf_)+/i;

/** What a function's name calls: one of ours, one that begins like ours but isn't known, or another's. */
export type CalledName =
  | { readonly whose: "ours"; readonly id: string; readonly proper: string }
  | { readonly whose: "unknown"; readonly proper: string }
  | { readonly whose: "other"; readonly bare: string };

/** A name without the book before it: `[2]!`, `Book.xla!`, `'C:\My tools\book.xla'!`. */
const withoutBook = (name: string): string => name.slice(name.lastIndexOf("!") + 1);

/** Reads a name in any form that a file, another program or a hand may have given it; underscores may replace dots. */
export function calledName(name: string, known: ReadonlySet<string>): CalledName {
  const bare = withoutBook(name).replace(PREFIXES, "");
  const dotted = bare.replaceAll("_", ".").toUpperCase();
  if (!dotted.startsWith(`${NAMESPACE}.`)) return { whose: "other", bare };
  const id = dotted.slice(NAMESPACE.length + 1);
  return known.has(id) ? { whose: "ours", id, proper: dotted } : { whose: "unknown", proper: dotted };
}

/** A name of Excel's own without the prefix under which a file keeps it; another add-in's lost name stays as it is. */
export function withoutPrefix(name: string): string {
  return /^_xldudf_/i.test(name) ? name : name.replace(/^(?:_xlfn\.|_xlws\.|_xludf\.|_xlpm\.)+/i, "");
}

const distance = (a: string, b: string): number => {
  let row = Array.from({ length: b.length + 1 }, (_, at) => at);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
};

/** Names this far apart have nothing to do with each other. */
const NEAR = 3;

/** The known name that looks most like an unknown one. */
export function nearestName(proper: string, known: ReadonlySet<string>): string | undefined {
  let best: string | undefined;
  let least = NEAR + 1;
  for (const id of known) {
    const name = `${NAMESPACE}.${id}`;
    const far = Math.abs(name.length - proper.length) >= least ? least : distance(proper, name);
    if (far < least) [best, least] = [name, far];
  }
  return best;
}
