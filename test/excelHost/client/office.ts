/** The common API as far as the product asks it: hand-made, since Microsoft's needs a real host to start at all. */
import { hasSet, type Profile } from "../profiles";

const PLATFORMS = { web: "OfficeOnline", windows: "PC", mac: "Mac" } as const;

type Done = (result: object) => void;
type Handler = (args: object) => void;

export interface OfficeStub {
  /** What office.js lays down before the library of Excel is loaded. */
  readonly office: Record<string, unknown>;
  /** Tells the page that another cell is selected. */
  selectionChanged(): void;
  /** The workbook's file: what `getFileAsync` gives, and how that went. */
  readonly file: FileStub;
  /** Addresses that the product had opened in a browser of its own. */
  readonly opened: string[];
}

/** The file of the workbook as the shared API gives it, and the places where it breaks off. */
export interface FileStub {
  bytes: Uint8Array;
  /** Where the workbook lies: "" before it is saved. */
  url: string | null;
  /** How many were opened and not closed: Office holds two at most. */
  open: number;
  /** The size of slices that was asked for last, and the size that the host gives at most. */
  asked: number;
  largest: number;
  /** Numbers of the slices that were asked for, in their order. */
  readonly slices: number[];
  /** Answers the step with this code of the shared API. */
  fault: ((step: "open" | "slice" | "close", index: number) => number | undefined) | undefined;
  /** What a slice holds instead; undefined for what it should. */
  sliceData: ((index: number) => readonly number[] | undefined) | undefined;
}

type Answer = { readonly status: string; readonly value?: unknown; readonly error?: object };

const succeeded = (value?: unknown): Answer => ({ status: "succeeded", value });

/** Its message comes in the language of the user: nobody may show it. */
const failed = (code: number): Answer => ({
  status: "failed",
  error: { code, name: "stand-in", message: `stand-in: ${String(code)}` },
});

/** The most that a slice may have, and the most files that Office holds ("Document.getFileAsync", remarks). */
const SLICE = 4_194_304;
const MOST_FILES = 2;

/** Codes of the shared API: "Internal error", "Invalid parameter". */
const INTERNAL = 5001;
const INVALID = 2004;

/** Answers come later, as from another process. */
const later = (done: Done | undefined, answer: () => Answer): void => void setTimeout(() => done?.(answer()), 0);

/** Splits the file into slices, as `getFileAsync` does. */
function openFile(stub: FileStub, asked: number): Answer {
  stub.asked = asked;
  const code = stub.fault?.("open", 0) ?? (asked > SLICE ? INVALID : stub.open >= MOST_FILES ? INTERNAL : undefined);
  if (code !== undefined) return failed(code);
  const { bytes } = stub;
  const sliceSize = Math.min(asked, stub.largest);
  stub.open += 1;
  let closed = false;
  const sliceOf = (index: number): Answer => {
    const refused = closed ? INTERNAL : stub.fault?.("slice", index);
    if (refused !== undefined) return failed(refused);
    const data = stub.sliceData?.(index) ?? [...bytes.subarray(index * sliceSize, (index + 1) * sliceSize)];
    return succeeded({ index, size: data.length, data });
  };
  return succeeded({
    size: bytes.length,
    sliceCount: Math.ceil(bytes.length / sliceSize),
    getSliceAsync: (index: number, done: Done) => {
      stub.slices.push(index);
      later(done, () => sliceOf(index));
    },
    closeAsync: (done?: Done) => {
      if (!closed) stub.open -= 1;
      closed = true;
      later(done, () => {
        const refused = stub.fault?.("close", 0);
        return refused === undefined ? succeeded() : failed(refused);
      });
    },
  });
}

export function officeStub(profile: Profile): OfficeStub {
  const selection = new Set<Handler>();
  const platform = PLATFORMS[profile.platform];
  const stub: OfficeStub = {
    office: {},
    file: {
      bytes: new Uint8Array(),
      url: "https://example.com/shared/Fernhill%20Hall.xlsx",
      open: 0,
      asked: 0,
      largest: SLICE,
      slices: [],
      fault: undefined,
      sliceData: undefined,
    },
    opened: [],
    selectionChanged: () => {
      for (const handler of selection) handler({ type: "documentSelectionChanged" });
    },
  };
  const document = {
    addHandlerAsync: (_: string, handler: Handler, done: Done) => {
      selection.add(handler);
      done(succeeded());
    },
    removeHandlerAsync: (_: string, { handler }: { handler: Handler }, done: Done) => {
      selection.delete(handler);
      done(succeeded());
    },
    getFileAsync: (_: string, options: { sliceSize?: number } | Done, done?: Done) => {
      const [size, call] = typeof options === "function" ? [SLICE, options] : [options.sliceSize ?? SLICE, done];
      later(call, () => openFile(stub.file, size));
    },
    get url() {
      return stub.file.url;
    },
  };
  const info = { host: "Excel", platform };
  Object.assign(stub.office, {
    context: {
      requirements: { isSetSupported: (name: string, version?: string) => hasSet(profile, name, version) },
      platform,
      host: "Excel",
      diagnostics: { platform, host: "Excel", version: "16.0.19000.20000" },
      document,
      displayLanguage: "en-US",
      contentLanguage: "en-US",
      ui: { openBrowserWindow: (address: string) => void stub.opened.push(address) },
    },
    EventType: { DocumentSelectionChanged: "documentSelectionChanged" },
    HostType: { Excel: "Excel" },
    PlatformType: { PC: "PC", OfficeOnline: "OfficeOnline", Mac: "Mac" },
    Promise,
    onReady: (call?: (found: object) => unknown) => Promise.resolve(info).then((found) => call?.(found) ?? found),
  });
  return stub;
}
