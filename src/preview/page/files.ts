import type { SheetBook } from "../host/sheetBook";
import type { FormulaTexts } from "../file/formulaTexts";
import { downloadFile, WORKBOOK_TYPE } from "../../workbook/downloadFile";
import type { DeliverPicture, WorkbookFiles } from "../host/previewWorkbook";

/** Opening and saving .xlsx files from the page. */

export interface FileControls {
  readonly open: HTMLElement;
  readonly save: HTMLElement;
  readonly file: HTMLInputElement;
  /** Shows a sentence on what happened. */
  readonly status: HTMLElement;
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

/** @returns the workbook as a file */
export const connectFiles = (
  book: SheetBook,
  texts: FormulaTexts,
  controls: FileControls,
): Pick<WorkbookFiles, "name" | "savedBytes"> => {
  const { open, save, file, status } = controls;
  let name = "Workbook.xlsx";
  const attempt = async (work: () => Promise<string>): Promise<void> => {
    try {
      status.textContent = await work();
    } catch (thrown) {
      status.textContent = thrown instanceof Error ? thrown.message : String(thrown);
    }
  };
  const load = async (chosen: File): Promise<string> => {
    const { readXlsx } = await import(/* webpackChunkName: "xlsx" */ "../file/xlsx");
    book.load(await readXlsx(await chosen.arrayBuffer(), texts));
    name = chosen.name;
    return `${name} is open.`;
  };
  const savedBytes = async (): Promise<Uint8Array> => {
    const { writeXlsx } = await import(/* webpackChunkName: "xlsx" */ "../file/xlsx");
    await book.whenCalculated();
    return new Uint8Array(await writeXlsx(book.data(), texts));
  };
  const store = async (): Promise<string> => {
    downloadFile((await savedBytes()) as Uint8Array<ArrayBuffer>, name, WORKBOOK_TYPE);
    return `${name} is saved. Excel shows formulas of an add-in that it lacks with their last result.`;
  };
  open.addEventListener("click", () => file.click());
  file.addEventListener("change", () => {
    const [chosen] = file.files ?? [];
    if (chosen === undefined) return;
    // The same file may be chosen again.
    void attempt(() => load(chosen)).finally(() => (file.value = ""));
  });
  save.addEventListener("click", () => void attempt(store));
  return { name: () => name, savedBytes };
};
