/** A workbook file that the user chose to compare with. */
import { storedWorkbook } from "../../workbook/compare/storedWorkbook";
import type { Workbook } from "../../workbook/port";
import type { PanelServices } from "../services";

interface Options {
  readonly signal: AbortSignal;
  /** Called with the sheets that are read. */
  onProgress(done: number, of: number): void;
}

/** @throws a sentence where the file can't be read */
export async function chosenWorkbook(
  { jobs }: Pick<PanelServices, "jobs">,
  chosen: File,
  { signal, onProgress }: Options,
): Promise<Workbook> {
  const bytes = new Uint8Array(await chosen.arrayBuffer());
  const options = {
    signal,
    transfer: [bytes.buffer],
    onProgress: ({ done, total }: { readonly done: number; readonly total: number }) => onProgress(done, total),
  };
  return storedWorkbook(await jobs.run("stored", { bytes }, options));
}
