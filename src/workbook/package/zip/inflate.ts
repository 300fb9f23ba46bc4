/** Unpacks a file of a zip piece by piece, counting what comes out. */
import { Inflate } from "fflate";
import { brokenFile } from "../refusal";
import type { NextSlice } from "../../timeSlices";
import { crc32 } from "./crc";
import type { ZipEntry } from "./directory";
import { checkUnpacked, type PackageLimits } from "./limits";

/** So many packed bytes at a time: at most some 16 MB can come out of them before they are counted. */
const STEP = 16_384;

/** Unpacked bytes of all parts so far. */
export interface UnpackedCount {
  total: number;
}

function* piecesOf({ path, method, packed }: ZipEntry): Generator<Uint8Array> {
  if (method === 0) {
    for (let at = 0; at < packed.length; at += STEP) yield packed.subarray(at, at + STEP);
    return;
  }
  let out: Uint8Array[] = [];
  const inflate = new Inflate((piece) => out.push(piece));
  for (let at = 0; at < packed.length; at += STEP) {
    out = [];
    try {
      inflate.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
    } catch {
      throw brokenFile(`${path} can't be unpacked`);
    }
    yield* out;
  }
}

/**
 * @param count what was unpacked before; it goes on counting
 * @throws a refusal where a limit is passed, or where size or check sum differ from what the zip says
 */
export async function* inflated(
  entry: ZipEntry,
  count: UnpackedCount,
  limits: PackageLimits,
  pause: NextSlice,
): AsyncGenerator<Uint8Array> {
  let size = 0;
  let sum = 0;
  for (const piece of piecesOf(entry)) {
    if (piece.length === 0) continue;
    size += piece.length;
    count.total += piece.length;
    checkUnpacked(size, entry.packed.length, count.total, limits);
    sum = crc32(piece, sum);
    yield piece;
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  if (size !== entry.size || sum !== entry.crc) throw brokenFile(`${entry.path} doesn't match its check sum`);
}
