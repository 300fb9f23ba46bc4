/** Deflates: large files by the platform's own packer, which is several times as fast, small ones at once. */
import { Deflate } from "fflate";

export interface Packer {
  push(piece: Uint8Array, isLast: boolean): Promise<void> | undefined;
  /** All pieces have come out. */
  done(): Promise<void> | undefined;
}

type Out = (piece: Uint8Array) => void;

function scriptPacker(out: Out): Packer {
  const deflate = new Deflate({ level: 6 }, out);
  return {
    push(piece, isLast) {
      // The packer may keep and change what it is given.
      deflate.push(piece.slice(), isLast);
      return undefined;
    },
    done: () => undefined,
  };
}

function platformPacker(out: Out): Packer {
  const { readable, writable } = new CompressionStream("deflate-raw");
  const writer = writable.getWriter();
  const reader = readable.getReader();
  const read = async (): Promise<void> => {
    for (let next = await reader.read(); !next.done; next = await reader.read()) out(next.value);
  };
  const reading = read();
  return {
    async push(piece, isLast) {
      await writer.write(piece.slice());
      if (isLast) await writer.close();
    },
    done: () => reading,
  };
}

/** Below this a stream costs more than it saves. */
const LARGE = 131_072;

function hasPlatformPacker(): boolean {
  try {
    return typeof CompressionStream === "function" && new CompressionStream("deflate-raw") !== undefined;
  } catch {
    // Known without this format.
    return false;
  }
}

export function packerFor(length: number, out: Out): Packer {
  return length >= LARGE && hasPlatformPacker() ? platformPacker(out) : scriptPacker(out);
}
