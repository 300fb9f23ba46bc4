/** The build that a script belongs to, and the message if scripts of two builds meet. */

/** Inserted by the bundlers. */
declare const BUILD_HASH: string;

/** The build of this script; sources that run unbundled have none. */
export const BUILD: string = typeof BUILD_HASH === "undefined" ? "unbuilt" : BUILD_HASH;

const RELOAD = "Reload the page, or close the workbook and open it again";

/** What is wrong with the loaded functions script; undefined if it is of the same build. */
export function functionsFault(loaded: { readonly build?: string } | undefined, own = BUILD): string | undefined {
  if (loaded === undefined)
    return `functions.js didn't load, and nothing can be calculated without it. ${RELOAD}. If that doesn't help, the file is missing on the server that publishes the add-in.`;
  if (loaded.build === own) return undefined;
  return `functions.js (build ${loaded.build ?? "unknown"}) and this page (build ${own}) don't belong together: one of them is an old copy. ${RELOAD}. If that doesn't help, empty the browser's or Office's cache, or have all files of one build published again.`;
}
