import type { SheetBook } from "../host/sheetBook";
import type { FormulaTexts } from "../file/formulaTexts";
import type { WorkbookFile } from "../file/workbookFile";
import { downloadFile, WORKBOOK_TYPE } from "../../workbook/downloadFile";
import { LONG_SLICE, timeSlices } from "../../workbook/timeSlices";
import { startFileJobs } from "../file/jobs/pageFileJobs";
import type { DeliverPicture, WorkbookFiles } from "../host/previewWorkbook";
import { autosave, type Offer } from "./autosave";
import { workRunner, type Work } from "./fileWork";
import type { KeptBook } from "./keptBooks";
import { packBook, unpackBook } from "./packedBook";
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
  /** Offers a workbook that the browser kept. */
  readonly offer: Offer;
  /** Unfolds the panel. */
  showPanel(): void;
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

const pause = () => timeSlices({ slice: LONG_SLICE }, []);

const isWorkbookName = (name: string): boolean => /\.xls[a-z]?$/i.test(name);

/** Ctrl+S saves, and a workbook dropped anywhere on the page is opened; other files are the panel's, which is shown. */
function connectShortcuts(save: () => void, open: (file: File) => void, showPanel: () => void): void {
  addEventListener(
    "keydown",
    (event) => {
      if (event.key.toLowerCase() !== "s" || event.altKey || event.shiftKey || !(event.ctrlKey || event.metaKey))
        return;
      event.preventDefault();
      event.stopImmediatePropagation();
      save();
    },
    { capture: true },
  );
  const holdsFile = ({ dataTransfer }: DragEvent): boolean => dataTransfer?.types.includes("Files") === true;
  const mark = (dropping: boolean): void => void document.body.classList.toggle("dropping", dropping);
  const take = (event: DragEvent): boolean => {
    if (!holdsFile(event)) return false;
    event.preventDefault();
    event.stopImmediatePropagation();
    return true;
  };
  addEventListener("dragover", (event) => mark(take(event)), { capture: true });
  addEventListener("dragleave", ({ relatedTarget }) => relatedTarget === null && mark(false), { capture: true });
  addEventListener(
    "drop",
    (event) => {
      mark(false);
      const [dropped] = holdsFile(event) ? (event.dataTransfer?.files ?? []) : [];
      if (dropped === undefined) return;
      if (!isWorkbookName(dropped.name)) return showPanel();
      take(event);
      open(dropped);
    },
    { capture: true },
  );
}

/** @returns the workbook as a file */
export function connectFiles(
  book: SheetBook,
  texts: FormulaTexts,
  controls: FileControls,
): Pick<WorkbookFiles, "name" | "savedBytes"> {
  const { open, save, file, cancel, status, report } = controls;
  const run = workRunner(controls);
  const jobs = startFileJobs();
  let name = "Workbook.xlsx";
  let made: WorkbookFile | undefined;
  /** Whether a file lies behind the workbook. */
  let fromFile = false;
  /** A restored workbook is in no file as it is. */
  let restored = false;
  let behind: Promise<WorkbookFile> | undefined;
  const workbook = (): Promise<WorkbookFile> =>
    (behind ??= import(/* webpackChunkName: "xlsx" */ "../file/workbookFile").then(({ workbookFile }) => {
      made = workbookFile(book, texts, jobs);
      made.onRefusal((sentence) => (status.textContent = sentence));
      return made;
    }));
  book.onRefusal((sentence) => (status.textContent = sentence));
  book.onStepProgress((sentence) => (status.textContent = sentence));
  const isEdited = (): boolean => restored || (made?.isEdited() ?? book.edits() > 0);
  const load = async (bytes: Uint8Array, title: string, work: Work): Promise<string> => {
    const found = await (
      await workbook()
    ).open(bytes, work, () => {
      name = title;
      fromFile = true;
      restored = false;
      cancel.hidden = true;
      report.hidden = true;
      status.textContent = `${name} shows the file's results, which are being checked…`;
    });
    showReport(report, found, (cell) => book.select(cell));
    return reportLine(found);
  };
  const restore = (kept: KeptBook): Promise<boolean> =>
    run("Restoring…", async (work) => {
      const { content } = kept;
      if ("bytes" in content) await load(content.bytes, kept.name, work);
      else {
        (await workbook()).replace("pieces" in content ? await unpackBook(content.pieces, pause()) : content.data);
        [name, fromFile] = [kept.name, false];
        report.hidden = true;
      }
      restored = true;
      return `${name} is restored, and isn't saved yet.`;
    });
  const keptPieces = async (): Promise<readonly string[]> => {
    await book.whenWritten();
    return packBook(await book.dataInSlices(pause()), pause());
  };
  const content = async (): Promise<KeptBook["content"]> =>
    fromFile ? { bytes: await (await workbook()).savedBytes() } : { pieces: await keptPieces() };
  const kept = autosave(book, { name: () => name, isEdited, content, restore }, controls.offer, (sentence) => {
    status.textContent = sentence;
  });
  const choose = (chosen: File): Promise<boolean> =>
    run("Opening…", async (work) => {
      const question = `${name} has changes that aren't saved. Open ${chosen.name} and lose them?`;
      if (isEdited() && !confirm(question)) return `${name} stays open.`;
      const bytes = new Uint8Array(await chosen.arrayBuffer());
      await kept.setAside();
      const line = await load(bytes, chosen.name, work);
      return `${name} is open. ${line}`;
    });
  const store = (): Promise<boolean> =>
    run("Saving…", async (work) => {
      const { bytes, sentences } = await (await workbook()).save(work);
      downloadFile(bytes as Uint8Array<ArrayBuffer>, name, WORKBOOK_TYPE);
      restored = false;
      kept.saved();
      const usual = "Excel shows formulas of an add-in that it lacks with their last result.";
      return [`${name} is saved.`, ...sentences, usual].join(" ");
    });
  open.addEventListener("click", () => file.click());
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    if (chosen === undefined) return;
    // The same file may be chosen again.
    void choose(chosen).finally(() => (file.value = ""));
  });
  save.addEventListener("click", () => void store());
  connectShortcuts(
    () => void store(),
    (dropped) => void choose(dropped),
    controls.showPanel,
  );
  return { name: () => name, savedBytes: async () => (await workbook()).savedBytes() };
}
