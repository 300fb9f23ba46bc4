/** What the adapter says to the codes that Excel really gives, and which of them it tries again. */
import { describe, expect, it } from "vitest";
import { sentence } from "../../src/workbook/excel/sentences";
import { WEB } from "../excelHost";
import { failing, tooBusy } from "../excelHost/oddities";
import { onExcel } from "./onExcel";

const MESSAGE = "what Excel itself says, in the user's language";
const said = (code: string): string => sentence(Object.assign(new Error(MESSAGE), { code }));

describe("The sentence for a code of Excel's", () => {
  it.each([
    "AccessDenied",
    "InvalidOperationInCellEditMode",
    "ItemNotFound",
    "ItemAlreadyExists",
    "InvalidArgument",
    "RequestAborted",
  ])("%s is our own", (code) => {
    expect(said(code)).not.toContain(MESSAGE);
  });

  it.each([
    "ActivityLimitReached",
    "ApiNotFound",
    "BadPassword",
    "FormulaLengthExceedsLimit",
    "GeneralException",
    "InactiveWorkbook",
    "InvalidObjectPath",
    "InvalidOperation",
    "InvalidSelection",
    "MemoryLimitReached",
    "RangeExceedsLimit",
    "RequestPayloadSizeLimitExceeded",
    "ResponsePayloadSizeLimitExceeded",
    "ServiceNotAvailable",
    "UndoNotSupported",
    "UnsupportedFeature",
    "UnsupportedSheet",
  ])("%s is our own", (code) => {
    expect(said(code)).not.toContain(MESSAGE);
  });

  it("that nobody has heard of is our own too", () => {
    expect(said("NoSuchCode")).not.toContain(MESSAGE);
  });
});

describe("While Excel turns requests away", () => {
  const on = onExcel(WEB, "Sheet1");

  it("reading is tried again", async () => {
    tooBusy(on.host, 1);
    expect(await on.book.sheets()).toHaveLength(1);
  });

  it.each(["RequestAborted", "ServiceNotAvailable"])("reading is tried again after %s", async (code) => {
    failing(on.host, code);
    expect(await on.book.sheets()).toHaveLength(1);
  });

  it("it isn't tried for ever", async () => {
    on.host.refusal = () => "ActivityLimitReached";
    await expect(on.book.sheets()).rejects.toThrow();
  });
});
