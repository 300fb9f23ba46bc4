/** The build that a script belongs to, and the message if scripts of two builds meet. */

/** Inserted by the bundlers. */
declare const BUILD_HASH: string;

/** The build of this script; sources that run unbundled have none. */
export const BUILD: string = typeof BUILD_HASH === "undefined" ? "unbuilt" : BUILD_HASH;

const RELOAD = "Reload the page, or close the workbook and open it again";

interface Loaded {
  readonly build?: string | undefined;
}

const WITHOUT: Readonly<Record<string, string>> = {
  "functions.js": "nothing can be calculated without it",
  "notes.js": "there are no cautions, checks and sources without it",
};

/** What is wrong with a loaded script; undefined if it is of the same build. */
export function scriptFault(name: string, loaded: Loaded | undefined, own = BUILD): string | undefined {
  if (loaded === undefined)
    return `${name} didn't load, and ${WITHOUT[name] ?? "it is needed"}. ${RELOAD}. If that doesn't help, the file is missing on the server that publishes the add-in.`;
  if (loaded.build === own) return undefined;
  return `${name} (build ${loaded.build ?? "unknown"}) and this page (build ${own}) don't belong together: one of them is an old copy. ${RELOAD}. If that doesn't help, empty the browser's or Office's cache, or have all files of one build published again.`;
}

/** What is wrong with the functions script and its notes; undefined if both are there and of the same build. */
export function functionsFault(
  loaded: (Loaded & { readonly notes?: boolean }) | undefined,
  own = BUILD,
): string | undefined {
  const fault = scriptFault("functions.js", loaded, own);
  if (fault !== undefined) return fault;
  return loaded?.notes === true ? undefined : scriptFault("notes.js", undefined, own);
}
