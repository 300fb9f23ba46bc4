import type { SheetBook } from "../host/sheetBook";
import type { FormulaTexts } from "../file/formulaTexts";
import type { Deliver, DeliverPicture } from "../host/previewWorkbook";

/** Opening and saving .xlsx files from the page. */

export interface FileControls {
  readonly open: HTMLElement;
  readonly save: HTMLElement;
  readonly file: HTMLInputElement;
  /** Shows a sentence on what happened. */
  readonly status: HTMLElement;
}

const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Gives bytes to the user as a file. */
const download = (bytes: BlobPart, name: string, type = TYPE): void => {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
};

/** Where the page puts hand-over copies. */
export const deliverFile =
  (texts: FormulaTexts): Deliver =>
  async (data) => {
    const { writeXlsx } = await import(/* webpackChunkName: "xlsx" */ "../file/xlsx");
    download(await writeXlsx(data, texts), HAND_OVER);
    return HAND_OVER;
  };

const HAND_OVER = "Hand-over copy.xlsx";

/** What some system doesn't take in a file's name. */
const ODD_SIGNS = /[^\w .,-]+/g;

/** Where the page puts pictures. */
export const deliverPicture: DeliverPicture = async ({ name, png }) => {
  const file = `${name.replace(ODD_SIGNS, "")}.png`;
  download(
    Uint8Array.from(atob(png), (sign) => sign.charCodeAt(0)),
    file,
    "image/png",
  );
  return file;
};

export const connectFiles = (book: SheetBook, texts: FormulaTexts, controls: FileControls): void => {
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
  const store = async (): Promise<string> => {
    const { writeXlsx } = await import(/* webpackChunkName: "xlsx" */ "../file/xlsx");
    await book.whenCalculated();
    download(await writeXlsx(book.data(), texts), name);
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
};
