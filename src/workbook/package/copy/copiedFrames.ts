/** Reads the sheets of a copy: as they are chosen, and again where choosing changed them. */
import type { BookFacts } from "../book/facts";
import { partAt, type Package } from "../parts/package";
import { cellContext } from "../sheet/read";
import type { PackageWork } from "../work";
import type { FrameOf, KeptFrame } from "./keptSheets";
import { readFrame, type OnFrameCell } from "./sheetFrame";

/** Takes the cells of one sheet after the other as the copy holds them; a sheet may come again, changed. */
export type OnCopiedSheet = (name: string) => OnFrameCell;

/** Reads sheets for the copy. */
export async function frameReader(
  pack: Package,
  book: BookFacts,
  onSheet: OnCopiedSheet | undefined,
  work: PackageWork,
) {
  const context = await cellContext(pack, book, work);
  return (source: Package): FrameOf =>
    ({ name, path }) =>
      readFrame(source, path, work, context, onSheet?.(name));
}

/** Those of changed sheets anew. */
export async function framesAfter(
  kept: readonly KeptFrame[],
  before: Package,
  after: Package,
  frameOf: FrameOf,
): Promise<readonly KeptFrame[]> {
  const frames: KeptFrame[] = [];
  for (const frame of kept) {
    const { entry } = frame;
    const same = partAt(after, entry.path) === partAt(before, entry.path);
    frames.push(same ? frame : { entry, ...(await frameOf(entry)) });
  }
  return frames;
}
