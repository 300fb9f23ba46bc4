/** Digital signatures: they cover the bytes of a file, so they end with the first change. */
import type { PartsEditor } from "../parts/edits";
import type { Package } from "../parts/package";

export const SIGNATURE_SENTENCE = "The digital signature was removed: it covers the file as it was, not this one.";

export async function removeSignatures(pack: Package, editor: PartsEditor): Promise<boolean> {
  const parts = [...pack.parts.values()].filter(({ path }) => path.toLowerCase().startsWith("_xmlsignatures/"));
  if (parts.length === 0) return false;
  for (const { path } of parts) editor.remove(path);
  await editor.removeRelations(
    "",
    ({ target, external }) => !external && target.toLowerCase().startsWith("_xmlsignatures/"),
  );
  return true;
}
