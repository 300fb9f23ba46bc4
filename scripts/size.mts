/** `npm run -s size`: what functions.js is made of, and the notes beside it: data, texts, units and code, in bytes as minified and gzipped. */
import { gzipSync } from "node:zlib";
import { endWithReader } from "../src/preview/cli/endWithReader";
import { functionsBundle, notesBundle } from "./bundle";
import { sizesByKind, sizesByFolder, textBytes } from "./release/sizes";

endWithReader();

const { text, parts } = await functionsBundle("size");
const notes = (await notesBundle("size")).text;

const zipped = (bundle: string): string => String(gzipSync(bundle, { level: 9 }).length);
const line = ([name, bytes]: readonly [string, number]): string => {
  const share = ((100 * bytes) / text.length).toFixed(1);
  return `${name.padEnd(34)}${String(bytes).padStart(9)}${share.padStart(7)} %`;
};

// Printed as one, when esbuild has ended: it doesn't bear to be stopped by a reader that has seen enough.
const lines = [
  `functions.js: ${String(text.length)} bytes minified, ${zipped(text)} gzipped`,
  "",
  ...[...sizesByKind(parts)].map(line),
  "",
  `Of all, in string literals: ${String(textBytes(text))} bytes`,
  "",
  ...[...sizesByFolder(parts)].map(line),
  "",
  `notes.js, which loads after it: ${String(notes.length)} bytes, ${zipped(notes)} gzipped`,
];
process.stdout.write(`${lines.join("\n")}\n`);
