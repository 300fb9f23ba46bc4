/** Writes a zip: packed files as they came, new ones deflated. Times are those of 1980, so that no clock shows. */
import type { NextSlice } from "../../timeSlices";
import { crc32 } from "./crc";
import type { ZipEntry } from "./directory";
import { packerFor } from "./packer";

const STEP = 65_536;
const VERSION = 20;
/** Names are UTF-8: APPNOTE 4.4.4, bit 11. */
const UTF8 = 0x0800;
/** 1 January 1980. */
const FIRST_DAY = 0x0021;

/** Packs bytes with pauses between. */
export async function packed(path: string, bytes: Uint8Array, pause: NextSlice): Promise<ZipEntry> {
  const pieces: Uint8Array[] = [];
  const packer = packerFor(bytes.length, (piece) => pieces.push(piece));
  let sum = 0;
  for (let at = 0; at < bytes.length || at === 0; at += STEP) {
    const piece = bytes.subarray(at, at + STEP);
    sum = crc32(piece, sum);
    await packer.push(piece, at + STEP >= bytes.length);
    const wait = pause();
    if (wait !== undefined) await wait;
  }
  await packer.done();
  const small = joined(pieces);
  const isSmaller = small.length < bytes.length;
  return { path, method: isSmaller ? 8 : 0, crc: sum, size: bytes.length, packed: isSmaller ? small : bytes };
}

export function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

/** The fields that local header and directory share, from "version needed" on. */
function putShared(view: DataView, at: number, entry: ZipEntry, name: Uint8Array): void {
  view.setUint16(at, VERSION, true);
  view.setUint16(at + 2, UTF8, true);
  view.setUint16(at + 4, entry.method, true);
  view.setUint16(at + 8, FIRST_DAY, true);
  view.setUint32(at + 10, entry.crc, true);
  view.setUint32(at + 14, entry.packed.length, true);
  view.setUint32(at + 18, entry.size, true);
  view.setUint16(at + 22, name.length, true);
}

function localHeader(entry: ZipEntry, name: Uint8Array): Uint8Array {
  const header = new Uint8Array(30 + name.length);
  const view = new DataView(header.buffer);
  view.setUint32(0, 0x04034b50, true);
  putShared(view, 4, entry, name);
  header.set(name, 30);
  return header;
}

function centralHeader(entry: ZipEntry, name: Uint8Array, local: number): Uint8Array {
  const header = new Uint8Array(46 + name.length);
  const view = new DataView(header.buffer);
  view.setUint32(0, 0x02014b50, true);
  view.setUint16(4, VERSION, true);
  putShared(view, 6, entry, name);
  view.setUint32(42, local, true);
  header.set(name, 46);
  return header;
}

function endRecord(count: number, start: number, length: number): Uint8Array {
  const record = new Uint8Array(22);
  const view = new DataView(record.buffer);
  view.setUint32(0, 0x06054b50, true);
  view.setUint16(8, count, true);
  view.setUint16(10, count, true);
  view.setUint32(12, length, true);
  view.setUint32(16, start, true);
  return record;
}

/** @param entries at most 65,535 and 4 GB together: the limits for opening are far below */
export function writeZip(entries: readonly ZipEntry[]): Uint8Array {
  const pieces: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let at = 0;
  for (const entry of entries) {
    const name = new TextEncoder().encode(entry.path);
    const header = localHeader(entry, name);
    directory.push(centralHeader(entry, name, at));
    pieces.push(header, entry.packed);
    at += header.length + entry.packed.length;
  }
  const length = directory.reduce((sum, piece) => sum + piece.length, 0);
  return joined([...pieces, ...directory, endRecord(entries.length, at, length)]);
}
