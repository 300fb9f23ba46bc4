/** The workbook's own bytes and name, from the API that all Office programs share. */
import { CANCELLED } from "../timeSlices";

/** Bytes of a slice: the most that Office gives at once. */
const SLICE = 4_194_304;

const NOT_HERE = "this Excel doesn't give an add-in the workbook's file";

/** What the shared API names in English whatever the user's language is. */
const PERMISSION_DENIED = 7000;

function sentenceOf({ code }: Office.Error): string {
  if (code === PERMISSION_DENIED)
    return "Excel may not give an add-in this workbook's file: its owner or a label on it forbids that";
  return `Excel didn't give the workbook's file (${String(code)}): finish typing, save the workbook and try again`;
}

type Done<T> = (result: Office.AsyncResult<T>) => void;

const answered = <T>(ask: (done: Done<T>) => void): Promise<T> =>
  new Promise((resolve, reject) => {
    ask(({ status, value, error }) => {
      // The library's own enumerations are there only in Office.
      if (String(status) === "succeeded") resolve(value);
      else reject(new Error(sentenceOf(error)));
    });
  });

const supported = (): boolean => Office.context.requirements.isSetSupported("CompressedFile", "1.1");

async function slicesOf(file: Office.File, signal: AbortSignal | undefined): Promise<Uint8Array> {
  const bytes = new Uint8Array(file.size);
  let at = 0;
  for (let index = 0; index < file.sliceCount; index++) {
    if (signal?.aborted === true) throw CANCELLED;
    const slice = await answered<Office.Slice>((done) => file.getSliceAsync(index, done));
    const piece = Uint8Array.from(slice.data as ArrayLike<number>);
    if (at + piece.length > bytes.length) throw new Error("Excel gave more of the file than it has: try again");
    bytes.set(piece, at);
    at += piece.length;
  }
  if (at < bytes.length) throw new Error("Excel gave only a part of the file: try again");
  return bytes;
}

/**
 * The workbook as a file would hold it now, changes that weren't saved included.
 * @throws a sentence where Excel doesn't give it; CANCELLED once the signal is aborted
 */
export async function documentBytes(signal?: AbortSignal): Promise<Uint8Array> {
  if (!supported()) throw new Error(NOT_HERE);
  const file = await answered<Office.File>((done) =>
    Office.context.document.getFileAsync("compressed" as unknown as Office.FileType, { sliceSize: SLICE }, done),
  );
  try {
    return await slicesOf(file, signal);
  } finally {
    // Office holds two files at most. The first error is the true one.
    await answered<void>((done) => file.closeAsync(done)).catch(() => undefined);
  }
}

const decoded = (text: string): string => {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
};

/** "bid.xlsx" of an address on the web or a path on a disk. */
export async function documentName(): Promise<string> {
  const address = (Office.context.document.url as string | null) ?? "";
  const last = /[^/\\]*$/.exec(address.replace(/[?#].*$/, ""))?.[0] ?? "";
  return /^https?:/i.test(address) ? decoded(last) : last;
}
