/** The texts that the cells of all sheets share: ECMA-376 part 1, 18.4.8. */
import { hasPart, partTextPieces, type Package } from "../parts/package";
import { relationsOf } from "../parts/relations";
import type { NextSlice } from "../../timeSlices";
import { xmlScan, type XmlVisitor } from "../xml/scan";
import { cellTextOf } from "../xml/text";

export async function sharedStringsPath(pack: Package, book: string): Promise<string | undefined> {
  return (await relationsOf(pack, book)).find(({ kind, target }) => kind === "sharedStrings" && hasPart(pack, target))
    ?.target;
}

/** Collects the text of each `<si>`, without the aids that say how it is read aloud. */
function stringVisitor(found: string[]): XmlVisitor {
  let depth = 0;
  let phonetic = false;
  let inText = false;
  let text = "";
  return {
    open(name) {
      depth++;
      if (depth === 2) text = "";
      if (name === "rPh") phonetic = true;
      inText = name === "t";
    },
    close(name) {
      if (depth === 2 && name === "si") found.push(cellTextOf(text));
      if (name === "rPh") phonetic = false;
      inText = false;
      depth--;
    },
    text(piece) {
      if (inText && !phonetic) text += piece;
    },
  };
}

export async function readSharedStrings(pack: Package, book: string, pause: NextSlice): Promise<readonly string[]> {
  const path = await sharedStringsPath(pack, book);
  const found: string[] = [];
  if (path === undefined) return found;
  const scan = xmlScan(path, stringVisitor(found));
  for await (const piece of partTextPieces(pack, path, pause)) {
    scan.write(piece);
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  scan.close();
  return found;
}
