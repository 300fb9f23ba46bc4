/** Reads a zip's central directory: PKWARE's APPNOTE 6.3, 4.3. No byte is unpacked here. */
import { brokenFile, refusal } from "../refusal";
import { checkPacked, checkParts, type PackageLimits } from "./limits";
import { isZip, notZip } from "./format";

/** One file of a zip, still packed. */
export interface ZipEntry {
  readonly path: string;
  /** 0 stored, 8 deflated. */
  readonly method: number;
  readonly crc: number;
  /** Unpacked size as the directory says. */
  readonly size: number;
  readonly packed: Uint8Array;
}

const END = 0x06054b50;
const END_64 = 0x06064b50;
const LOCATOR_64 = 0x07064b50;
const CENTRAL = 0x02014b50;
const LOCAL = 0x04034b50;
const END_LENGTH = 22;
/** An end record may be followed by a comment of so many bytes. */
const LONGEST_COMMENT = 65_535;
const FULL_32 = 0xffffffff;
const FULL_16 = 0xffff;

interface Directory {
  readonly count: number;
  readonly start: number;
}

const long = (view: DataView, at: number): number => Number(view.getBigUint64(at, true));

function findEnd(view: DataView): number {
  const least = Math.max(0, view.byteLength - END_LENGTH - LONGEST_COMMENT);
  for (let at = view.byteLength - END_LENGTH; at >= least; at--) if (view.getUint32(at, true) === END) return at;
  throw brokenFile("the zip has no end, so it was probably not copied or downloaded whole");
}

function directoryOf(view: DataView): Directory {
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const start = view.getUint32(end + 16, true);
  if (count !== FULL_16 && start !== FULL_32) return { count, start };
  const locator = end - 20;
  if (locator < 0 || view.getUint32(locator, true) !== LOCATOR_64) return { count, start };
  const record = long(view, locator + 8);
  if (record + 56 > view.byteLength || view.getUint32(record, true) !== END_64)
    throw brokenFile("its zip64 end is wrong");
  return { count: long(view, record + 32), start: long(view, record + 48) };
}

interface Sizes {
  size: number;
  packed: number;
  local: number;
}

/** Sizes above 4 GB, or of writers that always use the long form, are in an extra field: APPNOTE 4.5.3. */
function longSizes(view: DataView, from: number, end: number, sizes: Sizes): Sizes {
  const found = { ...sizes };
  for (let at = from; at + 4 <= end; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) !== 1) continue;
    let next = at + 4;
    for (const key of ["size", "packed", "local"] as const) {
      if (found[key] !== FULL_32 || next + 8 > end) continue;
      found[key] = long(view, next);
      next += 8;
    }
  }
  return found;
}

function pathOf(bytes: Uint8Array): string {
  const path = new TextDecoder().decode(bytes).replaceAll("\\", "/").replace(/^\/+/, "");
  if (path.split("/").includes("..")) throw brokenFile(`a part is called ${JSON.stringify(path)}`);
  return path;
}

/** The packed bytes behind a local header. */
function packedAt(bytes: Uint8Array, view: DataView, { local, packed }: Sizes, path: string): Uint8Array {
  if (local + 30 > bytes.length || view.getUint32(local, true) !== LOCAL) throw brokenFile(`${path} is missing`);
  const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  if (start + packed > bytes.length) throw brokenFile(`${path} is cut off`);
  return bytes.subarray(start, start + packed);
}

function checkEntry(path: string, flags: number, method: number): void {
  if ((flags & 1) !== 0) throw refusal("encrypted", "This zip is encrypted with a password and can't be read.");
  if (method !== 0 && method !== 8) throw brokenFile(`${path} is packed by a method that workbooks don't use`);
}

/** The files of a zip in the order of its directory. */
export function readDirectory(bytes: Uint8Array, limits: PackageLimits): readonly ZipEntry[] {
  checkPacked(bytes.length, limits);
  if (!isZip(bytes)) throw notZip(bytes);
  if (bytes.length < END_LENGTH) throw brokenFile("it ends too early");
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { count, start } = directoryOf(view);
  checkParts(count, limits);
  const entries: ZipEntry[] = [];
  let at = start;
  for (let number = 0; number < count; number++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== CENTRAL)
      throw brokenFile("its list of parts is cut off");
    const nameEnd = at + 46 + view.getUint16(at + 28, true);
    const extraEnd = nameEnd + view.getUint16(at + 30, true);
    if (extraEnd > bytes.length) throw brokenFile("its list of parts is cut off");
    const path = pathOf(bytes.subarray(at + 46, nameEnd));
    const method = view.getUint16(at + 10, true);
    checkEntry(path, view.getUint16(at + 8, true), method);
    const sizes = longSizes(view, nameEnd, extraEnd, {
      size: view.getUint32(at + 24, true),
      packed: view.getUint32(at + 20, true),
      local: view.getUint32(at + 42, true),
    });
    const crc = view.getUint32(at + 16, true);
    if (!path.endsWith("/"))
      entries.push({ path, method, crc, size: sizes.size, packed: packedAt(bytes, view, sizes, path) });
    at = extraEnd + view.getUint16(at + 32, true);
  }
  checkOverlap(entries);
  return entries;
}

/** No two parts may share their bytes or their name: a zip that unpacks one block many times is a trap. */
function checkOverlap(entries: readonly ZipEntry[]): void {
  const sorted = [...entries].sort((a, b) => a.packed.byteOffset - b.packed.byteOffset);
  sorted.forEach(({ path, packed }, at) => {
    const next = sorted[at + 1]?.packed;
    if (next !== undefined && next.length > 0 && packed.byteOffset + packed.length > next.byteOffset)
      throw brokenFile(`${path} overlaps another part`);
  });
  const paths = new Set(entries.map(({ path }) => path.toLowerCase()));
  if (paths.size < entries.length) throw brokenFile("two of its parts have one name");
}
