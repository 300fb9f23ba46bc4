/** The check sum of zip files: CRC-32 (ISO 3309), as PKWARE's APPNOTE 4.4.7 asks. */

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? 0xedb88320 ^ (rest >>> 1) : rest >>> 1;
  return rest;
});

/** @param before the sum of the bytes that came before these */
export function crc32(bytes: Uint8Array, before = 0): number {
  let sum = ~before;
  for (let at = 0; at < bytes.length; at++) sum = (TABLE[(sum ^ (bytes[at] ?? 0)) & 255] ?? 0) ^ (sum >>> 8);
  return ~sum >>> 0;
}
