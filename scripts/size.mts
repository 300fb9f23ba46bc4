/** `npm run -s size`: what functions.js is made of, and the notes beside it: data, texts, units and code, in bytes as minified and gzipped. */
import { gzipSync } from "node:zlib";
import { functionsBundle, notesBundle } from "./bundle";
import { sizesByKind, sizesByFolder, textBytes } from "./release/sizes";
import { endWithReader } from "../src/preview/cli/endWithReader";

endWithReader();

const { text, parts } = await functionsBundle("size");
const zipped = gzipSync(text, { level: 9 }).length;
const line = (name: string, bytes: number): string => {
  const share = ((100 * bytes) / text.length).toFixed(1);
  return `${name.padEnd(34)}${String(bytes).padStart(9)}${share.padStart(7)} %\n`;
};

process.stdout.write(`functions.js: ${String(text.length)} bytes minified, ${String(zipped)} gzipped\n\n`);
for (const [name, bytes] of sizesByKind(parts)) process.stdout.write(line(name, bytes));
process.stdout.write(`\nOf all, in string literals: ${String(textBytes(text))} bytes\n\n`);
for (const [folder, bytes] of sizesByFolder(parts)) process.stdout.write(line(folder, bytes));

const notes = (await notesBundle("size")).text;
const zippedNotes = gzipSync(notes, { level: 9 }).length;
process.stdout.write(
  `\nnotes.js, which loads after it: ${String(notes.length)} bytes, ${String(zippedNotes)} gzipped\n`,
);
