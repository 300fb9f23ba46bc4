/** A package: the parts of a zip, each kept as it came until something replaces it. Nothing here changes in place. */
import type { NextSlice } from "../../timeSlices";
import { brokenFile } from "../refusal";
import { decoded, decoderFor, encoded } from "../xml/text";
import { scanXml } from "../xml/scan";
import type { XmlNode } from "../xml/node";
import { pauseOf, type PackageWork } from "../work";
import { readDirectory, type ZipEntry } from "../zip/directory";
import { inflated } from "../zip/inflate";
import { PACKAGE_LIMITS, type PackageLimits } from "../zip/limits";
import { joined, packed, writeZip } from "../zip/write";

/** As the file holds it, or new bytes. */
export type Part =
  { readonly path: string; readonly entry: ZipEntry } | { readonly path: string; readonly bytes: Uint8Array };

export interface Package {
  /** By path in lower case: part names don't differ by case, ECMA-376 part 2, 7.2.3. */
  readonly parts: ReadonlyMap<string, Part>;
  /** Unpacked bytes of parts by the same paths, for whoever reads a file as soon as it is opened. */
  readonly unpacked?: ReadonlyMap<string, readonly Uint8Array[]>;
}

/** What is done to parts: new text or bytes, or taken away. */
export type PartEdits = ReadonlyMap<string, string | Uint8Array | undefined>;

export const CONTENT_TYPES = "[Content_Types].xml";

const NEVER: NextSlice = () => undefined;

/** What stays unpacked at most, bytes: the sheets of a workbook of some 300,000 cells. */
const MOST_KEPT = 33_554_432;

/**
 * Reads the zip and unpacks every part once, so that a damaged or oversized file is refused before it is used.
 * @param keeps whether parts stay unpacked, up to 32 MB of them, until `forgetUnpacked`
 */
export async function openParts(
  bytes: Uint8Array,
  work: PackageWork = {},
  limits: PackageLimits = PACKAGE_LIMITS,
  keeps = false,
): Promise<Package> {
  const pause = pauseOf(work);
  const entries = readDirectory(bytes, limits);
  const count = { total: 0 };
  const unpacked = new Map<string, readonly Uint8Array[]>();
  let done = 0;
  for (const entry of entries) {
    const pieces: Uint8Array[] = [];
    for await (const piece of inflated(entry, count, limits, pause))
      if (keeps && count.total <= MOST_KEPT) pieces.push(piece);
    if (keeps && count.total <= MOST_KEPT) unpacked.set(entry.path.toLowerCase(), pieces);
    done += entry.packed.length;
    work.onProgress?.(done, bytes.length);
  }
  const parts = new Map(entries.map((entry) => [entry.path.toLowerCase(), { path: entry.path, entry }] as const));
  return { parts, ...(keeps && { unpacked }) };
}

export const forgetUnpacked = ({ parts }: Package): Package => ({ parts });

export function partAt(pack: Package, path: string): Part | undefined {
  return pack.parts.get(path.toLowerCase());
}

export function hasPart(pack: Package, path: string): boolean {
  return pack.parts.has(path.toLowerCase());
}

function needed(pack: Package, path: string): Part {
  const part = partAt(pack, path);
  if (part === undefined) throw brokenFile(`${path} is missing`);
  return part;
}

/** The unpacked bytes of a part, piece by piece. */
async function* piecesOf(pack: Package, path: string, pause: NextSlice): AsyncGenerator<Uint8Array> {
  const part = needed(pack, path);
  const unpacked = pack.unpacked?.get(path.toLowerCase());
  if ("bytes" in part) {
    for (let at = 0; at < part.bytes.length; at += STEP) yield part.bytes.subarray(at, at + STEP);
  } else if (unpacked !== undefined) yield* unpacked;
  else yield* inflated(part.entry, { total: 0 }, PACKAGE_LIMITS, pause);
}

const STEP = 65_536;

export async function partBytes(pack: Package, path: string, pause: NextSlice = NEVER): Promise<Uint8Array> {
  const part = needed(pack, path);
  if ("bytes" in part) return part.bytes;
  const pieces: Uint8Array[] = [];
  for await (const piece of piecesOf(pack, path, pause)) pieces.push(piece);
  return joined(pieces);
}

export async function partText(pack: Package, path: string, pause: NextSlice = NEVER): Promise<string> {
  return decoded(path, await partBytes(pack, path, pause));
}

/** The text of a part as it unpacks, for parts too large to hold. */
export async function* partTextPieces(pack: Package, path: string, pause: NextSlice): AsyncGenerator<string> {
  let decoder: TextDecoder | undefined;
  try {
    for await (const piece of piecesOf(pack, path, pause)) {
      decoder ??= decoderFor(piece);
      yield decoder.decode(piece, { stream: true });
    }
    yield decoder?.decode() ?? "";
  } catch (error) {
    if (error instanceof TypeError) throw brokenFile(`${path} holds characters in no known encoding`);
    throw error;
  }
}

export async function partTree(pack: Package, path: string): Promise<XmlNode> {
  return scanXml(path, await partText(pack, path));
}

export function withParts(pack: Package, edits: PartEdits): Package {
  if (edits.size === 0) return pack;
  const parts = new Map(pack.parts);
  for (const [path, content] of edits) {
    const key = path.toLowerCase();
    if (content === undefined) parts.delete(key);
    else
      parts.set(key, {
        path: parts.get(key)?.path ?? path,
        bytes: typeof content === "string" ? encoded(content) : content,
      });
  }
  return { parts };
}

/** The bytes of the zip: untouched parts go in as they came, packed. */
export async function packageBytes(pack: Package, work: PackageWork = {}): Promise<Uint8Array> {
  const pause = pauseOf(work);
  const entries: ZipEntry[] = [];
  for (const part of pack.parts.values()) {
    work.onProgress?.(entries.length, pack.parts.size);
    const wait = pause();
    if (wait !== undefined) await wait;
    entries.push("entry" in part ? { ...part.entry, path: part.path } : await packed(part.path, part.bytes, pause));
  }
  work.onProgress?.(entries.length, pack.parts.size);
  return writeZip(entries);
}
