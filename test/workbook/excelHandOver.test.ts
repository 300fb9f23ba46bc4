/** Hand-over from Excel's own bytes, on every profile: the file in slices, the copy, and what happens where Excel refuses. */
import { afterEach, describe, expect, it, vi } from "vitest";
import { startPanelJobs } from "../../src/taskpane/jobs/panelJobs";
import { jobRunner } from "../../src/taskpane/jobs/runJob";
import { draftCopy } from "../../src/taskpane/model/handOver";
import { copyName } from "../../src/workbook/copy/copyName";
import { CANCELLED } from "../../src/workbook/timeSlices";
import { PROFILES, WEB, WINDOWS_10, WINDOWS_20 } from "../excelHost";
import { workersHere } from "../taskpane/workersHere";
import { engine, FACTS, fullWithUs, readSheets, VELOCITY } from "./copy/books";
import type { OfficeStub } from "../excelHost/client/office";
import { onExcel, RAW, sentenceOf } from "./onExcel";

const SLICE = 4_194_304;
const BYTES = fullWithUs();

/** Three slices, the last one short: this host gives less at once than it is asked for. */
function giveThreeSlices({ file }: OfficeStub): Uint8Array {
  file.largest = 100;
  file.bytes = Uint8Array.from({ length: 205 }, (_, at) => at % 251);
  return file.bytes;
}

interface Downloads {
  readonly names: string[];
  readonly blobs: Blob[];
}

/** The least of a page that a download asks for. */
function pageWithDownloads(): Downloads {
  const got: Downloads = { names: [], blobs: [] };
  const link = { href: "", download: "", click: () => void got.names.push(link.download) };
  vi.stubGlobal("document", { createElement: () => link });
  vi.spyOn(URL, "createObjectURL").mockImplementation((blob) => {
    got.blobs.push(blob as Blob);
    return "blob:copy";
  });
  vi.spyOn(URL, "revokeObjectURL").mockImplementation(() => undefined);
  return got;
}

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

const bytesOf = (base64: string): Uint8Array => Uint8Array.from(Buffer.from(base64, "base64"));

describe.each(PROFILES)("A hand-over in Excel, $name", (profile) => {
  const on = onExcel(profile, "Loop");

  it("reads the workbook's file in slices of at most 4 MB, in order, and closes it", async () => {
    const file = giveThreeSlices(on.excel.office);
    expect(Buffer.compare(await on.book.documentBytes(), file)).toBe(0);
    expect(on.excel.office.file).toMatchObject({ asked: SLICE, slices: [0, 1, 2], open: 0 });
  });

  it("makes the copy of these bytes alone, in the worker, and asks Excel to open it; the workbook stays", async () => {
    on.excel.office.file.bytes = BYTES;
    const jobs = startPanelJobs(workersHere(jobRunner).start);
    const draft = await draftCopy({ engine, jobs }, await on.book.documentBytes(), {});
    const copy = await draft!.make({ choice: { sheets: ["Loop"] }, others: "live", facts: FACTS }, {});
    expect(jobs.place()).toBe("worker");
    const requests = on.host.traffic.requests();
    expect(await on.book.deliverCopy(copy.bytes, copyName(await on.book.documentName()))).toBe(
      "Excel was asked to open the copy as a new workbook: save it there under a name.",
    );
    expect(on.host.traffic.requests() - requests).toBeLessThanOrEqual(2);
    const sheets = await readSheets(bytesOf(on.host.created[0] ?? ""));
    expect([...sheets.keys()]).toEqual(["Prices", "Loop", "Read me", "Record", "For the supplier"]);
    expect(sheets.get("Loop")?.at("B40")).toMatchObject({ value: VELOCITY });
    expect(on.titles()).toEqual(["Loop"]);
    expect(await on.book.documentName()).toBe("Fernhill Hall.xlsx");
  });

  it("says in its own words why it can't read the file, at whatever step, and leaves none open", async () => {
    giveThreeSlices(on.excel.office);
    const steps = [
      ["open", 0],
      ["slice", 0],
      ["slice", 1],
      ["slice", 2],
    ] as const;
    for (const [wanted, at] of steps)
      for (const [code, said] of [
        [5001, "(5001)"],
        [7000, "its owner or a label on it forbids that"],
      ] as const) {
        on.excel.office.file.fault = (step, index) => (step === wanted && index === at ? code : undefined);
        const text = await sentenceOf(on.book.documentBytes());
        expect(text, `${wanted} ${at}`).toContain(said);
        expect(text).not.toMatch(RAW);
        expect(on.excel.office.file.open).toBe(0);
      }
  });

  it("takes the file though Excel fails to close it", async () => {
    on.excel.office.file.bytes = BYTES;
    on.excel.office.file.fault = (step) => (step === "close" ? 5001 : undefined);
    expect(Buffer.compare(await on.book.documentBytes(), BYTES)).toBe(0);
  });

  it("refuses a file of which a slice is short or long", async () => {
    giveThreeSlices(on.excel.office);
    on.excel.office.file.sliceData = (index) => (index === 1 ? [1, 2, 3] : undefined);
    expect(await sentenceOf(on.book.documentBytes())).toContain("only a part of the file");
    on.excel.office.file.sliceData = (index) => (index === 2 ? [1, 2, 3, 4, 5, 6] : undefined);
    expect(await sentenceOf(on.book.documentBytes())).toContain("more of the file than it has");
    expect(on.excel.office.file.open).toBe(0);
  });

  it("ends between two slices once it is cancelled, and closes the file", async () => {
    giveThreeSlices(on.excel.office);
    const ending = new AbortController();
    on.excel.office.file.fault = (_, index) => void (index === 1 && ending.abort());
    await expect(on.book.documentBytes(ending.signal)).rejects.toBe(CANCELLED);
    expect(on.excel.office.file).toMatchObject({ slices: [0, 1], open: 0 });
  });

  it("gives a copy that Excel refuses as a download and says both", async () => {
    const downloads = pageWithDownloads();
    for (const code of ["AccessDenied", "GeneralException", "RequestPayloadSizeLimitExceeded"]) {
      on.host.fault = ({ label }) => (label === "trace" ? undefined : code);
      const text = await on.book.deliverCopy(BYTES, "copy.xlsx");
      expect(text).toMatch(/^Excel didn't open the copy \(.+\)\. It was given as a download: look for “copy.xlsx”/);
      expect(text).not.toMatch(RAW);
    }
    expect(downloads.names).toEqual(["copy.xlsx", "copy.xlsx", "copy.xlsx"]);
    expect(Buffer.compare(new Uint8Array(await downloads.blobs[0]!.arrayBuffer()), BYTES)).toBe(0);
    expect(on.host.created).toEqual([]);
  });

  it("knows the workbook's name on the web, on a disk, and that there is none", async () => {
    const names: string[] = [];
    for (const url of ["https://x.example/a%20b/c%20d.xlsx?web=1", "C:\\Jobs\\50% bid.xlsx", "", null]) {
      on.excel.office.file.url = url;
      names.push(await on.book.documentName());
    }
    expect(names).toEqual(["c d.xlsx", "50% bid.xlsx", "", ""]);
  });
});

describe("A copy above the limit of Excel on the web", () => {
  const on = onExcel(WEB, "Loop");

  it("is given as a download", async () => {
    const downloads = pageWithDownloads();
    const text = await on.book.deliverCopy(new Uint8Array(4_000_000), "copy.xlsx");
    expect(text).toContain("too large for Excel to take at once");
    expect(downloads.names).toEqual(["copy.xlsx"]);
  });

  it("fails with a sentence where there is no page to download to either", async () => {
    const text = await sentenceOf(on.book.deliverCopy(new Uint8Array(4_000_000), "copy.xlsx"));
    expect(text).toContain("it can't be downloaded here");
  });
});

describe("An Excel without the requirement sets", () => {
  const bare = { ...WINDOWS_20, name: "no file", sets: {} };
  const on = onExcel(bare, "Loop");

  it("is asked for no file", async () => {
    expect(await sentenceOf(on.book.documentBytes())).toBe("this Excel doesn't give an add-in the workbook's file");
    expect(on.excel.office.file.slices).toEqual([]);
  });
});

describe("An Excel that can't open a workbook for an add-in", () => {
  const on = onExcel({ ...WINDOWS_10, name: "Windows 1.7", api: "1.7" }, "Loop");

  it("isn't asked to; the copy is a download", async () => {
    const downloads = pageWithDownloads();
    expect(await on.book.deliverCopy(BYTES, "copy.xlsx")).toContain("this Excel can't open a workbook for an add-in");
    expect(downloads.names).toEqual(["copy.xlsx"]);
    expect(on.host.traffic.requests()).toBe(0);
  });
});
