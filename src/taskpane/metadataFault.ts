/** Whether the server's functions.json belongs to this panel's build. What Excel keeps of an older one can't be read. */

/** Put in by the bundler: SHA-256 of functions.json, hexadecimal. */
declare const METADATA_HASH: string;

const FILE = "functions.json";

const STALE = `${FILE} on the server is of another build than this panel: Excel may offer old arguments. Have all files of one build published again, then remove the add-in and add it again.`;

async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** What is wrong with functions.json; undefined if nothing is, or if it can't be checked. */
export async function metadataFault(): Promise<string | undefined> {
  // A page without a secure origin has no crypto.subtle.
  if (typeof METADATA_HASH === "undefined" || globalThis.crypto?.subtle === undefined) return undefined;
  try {
    const answer = await fetch(FILE);
    if (!answer.ok)
      return `${FILE} is missing on the server that publishes the add-in: Excel can't know the functions.`;
    return (await hashOf(await answer.arrayBuffer())) === METADATA_HASH ? undefined : STALE;
  } catch {
    // The server can't be reached: the panel works without it.
    return undefined;
  }
}
