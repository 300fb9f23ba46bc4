import type { SheetBook } from "../host/sheetBook";
import type { FormulaTexts } from "../file/formulaTexts";
import type { WorkbookFile } from "../file/workbookFile";
import { downloadFile, WORKBOOK_TYPE } from "../../workbook/downloadFile";
import type { DeliverPicture, WorkbookFiles } from "../host/previewWorkbook";
import { reportLine, showReport } from "./opening";

/** Opening and saving .xlsx files from the page. */

export interface FileControls {
  readonly open: HTMLElement;
  readonly save: HTMLElement;
  readonly file: HTMLInputElement;
  readonly cancel: HTMLElement;
  /** Shows a sentence on what happened. */
  readonly status: HTMLElement;
  /** Lists what can't be read of an opened file, and what differs. */
  readonly report: HTMLElement;
}

/** Where the page puts hand-over copies. */
export const deliverFile: WorkbookFiles["deliver"] = async (bytes, name) => {
  downloadFile(bytes as Uint8Array<ArrayBuffer>, name, WORKBOOK_TYPE);
  return `the file ${name}`;
};

/** What some system doesn't take in a file's name. */
const ODD_SIGNS = /[^\w .,-]+/g;

/** Where the page puts pictures. */
export const deliverPicture: DeliverPicture = async ({ name, png }) => {
  const file = `${name.replace(ODD_SIGNS, "")}.png`;
  downloadFile(
    Uint8Array.from(atob(png), (sign) => sign.charCodeAt(0)),
    file,
    "image/png",
  );
  return file;
};

/** Slices of work with progress in the status line, and an end by Cancel. */
interface Work {
  readonly signal: AbortSignal;
  onProgress(done: number, of: number): void;
}

/** @returns the workbook as a file */
export function connectFiles(
  book: SheetBook,
  texts: FormulaTexts,
  controls: FileControls,
): Pick<WorkbookFiles, "name" | "savedBytes"> {
  const { open, save, file, status, cancel, report } = controls;
  let name = "Workbook.xlsx";
  let ending: AbortController | undefined;
  let behind: Promise<WorkbookFile> | undefined;
  const workbook = (): Promise<WorkbookFile> =>
    (behind ??= import(/* webpackChunkName: "xlsx" */ "../file/workbookFile").then(({ workbookFile }) => {
      const made = workbookFile(book, texts);
      made.onRefusal((sentence) => (status.textContent = sentence));
      return made;
    }));
  const attempt = async (verb: string, work: (slices: Work) => Promise<string>): Promise<void> => {
    ending?.abort();
    const own = new AbortController();
    ending = own;
    cancel.hidden = false;
    try {
      const onProgress = (done: number, of: number): void => {
        if (of > 0 && !own.signal.aborted) status.textContent = `${verb} ${Math.round((100 * done) / of)} %`;
      };
      status.textContent = await work({ signal: own.signal, onProgress });
    } catch (thrown) {
      const said = thrown instanceof Error ? thrown.message : String(thrown);
      status.textContent = own.signal.aborted ? "Cancelled: the workbook is as it was." : said;
    } finally {
      if (ending === own) cancel.hidden = true;
    }
  };
  const load = async (chosen: File, work: Work): Promise<string> => {
    const there = await workbook();
    const question = `${name} has changes that aren't saved. Open ${chosen.name} and lose them?`;
    if (there.isEdited() && !confirm(question)) return `${name} stays open.`;
    const bytes = new Uint8Array(await chosen.arrayBuffer());
    const found = await there.open(bytes, work, () => {
      name = chosen.name;
      cancel.hidden = true;
      report.hidden = true;
      status.textContent = `${name} shows the file's results, which are being checked…`;
    });
    showReport(report, found, (cell) => book.select(cell));
    return `${name} is open. ${reportLine(found)}`;
  };
  const store = async (work: Work): Promise<string> => {
    const { bytes, sentences } = await (await workbook()).save(work);
    downloadFile(bytes as Uint8Array<ArrayBuffer>, name, WORKBOOK_TYPE);
    const usual = "Excel shows formulas of an add-in that it lacks with their last result.";
    return [`${name} is saved.`, ...sentences, usual].join(" ");
  };
  open.addEventListener("click", () => file.click());
  cancel.addEventListener("click", () => ending?.abort());
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    if (chosen === undefined) return;
    // The same file may be chosen again.
    void attempt("Opening…", (work) => load(chosen, work)).finally(() => (file.value = ""));
  });
  save.addEventListener("click", () => void attempt("Saving…", store));
  return { name: () => name, savedBytes: async () => (await workbook()).savedBytes() };
}
