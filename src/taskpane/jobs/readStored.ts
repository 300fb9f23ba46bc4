/** Reads a workbook file that is compared: in a worker and, if no worker is available, on the page. */
import { CATALOGUE } from "../../../core";
import { storedFile, type StoredFile } from "../../workbook/compare/storedSheets";
import { mendKnowledge } from "../../workbook/mend/knowledge";
import type { JobContext } from "./jobTable";
import { rareReports } from "./rareReports";

export async function readStored(bytes: Uint8Array, { report, slicing = {} }: JobContext): Promise<StoredFile> {
  const reportRarely = rareReports(report);
  const onProgress = (done: number, total: number): void =>
    reportRarely({ done, total, text: `${done} of ${total} sheets` });
  return storedFile(bytes, mendKnowledge(CATALOGUE), { ...slicing, onProgress });
}
