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
  /** The bytes that `getFileAsync` gives. */
  file: Uint8Array;
  /** Addresses that the product had opened in a browser of its own. */
  readonly opened: string[];
}

const succeeded = (value?: unknown): object => ({ status: "succeeded", value });

/** Splits the file into slices, as `getFileAsync` does. */
function fileOf(bytes: Uint8Array, sliceSize: number): object {
  return {
    size: bytes.length,
    sliceCount: Math.ceil(bytes.length / sliceSize),
    getSliceAsync: (index: number, done: Done) => {
      const data = [...bytes.subarray(index * sliceSize, (index + 1) * sliceSize)];
      done(succeeded({ index, size: data.length, data }));
    },
    closeAsync: (done?: Done) => done?.(succeeded()),
  };
}

const SLICE = 4_194_304;

export function officeStub(profile: Profile): OfficeStub {
  const selection = new Set<Handler>();
  const platform = PLATFORMS[profile.platform];
  const stub: OfficeStub = {
    office: {},
    file: new Uint8Array(),
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
      call?.(succeeded(fileOf(stub.file, size)));
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
