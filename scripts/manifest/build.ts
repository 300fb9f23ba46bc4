import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import type { Build } from "./check";

const PNG_SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

/** Width and height, px, from a PNG's header chunk (W3C PNG, section 11.2.1); undefined when it isn't a PNG. */
export function pngSize(bytes: Buffer): { width: number; height: number } | undefined {
  const isPng = bytes.length >= 24 && bytes.subarray(0, 8).equals(PNG_SIGNATURE);
  if (!isPng || bytes.toString("latin1", 12, 16) !== "IHDR") return undefined;
  return { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) };
}

/** A folder of built files as the checker reads it. A missing or broken functions.json reads as undefined. */
export function openBuild(folder: string): Build {
  const at = (path: string): string => join(folder, path);
  const readFunctions = (): unknown => {
    try {
      return JSON.parse(readFileSync(at("functions.json"), "utf8"));
    } catch {
      return undefined;
    }
  };
  return {
    has: (path) => existsSync(at(path)) && statSync(at(path)).isFile(),
    size: (path) => statSync(at(path)).size,
    png: (path) => pngSize(readFileSync(at(path))),
    functions: readFunctions(),
  };
}
