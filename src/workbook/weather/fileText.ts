/** The text of a file that may be packed. */
import { Gunzip, unzipSync } from "fflate";

/** More would be no year of readings. */
const MOST_BYTES = 200_000_000;

const isGzip = (bytes: Uint8Array): boolean => bytes[0] === 0x1f && bytes[1] === 0x8b;
const isZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 3;

const TOO_LARGE = "unpacked, the file is larger than 200 MB";
/** Bytes that are unpacked at a time, so that a small file can't fill the memory. */
const PIECE = 65_536;

function fromGzip(bytes: Uint8Array): Uint8Array {
  const pieces: Uint8Array[] = [];
  let total = 0;
  const unpacking = new Gunzip((piece) => {
    pieces.push(piece);
    total += piece.length;
  });
  for (let from = 0; from < bytes.length; from += PIECE) {
    try {
      unpacking.push(bytes.subarray(from, from + PIECE), from + PIECE >= bytes.length);
    } catch {
      throw new Error("the packed file is damaged or cut off");
    }
    if (total > MOST_BYTES) throw new Error(TOO_LARGE);
  }
  const whole = new Uint8Array(total);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}

/** The one weather file of an archive. */
function fromZip(bytes: Uint8Array): Uint8Array {
  const names: string[] = [];
  const wanted = /\.(epw|csv|txt|tsv)$/i;
  const parts = unzipSync(bytes, {
    filter: ({ name, originalSize }) => {
      names.push(name);
      return wanted.test(name) && originalSize <= MOST_BYTES;
    },
  });
  const found = Object.entries(parts);
  const [first] = found.filter(([name]) => /\.epw$/i.test(name)).concat(found);
  if (names.includes("[Content_Types].xml"))
    throw new Error("this is a workbook: open it in place of dropping it here");
  if (first === undefined) throw new Error("the archive holds no EPW and no CSV file");
  return first[1];
}

function unpacked(bytes: Uint8Array): Uint8Array {
  if (isZip(bytes)) return fromZip(bytes);
  return isGzip(bytes) ? fromGzip(bytes) : bytes;
}

/** @throws Error where the file can't be unpacked or is no text */
export function fileText(bytes: Uint8Array): string {
  const plain = unpacked(bytes);
  if (plain.byteLength > MOST_BYTES) throw new Error("the file is larger than 200 MB");
  const utf16 =
    plain[0] === 0xff && plain[1] === 0xfe ? "utf-16le" : plain[0] === 0xfe && plain[1] === 0xff ? "utf-16be" : "";
  if (utf16 !== "") return new TextDecoder(utf16).decode(plain);
  if (plain.subarray(0, 2000).includes(0)) throw new Error("this is no text: give an EPW, TMY3 or other CSV file");
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(plain);
  } catch {
    return new TextDecoder("latin1").decode(plain);
  }
}
