/** The files of a build as a server sends them: texts compressed once and kept, each with a tag of its content. */
import { createHash } from "node:crypto";
import { readFile, stat } from "node:fs/promises";
import { extname } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants, gzip } from "node:zlib";

const CODINGS = ["br", "gzip"] as const;
export type Coding = (typeof CODINGS)[number];

/** Pictures, fonts and workbooks are compressed already. */
const TEXTS = new Set([".html", ".js", ".cjs", ".css", ".json", ".xml", ".svg", ".txt", ".csv"]);

/** Below this many bytes compressing saves no packet. */
const LEAST_BYTES = 1_000;

/** Levels that take about half a second for the sheet engine, and leave a quarter of it. */
const GZIP_LEVEL = 6;
const BROTLI_QUALITY = 6;

const brotli = promisify(brotliCompress);
const zipped = promisify(gzip);

const compress: Readonly<Record<Coding, (content: Buffer) => Promise<Buffer>>> = {
  br: (content) =>
    brotli(content, {
      params: { [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY, [constants.BROTLI_PARAM_SIZE_HINT]: content.length },
    }),
  gzip: (content) => zipped(content, { level: GZIP_LEVEL }),
};

/** The best coding that a request accepts; undefined for none. `q=0` refuses one. */
export function acceptedCoding(accepted: string | undefined): Coding | undefined {
  const named = (accepted ?? "").split(",").flatMap((part) => {
    const [name = "", ...rules] = part.split(";").map((word) => word.trim().toLowerCase());
    return rules.some((rule) => /^q=0(\.0*)?$/.test(rule)) ? [] : [name];
  });
  return CODINGS.find((coding) => named.includes(coding));
}

export interface ServedFile {
  readonly body: Buffer;
  readonly coding: Coding | undefined;
  /** An entity tag, in quotes. */
  readonly tag: string;
}

interface Kept {
  /** When the file was written and how long it is: another state is read again. */
  readonly state: string;
  readonly file: Promise<ServedFile>;
}

async function prepare(path: string, coding: Coding | undefined): Promise<ServedFile> {
  const content = await readFile(path);
  const used = content.length < LEAST_BYTES || !TEXTS.has(extname(path)) ? undefined : coding;
  const tag = `"${createHash("sha256").update(content).digest("base64url").slice(0, 22)}${used === undefined ? "" : `-${used}`}"`;
  return { body: used === undefined ? content : await compress[used](content), coding: used, tag };
}

/**
 * Reads files and keeps what it has compressed.
 * @returns a reader that rejects where there is no such file
 */
export function servedFiles(): (path: string, coding: Coding | undefined) => Promise<ServedFile> {
  const kept = new Map<string, Kept>();
  return async (path, coding) => {
    const { mtimeMs, size } = await stat(path);
    const key = `${coding ?? ""} ${path}`;
    const state = `${mtimeMs} ${size}`;
    const known = kept.get(key);
    if (known?.state === state) return known.file;
    const file = prepare(path, coding);
    kept.set(key, { state, file });
    file.catch(() => kept.delete(key));
    return file;
  };
}
