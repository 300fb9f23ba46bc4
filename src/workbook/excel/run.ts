/** Runs a batch in Excel and turns what Excel refuses into plain sentences. */

export const supports = (version: string): boolean => Office.context.requirements.isSetSupported("ExcelApi", version);

const SENTENCES: Readonly<Record<string, string>> = {
  AccessDenied: "the sheet is protected: take its protection off first",
  InvalidOperationInCellEditMode: "a cell is being edited: finish typing first",
  ItemNotFound: "a sheet, name or table that was asked for is not in this workbook",
  ItemAlreadyExists: "the workbook has a thing of that name already",
  InvalidArgument: "Excel refused a value, a formula or an address",
  RequestAborted: "Excel stopped: try again",
};

const codeOf = (error: unknown): string =>
  typeof error === "object" && error !== null && "code" in error ? String(error.code) : "";

/** What went wrong, as a sentence. */
export function sentence(error: unknown): string {
  const said = error instanceof Error ? error.message : String(error);
  return SENTENCES[codeOf(error)] ?? said;
}

export const isMissing = (error: unknown): boolean => codeOf(error) === "ItemNotFound";

/** Reading waits until the user has finished typing in a cell. */
export async function reading<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  return plainly(() => Excel.run({ delayForCellEdit: true }, batch));
}

/** All changes of the batch are one undo step where Excel can do that. */
export async function writing<T>(batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  const options = supports("1.20") ? { delayForCellEdit: true, mergeUndoGroup: true } : { delayForCellEdit: true };
  return plainly(() => Excel.run(options, batch));
}

async function plainly<T>(run: () => Promise<T>): Promise<T> {
  try {
    return await run();
  } catch (error) {
    throw new Error(sentence(error), { cause: error });
  }
}
