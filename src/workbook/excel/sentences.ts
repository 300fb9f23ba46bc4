/** What Excel refuses, as plain sentences: its own messages are meant for developers and come in the user's language. */

const BUSY = "Excel is too busy just now: wait a moment and try again";
const LARGE = "that is too large for Excel to take at once: use a smaller part of the workbook";
const ELSEWHERE = "another workbook is in front: go back to this one and try again";

const SENTENCES: Readonly<Record<string, string>> = {
  AccessDenied: "the sheet is protected: take its protection off first",
  ActivityLimitReached: BUSY,
  ApiNotFound: "this Excel is too old for that: update it",
  BadPassword: "a sheet is protected with a password: take its protection off first",
  FormulaLengthExceedsLimit: "a formula is longer than Excel allows (8,192 characters)",
  GeneralException: "Excel failed without a reason: try again",
  InactiveWorkbook: ELSEWHERE,
  InvalidArgument: "Excel refused a value, a formula or an address",
  InvalidObjectPath: "a sheet, name or table changed meanwhile: try again",
  InvalidOperation: "Excel can't do that here: the sheet may be hidden or a dialog open",
  InvalidOperationInCellEditMode: "a cell is being edited: finish typing first",
  InvalidReference: "a name or formula refers to cells that are gone",
  InvalidSelection: ELSEWHERE,
  ItemAlreadyExists: "the workbook has a thing of that name already",
  ItemNotFound: "a sheet, name or table that was asked for is not in this workbook",
  MemoryLimitReached: "Excel is out of memory: close other workbooks and try again",
  RangeExceedsLimit: LARGE,
  RequestAborted: "Excel broke off: try again",
  RequestPayloadSizeLimitExceeded: LARGE,
  ResponsePayloadSizeLimitExceeded: LARGE,
  ServiceNotAvailable: BUSY,
  UndoNotSupported: "Excel can't undo that as one step and so refused it",
  UnsupportedFeature: "a sheet holds something that this Excel can't copy: copy the sheet by hand",
  UnsupportedSheet: "that can't be done on a sheet of this kind, such as a chart sheet",
};

const ownCode = (error: unknown): string =>
  typeof error === "object" && error !== null && "code" in error ? String(error.code) : "";

/** Excel's code of an error, or of the one that a sentence was made of; "" where there is none. */
export const codeOf = (error: unknown): string =>
  ownCode(error) || (error instanceof Error ? ownCode(error.cause) : "");

/** What went wrong, as a sentence. */
export function sentence(error: unknown): string {
  const code = ownCode(error);
  if (code !== "") return SENTENCES[code] ?? `Excel refused for a reason that isn't known here (${code})`;
  return error instanceof Error ? error.message : String(error);
}

const TOO_LARGE = new Set(["RequestPayloadSizeLimitExceeded", "ResponsePayloadSizeLimitExceeded", "RangeExceedsLimit"]);

/** A smaller piece may go through. */
export const isTooLarge = (error: unknown): boolean => TOO_LARGE.has(codeOf(error));

export const isMissing = (error: unknown): boolean => codeOf(error) === "ItemNotFound";

const PASSING = new Set(["ActivityLimitReached", "RequestAborted", "ServiceNotAvailable"]);

/** The same request may go through a little later. */
export const isPassing = (error: unknown): boolean => PASSING.has(codeOf(error));

/** The user looks at another workbook: some members are refused until this one is in front again. */
export const isElsewhere = (error: unknown): boolean =>
  ["InvalidSelection", "InactiveWorkbook"].includes(codeOf(error));
